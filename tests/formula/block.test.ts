// Blocks against the evaluator: the same arithmetic in the same order, so the same bits.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BlockFormulas, createBlock, planBlock } from "../../src/formula/block.ts";
import { parse } from "../../src/formula/parse.ts";
import type { Tree } from "../../src/formula/tree.ts";
import { evaluator, type Value } from "../../src/formula/value.ts";
import { isProblem, root } from "../../src/problem.ts";
import { formulaText, inputNames } from "./random-formula.ts";

function tree(text: string): Tree {
  const read = parse(text);
  if (isProblem(read)) throw new Error(`${text}: ${read.got}`);
  return read;
}

const lines = (texts: Record<string, string>): BlockFormulas["lines"] =>
  Object.entries(texts).map(([name, text]) => ({ name, tree: tree(text) }));

function plan(formulas: BlockFormulas, keep: readonly string[]) {
  const found = planBlock(formulas, keep);
  if (isProblem(found)) throw new Error(`${found.what} ${found.got}`);
  return found;
}

/** One row of numbers per sample. */
function run(
  formulas: BlockFormulas,
  keep: readonly string[],
  samples: readonly (readonly number[])[],
): number[][] {
  const block = createBlock(plan(formulas, keep), samples.length);
  samples.forEach((sample, i) => {
    block.inputs.forEach((column, j) => {
      column[i] = sample[j] ?? Number.NaN;
    });
  });
  block.run(samples.length);
  return samples.map((_, i) => block.outputs.map((column) => column[i] ?? Number.NaN));
}

const samples = fc.array(
  fc.array(fc.oneof(fc.double({ min: -50, max: 50, noNaN: true }), fc.integer({ min: -2, max: 2 })), {
    minLength: 4,
    maxLength: 4,
  }),
  { minLength: 1, maxLength: 9 },
);

/**
 * Where the evaluator has no answer the block holds no finite number, and only there; a product too small
 * for any number is an underflow for the evaluator and 0 in a block.
 */
function agree(got: number | undefined, want: Value | object, note: string): void {
  if (isProblem(want) && root(want).code === "underflow") return;
  if (typeof want === "number" || typeof want === "boolean") {
    expect(got === Number(want), `${note}: ${got} against ${String(want)}`).toBe(true);
  } else expect(Number.isFinite(got), `${note}: ${got} where there is no answer`).toBe(false);
}

