// A nominal size of the page, for the front digits of a column in which nothing has been read yet.
import type { ReadingItem } from "../../document/item.ts";
import { isProblem } from "../../problem.ts";
import { inUnit } from "../../units/in-unit.ts";
import { quantity } from "../../units/quantity.ts";
import { unit } from "../../units/unit.ts";
import type { SheetContext } from "../sheet-context.ts";
import { labelOf } from "../words.ts";
import { type Front, frontOfNominal } from "./front-digits.ts";

export function frontFromPage(
  context: SheetContext,
  item: ReadingItem,
  column: string,
  unitText: string | undefined,
): Front | undefined {
  const kind = item.columns[column];
  const shown = unitText === undefined ? undefined : unit(unitText);
  if (kind === undefined || kind === "tag" || kind === "text" || !shown || isProblem(shown)) return undefined;
  const nominals = context.live.cells().flatMap(({ item: given, value }) => {
    const isOne =
      given.kind === "given" &&
      /\bnominal\b/i.test(labelOf(given)) &&
      !isProblem(value) &&
      value.type === "quantity" &&
      value.kind === kind;
    return isOne && !isProblem(value) && value.type === "quantity" ? [value.si] : [];
  });
  const [nominal] = nominals;
  const stated = item.uncertainty?.of[column];
  const smallest = stated === undefined ? undefined : quantity(stated, kind);
  if (nominal === undefined || nominals.length > 1 || smallest === undefined || isProblem(smallest))
    return undefined;
  // A gauge is read finer than its uncertainty: 3 um and 10 um both mean the third decimal of a millimetre.
  const decimals = Math.floor(-Math.log10(inUnit(smallest.si, shown)) + 1e-9) + 1;
  return frontOfNominal(inUnit(nominal, shown), decimals);
}
