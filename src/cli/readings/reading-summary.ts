// What a reading of a page holds: columns with their units, rows, states, and what is wanted and not there.
import type { ReadingItem } from "../../document/item.ts";
import { readingTable } from "../../document/reading-table.ts";
import type { ReadingState, TableValue } from "../../engine/line.ts";
import { readingValue } from "../../engine/reading.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { firstFew } from "../../words.ts";
import { columns, padEnd } from "../columns.ts";
import { problemRecord, worded } from "../outcome.ts";

export interface ReadingSummary {
  readonly item: ReadingItem;
  readonly value: TableValue | Problem;
  /** For each row the line of the page on which it stands. */
  readonly lines: readonly number[];
}

export function summaryOf(item: ReadingItem, file: string): ReadingSummary {
  if (item.rows.trim() === "") return { item, value: nothingYet(item), lines: [] };
  const value = readingValue(item, item.rows, file);
  if (isProblem(value)) return { item, value, lines: [] };
  if (value.type !== "table") throw new Error("a reading is a table");
  return { item, value, lines: readingTable(item, file).lines };
}

/** A reading of which not even the headings are written. */
function nothingYet(item: ReadingItem): TableValue {
  const key = item.key ?? [];
  const heads = Object.entries(item.columns).map(([name, kind]) => ({
    name,
    kind,
    unit: undefined,
    values: [],
    typed: [],
    optional: item.may?.includes(name) === true,
  }));
  return {
    type: "table",
    says: item.says,
    columns: heads,
    rows: 0,
    missing: 0,
    states: [],
    oddIn: new Map(),
    key,
    setAside: [],
    wanted: [],
  };
}

export interface StateCounts {
  readonly entered: number;
  /** Rows that lack a value, and wanted readings that have no row. */
  readonly missing: number;
  readonly odd: number;
  readonly corrected: number;
  readonly setAside: number;
}

export function countsOf({ states, missing }: TableValue): StateCounts {
  const count = (state: ReadingState): number => states.filter((one) => one === state).length;
  return {
    entered: count("entered"),
    missing,
    odd: count("odd"),
    corrected: count("corrected"),
    setAside: count("set aside"),
  };
}

/** "94 entered, 2 odd" */
export function countWords(value: TableValue): string {
  const { setAside, ...counts } = countsOf(value);
  return Object.entries({ ...counts, "set aside": setAside })
    .filter(([, n]) => n > 0)
    .map(([state, n]) => `${n} ${state}`)
    .join(", ");
}

const headOf = ({ name, unit }: TableValue["columns"][number]): string =>
  unit === undefined || unit === "1" ? name : `${name}/${unit}`;

const wantedWords = (wanted: Readonly<Record<string, string>>): string => Object.values(wanted).join(" · ");

/** A few of what is wanted; for one reading alone all of it, and each row that is more than entered. */
export function summaryLines({ item, value, lines }: ReadingSummary, whole: boolean): string[] {
  const head = `${item.name}: ${item.says ?? "no words"}`;
  if (isProblem(value)) return [head, `  no answer: ${worded(value)}`];
  const { key, wanted, rows } = value;
  const said: (readonly [string, string])[] = [
    ["columns", value.columns.map(headOf).join(", ")],
    ...(key.length > 0 ? [["key", key.join(", ")] as const] : []),
    ["rows", `${rows}${countWords(value) === "" ? "" : `: ${countWords(value)}`}`],
    ...(wanted.length > 0
      ? [["wanted", firstFew(wanted.map(wantedWords), whole ? wanted.length : 6)] as const]
      : []),
  ];
  const rowsOf = whole ? notPlain({ item, value, lines }, value) : [];
  return [head, ...said.map(([what, text]) => `  ${padEnd(what, 9)}${text}`), ...rowsOf];
}

function notPlain({ lines }: ReadingSummary, value: TableValue): string[] {
  const rows = value.states.flatMap((state, row) => {
    if (state === "entered") return [];
    const fields = value.columns.map((column) => column.typed[row] ?? "").filter((text) => text !== "");
    return [[`line ${lines[row] ?? row + 1}`, state, fields.join(", ")]];
  });
  return columns(rows, "  ");
}

export function summaryRecord({ item, value, lines }: ReadingSummary) {
  const start = { name: item.name, says: item.says ?? "" };
  if (isProblem(value))
    return {
      ...start,
      columns: Object.entries(item.columns).map(([name, kind]) => ({ name, kind, unit: "" })),
      key: item.key ?? [],
      rows: null,
      states: null,
      notEntered: [],
      wanted: [],
      problem: problemRecord(value),
    };
  return {
    ...start,
    columns: value.columns.map(({ name, kind, unit }) => ({
      name,
      kind,
      unit: unit === undefined || unit === "1" ? "" : unit,
    })),
    key: value.key,
    rows: value.rows,
    states: countsOf(value),
    notEntered: value.states.flatMap((state, row) =>
      state === "entered" ? [] : [{ line: lines[row] ?? null, state }],
    ),
    wanted: value.wanted,
  };
}
