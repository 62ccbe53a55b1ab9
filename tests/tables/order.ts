// What a printed table is expected to do from one row to the next.
import { expect } from "vitest";

/** Never falling; equal neighbours are allowed. */
export function rises(values: readonly (number | undefined)[], what: string): void {
  const there = values.filter((value) => value !== undefined);
  expect(there, what).toEqual(there.toSorted((a, b) => a - b));
}

/** Each greater than the one before. */
export function climbs(values: readonly (number | undefined)[], what: string): void {
  rises(values, what);
  const there = values.filter((value) => value !== undefined);
  expect(new Set(there).size, what).toBe(there.length);
}
