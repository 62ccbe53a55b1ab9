// What a spread refuses, the same in Monte Carlo and in first order; and orders of samples without an answer.
import { describe, expect, test } from "vitest";
import { parse } from "../../src/formula/parse.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import type { Correlation } from "../../src/spread/correlate.ts";
import type { Distribution } from "../../src/spread/distributions.ts";
import { firstOrder } from "../../src/spread/first-order.ts";
import { quantiles, shortestInterval, symmetricInterval } from "../../src/spread/quantiles.ts";
import { type SpreadInput, type SpreadJob, sample } from "../../src/spread/sample.ts";
import { answered } from "./cases.ts";

const normal = (mean: number, deviation: number): Distribution => ({ type: "normal", mean, deviation });
const limits = (lower: number, upper: number): Distribution => ({ type: "rectangular", lower, upper });

function job(inputs: readonly SpreadInput[], correlations: readonly Correlation[] = []): SpreadJob {
  const lines = [{ name: "y", tree: answered(parse("a + b")) }];
  return { lines, inputs, correlations, keep: ["y"], seed: 1, samples: 2000 };
}
const two = (a: Distribution, b: Distribution): readonly SpreadInput[] => [
  { name: "a", distribution: a },
  { name: "b", distribution: b },
];
const pair = (r: number, between: readonly [string, string] = ["a", "b"]): Correlation => ({ between, r });
const plain = two(normal(1, 0.1), normal(2, 0.2));

describe("refused by both ways", () => {
  test.each<[string, SpreadJob, string]>([
    ["a coefficient above 1", job(plain, [pair(1.5)]), "must be from -1 to 1"],
    ["a coefficient below -1", job(plain, [pair(-1.0001)]), "must be from -1 to 1"],
    ["no coefficient", job(plain, [pair(Number.NaN)]), "must be from -1 to 1"],
    ["a pair given twice", job(plain, [pair(0.5), pair(0.5)]), "got the same twice"],
    ["a pair given both ways", job(plain, [pair(0.5), pair(0.5, ["b", "a"])]), "got the same twice"],
    ["an input with itself", job(plain, [pair(1, ["a", "a"])]), "must be between two inputs"],
    ["an input that is not there", job(plain, [pair(0.5, ["a", "c"])]), "no spread for c"],
    [
      "limits that go together",
      job(two(limits(0, 1), limits(0, 1)), [pair(0.5)]),
      "got rectangular for a, must be between normal inputs",
    ],
    ["limits the wrong way round", job(two(limits(3, 1), normal(2, 0.2))), "have the lower limit first"],
    ["a deviation below zero", job(two(normal(1, -0.1), normal(2, 0.2))), "be 0 or more"],
    ["a limit that is no number", job(two(limits(0, Number.NaN), normal(2, 0.2))), "be finite numbers"],
    [
      "an input given twice",
      job([...plain, { name: "a", distribution: normal(1, 3) }]),
      "spread of a: got the same twice",
    ],
  ])("%s", (_, wanted, words) => {
    const found = [firstOrder(wanted), sample(wanted)];
    for (const one of found) expect(isProblem(one) ? sentence(one) : "an answer").toContain(words);
  });

  test("three coefficients that cannot hold together", () => {
    const wanted = {
      ...job(
        [...plain, { name: "c", distribution: normal(0, 1) }],
        [pair(0.9), pair(0.9, ["b", "c"]), pair(-0.9, ["a", "c"])],
      ),
    };
    for (const one of [firstOrder(wanted), sample(wanted)])
      expect(isProblem(one) ? sentence(one) : "an answer").toContain("must fit together");
  });
});

describe("what holds", () => {
  test.each([-1, -0.5, 0, 0.5, 1])("r = %d: variance of the sum, in first order and by Monte Carlo", (r) => {
    const want = Math.sqrt(0.01 + 0.04 + 2 * r * 0.02);
    const [found] = answered(firstOrder(job(plain, [pair(r)])));
    expect(found?.uncertainty).toBeCloseTo(want, 12);
    const [column = new Float64Array(0)] = answered(sample({ ...job(plain, [pair(r)]), samples: 100_000 }));
    const mean = column.reduce((sum, x) => sum + x, 0) / column.length;
    const square = column.reduce((sum, x) => sum + (x - mean) ** 2, 0) / column.length;
    expect(Math.abs(Math.sqrt(square) - want)).toBeLessThan(0.003);
  });

  test("degrees of freedom of correlated inputs have no formula, and are not made up", () => {
    const inputs = plain.map((input) => ({ ...input, degrees: 5 }));
    expect(answered(firstOrder(job(inputs)))[0]?.degrees).toBeCloseTo(0.05 ** 2 / ((1e-4 + 16e-4) / 5), 9);
    expect(answered(firstOrder(job(inputs, [pair(0.5)])))[0]?.degrees).toBeNaN();
    expect(answered(firstOrder(job(plain, [pair(0.5)])))[0]?.degrees).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("samples without an answer have no place in an order", () => {
  const column = (): Float64Array => Float64Array.of(3, Number.NaN, 1, Number.POSITIVE_INFINITY, 2);

  test.each([
    ["quantiles", () => quantiles(column(), [0.5])],
    ["symmetricInterval", () => symmetricInterval(column(), 0.95)],
    ["shortestInterval", () => shortestInterval(column(), 0.95)],
  ])("%s says how many", (_, of) => {
    const found = of();
    expect(isProblem(found) ? sentence(found) : "an answer").toContain("got 2 of 5 without an answer");
  });

  test.each([-0.1, 1.1, Number.NaN])("a probability of %d is refused", (p) => {
    for (const found of [quantiles(Float64Array.of(1, 2), [p]), shortestInterval(Float64Array.of(1, 2), p)])
      expect(isProblem(found) ? found.code : "an answer").toBe("probability");
  });
});
