// How level is the upper half, and is it twisted? A plane through the gaps, and what it leaves over.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cellNumber, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { planeFit } from "../sources.ts";

/** All in m. */
export interface Station {
  readonly x: number;
  readonly y: number;
  readonly gap: number;
}

export interface Plane {
  /** Slopes of the gap, m per m. */
  readonly tiltX: number;
  readonly tiltY: number;
  /** Reading less plane, in the order of the stations. */
  readonly residuals: readonly number[];
}

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/** Stations this much nearer to one line than long fix no plane; the share is of their spread. */
const narrowest = 1e-6;

/**
 * Least squares about the mean point, the second direction made square to the first (Gram and
 * Schmidt), which keeps the digits that the plain normal equations would lose.
 */
export function fitPlane(stations: readonly Station[]): Plane | Problem {
  if (stations.length < 3)
    return problem({
      code: "too-few",
      what: "stations",
      got: String(stations.length),
      must: "be three or more",
      why: "three points fix a plane, four or more show twist",
    });
  const [cx, cy, cz] = [
    mean(stations.map((s) => s.x)),
    mean(stations.map((s) => s.y)),
    mean(stations.map((s) => s.gap)),
  ];
  const at = stations.map((s) => ({ x: s.x - cx, y: s.y - cy, z: s.gap - cz }));
  const sum = (of: (p: { x: number; y: number; z: number }) => number) =>
    at.reduce((total, p) => total + of(p), 0);
  const swap = sum((p) => p.x * p.x) < sum((p) => p.y * p.y); // the longer direction first
  const first = (p: { x: number; y: number }) => (swap ? p.y : p.x);
  const second = (p: { x: number; y: number }) => (swap ? p.x : p.y);
  const long = sum((p) => first(p) ** 2);
  const lean = long > 0 ? sum((p) => first(p) * second(p)) / long : 0;
  const square = (p: { x: number; y: number }) => second(p) - lean * first(p);
  const wide = sum((p) => square(p) ** 2);
  if (!(wide > long * narrowest ** 2))
    return problem({
      code: "on-one-line",
      what: "stations",
      got: long > 0 ? "all on one line" : "all at one point",
      must: "lie on both sides of the casing",
      why: "tilt across a line cannot be seen from it",
      hint: "read at least one station on the other side",
    });
  const across = sum((p) => square(p) * p.z) / wide;
  const along = sum((p) => first(p) * p.z) / long - across * lean;
  const [tiltX, tiltY] = swap ? [across, along] : [along, across];
  return { tiltX, tiltY, residuals: at.map((p) => p.z - tiltX * p.x - tiltY * p.y) };
}

function run(inputs: Insides): Insides | Problem {
  const stations = rowsOf(inputs, "stations").map((row) => ({
    x: cellNumber(row, "x") ?? Number.NaN,
    y: cellNumber(row, "y") ?? Number.NaN,
    gap: cellNumber(row, "gap") ?? Number.NaN,
  }));
  const plane = fitPlane(stations);
  if (isProblem(plane)) return plane;
  const { tiltX, tiltY, residuals } = plane;
  const rows = stations.map(({ x, y }, index) => ({ x, y, residual: residuals[index] ?? Number.NaN }));
  return { tiltX, tiltY, residuals: rows };
}

export const gapPlane = method({
  id: "gap-plane",
  question: "How far, how level and how twisted is the upper half?",
  inputs: {
    stations: {
      kind: "list",
      says: "gaps read round the split line at one step",
      of: {
        x: { kind: "length", symbol: "x", says: "place along the machine" },
        y: { kind: "length", symbol: "y", says: "place across it" },
        gap: { kind: "length", symbol: "z", says: "gap" },
      },
    },
  },
  procedure: {
    says: "the plane with the least sum of squared leftovers",
    source: planeFit,
    gives: {
      tiltX: { kind: "ratio", symbol: "b_x", says: "tilt along x" },
      tiltY: { kind: "ratio", symbol: "b_y", says: "tilt along y" },
    },
    run,
  },
  each: { residuals: { off: "abs(residual)" } },
  steps: {
    mean: "mean(stations.gap)",
    tilt: "sqrt(tiltX ^ 2 + tiltY ^ 2)",
    twist: "largest(residuals.off)",
  },
  between: { "residuals.off": { kind: "length", symbol: "|e|", says: "leftover without its sign" } },
  outputs: {
    mean: { kind: "length", symbol: "z_m", says: "mean gap" },
    tiltX: { kind: "ratio", symbol: "b_x", says: "tilt along x, gap per length" },
    tiltY: { kind: "ratio", symbol: "b_y", says: "tilt along y, gap per length" },
    tilt: { kind: "ratio", symbol: "b", says: "tilt in its steepest direction" },
    twist: { kind: "length", symbol: "e_max", says: "largest leftover from the plane" },
    residuals: {
      kind: "list",
      says: "reading less plane, station by station",
      of: {
        x: { kind: "length", symbol: "x", says: "place along the machine" },
        y: { kind: "length", symbol: "y", says: "place across it" },
        residual: { kind: "length", symbol: "e", says: "leftover" },
      },
    },
  },
  limits: [
    {
      that: "count(stations.gap) >= 4",
      else: "three stations lie on a plane whatever they read, so twist cannot show",
      hint: "read four or more, better six",
      warn: "spoils",
      spoils: ["twist", "residuals"],
    },
    {
      that: "tilt < 0.1",
      else: "that is no tilt of a casing",
      hint: "were gaps and places typed in the same unit?",
    },
  ],
  sources: { "*": planeFit },
  notes: [
    "a plane hides a stuck corner unless the leftover is watched too",
    "0.001 is 1 mm per m; the dowels allow clearance over engaged length (dowel-jam)",
  ],
  cautions: ["C2", "C3"],
});
