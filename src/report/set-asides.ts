// Readings that are kept and not used, and those that are asked about, in words that both faces say: where, what
// stood there, why, who and when, and what the place is judged on now.
import { isBare } from "../document/decimal-mark.ts";
import type { ReadingItem } from "../document/item.ts";
import { groupWords, inWords, placeWords } from "../document/place-words.ts";
import type { Line, TableColumn, TableValue } from "../engine/line.ts";
import { grouped } from "../grouped.ts";
import { isProblem } from "../problem.ts";
import { askedColumns, placeOfRow, textAt } from "../readings/places.ts";

export interface SetAsideWords {
  readonly row: number;
  /** "hole 13, lo split, along" */
  readonly place: string;
  /** As typed: "25.033 mm". */
  readonly value: string;
  readonly why: string;
  readonly by: string;
  readonly when: string;
  /** "read again: 25.031 mm", "hole 13 is judged on 7 of 8 readings" */
  readonly now: string;
}

export function setAsidesOf({ item, value }: Line): readonly SetAsideWords[] {
  if (item.kind !== "reading" || isProblem(value) || value.type !== "table") return [];
  if (value.setAside.length === 0) return [];
  const standing = standingOf(value);
  return value.setAside.map((one) => ({
    row: one.row,
    place: placeWords(item, placeOfRow(item, value, one.row)),
    value: valuesAt(value, one.row),
    why: one.why,
    by: one.by,
    when: whenColumns.map((name) => textAt(value, name, one.row)).find((text) => text !== "") ?? "",
    now: nowWords(item, value, one.row, standing),
  }));
}

/**
 * "hole 13, lo split, along, 25.033 mm: set aside, gauge slipped, by fitter B; hole 13 is judged on 7 of 8
 * readings", one sentence for all that were set aside for the same reason with the same result.
 */
export function setAsideSentences(all: readonly SetAsideWords[]): readonly string[] {
  const alike = grouped(all, ({ why, by, when, now }) => [why, by, when, now].join("\n"));
  return [...alike.values()].flatMap((few) => {
    const [first] = few;
    if (!first) return [];
    const { why, by, when, now } = first;
    const places = few.map(({ place, value }) => (value === "" ? place : `${place}, ${value}`));
    const who = [by === "" ? "who is not stated" : `by ${by}`, when].filter((part) => part !== "").join(", ");
    return [`${places.join("; ")}: set aside, ${why}, ${who}; ${now}`];
  });
}

export interface OddReading {
  readonly row: number;
  /** "hole 13, lo split, along"; with its column where several are read at a place. */
  readonly place: string;
  readonly value: string;
}

/** Readings farther from their group than the page allows. */
export function oddReadings({ item, value }: Line): readonly OddReading[] {
  if (item.kind !== "reading" || isProblem(value) || value.type !== "table") return [];
  const isOneOfMany = askedColumns(item).length > 1;
  return [...value.oddIn]
    .toSorted(([a], [b]) => a - b)
    .flatMap(([row, names]) =>
      value.columns
        .filter(({ name }) => names.includes(name))
        .map((column) => ({
          row,
          place:
            placeWords(item, placeOfRow(item, value, row)) + (isOneOfMany ? `, ${inWords(column.name)}` : ""),
          value: typedAt(column, row),
        })),
    );
}

const whenColumns = ["when", "date", "time"];

/** The numbers of a row with their units. */
function valuesAt({ columns }: TableValue, row: number): string {
  return columns
    .map((column) => typedAt(column, row))
    .filter((text) => text !== "")
    .join(", ");
}

function typedAt({ kind, unit, typed }: TableColumn, row: number): string {
  const text = kind === "tag" || kind === "text" ? "" : (typed[row] ?? "");
  return isBare(text) && unit !== undefined ? `${text} ${unit}` : text;
}

const counts = (table: TableValue, row: number): boolean =>
  table.states[row] === "entered" || table.states[row] === "odd";

interface Standing {
  /** By place: the first row that counts there. */
  readonly read: ReadonlyMap<string, number>;
  /** By the first key: how many rows count, of how many places. */
  readonly groups: ReadonlyMap<string, { readonly used: number; readonly places: number }>;
}

const placeKey = (table: TableValue, row: number): string =>
  table.key.map((key) => textAt(table, key, row)).join(" · ");

/** The whole table gone through once, however many of its readings are set aside. */
function standingOf(table: TableValue): Standing {
  const [first = ""] = table.key;
  const rows = [...table.states.keys()];
  const used = rows.filter((row) => counts(table, row));
  const wanted = grouped(table.wanted, (one) => one[first] ?? "");
  const groups = [...grouped(rows, (row) => textAt(table, first, row))].map(([name, here]) => {
    const places = new Set(here.map((row) => placeKey(table, row))).size + (wanted.get(name)?.length ?? 0);
    return [name, { used: here.filter((row) => counts(table, row)).length, places }] as const;
  });
  return {
    read: new Map(used.toReversed().map((row) => [placeKey(table, row), row])),
    groups: new Map(groups),
  };
}

function nowWords(item: ReadingItem, table: TableValue, row: number, { read, groups }: Standing): string {
  const [first] = table.key;
  const again = first === undefined ? undefined : read.get(placeKey(table, row));
  if (again !== undefined) return `read again: ${valuesAt(table, again)}`;
  if (first === undefined || table.key.length < 2) return "nothing stands in its place";
  const { used = 0, places = 0 } = groups.get(textAt(table, first, row)) ?? {};
  return `${groupWords(item, placeOfRow(item, table, row))} is judged on ${used} of ${places} readings`;
}
