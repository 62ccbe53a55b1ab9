// The spread of a typed value in another unit. Both ends of limits convert, and inward: the lower one is rounded
// up and the upper one down, so that nothing passes that did not before (idea of ISO 370, from memory).
import { withUnit } from "./format.ts";
import { inTarget, keptDigits } from "./kept-digits.ts";
import { add, compare, fromDecimal, power, type Rational, rational } from "./rational.ts";
import type { Quantity } from "./typed.ts";
import type { Unit } from "./unit.ts";

export function spreadIn(
  { spread, step }: Pick<Quantity, "spread" | "step">,
  target: Unit,
): string | undefined {
  if (!spread) return undefined;
  if (spread.form === "limits") {
    const end = (si: Rational, inward: 1 | -1): string =>
      withUnit(roundedInward(inTarget(si, target), target, { step, inward }), target);
    return `${end(spread.lower.exact, 1)} to ${end(spread.upper.exact, -1)}`;
  }
  const { offset: _reading, ...scale } = target; // a half-width is a difference
  const width = (of: Quantity): string =>
    withUnit(keptDigits(inTarget(of.exact, scale), scale, step), target);
  return spread.form === "plusMinus"
    ? `± ${width(spread.halfWidth)}`
    : `standard uncertainty ${width(spread.u)}`;
}

function roundedInward(
  value: Rational,
  target: Unit,
  { step, inward }: { readonly step: Rational | undefined; readonly inward: 1 | -1 },
): string {
  const text = keptDigits(value, target, step);
  const shown = fromDecimal(text);
  if (!shown || compare(shown, value) * inward >= 0) return text;
  const [mantissa = "", exponent = "0"] = text.split("e");
  const places = mantissa.split(".")[1]?.length ?? 0;
  const last = power(rational(10), Number.parseInt(exponent, 10) - places);
  return keptDigits(add(shown, inward === 1 ? last : { ...last, n: -last.n }), target, step);
}
