// Quantiles of Student's t. With t = √ν sinh(y), equal areas under the normal and the t density
// give a differential equation for y as a function of the normal quantile z,
//
//   dy/dz = φ(z) cosh(y)^ν √π Γ(ν/2) / Γ((ν+1)/2),
//
// whose solution is smooth: solved once per ν on a grid, then read by cubic interpolation. So a
// draw costs one normal quantile and a few multiplications. It is solved from far out inwards: an
// error there is an error of a tiny probability, and stays one. Own derivation from the densities.

import { normalQuantile } from "./normal.ts";

/** Γ(x + 1/2) / Γ(x): asymptotic series at x + 40, brought back by the recurrence of Γ. */
function gammaRatio(x: number): number {
  const shift = 40;
  let back = 1;
  for (let i = 0; i < shift; i++) back *= (x + i) / (x + i + 0.5);
  const u = 1 / (x + shift);
  const series =
    1 +
    u *
      (-1 / 8 +
        u * (1 / 128 + u * (5 / 1024 + u * (-21 / 32768 + u * (-399 / 262144 + (u * 869) / 4194304)))));
  return back * Math.sqrt(x + shift) * series;
}

/** Beyond the largest |z| of any draw: 1 - 2^-53 has z = 8.2. */
const largestScore = 8.5;
const perUnit = 128;
/** Where the solution starts; the probability beyond is 2e-33. */
const start = 12;

const logCosh = (y: number): number => Math.log1p(Math.sinh(y) ** 2) / 2;

/** y at z = 12, good to a per cent of that probability: both tails by their leading term. */
function startingPoint(degrees: number, ratio: number): number {
  const logTail = -(start * start) / 2 - Math.log(start * Math.sqrt(2 * Math.PI));
  const logArea = (y: number): number =>
    Math.log(ratio / Math.sqrt(Math.PI)) - degrees * logCosh(y) - Math.log(degrees * Math.tanh(y));
  let [low, high] = [0, 300];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (logArea(middle) > logTail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

interface Grid {
  readonly y: Float64Array;
  /** dy/dz times the width of a step. */
  readonly slope: Float64Array;
}

/** Classic Runge-Kutta, two steps from node to node. */
function solve(degrees: number): Grid {
  const ratio = gammaRatio(degrees / 2);
  const front = -Math.log(Math.SQRT2 * ratio);
  // in logarithms: φ is tiny where cosh^ν is huge
  const slopeAt = (z: number, y: number): number => Math.exp(front - (z * z) / 2 + degrees * logCosh(y));
  const nodes = Math.ceil(largestScore * perUnit) + 2;
  const grid = { y: new Float64Array(nodes), slope: new Float64Array(nodes) };
  const h = -1 / (2 * perUnit);
  let y = startingPoint(degrees, ratio);
  for (let i = start * perUnit; i >= 0; i--) {
    if (i === 0) y = 0;
    if (i < nodes) {
      grid.y[i] = y;
      grid.slope[i] = slopeAt(i / perUnit, y) / perUnit;
    }
    for (let half = 0; half < 2; half++) {
      const z = i / perUnit + half * h;
      const k1 = slopeAt(z, y);
      const k2 = slopeAt(z + h / 2, y + (h / 2) * k1);
      const k3 = slopeAt(z + h / 2, y + (h / 2) * k2);
      const k4 = slopeAt(z + h, y + h * k3);
      y += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    }
  }
  return grid;
}

/** The t value with the same probability below it as the normal score z. */
export function studentFromNormal(degrees: number): (z: number) => number {
  const { y, slope } = solve(degrees);
  const scale = Math.sqrt(degrees);
  return (z) => {
    const size = Math.min(Math.abs(z), largestScore) * perUnit;
    const i = Math.floor(size);
    const f = size - i;
    const [y0 = 0, y1 = 0, d0 = 0, d1 = 0] = [y[i], y[i + 1], slope[i], slope[i + 1]];
    const rise = y1 - y0;
    const at = y0 + f * (d0 + f * (3 * rise - 2 * d0 - d1 + f * (d0 + d1 - 2 * rise)));
    const t = scale * Math.sinh(at);
    return z < 0 ? -t : t;
  };
}

/** For one value, as a coverage factor: studentQuantile(0.975, 9) covers 95 %, both sides. */
export function studentQuantile(p: number, degrees: number): number {
  return studentFromNormal(degrees)(normalQuantile(p));
}
