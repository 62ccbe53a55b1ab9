// What is read off a column of samples: mean, deviation, quantiles, coverage intervals, histogram.
// Quantiles by selection (R. W. Floyd and R. L. Rivest, "Algorithm 489: SELECT", Communications of
// the ACM 18(3), 1975), not by sorting: the same numbers in a quarter of the time.

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

/**
 * Quantiles for probabilities from 0 to 1, interpolated between the two nearest order statistics:
 * 0 is the smallest sample, 1 the largest. `own` is reordered; NaN when it is empty.
 */
export function quantiles(own: Float64Array, probabilities: readonly number[]): readonly number[] {
  const found = probabilities.map(() => Number.NaN);
  if (own.length === 0) return found;
  const order = probabilities
    .map((p, i) => ({ at: p * (own.length - 1), i }))
    .toSorted((a, b) => a.at - b.at);
  let left = 0;
  for (const { at, i } of order) {
    const k = Math.min(Math.floor(at), own.length - 1);
    select(own, k, left, own.length - 1);
    const low = own[k] ?? Number.NaN;
    found[i] = at > k ? low + (at - k) * (smallestFrom(own, k + 1) - low) : low;
    left = k;
  }
  return found;
}

function smallestFrom(values: Float64Array, start: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = start; i < values.length; i++) least = Math.min(least, values[i] ?? least);
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
  const pivot = values[k] ?? 0;
  swap(values, low, k);
  if ((values[high] ?? 0) > pivot) swap(values, low, high);
  let i = low;
  let j = high;
  while (i < j) {
    swap(values, i, j);
    i++;
    j--;
    while ((values[i] ?? pivot) < pivot) i++;
    while ((values[j] ?? pivot) > pivot) j--;
  }
  if (values[low] === pivot) swap(values, low, j);
  else swap(values, ++j, high);
  return j;
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i] ?? 0;
  values[i] = values[j] ?? 0;
  values[j] = kept;
}

/** The interval with as much probability below it as above it. `own` is reordered. */
export function symmetricInterval(own: Float64Array, probability: number): readonly [number, number] {
  const [low = Number.NaN, high = Number.NaN] = quantiles(own, [
    (1 - probability) / 2,
    (1 + probability) / 2,
  ]);
  return [low, high];
}

/** JCGM 101:2008 7.7.3 (from memory): the narrowest that holds the share p of the samples. Sorts `own`. */
export function shortestInterval(own: Float64Array, probability: number): readonly [number, number] {
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

export interface Histogram {
  readonly low: number;
  readonly high: number;
  readonly counts: Uint32Array;
  /** Samples below and above the limits of the picture, and those without an answer. */
  readonly below: number;
  readonly above: number;
  readonly faults: number;
}

/** Equal bins from low to high; a sample on an inner edge belongs to the bin above, `high` to the last. */
export function histogram(samples: Float64Array, bins: number, low: number, high: number): Histogram {
  const counts = new Uint32Array(bins);
  const perUnit = bins / (high - low);
  let [below, above, faults] = [0, 0, 0];
  for (const value of samples) {
    if (!Number.isFinite(value)) faults++;
    else if (value < low) below++;
    else if (value > high) above++;
    else {
      const bin = high > low ? Math.min(bins - 1, Math.floor((value - low) * perUnit)) : 0;
      counts[bin] = (counts[bin] ?? 0) + 1;
    }
  }
  return { low, high, counts, below, above, faults };
}
