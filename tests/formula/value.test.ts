// The evaluator against mathjs evaluating the same text. It shares the parser with us, so this
// proves the step from tree to number; parse.test.ts proves the trees.
import * as fc from "fast-check";
import { all, create } from "mathjs/number";
import { describe, expect, test } from "vitest";
import { roundHalfEven } from "../../src/formula/arithmetic.ts";
import { parse } from "../../src/formula/parse.ts";
import { evaluator, type Value } from "../../src/formula/value.ts";
import { isProblem, type Problem, problem } from "../../src/problem.ts";
import { formulaText, inputNames, inputValues } from "./random-formula.ts";

if (!all) throw new Error("mathjs has no list of everything");
// its comparisons allow a relative 1e-12 by default and refuse 0; ours are exact
const oracle = create(all, { relTol: 1e-300, absTol: 0 });

function value(text: string, inputs: Record<string, Value | Problem> = {}): Value | Problem {
  const tree = parse(text);
  if (isProblem(tree)) return tree;
  return evaluator(tree)((name) => inputs[name] ?? problem({ code: "unknown-name", what: name }));
}

const code = (result: unknown): string | undefined => (isProblem(result) ? result.code : undefined);

function close(got: number, want: number): void {
  expect(Math.abs(got - want), `${got} against ${want}`).toBeLessThanOrEqual(
    1e-12 * Math.max(Math.abs(want), 1e-300),
  );
}

/** Names and functions mathjs lacks or words otherwise. */
const spoken = { ln: Math.log, round: roundHalfEven };

describe("evaluator(tree) gives what mathjs gives for the same text", () => {
  test("on random texts of every scalar node kind, to 1e-12", () => {
    let answered = 0;
    fc.assert(
      fc.property(formulaText({ stepped: true }), inputValues, (text, numbers) => {
        const inputs = Object.fromEntries(inputNames.map((name, i) => [name, numbers[i] ?? 0]));
        const ours = value(text, inputs);
        const { "tension.preload": preload, ...plain } = inputs;
        const theirs: unknown = oracle.evaluate(text, { ...spoken, ...plain, tension: { preload } });
        if (typeof ours === "number") {
          answered++;
          close(ours, Number(theirs));
        } else {
          expect(isProblem(ours)).toBe(true);
        }
        if (!Number.isFinite(theirs)) expect(isProblem(ours)).toBe(true);
      }),
      { numRuns: 1000 },
    );
    expect(answered).toBeGreaterThan(300);
  });

  test.each([
    ["-x^2", -9],
    ["(-x)^2", 9],
    ["2^-x", 0.125],
    ["2^3^2", 512],
    ["x - 2 - 1", 0],
    ["12 / x / 2", 2],
    ["12 / (x / 2)", 8],
    ["1/2*x", 1.5],
    ["x > 2 ? 1 : x < 1 ? 2 : 3", 1],
    ["x < 2 ? 1 : x < 1 ? 2 : 3", 3],
    ["min(x, 4, 2)", 2],
    ["- - x", 3],
    [".5 + 1e-3*x", 0.503],
  ])("%s is %f for x = 3", (text, want) => {
    expect(value(text, { x: 3 })).toBe(want);
    expect(oracle.evaluate(text, { x: 3 })).toBe(want);
  });
});