describe("createBlock(plan).run(n) gives the numbers of evaluator(tree)", () => {
  test("to the last bit on random formulas", () => {
    fc.assert(
      fc.property(formulaText({ stepped: true, powers: false }, 4), samples, (text, rows) => {
        const found = run({ lines: lines({ y: text }), inputs: inputNames }, ["y"], rows);
        const exact = evaluator(tree(text));
        rows.forEach((row, i) => {
          const value = exact((name) => row[inputNames.indexOf(name)] ?? Number.NaN);
          agree(found[i]?.[0], value, `${text} at ${row.join(" ")}`);
        });
      }),
      { numRuns: 500 },
    );
  });

  test("on random chains of lines, every line kept, some names the same in every sample", () => {
    const four = fc.tuple(
      ...Array.from({ length: 4 }, () => formulaText({ stepped: true, powers: false }, 2)),
    );
    fc.assert(
      fc.property(four, samples, fc.double({ min: -5, max: 5, noNaN: true }), (texts, rows, constant) => {
        // line i uses the lines before it in place of inputs
        const chain = Object.fromEntries(
          texts.map((text, i) => [
            `y${i}`,
            i === 0 ? text : text.replace(/\ba\b/g, `y${i - 1}`).replace(/\bb\b/g, "y0"),
          ]),
        );
        const keep = Object.keys(chain);
        const inputs = ["a", "b", "tension.preload"];
        const formulas = { lines: lines(chain).toReversed(), inputs, constants: { c: constant } };
        const found = run(formulas, keep, rows);
        rows.forEach((row, i) => {
          const lookup = (name: string): ReturnType<ReturnType<typeof evaluator>> => {
            const text = chain[name];
            if (text !== undefined) return evaluator(tree(text))(lookup);
            return name === "c" ? constant : (row[inputs.indexOf(name)] ?? Number.NaN);
          };
          for (const [j, name] of keep.entries()) {
            agree(found[i]?.[j], lookup(name), `${JSON.stringify(chain)} ${name} at ${row.join(" ")}`);
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  test.each([
    "0",
    "1",
    "2",
    "3",
    "4",
    "5",
    "6",
    "7",
    "-1",
    "-2",
    "-3",
    "-4",
    "-5",
    "0.5",
    "1.5",
    "(1/3)",
    "-0.5",
  ])("x^%s within 4e-16", (exponent) => {
    const rows = [0.3, 1.7, 12.9, 1e-3, 250, -0.7, -3, 0].map((x) => [x]);
    const found = run({ lines: lines({ y: `x^${exponent}` }), inputs: ["x"] }, ["y"], rows);
    rows.forEach(([x = 0], i) => {
      const want = evaluator(tree(`x^${exponent}`))(() => x);
      const got = found[i]?.[0] ?? Number.NaN;
      if (typeof want === "number") expect(Math.abs(got - want)).toBeLessThanOrEqual(4e-16 * Math.abs(want));
      else expect(Number.isFinite(got)).toBe(false);
    });
  });

  test.each([1, 2, 3, 4, 5, 1023, 1024])("for %i samples, a multiple of four or not", (n) => {
    const rows = Array.from({ length: n }, (_, i) => [i]);
    const found = run({ lines: lines({ y: "2 * x + 1" }), inputs: ["x"] }, ["y"], rows);
    expect(found.map(([y]) => y)).toEqual(rows.map(([x = 0]) => 2 * x + 1));
  });
});

describe("a value out of domain never turns into a number again", () => {
  test.each([
    "1 / (1 / x)",
    "2 - 1 / (1 / x)",
    "min(3, 1 / x)",
    "max(3, -1 / x)",
    "1 / x > 3 ? 1 : 2",
    "atan(1 / x)",
    "exp(-1 / abs(x))",
    "2^(-1 / abs(x))",
    "(1 / x)^0",
    "round(1 / x)",
    "1 / (y * 1e300 * 1e300)",
    "5 / (3 + exp(y * 1000))",
    "sum(rows / x) / (sum(rows / x) + 1)",
  ])("%s at x = 0", (text) => {
    const formulas = { lines: lines({ y1: text }), inputs: ["x", "y"], columns: { rows: [1, 2] } };
    expect(Number.isFinite(run(formulas, ["y1"], [[0, 2]])[0]?.[0])).toBe(false);
  });

  test("but the branch of a choice that is not taken does not matter", () => {
    const formulas = { lines: lines({ y: "x > 0 ? 1 / x : 0" }), inputs: ["x"] };
    expect(run(formulas, ["y"], [[0], [4]])).toEqual([[0], [0.25]]);
  });
});

describe("planBlock(formulas, keep)", () => {
  test("does equal parts once, whatever line they stand in", () => {
    const formulas = { lines: lines({ y: "(a + b) * (a + b) + c", z: "(b + a) / c" }), inputs: inputNames };
    expect(plan(formulas, ["y", "z"]).schedule.passes.length).toBe(4);
  });

  test("leaves out what no wanted line needs", () => {
    const formulas = { lines: lines({ y: "a * b", z: "sin(a) + sqrt(b)" }), inputs: inputNames };
    expect(plan(formulas, ["y"]).schedule.passes.length).toBe(1);
  });

  test("uses a register again once its content is dead", () => {
    const long = Array.from({ length: 40 }, (_, i) => `sin(a + ${i})`).join(" + ");
    expect(plan({ lines: lines({ y: long }), inputs: ["a"] }, ["y"]).schedule.scratch).toBeLessThanOrEqual(3);
  });

  test("gives numbers for what is the same in every sample", () => {
    const formulas = { lines: lines({ y: "2 * c + pi", z: "c" }), inputs: ["a"], constants: { c: 3 } };
    expect(run(formulas, ["y", "z", "c", "a"], [[7]])).toEqual([[6 + Math.PI, 3, 3, 7]]);
  });

  test("never writes to the inputs", () => {
    const formulas = { lines: lines({ y: "a + 1", z: "y * 2 + a" }), inputs: ["a"] };
    const block = createBlock(plan(formulas, ["z"]), 4);
    block.inputs[0]?.set([1, 2, 3, 4]);
    block.run(4);
    block.run(4);
    expect([...(block.inputs[0] ?? [])]).toEqual([1, 2, 3, 4]);
    expect([...(block.outputs[0] ?? [])]).toEqual([5, 8, 11, 14]);
  });

  test("takes a thousand lines in a row, in any order", () => {
    const names = Array.from({ length: 1000 }, (_, i) => i);
    const chain = Object.fromEntries(names.map((i) => [`y${i}`, i === 0 ? "a" : `y${i - 1} + 1`]));
    const formulas = { lines: lines(chain).toReversed(), inputs: ["a"] };
    expect(run(formulas, ["y999"], [[1]])).toEqual([[1000]]);
  });

  test("names a loop", () => {
    const formulas = { lines: lines({ y: "z + 1", z: "w * 2", w: "y" }), inputs: [] };
    expect(planBlock(formulas, ["y"])).toMatchObject({ code: "loop" });
  });

  test.each([
    [{ y: "q + 1" }, ["y"], "unknown-name"],
    [{ y: "a + 1" }, ["z"], "unknown-name"],
    [{ y: "rows + a" }, ["y"], "formula-whole-column"],
    [{ y: "sum(a)" }, ["y"], "formula-needs-column"],
    [{ y: "mean(none)" }, ["y"], "column-too-short"],
    [{ y: "sum(rows * none)" }, ["y"], "columns-of-unlike-length"],
  ])("has no plan for %j, keeping %j: %s", (texts, keep, code) => {
    const formulas = { lines: lines(texts), inputs: ["a"], columns: { rows: [1, 2, 3], none: [] } };
    expect(planBlock(formulas, keep)).toMatchObject({ code });
  });
});

describe("column functions in a block", () => {
  const columns = { "segments.length": [0.02, 0.03, 0.05], "segments.area": [2e-4, 3e-4, 3.5e-4] };

  test.each([
    "sum(segments.length / (segments.area * modulus))",
    "mean(segments.length * modulus)",
    "deviation(segments.length^2 * modulus)",
    "smallest(segments.length * modulus) + largest(segments.area - modulus)",
    "count(segments.length) * modulus",
    "sum(segments.length > 0.025 ? modulus : 0)",
    "sum((segments.length - mean(segments.length * modulus))^2)",
  ])("%s is taken row by row", (text) => {
    const [[found] = []] = run({ lines: lines({ y: text }), inputs: ["modulus"], columns }, ["y"], [[2.06]]);
    const all: Record<string, Value> = { ...columns, modulus: 2.06 };
    expect(
      Math.abs((found ?? Number.NaN) / Number(evaluator(tree(text))((name) => all[name] ?? Number.NaN)) - 1),
    ).toBeLessThan(1e-15);
  });

  test("a row may be an input or a line of its own", () => {
    const formulas = {
      lines: lines({ y: "sum(rows^2)", r: "2 * a" }),
      inputs: ["a"],
      columns: { rows: [1, "a", "r"] },
    };
    expect(run(formulas, ["y"], [[3], [5]])).toEqual([[1 + 9 + 36], [1 + 25 + 100]]);
  });
});
