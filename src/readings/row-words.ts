// What is said of single readings: where they stand, what replaced them and why.
import { isBare } from "../document/decimal-mark.ts";
import type { ReadingItem } from "../document/item.ts";
import { inWords, placeWords } from "../document/place-words.ts";
import type { TableValue } from "../engine/line.ts";
import { isNumeric } from "../engine/reading.ts";
import { isProblem } from "../problem.ts";
import { unit, unitLabel } from "../units/unit.ts";
import { placeOfRow, textAt } from "./places.ts";

/** Column heads as d / mm. */
export function headWords(name: string, unitText: string | undefined): string {
  const found = unitText === undefined ? undefined : unit(unitText);
  const label = found && !isProblem(found) ? unitLabel(found) : (unitText ?? "");
  return label === "" ? inWords(name) : `${inWords(name)} / ${label}`;
}

export const rowWords = (item: ReadingItem, table: TableValue, row: number): string =>
  placeWords(item, placeOfRow(item, table, row));

/** The later row that took the place of a corrected one. */
export function replacedBy(table: TableValue, row: number): number | undefined {
  const same = (other: number) =>
    table.key.every((key) => textAt(table, key, other) === textAt(table, key, row));
  for (let other = row + 1; other < table.rows; other += 1)
    if (table.states[other] !== "set aside" && same(other)) return other;
  return undefined;
}

/** As typed, with the unit of its heading where it names none of its own. */
function withUnit(text: string, unitText: string | undefined): string {
  const head = headWords("", unitText).replace(/^ \/ /, "");
  return isBare(text) && head !== "" ? `${text} ${head}` : text;
}

/** The numbers of a row with their units: "25.012 mm". */
export function valuesOfRow(table: TableValue, row: number): string {
  return table.columns
    .filter(isNumeric)
    .map((column) => withUnit(column.typed[row] ?? "", column.unit))
    .filter((text) => text !== "")
    .join(", ");
}
