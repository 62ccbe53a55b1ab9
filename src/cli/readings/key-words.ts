// Which reading a row is: its key columns as words, and as one text to look it up by.
import type { ReadingItem } from "../../document/item.ts";
import type { TableRow } from "./open-table.ts";

export const textIn = (row: TableRow, column: string): string => row.fields.get(column)?.text ?? "";
const worthIn = (row: TableRow, column: string): string => row.fields.get(column)?.worth ?? "";

/** "position 1", "1 · upper half, outer end · along"; without a key all that the row holds. */
export function keyWords(item: ReadingItem, row: TableRow): string {
  const names = item.key ?? [...row.fields.keys()];
  const texts = names.map((name) => textIn(row, name)).filter((text) => text !== "");
  return names.length === 1 && texts.length === 1 ? `${names[0]} ${texts[0]}` : texts.join(" · ");
}

/** The same for rows of the same reading; rows of a table without a key are told apart by all they hold. */
export const idOf = (item: ReadingItem, columns: readonly string[], row: TableRow): string =>
  (item.key ?? columns).map((name) => worthIn(row, name)).join("\u0000");

export const isSetAside = (row: TableRow): boolean => /^set aside$/i.test(textIn(row, "state"));

/** Whether all that `row` says stands in `other` as well; a blank says nothing. */
export const saysNoMore = (row: TableRow, other: TableRow): boolean =>
  [...row.fields].every(([name, { worth }]) => worth === "" || worth === worthIn(other, name));

export const isAlike = (row: TableRow, other: TableRow): boolean =>
  [...row.fields].every(([name, { worth }]) => worth === worthIn(other, name));

/** Whether `row` says something where `other` is blank, and nothing else. */
export const fillsBlanks = (row: TableRow, other: TableRow): boolean =>
  [...row.fields].every(
    ([name, { worth }]) => worth === "" || worthIn(other, name) === "" || worth === worthIn(other, name),
  );
