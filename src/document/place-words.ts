// What a place is called: "hole 1, upper outer, along".
import type { Item, ReadingItem } from "./item.ts";

/** "pinPasses" → "pin passes" */
export const inWords = (name: string): string => name.replaceAll(/([A-Z])/g, " $1").toLowerCase();

/** Columns that say which reading a row is. */
export const keyColumns = (item: ReadingItem): readonly string[] =>
  item.key ?? Object.keys(item.expect ?? {});

/** Every combination of the expected values of these columns, in the order of the page. */
export function expectedRows(
  { expect = {} }: ReadingItem,
  names = Object.keys(expect),
): readonly Readonly<Record<string, string>>[] {
  let rows: Record<string, string>[] = [{}];
  for (const name of names)
    rows = rows.flatMap((before) => (expect[name] ?? []).map((value) => ({ ...before, [name]: value })));
  return rows;
}

/** Columns that say when, or how many together; the others say which hole, shank or nut. */
const occasions = new Set(["step", "pass", "stage", "group", "round", "day"]);

/** What one row of a reading is: the reading's own name in the singular, "hole 7"; of an occasion its column, "step 3". */
function nounOf(item: ReadingItem, key: string): string {
  const single = /^([a-z]+[^s])s$/.exec(item.name)?.[1];
  return single !== undefined && !occasions.has(key) && item.key?.[0] === key ? single : inWords(key);
}

/** The noun of an answer or check by row, found at the reading it goes back to. */
export function nounOfRows(item: Item, key: string, itemOf: (name: string) => Item | undefined): string {
  const met = new Set<string>();
  let at: Item | undefined = item;
  while (at && (at.kind === "working" || at.kind === "check") && at.each !== undefined) {
    if (met.has(at.each)) break;
    met.add(at.each);
    at = itemOf(at.each);
  }
  return at?.kind === "reading" ? nounOf(at, key) : inWords(key);
}

/** The key columns of a place, in order, with their values. */
export type Place = readonly (readonly [column: string, value: string])[];

export function placeWords(item: ReadingItem, place: Place): string {
  return place
    .map(([column, value], i) => {
      if (i === 0) return /^\d|^.{1,3}$/.test(value) ? `${nounOf(item, column)} ${value}` : value;
      return /^\d|^.{1,2}$/.test(value) ? `${inWords(column)} ${value}` : value;
    })
    .join(", ");
}

/** "hole 1": the group that a reading is compared with. */
export const groupWords = (item: ReadingItem, place: Place): string => placeWords(item, place.slice(0, 1));
