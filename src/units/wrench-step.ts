// The number a click wrench can really be set to, and how far that is from what was wanted.
import { roundDecimal, withUnit } from "./format.ts";
import type { Quantity } from "./quantity.ts";
import { divide, multiply, rational, subtract, toDecimal, toNumber } from "./rational.ts";

/** "set 16 N·m, 1.2 % high" */
export function onWrenchStep(wanted: Quantity, step: Quantity): string {
  if (step.exact.n <= 0n) return "the step of a wrench is a torque above zero";
  const steps = Math.round(toNumber(divide(wanted.exact, step.exact)));
  if (steps <= 0 || wanted.exact.n <= 0n) return "below the first step of this wrench";
  const set = multiply(rational(steps), step.exact);
  const inUnit = divide(set, step.unit.factor);
  const off = toNumber(divide(subtract(set, wanted.exact), wanted.exact)) * 100;
  const size = Math.abs(off);
  const words =
    off === 0
      ? "exact"
      : `${size < 0.05 ? "under 0.1" : roundDecimal(size, { decimals: 1 })} % ${off > 0 ? "high" : "low"}`;
  return `set ${withUnit(trimmed(toDecimal(inUnit, 6)), step.unit, true)}, ${words}`;
}

const trimmed = (text: string): string => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);