describe("evaluator(tree) over columns", () => {
  const rows = { length: [0.02, 0.03, 0.05], area: [2e-4, 3e-4, 3.5e-4] };
  const inputs = {
    "segments.length": rows.length,
    "segments.area": rows.area,
    modulus: 206e9,
    "empty.length": [],
    "one.length": [3],
    "two.length": [1, 2],
  };

  test("sum(segments.length / (segments.area * modulus)) adds row by row", () => {
    const want = rows.length.reduce((total, length, i) => total + length / ((rows.area[i] ?? 0) * 206e9), 0);
    close(Number(value("sum(segments.length / (segments.area * modulus))", inputs)), want);
  });

  test.each([
    ["count(segments.length)", 3],
    ["sum(segments.length)", 0.1],
    ["mean(segments.length)", 0.1 / 3],
    ["smallest(segments.length)", 0.02],
    ["largest(segments.length)", 0.05],
    ["deviation(two.length)", Math.SQRT1_2],
    ["sum(segments.length > 0.025 ? 1 : 0)", 2],
    ["largest(abs(segments.length - mean(segments.length)))", 0.05 - 0.1 / 3],
    ["sum((two.length - mean(two.length))^2)", 0.5],
    ["sum(empty.length)", 0],
    ["count(empty.length)", 0],
    ["sum(1/one.length)", 1 / 3],
  ])("%s", (text, want) => {
    close(Number(value(text, inputs)), want);
  });

  test("summaries agree with mathjs on random columns", () => {
    const columns = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), {
      minLength: 2,
      maxLength: 40,
    });
    fc.assert(
      fc.property(columns, (x) => {
        const size = Math.max(...x.map(Math.abs), 1e-9);
        for (const [ours, theirs] of [
          ["sum", "sum"],
          ["mean", "mean"],
          ["smallest", "min"],
          ["largest", "max"],
          ["deviation", "std"],
        ]) {
          const want = Number(oracle.evaluate(`${theirs}(x)`, { x }));
          expect(Math.abs(Number(value(`${ours}(x)`, { x })) - want)).toBeLessThanOrEqual(
            1e-12 * size * x.length,
          );
        }
      }),
    );
  });

  test("a bare name passes a whole column on", () => {
    expect(value("segments.length", inputs)).toEqual(rows.length);
  });

  test.each([
    ["mean(empty.length)", "column-too-short"],
    ["smallest(empty.length)", "column-too-short"],
    ["deviation(one.length)", "column-too-short"],
    ["sum(segments.length * two.length)", "columns-of-unlike-length"],
    ["sum(modulus)", "formula-needs-column"],
    ["segments.length + 1", "formula-whole-column"],
  ])("%s has no answer: %s", (text, want) => {
    expect(code(value(text, inputs))).toBe(want);
  });
});

describe("evaluator(tree) gives a problem that names the operation", () => {
  test.each([
    ["sqrt(x - 4)", "root-of-negative", 1],
    ["1 / (x - 3)", "division-by-zero", 3],
    ["0^(0 - x)", "division-by-zero", 2],
    ["ln(x - 3)", "logarithm-of-zero-or-less", 1],
    ["log10(0 - x)", "logarithm-of-zero-or-less", 1],
    ["asin(x)", "outside-domain", 1],
    ["acos(-x)", "outside-domain", 1],
    ["(-8)^(1/x)", "power-of-negative", 5],
    ["exp(x * 1000)", "overflow", 1],
    ["1e200 * 1e200 * x", "overflow", 7],
    ["1 / (1 / (x - 3))", "division-by-zero", 8],
  ])("%s: %s at column %i", (text, want, column) => {
    const result = value(text, { x: 3 });
    expect(code(result)).toBe(want);
    expect(isProblem(result) && result.what).toBe(`formula, column ${column}`);
  });

  test("the problem of a name is passed on as it is", () => {
    const missing = problem({ code: "missing", what: "nut factor" });
    expect(value("1 / k", { k: missing })).toBe(missing);
    expect(value("k", { k: missing })).toBe(missing);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("an input of %d is no number", (x) => {
    expect(code(value("x", { x }))).toBe("not-a-number");
    expect(code(value("x > 1 ? 2 : 3", { x }))).toBe("not-a-number");
    expect(code(value("sum(x)", { x: [1, x] }))).toBe("not-a-number");
  });

  test("the branch of a choice that is not taken is neither read nor computed", () => {
    expect(value("x > 0 ? 5 : missing / 0", { x: 1 })).toBe(5);
  });
});

describe("evaluator(tree) of comparisons", () => {
  test.each([
    ["x <= 3", true],
    ["x != 3", false],
    ["x > 1 ? x == 3 : x == 4", true],
    ["ok", true],
    ["ok ? ok : x > 9", true],
  ])("%s is %s", (text, want) => {
    expect(value(text, { x: 3, ok: true })).toBe(want);
  });

  test("a choice asks a truth of the page", () => {
    expect(value("ok ? x : 0", { x: 3, ok: false })).toBe(0);
  });
});

describe("round goes to the even neighbour from halfway", () => {
  test.each([
    [0.5, 0],
    [1.5, 2],
    [2.5, 2],
    [-0.5, 0],
    [-1.5, -2],
    [-2.5, -2],
    [2.4999999999999996, 2],
    [0.49999999999999994, 0],
    [4503599627370497, 4503599627370497],
    [1e300, 1e300],
  ])("round(%d) is %d", (x, want) => {
    expect(value("round(x)", { x })).toBe(want);
  });
});

test("the inputs are left as they were", () => {
  const x = Object.freeze([3, 1, 2]);
  value("sum(x) + smallest(x) + deviation(x)", { x });
  expect(x).toEqual([3, 1, 2]);
});
