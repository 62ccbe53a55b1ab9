// Rows of a table and of answers found by their key. Each index is made once for each value, so that going
// through the rows of a table one by one takes a time as their number.
import { grouped } from "../grouped.ts";
import type { ReadingState, RowOf, RowsValue, SetAside, TableValue } from "./line.ts";

type Keyed<T> = ReadonlyMap<string, readonly T[]>;
type Wanted = TableValue["wanted"][number];
type Answer = RowsValue["rows"][number];

/** Neither replaced by another row nor set aside. */
export const counts = (state: ReadingState): boolean => state !== "corrected" && state !== "set aside";

type Once<T> = (of: object, name: string, make: () => T) => T;

/** The same for the same value and name: made at the first call. */
function once<T>(): Once<T> {
  const made = new WeakMap<object, Map<string, T>>();
  return (of, name, make) => {
    const known = made.get(of) ?? new Map<string, T>();
    made.set(of, known);
    const found = known.get(name);
    if (found !== undefined) return found;
    const first = make();
    known.set(name, first);
    return first;
  };
}

const lists = once<readonly number[]>();
const rowIndex = once<Keyed<number>>();
const asideIndex = once<Keyed<SetAside>>();
const wantedIndex = once<Keyed<Wanted>>();
const answerIndex = once<Keyed<Answer>>();

const nothing: readonly never[] = [];

/** Rows that count, in order. */
export const countedRows = (table: TableValue): readonly number[] =>
  lists(table, "counted", () => table.states.flatMap((state, i) => (counts(state) ? [i] : [])));

const textsIn = (table: TableValue, key: string): readonly string[] =>
  table.columns.find((column) => column.name === key)?.typed ?? nothing;

/** Of these rows those with this value in the key column; `name` tells one list of rows from another. */
export function rowsWith(
  table: TableValue,
  key: string,
  value: string,
  name: string,
  rows: () => readonly number[],
): readonly number[] {
  const texts = textsIn(table, key);
  const index = rowIndex(table, `${name} by ${key}`, () => grouped(rows(), (i) => texts[i] ?? ""));
  return index.get(value) ?? nothing;
}

export const countedWith = (table: TableValue, key: string, value: string): readonly number[] =>
  rowsWith(table, key, value, "counted", () => countedRows(table));

export function asideWith(table: TableValue, key: string, value: string): readonly SetAside[] {
  const texts = textsIn(table, key);
  const index = asideIndex(table, `aside by ${key}`, () =>
    grouped(table.setAside, ({ row }) => texts[row] ?? ""),
  );
  return index.get(value) ?? nothing;
}

/** Expected readings without a row; those that do not say this key stand for every value of it. */
export function wantedWith(table: TableValue, key: string, value: string): readonly Wanted[] {
  if (table.wanted[0]?.[key] === undefined) return table.wanted;
  const index = wantedIndex(table, `wanted by ${key}`, () => grouped(table.wanted, (one) => one[key] ?? ""));
  return index.get(value) ?? nothing;
}

export const blankRows = (table: TableValue, column: string | undefined, find: () => readonly number[]) =>
  lists(table, `blank in ${column ?? "any column"}`, find);

/** The answer for a key; the first one where it stands twice. */
export function answerWith({ rows }: RowsValue, key: string): Answer | undefined {
  const index = answerIndex(rows, "by key", () => grouped(rows, (row: RowOf<unknown>) => row.key));
  return index.get(key)?.[0];
}
