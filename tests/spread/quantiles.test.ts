import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  finiteSamples,
  quantiles,
  select,
  shortestInterval,
  summarise,
  symmetricInterval,
} from "../../src/spread/quantiles.ts";
import { answered } from "./cases.ts";

/** + 0 turns -0 into 0: equal to 0 in every order, it may come out on either side of it. */
const columns = fc.array(
  fc
    .oneof(fc.double({ min: -100, max: 100, noNaN: true }), fc.integer({ min: -3, max: 3 }))
    .map((x) => x + 0),
  { minLength: 1, maxLength: 200 },
);

describe("select(values, k)", () => {
  test("puts the number there that sorting would", () => {
    fc.assert(
      fc.property(columns, fc.nat(), (list, seed) => {
        const values = Float64Array.from(list);
        const k = seed % values.length;
        const sorted = values.toSorted();
        select(values, k);
        expect(values[k]).toBe(sorted[k]);
        expect(values.toSorted()).toEqual(sorted);
        for (let i = 0; i < values.length; i++)
          expect(i < k ? (values[i] ?? 0) <= (values[k] ?? 0) : (values[i] ?? 0) >= (values[k] ?? 0)).toBe(
            true,
          );
      }),
    );
  });

  test.each([
    ["rising", (i: number) => i],
    ["falling", (i: number) => -i],
    ["all equal", () => 1],
    ["two values", (i: number) => i % 2],
    ["scattered", (i: number) => (i * 7919) % 10007],
    ["organ pipe", (i: number) => Math.min(i, 20_000 - i)],
  ])("of 20 000 numbers, %s", (_, make) => {
    const values = Float64Array.from({ length: 20_000 }, (__, i) => make(i));
    const sorted = values.toSorted();
    for (const k of [0, 1, 499, 10_000, 19_499, 19_999]) {
      const own = values.slice();
      select(own, k);
      expect(own[k]).toBe(sorted[k]);
    }
  });
});

describe("quantiles(own, probabilities)", () => {
  test("gives order statistics and the straight line between them, in the order asked", () => {
    const own = (): Float64Array => Float64Array.of(30, 10, 20, 40, 50);
    expect(quantiles(own(), [0, 1, 0.5, 0.25, 0.125, 0.9])).toEqual([10, 50, 30, 20, 15, 46]);
    expect(quantiles(Float64Array.of(7), [0, 0.3, 1])).toEqual([7, 7, 7]);
    expect(quantiles(new Float64Array(0), [0.5])).toEqual([Number.NaN]);
  });

  test("agrees with sorting", () => {
    fc.assert(
      fc.property(
        columns,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 6 }),
        (list, probabilities) => {
          const sorted = Float64Array.from(list).toSorted();
          const want = probabilities.map((p) => {
            const at = p * (sorted.length - 1);
            const low = sorted[Math.floor(at)] ?? 0;
            return at > Math.floor(at)
              ? low + (at - Math.floor(at)) * ((sorted[Math.floor(at) + 1] ?? 0) - low)
              : low;
          });
          expect(quantiles(Float64Array.from(list), probabilities)).toEqual(want);
        },
      ),
    );
  });
});

test("symmetricInterval and shortestInterval hold the share they are asked for", () => {
  const skewed = Float64Array.from({ length: 10_000 }, (_, i) => -Math.log((i + 0.5) / 10_000));
  const [low, high] = answered(symmetricInterval(skewed.slice(), 0.95));
  expect(low).toBeCloseTo(-Math.log(0.975), 3);
  expect(high).toBeCloseTo(-Math.log(0.025), 2);
  const [from, to] = answered(shortestInterval(skewed.slice(), 0.95));
  expect(from).toBeCloseTo(0, 3);
  expect(to).toBeCloseTo(-Math.log(0.05), 2);
});

describe("summarise(samples)", () => {
  test("counts samples without an answer apart", () => {
    const found = summarise(Float64Array.of(1, Number.NaN, 3, Number.POSITIVE_INFINITY, 5));
    expect(found).toEqual({ count: 3, faults: 2, mean: 3, deviation: 2, smallest: 1, largest: 5 });
    expect([...finiteSamples(Float64Array.of(1, Number.NaN, 3))]).toEqual([1, 3]);
  });

  test("of nothing has no mean", () => {
    expect(summarise(new Float64Array(0))).toMatchObject({
      count: 0,
      mean: Number.NaN,
      deviation: Number.NaN,
    });
    expect(summarise(Float64Array.of(4)).deviation).toBeNaN();
  });
});
