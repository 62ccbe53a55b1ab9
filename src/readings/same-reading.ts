// Which reading a row is, and whether two rows say the same: worth is compared, not spelling.

import type { ReadingItem } from "../document/item.ts";
import type { Place } from "../document/place-words.ts";
import { keyColumns, placeWords } from "../document/place-words.ts";
import { grouped } from "../grouped.ts";
import type { Fields, Row, Table } from "./table.ts";

type Worth = Pick<Row, "worth">;

/** One text for each reading; rows of a table without a key are told apart by all they hold. */
export const idOf = (item: ReadingItem, columns: readonly string[], { worth }: Worth): string =>
  (item.key ?? columns).map((name) => worth[name] ?? "").join("\u0000");

/** Whether all that `row` says stands in `other` as well; a blank says nothing. */
export const saysNoMore = (row: Worth, other: Worth): boolean =>
  Object.entries(row.worth).every(([name, worth]) => worth === "" || worth === (other.worth[name] ?? ""));

export const isAlike = (row: Worth, other: Worth): boolean =>
  Object.entries(row.worth).every(([name, worth]) => worth === (other.worth[name] ?? ""));

/** Whether `row` says something where `other` is blank, and nothing else. */
export const fillsBlanks = (row: Worth, other: Worth): boolean =>
  Object.entries(row.worth).every(
    ([name, worth]) => ["", worth].includes(other.worth[name] ?? "") || worth === "",
  );

/** The key columns of a row; of a table without any, the row itself. */
export function placeOf(item: ReadingItem, texts: Fields, index: number): Place {
  const keys = keyColumns(item);
  return keys.length > 0 ? keys.map((key) => [key, texts[key] ?? ""]) : [["row", `${index + 1}`]];
}

/** "hole 1, up outer, along"; without a key all that the row holds. */
export const rowName = (item: ReadingItem, { texts, index }: Pick<Row, "texts" | "index">): string =>
  keyColumns(item).length > 0
    ? placeWords(item, placeOf(item, texts, index))
    : Object.values(texts)
        .filter((text) => text !== "")
        .join(", ");

/** The rows of each place, in the order in which the places come. */
export const rowsByPlace = ({ item, rows }: Table): ReadonlyMap<string, readonly Row[]> =>
  grouped(rows, ({ texts, index }) =>
    placeOf(item, texts, index)
      .map(([, value]) => value)
      .join("\u0000"),
  );
