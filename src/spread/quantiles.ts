// What is read off a column of samples: mean, deviation, quantiles, coverage intervals.
// Quantiles by selection (R. W. Floyd and R. L. Rivest, "Algorithm 489: SELECT", Communications of
// the ACM 18(3), 1975), not by sorting: the same numbers in a quarter of the time.
// biome-ignore-all lint/style/noNonNullAssertion: every index lies between low and high, and these loops are the cost
/* oxlint-disable typescript/no-non-null-assertion */

import { isProblem, type Problem, problem } from "../problem.ts";

export interface Summary {
  /** Samples with an answer. */
  readonly count: number;
  /** Samples without: outside the domain of a formula. */
  readonly faults: number;
  readonly mean: number;
  readonly deviation: number;
  readonly smallest: number;
  readonly largest: number;
}

export function summarise(samples: Float64Array): Summary {
  let count = 0;
  let sum = 0;
  let smallest = Number.POSITIVE_INFINITY;
  let largest = Number.NEGATIVE_INFINITY;
  for (const value of samples) {
    if (!Number.isFinite(value)) continue;
    count++;
    sum += value;
    if (value < smallest) smallest = value;
    if (value > largest) largest = value;
  }
  const mean = sum / count;
  let squares = 0;
  for (const value of samples) if (Number.isFinite(value)) squares += (value - mean) * (value - mean);
  return {
    count,
    faults: samples.length - count,
    mean,
    deviation: count > 1 ? Math.sqrt(squares / (count - 1)) : Number.NaN,
    smallest,
    largest,
  };
}

/** The samples with an answer, in an array of their own. */
export const finiteSamples = (samples: Float64Array): Float64Array => samples.filter(Number.isFinite);

/** A sample without an answer has no place in an order; neither has a probability beyond 0 and 1. */
function orderFault(own: Float64Array, probabilities: readonly number[]): Problem | undefined {
  const odd = probabilities.find((p) => !(p >= 0 && p <= 1));
  if (odd !== undefined)
    return problem({ code: "probability", what: "probability", got: String(odd), must: "be from 0 to 1" });
  if (own.every(Number.isFinite)) return undefined;
  const faults = own.length - finiteSamples(own).length;
  return problem({
    code: "samples-without-answer",
    what: "samples",
    got: `${faults} of ${own.length} without an answer`,
    must: "all have an answer before they are put in order",
    hint: "leave them out and say how many there were",
  });
}

/**
 * Quantiles for probabilities from 0 to 1, interpolated between the two nearest order statistics:
 * 0 is the smallest sample, 1 the largest. `own` is reordered; NaN when it is empty.
 */
export function quantiles(own: Float64Array, probabilities: readonly number[]): readonly number[] | Problem {
  const fault = orderFault(own, probabilities);
  if (fault) return fault;
  const last = own.length - 1;
  const places = probabilities.map((p) => p * last);
  const wanted = [...new Set(places.map(Math.floor))].toSorted((a, b) => a - b);
  if (last >= 0) selectAll(own, wanted, 0, last);
  return places.map((place) => {
    const k = Math.floor(place);
    const low = own[k] ?? Number.NaN;
    if (place === k) return low;
    // the next larger sample stands before the next place that was selected
    const bound = wanted.find((other) => other > k) ?? last;
    return low + (place - k) * (smallestOf(own, k + 1, bound) - low);
  });
}

/** The middle one first, so that those on either side are looked for among the samples on their side. */
function selectAll(values: Float64Array, wanted: readonly number[], low: number, high: number): void {
  const middle = wanted.length >> 1;
  const k = wanted[middle];
  if (k === undefined) return;
  select(values, k, low, high);
  selectAll(values, wanted.slice(0, middle), low, k - 1);
  selectAll(values, wanted.slice(middle + 1), k + 1, high);
}

function smallestOf(values: Float64Array, first: number, last: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = first; i <= last; i++) {
    const value = values[i] ?? least;
    if (value < least) least = value;
  }
  return least;
}

/** Puts the k-th smallest of values[left..right] at k, no larger before it and no smaller behind. */
export function select(values: Float64Array, k: number, left = 0, right = values.length - 1): void {
  let low = left;
  let high = right;
  while (high > low) {
    if (high - low > 600) narrow(values, k, low, high);
    const split = partition(values, k, low, high);
    if (split <= k) low = split + 1;
    if (k <= split) high = split - 1;
  }
}

/** A sample around k, small against the rest, brings a value near the wanted one to k first. */
function narrow(values: Float64Array, k: number, low: number, high: number): void {
  const n = high - low + 1;
  const m = k - low + 1;
  const size = 0.5 * Math.exp((2 * Math.log(n)) / 3);
  const margin = 0.5 * Math.sqrt((Math.log(n) * size * (n - size)) / n) * (m < n / 2 ? -1 : 1);
  const from = Math.max(low, Math.floor(k - (m * size) / n + margin));
  const to = Math.min(high, Math.floor(k + ((n - m) * size) / n + margin));
  select(values, k, from, to);
}

/** Splits low..high by the value now at k; gives the place where that value ends up. */
function partition(values: Float64Array, k: number, low: number, high: number): number {
  const pivot = values[k]!;
  swap(values, low, k);
  if (values[high]! > pivot) swap(values, low, high);
  let i = low;
  let j = high;
  while (i < j) {
    swap(values, i, j);
    i++;
    j--;
    while (values[i]! < pivot) i++;
    while (values[j]! > pivot) j--;
  }
  if (values[low] === pivot) swap(values, low, j);
  else swap(values, ++j, high);
  return j;
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i]!;
  values[i] = values[j]!;
  values[j] = kept;
}

/** The interval with as much probability below it as above it. `own` is reordered. */
export function symmetricInterval(
  own: Float64Array,
  probability: number,
): readonly [number, number] | Problem {
  const found = quantiles(own, [(1 - probability) / 2, (1 + probability) / 2]);
  if (isProblem(found)) return found;
  const [low = Number.NaN, high = Number.NaN] = found;
  return [low, high];
}

/** JCGM 101:2008 7.7.3 (from memory): the narrowest that holds the share p of the samples. Sorts `own`. */
export function shortestInterval(
  own: Float64Array,
  probability: number,
): readonly [number, number] | Problem {
  const fault = orderFault(own, [probability]);
  if (fault) return fault;
  own.sort();
  const q = Math.min(Math.floor(probability * own.length + 0.5), own.length - 1);
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let r = 0; r + q < own.length; r++) {
    const width = (own[r + q] ?? 0) - (own[r] ?? 0);
    if (width < least) {
      least = width;
      best = r;
    }
  }
  return [own[best] ?? Number.NaN, own[best + q] ?? Number.NaN];
}
