// A second reckoning of the unified limits, in whole numbers of 1e-40 in: no double, no function of the library.
const one = 10n ** 40n;

/** Largest whole r with r^k <= n. */
function root(n: bigint, k: bigint): bigint {
  let [low, high] = [0n, 1n];
  while (high ** k <= n) high *= 2n;
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle ** k <= n) low = middle;
    else high = middle;
  }
  return low;
}

const squareRoot = (x: bigint): bigint => root(x * one, 2n);
const cubeRoot = (x: bigint): bigint => root(x * one * one, 3n);

/** Whole units of 10^-places from a scaled number, half upwards. */
const rounded = (x: bigint, places: number): bigint => {
  const unit = one / 10n ** BigInt(places);
  return (2n * x + unit) / (2n * unit);
};

export interface ExactLimits {
  readonly majorMax?: bigint;
  readonly majorMin?: bigint;
  readonly pitchMax: bigint;
  readonly pitchMin: bigint;
  readonly minorMax?: bigint;
  readonly minorMin?: bigint;
}

const shares = {
  "1A": [3n, 2n],
  "2A": [1n, 1n],
  "3A": [3n, 4n],
  "1B": [39n, 20n],
  "2B": [13n, 10n],
  "3B": [39n, 40n],
} as const;
export type ClassName = keyof typeof shares;
export const classNames = ["1A", "2A", "3A", "1B", "2B", "3B"] as const;

/** Limits in ten-thousandths of an inch. d in ten-thousandths, twice the threads per inch (so that 4-1/2 is whole). */
export function exactLimits(
  d4: number,
  twiceThreads: number,
  name: ClassName,
  byDiameter: boolean,
): ExactLimits {
  const d = (BigInt(d4) * one) / 10_000n;
  const p = (2n * one) / BigInt(twiceThreads);
  const squareOfCubeRoot = cubeRoot((p * p) / one);
  const engagement = byDiameter ? d : 9n * p;
  const millionths =
    rounded((15n * cubeRoot(d)) / 10_000n, 6) +
    rounded((15n * squareRoot(engagement)) / 10_000n, 6) +
    rounded((15n * squareOfCubeRoot) / 1000n, 6);
  const tolerance = (millionths * one) / 1_000_000n;
  const [top, bottom] = shares[name];
  const pitchTolerance = rounded((tolerance * top) / bottom, 4);
  const pitch = rounded(d - (649_519n * p) / 1_000_000n, 4);
  if (name.endsWith("A")) {
    const allowance = name === "3A" ? 0n : rounded((tolerance * 3n) / 10n, 4);
    const major = BigInt(d4) - allowance;
    return {
      majorMax: major,
      majorMin: major - rounded(((name === "1A" ? 9n : 6n) * squareOfCubeRoot) / 100n, 4),
      pitchMax: pitch - allowance,
      pitchMin: pitch - allowance - pitchTolerance,
    };
  }
  const minor = rounded(d - (1_082_532n * p) / 1_000_000n, 4);
  const minorTop = minor + rounded(minorTolerance(d, p, name), 4);
  const thousandth = (x: bigint) => (d4 >= 1380 ? ((x + 5n) / 10n) * 10n : x);
  return {
    pitchMax: pitch + pitchTolerance,
    pitchMin: pitch,
    minorMax: name === "3B" ? minorTop : thousandth(minorTop),
    minorMin: thousandth(minor),
  };
}

const lesser = (a: bigint, b: bigint) => (a < b ? a : b);
const greater = (a: bigint, b: bigint) => (a > b ? a : b);

function minorTolerance(d: bigint, p: bigint, name: ClassName): bigint {
  const bySize = lesser(
    (5n * cubeRoot((p * p) / one)) / 100n + (3n * p * one) / (100n * d) - (2n * one) / 1000n,
    (394n * p) / 1000n,
  );
  const thirteen = 13n * p <= one + 1_000_000n; // 13 threads per inch or finer
  if (name === "3B")
    return greater(bySize, thirteen ? (23n * p) / 100n - (15n * p * p) / (10n * one) : (12n * p) / 100n);
  const byPitch = 4n * p > one ? (15n * p) / 100n : p / 4n - (4n * p * p) / (10n * one);
  return 4n * d < one ? greater(bySize, byPitch) : byPitch;
}
