// Which reading a row is, and whether two rows say the same: worth is compared, not spelling.

import type { ReadingItem } from "../document/item.ts";
import type { Place } from "../document/place-words.ts";
import { keyColumns, placeWords } from "../document/place-words.ts";
import { grouped } from "../grouped.ts";
import { placeOf } from "./places.ts";
import type { Row, Table } from "./table.ts";

type Worth = Pick<Row, "worth">;
type At = Pick<Row, "texts" | "index">;

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

export const placeOfTexts = (item: ReadingItem, { texts, index }: At): Place =>
  placeOf(item, (key) => texts[key] ?? "", index);

/** "hole 1, up outer, along"; without a key all that the row holds. */
export const rowName = (item: ReadingItem, row: At): string =>
  keyColumns(item).length > 0
    ? placeWords(item, placeOfTexts(item, row))
    : Object.values(row.texts)
        .filter((text) => text !== "")
        .join(", ");

/** The rows of each place, in the order in which the places come. */
export const rowsByPlace = ({ item, rows }: Table): ReadonlyMap<string, readonly Row[]> =>
  grouped(rows, (row) => idOfPlace(placeOfTexts(item, row)));

export const idOfPlace = (place: Place): string => place.map(([, value]) => value).join("\u0000");
