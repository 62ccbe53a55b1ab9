// The exact solver against an independent one, on costs too large for brute force.
import * as fc from "fast-check";
import { munkres } from "munkres";
import { expect, test } from "vitest";
import { assign, proofOf } from "../../../src/methods/fits/assignment.ts";

const squares = fc.integer({ min: 1, max: 25 }).chain((n) =>
  fc.array(fc.array(fc.integer({ min: 0, max: 50 }), { minLength: n, maxLength: n }), {
    minLength: n,
    maxLength: n,
  }),
);

test("assign costs as little as munkres does on square whole-number costs, and its potentials prove it", () => {
  fc.assert(
    fc.property(squares, (costs) => {
      const found = assign(costs);
      if (!found) throw new Error("a square of finite costs has an assignment");
      const theirs = munkres(costs.map((row) => [...row])).reduce(
        (sum, [row, column]) => sum + (costs[row]?.[column] ?? Number.NaN),
        0,
      );
      expect(found.cost).toBe(theirs);
      expect(new Set(found.columns).size).toBe(costs.length);
      expect(proofOf(costs, found)).toMatchObject({ holds: true });
    }),
  );
});
