import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkDimensions, type Typed } from "../../src/formula/check-dimensions.ts";
import { derive } from "../../src/formula/derive.ts";
import { parse } from "../../src/formula/parse.ts";
import { plain, show } from "../../src/formula/show.ts";
import type { Tree } from "../../src/formula/tree.ts";
import { evaluator, type Value } from "../../src/formula/value.ts";
import { isProblem } from "../../src/problem.ts";
import { divideDimensions, sameDimension } from "../../src/units/dimension.ts";
import { kinds } from "../../src/units/kind.ts";
import { formulaText, inputNames } from "./random-formula.ts";

function tree(text: string): Tree {
  const read = parse(text);
  if (isProblem(read)) throw new Error(text);
  return read;
}

function derived(text: string, name: string): Tree {
  const found = derive(tree(text), name);
  if (isProblem(found)) throw new Error(`${text}: ${found.got}`);
  return found;
}

/** Away from 0 and on a grid far coarser than the step of a difference. */
const benign = fc.integer({ min: -500, max: 500 }).map((n) => (n + 0.5) / 100);

const line = (node: Tree): string => plain(show(node, (name) => ({ type: "symbol", text: name })));

describe("derive(tree, name) is short enough to be shown", () => {
  test.each([
    ["x", "1"],
    ["y", "0"],
    ["x + y", "1"],
    ["y - x", "−1"],
    ["3 * x", "3"],
    ["x * y", "y"],
    ["x / y", "1 / y"],
    ["y / x", "−y / x²"],
    ["T / (x * d)", "−T · d / (x · d)²"],
    ["x^2", "2 · x"],
    ["x^3", "3 · x²"],
    ["x^(1/3)", "x^(−2 / 3) / 3"],
    ["x^-1", "−x⁻²"],
    ["sqrt(x)", "1 / (2 · √x)"],
    ["sqrt(x^2 + 3 * y^2)", "2 · x / (2 · √(x² + 3 · y²))"],
    ["pi * x^2 / 4", "π · 2 · x / 4"],
    ["sin(2 * x)", "cos(2 · x) · 2"],
    ["exp(-x)", "−exp(−x)"],
    ["ln(x)", "1 / x"],
    ["max(0, x)", "{ 0 if 0 ≥ x; 1 otherwise }"],
    ["y > 0 ? x : y", "{ 1 if y > 0; 0 otherwise }"],
    ["y > 0 ? y : 2", "0"],
    ["sum(rows.a * x)", "sum(rows.a)"],
    ["sum(rows.a + x)", "count(rows.a + x)"],
    ["mean(rows.a * x + x)", "mean(rows.a + 1)"],
    ["count(rows.a * x)", "0"],
    ["deviation(rows.a + x)", "0"],
  ])("of %s by x is %s", (text, want) => {
    expect(line(derived(text, "x"))).toBe(want);
  });

  test("takes a name with an output as one name", () => {
    expect(line(derived("tension.preload * b.preload", "tension.preload"))).toBe("b.preload");
  });
});

