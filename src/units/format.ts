// Numbers for people: rounded once, half to even from the decimal text, never through toFixed or toPrecision.
import { digitsOf, inGroups, layOut, roundDigits } from "./decimal.ts";
import { inUnit } from "./in-unit.ts";
import { toNumber } from "./rational.ts";
import { type Unit, unitLabel } from "./unit.ts";

export interface Rounding {
  /** Significant digits; 4 when neither is given. */
  readonly significant?: number;
  /** Places after the point. */
  readonly decimals?: number;
  /** Thin spaces between groups of three, for the screen; files and exports go without. */
  readonly groups?: boolean;
  /** Decimal comma, for the screen. */
  readonly comma?: boolean;
}

const thinSpace = "\u2009";

/** "142.9", "0.3048", "1.170e-5": plain digits between 1e-4 and 1e9. A number that is not finite is "no answer". */
export function roundDecimal(value: number, how: Rounding = {}): string {
  if (!Number.isFinite(value)) return "no answer";
  const plain =
    how.decimals === undefined ? toSignificant(value, how.significant ?? 4) : toDecimals(value, how.decimals);
  const grouped = how.groups ? inGroups(plain, thinSpace) : plain;
  return how.comma ? grouped.replace(".", ",") : grouped;
}

function toSignificant(value: number, significant: number): string {
  return value === 0 ? "0" : layOut(roundDigits(digitsOf(value), significant));
}

function toDecimals(value: number, decimals: number): string {
  const typed = digitsOf(value);
  const rounded = roundDigits(typed, typed.exponent + 1 + decimals);
  const places = Math.max(rounded.exponent, 0) + 1 + decimals;
  const text = layOut(
    { ...rounded, digits: rounded.digits.padEnd(rounded.exponent + 1 + decimals, "0") },
    true,
  );
  // 0.00 from a value far below the last place carries too many zeros.
  return text.replace(/^-?0\.0+$/, (zeros) => zeros.replace("-", "").slice(0, places + 1));
}

const nothing = 1e-9; // m: less is rounding left over
const finest = 1e-7; // m: a shop reads no length finer than a tenth of a micrometre

/** Lengths keep the resolution of a gauge, 25.0024 mm and -8.2 um; everything else has four significant digits. */
function usualRounding(si: number, u: Unit): Rounding {
  const { length, mass, time, temperature } = u.dimension;
  if (length !== 1 || mass !== 0 || time !== 0 || temperature !== 0) return {};
  if (Math.abs(si) < 10 * finest && Math.abs(si) >= nothing) return { significant: 2 };
  return { decimals: Math.max(0, Math.floor(Math.log10(toNumber(u.factor) / finest) + 1e-9)) };
}

const withoutTrailingZeros = (number: string): string =>
  number.replace(/(\.\d*?)0+$/, "$1").replace(/\.$/, "");

/** "142.9 kN". `label` writes the unit for the screen, "24.86 N·m" and "90.00°", else in plain notation. */
export function formatIn(si: number, u: Unit, how: Rounding & { readonly label?: boolean } = {}): string {
  if (how.significant !== undefined || how.decimals !== undefined)
    return withUnit(roundDecimal(inUnit(si, u), how), u, how.label);
  const usual = usualRounding(si, u);
  const number = roundDecimal(inUnit(si, u), { ...how, ...usual });
  return withUnit(usual.decimals === undefined ? number : withoutTrailingZeros(number), u, how.label);
}

/** A space before the unit, none before degrees, minutes and seconds of angle (SP 811 7.2, read); a ratio has none. */
export function withUnit(number: string, u: Unit, label = false): string {
  if (u.text === "1") return number;
  if (!label) return `${number} ${u.text}`;
  const mark = unitLabel(u);
  return /^[°′″]$/.test(mark) ? number + mark : `${number} ${mark}`;
}
