// Quantiles of the standard normal distribution: M. J. Wichura, "Algorithm AS 241: The percentage
// points of the normal distribution", Applied Statistics 37(3), 1988, 477-484, routine PPND16,
// about 1 part in 10^16. Coefficients second-hand; a test adds up their digits and compares with
// the check sums printed in the paper for that purpose (also second-hand).
// biome-ignore-all lint/correctness/noPrecisionLoss: digits as printed
/* oxlint-disable no-loss-of-precision */

/** For |q| up to 0.425, q = p - 1/2. */
function middle(q: number): number {
  const r = 0.180625 - q * q;
  let top = 2509.0809287301226727;
  top = top * r + 33430.575583588128105;
  top = top * r + 67265.770927008700853;
  top = top * r + 45921.953931549871457;
  top = top * r + 13731.693765509461125;
  top = top * r + 1971.5909503065514427;
  top = top * r + 133.14166789178437745;
  top = top * r + 3.387132872796366608;
  let bottom = 5226.495278852854561;
  bottom = bottom * r + 28729.085735721942674;
  bottom = bottom * r + 39307.89580009271061;
  bottom = bottom * r + 21213.794301586595867;
  bottom = bottom * r + 5394.1960214247511077;
  bottom = bottom * r + 687.1870074920579083;
  bottom = bottom * r + 42.313330701600911252;
  bottom = bottom * r + 1;
  return (q * top) / bottom;
}

/** For the smaller tail p from about 1.4e-11 to 0.075; s is the root of -ln p. */
function flank(s: number): number {
  const r = s - 1.6;
  let top = 7.7454501427834140764e-4;
  top = top * r + 0.0227238449892691845833;
  top = top * r + 0.24178072517745061177;
  top = top * r + 1.27045825245236838258;
  top = top * r + 3.64784832476320460504;
  top = top * r + 5.7694972214606914055;
  top = top * r + 4.6303378461565452959;
  top = top * r + 1.42343711074968357734;
  let bottom = 1.05075007164441684324e-9;
  bottom = bottom * r + 5.475938084995344946e-4;
  bottom = bottom * r + 0.0151986665636164571966;
  bottom = bottom * r + 0.14810397642748007459;
  bottom = bottom * r + 0.68976733498510000455;
  bottom = bottom * r + 1.6763848301838038494;
  bottom = bottom * r + 2.05319162663775882187;
  bottom = bottom * r + 1;
  return top / bottom;
}

/** Further out. */
function tail(s: number): number {
  const r = s - 5;
  let top = 2.01033439929228813265e-7;
  top = top * r + 2.71155556874348757815e-5;
  top = top * r + 0.0012426609473880784386;
  top = top * r + 0.026532189526576123093;
  top = top * r + 0.29656057182850489123;
  top = top * r + 1.7848265399172913358;
  top = top * r + 5.4637849111641143699;
  top = top * r + 6.6579046435011037772;
  let bottom = 2.04426310338993978564e-15;
  bottom = bottom * r + 1.4215117583164458887e-7;
  bottom = bottom * r + 1.8463183175100546818e-5;
  bottom = bottom * r + 7.868691311456132591e-4;
  bottom = bottom * r + 0.0148753612908506148525;
  bottom = bottom * r + 0.13692988092273580531;
  bottom = bottom * r + 0.59983220655588793769;
  bottom = bottom * r + 1;
  return top / bottom;
}

function outside(p: number): number {
  const s = Math.sqrt(-Math.log(p < 0.5 ? p : 1 - p));
  const size = s <= 5 ? flank(s) : tail(s);
  return p < 0.5 ? -size : size;
}

/** 0 and 1 give the infinities. */
export function normalQuantile(p: number): number {
  if (p === 0 || p === 1) return p === 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const q = p - 0.5;
  return q <= 0.425 && q >= -0.425 ? middle(q) : outside(p);
}

/** Turns the first n uniform numbers into standard normal ones, in place. */
export function toNormal(numbers: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    const p = numbers[i] ?? 0.5;
    const q = p - 0.5;
    numbers[i] = q <= 0.425 && q >= -0.425 ? middle(q) : outside(p);
  }
}
