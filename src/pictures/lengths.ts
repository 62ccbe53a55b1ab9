// Small lengths, gaps and slopes as the trade says them, in the page's own system of units.

import type { UnitChoice } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import { forReading } from "../report/figure-text.ts";
import { roundDecimal } from "../units/format.ts";
import { inUnit } from "../units/in-unit.ts";
import { toNumber } from "../units/rational.ts";
import { type Unit, unit, unitLabel } from "../units/unit.ts";
import { shortened } from "./words.ts";

export interface Small {
  readonly label: string;
  /** One of its units in SI. */
  readonly one: number;
  /** "-12.6" with a true minus, without the unit. */
  readonly number: (si: number) => string;
  readonly text: (si: number) => string;
  /** A number that was set, such as a limit: without zeros behind it. */
  readonly set: (si: number) => string;
}

const small = (label: string, one: number, number: (si: number) => string): Small => ({
  label,
  one,
  number,
  text: (si) => `${number(si)} ${label}`,
  set: (si) => shortened(number(si)),
});

const isInch = (shown: Unit): boolean => /^(in|thou|ft)$/.test(shown.text);

const known = (text: string): Unit => {
  const found = unit(text, "length");
  if (isProblem(found)) throw new Error(`${text} is not in the unit list`);
  return found;
};

export const micrometre = known("um");

/** Zero has no sign, however small the number behind it. */
const fixed = (value: number, decimals: number): string =>
  forReading(roundDecimal(value, { decimals }).replace(/^-(?=0\.?0*$)/, ""));

/** Micrometres to a tenth, or thou to a hundredth where the page is in inches. */
export function smallLength(unitOf: UnitChoice): Small {
  const inch = isInch(unitOf("length"));
  const shown = inch ? known("thou") : micrometre;
  return small(unitLabel(shown), toNumber(shown.factor), (si) => fixed(inUnit(si, shown), inch ? 2 : 1));
}

/** Gaps to a hundredth of a millimetre, as feelers are read. */
export function gapLength(unitOf: UnitChoice): Small {
  const inch = isInch(unitOf("length"));
  const shown = known(inch ? "in" : "mm");
  return small(unitLabel(shown), toNumber(shown.factor), (si) => fixed(inUnit(si, shown), inch ? 4 : 2));
}

/** A slope of 0.001 is 1 mm per m, and 1 thou per inch. */
export function slope(unitOf: UnitChoice): Small {
  return small(isInch(unitOf("length")) ? "thou/in" : "mm/m", 0.001, (si) => fixed(si * 1000, 2));
}

/** "+0.53": for values whose way counts. */
export const signed = (words: string): string =>
  /^[−0]/.test(words) && !/^0\.0*[1-9]/.test(words) ? words : `+${words}`;
