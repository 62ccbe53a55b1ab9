// The rule behind a conversion, and what a unit question is answered with.
import { isProblem } from "../problem.ts";
import { convertTo } from "./convert.ts";
import { inGroups } from "./decimal.ts";
import { type Dimension, dimensions, sameDimension } from "./dimension.ts";
import { kinds } from "./kind.ts";
import { exactDecimal, type Rational, toDecimal } from "./rational.ts";
import type { Quantity } from "./typed.ts";
import { type Unit, unit } from "./unit.ts";

export { wouldMean } from "./would-mean.ts";

/** "1 lbf.in = 0.112 984 829 027 616 7 N.m (exact)" */
export function rule(u: Unit): string {
  const si = siText(u) === "1" ? "" : ` ${siText(u)}`;
  if (u.offset) return readingRule(u);
  const exact = exactDecimal(u.factor, 20);
  if (exact !== undefined) return `1 ${u.text} = ${inGroups(exact, " ")}${si} (exact)`;
  return `1 ${u.text} = ${inGroups(toDecimal(u.factor, 16), " ")}${si} (rounded; exactly ${fractionText(u.factor)}${si})`;
}

/** Written as the definitions print it: degC adds 273.15, degF adds 459.67 and divides by 1.8. */
const readingRule = (u: Unit): string =>
  u.text === "degC" ? "T/K = t/degC + 273.15 (exact)" : `T/K = (t/${u.text} + 459.67)/1.8 (exact)`;

function fractionText({ n, d, pi }: Rational): string {
  const digits = (whole: bigint): string => inGroups(whole.toString(), " ");
  const power = Math.abs(pi) === 1 ? "pi" : `pi^${Math.abs(pi)}`;
  const top = pi > 0 ? (n === 1n ? power : `${digits(n)} ${power}`) : digits(n);
  const bottom = pi < 0 ? (d === 1n ? power : `(${digits(d)} ${power})`) : digits(d);
  return d === 1n && pi >= 0 ? top : `${top}/${bottom}`;
}

const axes = [
  ["mass", "kg"],
  ["length", "m"],
  ["time", "s"],
  ["temperature", "K"],
] as const satisfies readonly (readonly [keyof Dimension, string])[];

/** The kind's SI unit, or one put together from the base units for a combination without a name. */
function siText(u: Unit): string {
  const [kind] = u.kinds;
  if (kind !== undefined) return kinds[kind].si;
  if (sameDimension(u.dimension, dimensions.ratio)) return "1";
  const side = (sign: 1 | -1): string =>
    axes
      .filter(([axis]) => u.dimension[axis] * sign > 0)
      .map(([axis, name]) => name + (Math.abs(u.dimension[axis]) === 1 ? "" : Math.abs(u.dimension[axis])))
      .join(".");
  const [top, bottom] = [side(1), side(-1)];
  return `${top === "" ? "1" : top}${bottom === "" ? "" : `/${bottom.includes(".") ? `(${bottom})` : bottom}`}`;
}

export interface Answer {
  readonly unit: Unit;
  readonly value: number;
  /** "15.82 N.m" */
  readonly text: string;
  /** As of a Converted. */
  readonly spread?: string;
}

const size = 1e-3; // m; ours: above it a length is a size, below it a deviation, a clearance or a thickness

/** The quantity in every usual unit of its kind but its own; a size is not given in um or thou. */
export function usualAnswers(q: Quantity): readonly Answer[] {
  if (q.kind === undefined) return [];
  const isSize = q.kind === "length" && Math.abs(q.si) >= size;
  return kinds[q.kind].usual.flatMap((name) => {
    const target = unit(name, q.kind);
    if (isProblem(target) || target.text === q.unit.text) return [];
    if (isSize && (target.text === "um" || target.text === "thou")) return [];
    const { exact: _, ...answer } = convertTo(q, target);
    return [answer];
  });
}
