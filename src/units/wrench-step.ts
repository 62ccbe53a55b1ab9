// The number a click wrench can really be set to, and how far that is from what was wanted.
import { roundDecimal, withUnit } from "./format.ts";
import type { Quantity } from "./quantity.ts";
import { divide, multiply, type Rational, rational, subtract, toDecimal, toNumber } from "./rational.ts";

/** Per cent: the permissible deviation of a click wrench above 10 N.m in ISO 6789 (from memory). */
const bearable = 4;

/** "set 16 N·m, 1.2 % high"; where the step is too coarse, both settings beside the wanted torque. */
export function onWrenchStep(wanted: Quantity, step: Quantity): string {
  if (step.exact.n <= 0n) return "the step of a wrench is a torque above zero";
  const exactly = divide(wanted.exact, step.exact);
  const below = Math.floor(toNumber(exactly));
  if (below < 1 || wanted.exact.n <= 0n) return "below the first step of this wrench";
  const settings = [...new Set([below, Math.ceil(toNumber(exactly))])].map((steps) =>
    setting(wanted, step, multiply(rational(steps), step.exact)),
  );
  const [nearest] = settings.toSorted((a, b) => Math.abs(a.off) - Math.abs(b.off));
  if (nearest && Math.abs(nearest.off) <= bearable) return `set ${nearest.words}`;
  return `the step is too coarse: ${settings.map(({ words }) => words).join("; ")}`;
}

function setting(wanted: Quantity, { unit }: Quantity, set: Rational): { off: number; words: string } {
  const off = toNumber(divide(subtract(set, wanted.exact), wanted.exact)) * 100;
  const number = withUnit(trimmed(toDecimal(divide(set, unit.factor), 6)), unit, true);
  const size = Math.abs(off);
  const share = size < 0.05 ? "under 0.1" : roundDecimal(size, { decimals: 1 });
  return { off, words: `${number}, ${off === 0 ? "exact" : `${share} % ${off > 0 ? "high" : "low"}`}` };
}

const trimmed = (text: string): string => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);
