// The distributions a spread may have. Each turns uniform numbers into its own by its inverse
// distribution function, one uniform number a draw, so that any way of choosing the uniform
// numbers works unchanged. Standard uncertainties: JCGM 100:2008 4.3, from the densities.

import { type Problem, problem } from "../problem.ts";
import { toNormal } from "./normal.ts";
import { studentFromNormal } from "./student.ts";

export type Distribution =
  | {
      readonly type: "rectangular" | "triangular" | "arcsine";
      readonly lower: number;
      readonly upper: number;
    }
  /** `top`: width of the flat top over width of the base, 0 (triangle) to 1 (rectangle). */
  | { readonly type: "trapezoid"; readonly lower: number; readonly upper: number; readonly top: number }
  | { readonly type: "normal"; readonly mean: number; readonly deviation: number }
  /** mean + scale · t, with `degrees` of freedom; the scale is the standard uncertainty of the mean it came from. */
  | { readonly type: "t"; readonly mean: number; readonly scale: number; readonly degrees: number };

/** Limits the wrong way round, no width given, and the like. */
export function distributionFault(d: Distribution, name: string): Problem | undefined {
  const refuse = (got: string, must: string): Problem =>
    problem({ code: "spread", what: `spread of ${name}`, got, must });
  const numbers = Object.values(d).filter((value) => typeof value === "number");
  if (!numbers.every(Number.isFinite)) return refuse(numbers.join(", "), "be finite numbers");
  if ("lower" in d && d.lower > d.upper)
    return refuse(`limits ${d.lower} and ${d.upper}`, "have the lower limit first");
  if (d.type === "trapezoid" && (d.top < 0 || d.top > 1))
    return refuse(`a flat top of ${d.top}`, "be from 0 to 1");
  if (d.type === "normal" && d.deviation < 0) return refuse(`a deviation of ${d.deviation}`, "be 0 or more");
  if (d.type === "t" && d.scale < 0) return refuse(`a scale of ${d.scale}`, "be 0 or more");
  if (d.type === "t" && d.degrees < 1) return refuse(`${d.degrees} degrees of freedom`, "be 1 or more");
  return undefined;
}

/** The value a first-order sum starts from; the mean, where there is one. */
export function centreOf(d: Distribution): number {
  return "lower" in d ? (d.lower + d.upper) / 2 : d.mean;
}

/**
 * Standard uncertainty. For t it is the scale, as JCGM 100 carries it with its degrees of freedom;
 * the deviation of the drawn numbers is larger, √(ν/(ν - 2)) times, and has no value up to ν = 2.
 */
export function uncertaintyOf(d: Distribution): number {
  if (!("lower" in d)) return d.type === "normal" ? d.deviation : d.scale;
  const half = (d.upper - d.lower) / 2;
  if (d.type === "arcsine") return half / Math.SQRT2;
  const top = topOf(d);
  return half * Math.sqrt((1 + top * top) / 6);
}

function topOf(d: Distribution): number {
  if (d.type === "trapezoid") return d.top;
  return d.type === "rectangular" ? 1 : 0;
}

/** Turns the first n uniform numbers into numbers of the distribution, in place. */
export type Transform = (numbers: Float64Array, n: number) => void;

/** Made once per input: a t distribution has a table to compute. */
export function transformOf(d: Distribution): Transform {
  switch (d.type) {
    case "rectangular":
      return each((u) => d.lower + (d.upper - d.lower) * u);
    case "arcsine": {
      const [middle, half] = [(d.lower + d.upper) / 2, (d.upper - d.lower) / 2];
      return each((u) => middle - half * Math.cos(Math.PI * u));
    }
    case "normal":
      return normal(d.mean, d.deviation);
    case "t":
      return student(d.mean, d.scale, d.degrees);
    default:
      return trapezoid((d.lower + d.upper) / 2, (d.upper - d.lower) / 2, topOf(d));
  }
}

const each =
  (draw: (u: number) => number): Transform =>
  (numbers, n) => {
    for (let i = 0; i < n; i++) numbers[i] = draw(numbers[i] ?? 0.5);
  };

function normal(mean: number, deviation: number): Transform {
  return (numbers, n) => {
    toNormal(numbers, n);
    for (let i = 0; i < n; i++) numbers[i] = mean + deviation * (numbers[i] ?? 0);
  };
}

function student(mean: number, scale: number, degrees: number): Transform {
  const fromNormal = studentFromNormal(degrees);
  return (numbers, n) => {
    toNormal(numbers, n);
    for (let i = 0; i < n; i++) numbers[i] = mean + scale * fromNormal(numbers[i] ?? 0);
  };
}

/** A ramp holds (1 - β) / (2 (1 + β)) of the area on either side; between them the density is flat. */
function trapezoid(middle: number, half: number, top: number): Transform {
  const ramp = (1 - top) / (2 * (1 + top));
  const onRamp = (u: number): number => half * Math.sqrt(2 * u * (1 - top * top)) - half;
  return each((u) => {
    if (u < ramp) return middle + onRamp(u);
    if (u > 1 - ramp) return middle - onRamp(1 - u);
    return middle + (half * ((2 * u - 1) * (1 + top))) / 2;
  });
}
