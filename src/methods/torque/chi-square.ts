// Lower quantile of the chi-square distribution, from the regularised incomplete gamma function: series
// below its mean, continued fraction above, then a bracketed search. Good to about 1e-13, which the tests
// compare with published values and with numeric integration.

/** ln Γ(a) for a > 0: Stirling's series, after the recurrence has carried a beyond 15. */
export function lnGamma(a: number): number {
  let [x, shift] = [a, 0];
  while (x < 15) {
    shift -= Math.log(x);
    x += 1;
  }
  const r = 1 / (x * x);
  const series = (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r / 1188)))) / x;
  return shift + (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series;
}

/** P(a, x), the share of a gamma variate of shape a below x. */
export function lowerGamma(a: number, x: number): number {
  if (x <= 0) return 0;
  const scale = Math.exp(a * Math.log(x) - x - lnGamma(a));
  return x < a + 1 ? scale * series(a, x) : 1 - scale * fraction(a, x);
}

function series(a: number, x: number): number {
  let [term, sum] = [1 / a, 1 / a];
  for (let n = 1; n < 10_000 && term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Lentz's method on the continued fraction of Q(a, x). */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = Number.MAX_VALUE;
  let d = 1 / b;
  let product = d;
  for (let n = 1; n < 10_000; n += 1) {
    const step = -n * (n - a);
    b += 2;
    d = 1 / (b + step * d);
    c = b + step / c;
    product *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return product;
}

/** The value below which a chi-square variate lies with this probability; 0 < p < 1, freedom > 0. */
export function chiSquareQuantile(p: number, freedom: number): number {
  let [low, high] = [0, freedom + 10];
  while (lowerGamma(freedom / 2, high / 2) < p) high *= 2;
  for (let n = 0; n < 200 && high - low > 1e-15 * high; n += 1) {
    const middle = (low + high) / 2;
    if (lowerGamma(freedom / 2, middle / 2) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Half width, in standard deviations, that holds this share of a normal population. */
export const normalHalfWidth = (coverage: number): number => Math.sqrt(chiSquareQuantile(coverage, 1));
