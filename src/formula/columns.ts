// Sums and other summaries of a column of numbers.

import type { ColumnFunction } from "./functions.ts";

type Summary = (values: readonly number[]) => number;

/** Plain order of addition, so that a spread over the same rows adds in the same order. */
function sum(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

const mean: Summary = (values) => sum(values) / values.length;

/** Sample standard deviation, n - 1 in the divisor, from differences to the mean. */
function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(sum(values.map((value) => (value - middle) * (value - middle))) / (values.length - 1));
}

export const summaries: Readonly<Record<ColumnFunction, Summary>> = {
  count: (values) => values.length,
  sum,
  mean,
  smallest: (values) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
  largest: (values) => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY),
  deviation,
};

/** Rows without which there is no answer. */
export const fewestRows: Readonly<Record<ColumnFunction, number>> = {
  count: 0,
  sum: 0,
  mean: 1,
  smallest: 1,
  largest: 1,
  deviation: 2,
};