describe("derive(tree, name) agrees with a difference of values", () => {
  test("on random smooth texts", () => {
    let compared = 0;
    fc.assert(
      fc.property(
        formulaText({ stepped: false }, 2),
        fc.array(benign, { minLength: 4, maxLength: 4 }),
        fc.integer({ min: 0, max: 3 }),
        (text, values, which) => {
          const name = inputNames[which] ?? "a";
          const at = (h: number) => (full: string) => {
            const value = values[inputNames.indexOf(full)] ?? 0;
            return full === name ? value + h : value;
          };
          const f = evaluator(tree(text));
          const exact = evaluator(derived(text, name))(at(0));
          const size = Math.max(1, Math.abs(values[which] ?? 0));
          const h = size * 1e-4;
          const value = (step: number): number => {
            const found = f(at(step));
            return typeof found === "number" ? found : Number.NaN;
          };
          const [far, near, here, behind, back] = [
            value(2 * h),
            value(h),
            value(0),
            value(-h),
            value(-2 * h),
          ];
          if (typeof exact !== "number" || !Number.isFinite(far + near + here + behind + back)) return;
          const fine = (near - behind) / (2 * h);
          const noise = (1e-11 * Math.max(...[far, near, here, behind, back].map(Math.abs))) / size + 1e-300;
          // where two step lengths, or the two sides, disagree the function is too rough for a difference to judge
          const roughness = Math.max(
            Math.abs((far - back) / (4 * h) - fine),
            1e-2 * Math.abs((near + behind - 2 * here) / h),
          );
          if (roughness > 1e-5 * Math.abs(fine) + noise) return;
          compared++;
          expect(Math.abs(exact - fine), `${text}: ${exact} against ${fine}`).toBeLessThanOrEqual(
            1e-4 * Math.abs(fine) + 1e3 * noise,
          );
        },
      ),
      { numRuns: 1000 },
    );
    expect(compared).toBeGreaterThan(300);
  });

  test.each([
    "sum(rows.a / (rows.b * x))",
    "mean(rows.a^x)",
    "deviation(rows.a * x + rows.b)",
    "sum((rows.a * x - mean(rows.a * x))^2)",
    "min(x^2, y, 3 * x)",
    "max(x^2, y, 3 * x)",
    "abs(y - x^2)",
    "atan(x) + tan(x) + asin(x / 4) + acos(x / 5) + log10(x)",
    "x^y + y^x + x^x",
    "x > y ? x^2 : y * x^3",
  ])("on %s", (text) => {
    const at =
      (x: number) =>
      (name: string): Value =>
        ({ x, y: 1.9, "rows.a": [1, 2.5, 4], "rows.b": [2, 1, 7] })[name] ?? 0;
    const f = evaluator(tree(text));
    const slope = (Number(f(at(1.3 + 1e-5))) - Number(f(at(1.3 - 1e-5)))) / 2e-5;
    const exact = Number(evaluator(derived(text, "x"))(at(1.3)));
    expect(Math.abs(exact - slope)).toBeLessThan(1e-7 * Math.max(1, Math.abs(slope)));
  });
});

test("derive(tree, name) has the dimension of the formula over that of the name", () => {
  const known: Record<string, Typed> = {
    torque: { kind: "torque", dimension: kinds.torque.dimension },
    k: { kind: "ratio", dimension: kinds.ratio.dimension },
    d: { kind: "length", dimension: kinds.length.dimension },
    s: { kind: "stress", dimension: kinds.stress.dimension },
    "rows.d": { kind: "length", dimension: kinds.length.dimension, column: true },
  };
  const typeOf = (name: string): Typed => known[name] ?? { dimension: kinds.ratio.dimension };
  for (const text of [
    "torque / (k * d)",
    "sqrt(s^2 + 3 * (16 * torque / (pi * d^3))^2)",
    "max(0, torque - s * d^3)",
    "d > 2 * d ? d^2 : 0",
    "abs(d)^(1/3) * s",
    "sum(rows.d * d / (d + rows.d))",
    "deviation(rows.d * k + d)",
    "torque * atan(d / (2 * d)) * exp(k)^k",
  ]) {
    for (const name of ["torque", "k", "d", "s"]) {
      const whole = checkDimensions(tree(text), typeOf);
      const slope = checkDimensions(derived(text, name), typeOf);
      if (isProblem(whole) || isProblem(slope))
        throw new Error(`${text} by ${name}: ${isProblem(slope) ? slope.got : ""}`);
      const want = divideDimensions(whole.dimension, typeOf(name).dimension);
      expect(slope.anyDimension || sameDimension(slope.dimension, want), `${text} by ${name}`).toBe(true);
    }
  }
});

describe("derive(tree, name) has no answer", () => {
  test.each([
    ["round(x)", "the derivative of round"],
    ["smallest(rows.a * x)", "the derivative of smallest"],
    ["largest(rows.a * x)", "the derivative of largest"],
    ["x > 1", "a comparison"],
  ])("for %s", (text, got) => {
    expect(derive(tree(text), "x")).toMatchObject({ code: "formula-no-derivative", got });
  });

  test("by a column", () => {
    expect(derive(tree("sum(rows.a)"), "rows.a", (name) => name === "rows.a")).toMatchObject({
      code: "formula-no-derivative",
    });
  });

  test("but is 0 where the stepped part does not use the name", () => {
    expect(line(derived("x + round(y)", "x"))).toBe("1");
  });
});
