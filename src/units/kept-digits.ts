// How many digits a converted value is shown with: 25.012 mm is 0.98472 in and never 25010 um.
import { dimensions, sameDimension } from "./dimension.ts";
import { divide, type Rational, subtract, toDecimal, toNumber } from "./rational.ts";
import type { Unit } from "./unit.ts";

export const inTarget = (si: Rational, { factor, offset }: Unit): Rational =>
  divide(offset ? subtract(si, offset) : si, factor);

const usual = 4;
const most = 15;

/** At least four significant digits, and for a length down to its last typed place (`step`, in SI). */
export function keptDigits(value: Rational, target: Unit, step: Rational | undefined): string {
  if (!step || value.n === 0n || !sameDimension(target.dimension, dimensions.length))
    return toDecimal(value, usual);
  const place = (r: Rational): number => Math.floor(Math.log10(Math.abs(toNumber(r))) + 1e-9);
  const digits = place(value) - place(divide(step, target.factor)) + 1;
  return toDecimal(value, Math.min(most, Math.max(usual, digits)));
}
