// Numbers as text to be read: rounded once, by the unit layer, in the page's own units.
import type { OutputValue } from "../methods/field.ts";
import { formatShort, formatValue, type UnitChoice } from "../methods/solution.ts";
import { inGroups } from "../units/decimal.ts";
import { withUnit } from "../units/format.ts";
import type { Kind } from "../units/kind.ts";
import { raised } from "../units/raised.ts";
import type { Unit } from "../units/unit.ts";

/** Groups of three by thin spaces before the point; the digits are those of every other place. */
export function numberText(si: number, kind: Kind | undefined, shown: Unit): string {
  const [plain = ""] = formatValue(si, kind, shown).split(" ");
  const [whole = "", decimals] = plain.split(".");
  return forReading(inGroups(whole, "\u2009") + (decimals === undefined ? "" : `.${decimals}`));
}

/** A true minus sign, and powers of ten as they are written by hand. */
export const forReading = (text: string): string =>
  text
    .replace(/^-/, "−")
    .replace(
      /(\d)e([-+]?)(\d+)/,
      (_, digit: string, sign: string, power: string) =>
        `${digit}×10${raised(sign === "-" ? `-${power}` : power)}`,
    );

export const figureText = (si: number, kind: Kind | undefined, shown: Unit): string =>
  withUnit(numberText(si, kind, shown), shown, true);

/** Digits that tell something, leading zeros and the exponent aside. */
function digits(text: string): number {
  return text
    .replace(/[e×].*$/i, "")
    .replace(/^[-−]?0*\.?0*/, "")
    .replace(/\D/g, "").length;
}

/** A number that a person set: with the digits it has, as long as they are few. */
export function setText(si: number, kind: Kind | undefined, shown: Unit, few = 6): string {
  const short = forReading(formatShort(si, shown, true));
  return digits(short.split(" ")[0] ?? "") <= few ? short : figureText(si, kind, shown);
}

export function outputText(value: OutputValue, unitOf: UnitChoice, chosen?: Unit): string {
  switch (value.kind) {
    case "text":
      return value.text;
    case "yes/no":
      return value.yes ? "yes" : "no";
    case "list":
      return `${value.rows.length} rows`;
    default:
      return figureText(value.si, value.kind, chosen ?? unitOf(value.kind));
  }
}
