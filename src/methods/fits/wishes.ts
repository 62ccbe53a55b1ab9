// Several wishes in order, as one whole number for each pair: a later wish never outweighs an earlier one.

/** Figures of one pair, the first wish first; whole numbers of 0 or more, or undefined for a pair that must not be. */
export type Wanted = readonly number[] | undefined;

/** The largest whole number of which every neighbour is a double too. */
const exact = Number.MAX_SAFE_INTEGER;

/** Weights so that one unit of a wish is worth more than all later wishes of all pairs together. */
function weightsOf(pairs: readonly (readonly Wanted[])[]): readonly number[] {
  const levels = pairs.flat().find((wanted) => wanted !== undefined)?.length ?? 0;
  const weights = Array.from({ length: levels }, () => 1);
  let below = 0; // all later wishes of all rows at their largest
  for (let level = levels - 1; level >= 0; level--) {
    const largest = pairs.reduce(
      (most, line) => line.reduce((best, wanted) => Math.max(best, wanted?.[level] ?? 0), most),
      0,
    );
    weights[level] = below + 1;
    below += pairs.length * largest * (below + 1);
  }
  return weights;
}

/** Costs for the assignment; undefined when the weights are too large for exact sums. */
export function costsOf(pairs: readonly (readonly Wanted[])[]): readonly (readonly number[])[] | undefined {
  const weights = weightsOf(pairs);
  let largest = 0; // NaN once a weight or a figure has no end, so that such sums are never taken for exact
  const costs = pairs.map((line) =>
    line.map((wanted) => {
      if (wanted === undefined) return Number.POSITIVE_INFINITY;
      const cost = wanted.reduce((sum, figure, level) => sum + figure * (weights[level] ?? 0), 0);
      largest = Math.max(largest, cost);
      return cost;
    }),
  );
  return 2 * pairs.length * largest <= exact ? costs : undefined; // a path crosses each row once, there and back
}
