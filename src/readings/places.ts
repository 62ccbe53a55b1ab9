// The readings that a table wants, in order: one step for each place and each column to be read there.
import type { ColumnKind, ReadingItem } from "../document/item.ts";
import { expectedRows, inWords, keyColumns, type Place, placeWords } from "../document/place-words.ts";
import { counts } from "../engine/by-key.ts";
import type { ReadingState, TableValue } from "../engine/line.ts";
import { isRemark, whyBlank } from "./remarks.ts";

export interface Step {
  readonly id: string;
  readonly place: Place;
  readonly words: string;
  readonly column: string;
  readonly kind: ColumnKind;
  readonly unit: string | undefined;
  /** Row that counts for this place, if there is one. */
  readonly row: number | undefined;
  readonly text: string;
  readonly state: ReadingState;
  /** A column that may stay blank is never asked for. */
  readonly optional: boolean;
  /** Why nothing could be read, or why it was set aside. */
  readonly reason: string;
}

/** "gauge slipped, fitter B": why, and who said so. */
export function reasonOf(table: TableValue, row: number): string {
  const [why, by] = [textAt(table, "reason", row), textAt(table, "by", row)];
  return by === "" ? why : `${why}, ${by}`;
}

/** Columns to be read; a remark is never asked for. */
export const askedColumns = (item: ReadingItem): readonly string[] =>
  Object.entries(item.columns).flatMap(([name, kind]) =>
    kind === "text" || isRemark(name) || keyColumns(item).includes(name) ? [] : [name],
  );

export const textAt = (table: TableValue, column: string, row: number): string =>
  table.columns.find((one) => one.name === column)?.typed[row] ?? "";

/** The key columns of a row; of a table without any, the row itself. */
export function placeOf(item: ReadingItem, textIn: (key: string) => string, row: number): Place {
  const keys = keyColumns(item);
  return keys.length > 0 ? keys.map((key) => [key, textIn(key)]) : [["row", `${row + 1}`]];
}

export const placeOfRow = (item: ReadingItem, table: TableValue, row: number): Place =>
  placeOf(item, (key) => textAt(table, key, row), row);

export function stepsOf(item: ReadingItem, table: TableValue): readonly Step[] {
  const keys = keyColumns(item);
  const rows = currentRows(item, table);
  const places = new Map<string, Place>();
  for (const place of [...expectedPlaces(item, keys), ...rows.places]) places.set(idOf(place), place);
  const columns = askedColumns(item);
  return [...places].flatMap(([id, place]) => {
    const row = rows.current.get(id);
    return columns.map((column) => stepAt({ item, table, id, place, row, column, columns }));
  });
}

interface At {
  readonly item: ReadingItem;
  readonly table: TableValue;
  readonly id: string;
  readonly place: Place;
  readonly row: number | undefined;
  readonly column: string;
  /** All that are asked for. */
  readonly columns: readonly string[];
}

function stepAt({ item, table, id, place, row, column, columns }: At): Step {
  const text = row === undefined ? "" : textAt(table, column, row);
  const state = row === undefined ? "missing" : stateIn(table, row, column);
  const found = table.columns.find((one) => one.name === column);
  return {
    id: `${id}|${column}`,
    place,
    words: placeWords(item, place) + (columns.length > 1 ? `, ${inWords(column)}` : ""),
    column,
    kind: item.columns[column] ?? "text",
    unit: found?.unit,
    row,
    text,
    optional: item.may?.includes(column) ?? false,
    state: text === "" && state !== "set aside" ? "missing" : state === "missing" ? "entered" : state,
    reason:
      row === undefined
        ? ""
        : text === "" && state !== "set aside"
          ? whyBlank(
              textAt(table, "reason", row),
              column,
              columns,
              columns.some((name) => textAt(table, name, row) !== ""),
            )
          : textAt(table, "reason", row),
  };
}

/** A row may be odd by one of its columns; the others of it are read as any. */
function stateIn(table: TableValue, row: number, column: string): ReadingState {
  const state = table.states[row] ?? "missing";
  return state === "odd" && table.oddIn.get(row)?.includes(column) !== true ? "entered" : state;
}

export const idOf = (place: Place): string => place.map(([, value]) => value).join("·");

/** Every combination of the expected values, in the order of the page. */
function expectedPlaces(item: ReadingItem, keys: readonly string[]): readonly Place[] {
  if (Object.keys(item.expect ?? {}).length === 0 || !keys.every((key) => item.expect?.[key])) return [];
  return expectedRows(item).map((place) => keys.map((key) => [key, place[key] ?? ""]));
}

/** Places that have rows, and the row that counts at each: the last that is not corrected. */
function currentRows(item: ReadingItem, table: TableValue) {
  const current = new Map<string, number>();
  const places: Place[] = [];
  for (let row = 0; row < table.rows; row += 1) {
    const place = placeOfRow(item, table, row);
    const id = idOf(place);
    if (!current.has(id)) places.push(place);
    const before = current.get(id);
    const isCounted = (at: number) => counts(table.states[at] ?? "missing");
    if (isCounted(row) || before === undefined || !isCounted(before)) current.set(id, row);
  }
  return { current, places };
}

/** The next reading to take after this one, round to the start; what cannot be read is not asked for again. */
export function nextWanted(steps: readonly Step[], after: number): number | undefined {
  const isWanted = (step: Step | undefined) =>
    step?.state === "missing" && step.reason === "" && !step.optional;
  for (let i = 1; i <= steps.length; i += 1) {
    const at = (after + i) % steps.length;
    if (isWanted(steps[at])) return at;
  }
  return undefined;
}
