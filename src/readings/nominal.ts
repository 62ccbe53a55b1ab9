// A nominal size of the page, for the front digits of a column in which nothing has been read yet.
import type { ReadingItem } from "../document/item.ts";
import type { Line } from "../engine/line.ts";
import { isProblem } from "../problem.ts";
import { inUnit } from "../units/in-unit.ts";
import { oneValue } from "../units/quantity.ts";
import { unit } from "../units/unit.ts";
import { type Front, frontOfNominal } from "./front-digits.ts";

export function frontFromPage(
  lines: readonly Line[],
  item: ReadingItem,
  column: string,
  unitText: string | undefined,
): Front | undefined {
  const kind = item.columns[column];
  const shown = unitText === undefined ? undefined : unit(unitText);
  if (kind === undefined || kind === "tag" || kind === "text" || !shown || isProblem(shown)) return undefined;
  const nominals = lines.flatMap(({ item: given, value }) => {
    const isOne =
      given.kind === "given" &&
      /\bnominal\b/i.test(given.says ?? given.name) &&
      !isProblem(value) &&
      value.type === "quantity" &&
      value.kind === kind;
    return isOne && !isProblem(value) && value.type === "quantity" ? [value.si] : [];
  });
  const [nominal] = nominals;
  const stated = item.uncertainty?.of[column];
  const smallest = stated === undefined ? undefined : oneValue(stated, kind);
  if (nominal === undefined || nominals.length > 1 || smallest === undefined || isProblem(smallest))
    return undefined;
  const decimals = decimalsRead(inUnit(smallest.si, shown));
  return decimals === undefined ? undefined : frontOfNominal(inUnit(nominal, shown), decimals);
}

/**
 * Decimals of a gauge with this expanded uncertainty, where only one number of them is likely. A step of the
 * scale spreads by step/√12 (JCGM 100:2008, F.2.2.1, from memory), twice that for k = 2, so the step is at most
 * √3 times the uncertainty; finer than a third of it is seldom read (common practice, no source). 3 um is read to
 * the third decimal of a millimetre; 0.1 thou may be the fourth or the fifth of an inch: the first reading says.
 */
export function decimalsRead(uncertainty: number): number | undefined {
  const [least, most] = [uncertainty / 3, uncertainty * Math.sqrt(3)];
  const places = [0, 1, 2, 3, 4, 5, 6].filter((n) =>
    [1, 2, 5].some((digit) => digit * 10 ** -n >= least * (1 - 1e-9) && digit * 10 ** -n <= most),
  );
  return places.length === 1 ? places[0] : undefined;
}
