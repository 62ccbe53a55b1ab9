import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assign, type Costs, proofOf } from "../../../src/methods/fits/assignment.ts";
import { costsOf, type Wanted, weightsOf } from "../../../src/methods/fits/wishes.ts";
import { deepFreeze } from "../helpers.ts";
import { byFlow, byTrying } from "./other-assignments.ts";

const forbidden = fc.constant(Number.POSITIVE_INFINITY);
const costs = (most: number, kind: "wide" | "tied" | "negative" | "forbidden"): fc.Arbitrary<Costs> => {
  const wide = fc.integer({ min: 0, max: 1_000_000 });
  const cell = {
    wide,
    tied: fc.integer({ min: 0, max: 3 }),
    negative: fc.integer({ min: -500, max: 500 }),
    forbidden: fc.oneof({ weight: 2, arbitrary: wide }, { weight: 1, arbitrary: forbidden }),
  }[kind];
  return fc.tuple(fc.integer({ min: 1, max: most }), fc.integer({ min: 0, max: 3 })).chain(([rows, extra]) =>
    fc.array(fc.array(cell, { minLength: rows + extra, maxLength: rows + extra }), {
      minLength: rows,
      maxLength: rows,
    }),
  );
};

describe("assign", () => {
  for (const kind of ["wide", "tied", "negative", "forbidden"] as const) {
    test(`costs as little as trying every way, up to 6 rows, ${kind} costs`, () => {
      fc.assert(
        fc.property(costs(6, kind), (c) => {
          expect(assign(c)?.cost ?? Number.POSITIVE_INFINITY).toBe(byTrying(c));
        }),
        { numRuns: 150 },
      );
    });

    test(`costs as little as a flow of least cost, up to 20 rows, ${kind} costs, and its proof holds`, () => {
      fc.assert(
        fc.property(costs(20, kind), (c) => {
          const found = assign(c);
          expect(found?.cost ?? Number.POSITIVE_INFINITY).toBe(byFlow(c));
          if (!found) return;
          expect(new Set(found.columns).size).toBe(c.length);
          const proof = proofOf(c, found);
          expect(proof).toMatchObject({ gap: 0, holds: true });
          expect(proof.smallestReducedCost).toBeGreaterThanOrEqual(0);
        }),
        { numRuns: 60 },
      );
    });
  }

  test("rows that cannot all have a column: none, not a poor answer", () => {
    const no = Number.POSITIVE_INFINITY;
    expect(
      assign([
        [1, no],
        [2, no],
      ]),
    ).toBeUndefined();
    expect(assign([[1], [2]])).toBeUndefined();
  });

  test("the proof fails for any dearer way", () => {
    const c = [
      [1, 5],
      [5, 1],
    ];
    const found = assign(c);
    if (!found) throw new Error("no way");
    expect(proofOf(c, { ...found, columns: [1, 0] }).holds).toBe(false);
    expect(proofOf(c, { ...found, columns: [0, 0] }).holds).toBe(false);
    expect(proofOf(c, { ...found, rowPotentials: [9, 1] }).holds).toBe(false);
  });

  test("300 by 300 is proven", () => {
    const c = Array.from({ length: 300 }, (_, i) =>
      Array.from({ length: 300 }, (__, j) => ((i * 7919 + j * 104_729) % 10_007) ** 2),
    );
    const found = assign(deepFreeze(c));
    expect(found && proofOf(c, found).holds).toBe(true);
  });
});

describe("wishes as one number", () => {
  const wanted: fc.Arbitrary<Wanted> = fc.oneof(
    { weight: 4, arbitrary: fc.tuple(fc.nat(1), fc.nat(1), fc.nat(400)) },
    { weight: 1, arbitrary: fc.constant(undefined) },
  );
  const table = fc
    .integer({ min: 1, max: 5 })
    .chain((n) => fc.array(fc.array(wanted, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }));

  test("the cheapest way is the first in the order of the wishes, as found by trying every way", () => {
    fc.assert(
      fc.property(table, (pairs) => {
        const c = costsOf(pairs);
        const found = c && assign(c);
        const best = byWishes(pairs);
        expect(found === undefined).toBe(best === undefined);
        if (found && best) expect(summed(pairs, found.columns)).toEqual(best);
      }),
      { numRuns: 300 },
    );
  });

  test("one unit of a wish outweighs all that comes after it", () => {
    const weights = weightsOf([
      [
        [1, 1, 400],
        [0, 1, 7],
      ],
      [[1, 0, 3], undefined],
    ]);
    expect(weights).toEqual([(1 + 2 * 400) * 2 + 2 * 400 + 1, 1 + 2 * 400, 1]);
  });

  test("weights beyond exact numbers are refused, not rounded", () => {
    expect(costsOf([[[1e8, 1e8]]])).toBeUndefined();
  });
});

const summed = (pairs: readonly (readonly Wanted[])[], columns: readonly number[]): number[] | undefined => {
  const chosen = columns.map((column, row) => pairs[row]?.[column]);
  return chosen.includes(undefined)
    ? undefined
    : [0, 1, 2].map((level) => chosen.reduce((sum, each) => sum + (each?.[level] ?? 0), 0));
};

/** The least sums in the order of the wishes, over all ways. */
function byWishes(pairs: readonly (readonly Wanted[])[]): number[] | undefined {
  const all = pairs.map((_, index) => index);
  const ways = (rest: readonly number[]): number[][] =>
    rest.length === 0
      ? [[]]
      : rest.flatMap((one) => ways(rest.filter((other) => other !== one)).map((w) => [one, ...w]));
  const sums = ways(all).flatMap((columns) => {
    const sum = summed(pairs, columns);
    return sum ? [sum] : [];
  });
  const before = (a: readonly number[], b: readonly number[]) => {
    const level = a.findIndex((value, index) => value !== b[index]);
    return level < 0 ? 0 : (a[level] ?? 0) - (b[level] ?? 0);
  };
  return sums.toSorted(before)[0];
}
