// A reading as CSV, the same bytes each time: every row with its fields as typed and its state, units in the heads,
// a comma between the fields and a point for the decimal mark, whatever the page has.
import type { ReadingItem } from "../document/item.ts";
import { writeCsv } from "../document/write-csv.ts";
import { readingValue } from "../engine/reading.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { remarks } from "./remarks.ts";
import { columnNamed, fieldFaults, has, headingOf, openTable, type Row, type Table } from "./table.ts";

export interface ReadingCsv {
  readonly csv: string;
  readonly rows: number;
  readonly columns: number;
}

export function readingCsv(item: ReadingItem, rows: string, sorted: boolean): ReadingCsv | Problem {
  if (sorted && !item.key) return noKey(item);
  const table = openTable(item, rows);
  if (isProblem(table)) return table.at(item.name);
  const [wrong] = [...table.faults, ...fieldFaults(table)];
  if (wrong) return wrong.at(item.name);
  const states = statesOf(item, table);
  const own = Object.keys(item.columns);
  const isSaid = (name: string) =>
    has(table, name) || (name === "state" && states.some((state) => state !== ""));
  const names = [...own, ...remarks.filter((name) => !own.includes(name) && isSaid(name))];
  const heads = names.map((name) => {
    const found = columnNamed(table, name);
    return found ? headingOf(found) : name;
  });
  const listed = sorted ? byKey(item, table.rows) : table.rows;
  const csv = writeCsv(
    heads,
    listed.map(({ texts, index }) =>
      names.map((name) => texts[name] || (name === "state" ? (states[index] ?? "") : "")),
    ),
  );
  return { csv, rows: listed.length, columns: names.length };
}

/** What the page works out of its rows stands beside them, or a corrected reading would be counted by who opens the file. */
function statesOf({ rowsLine: _line, ...item }: ReadingItem, { text }: Table): readonly string[] {
  const value = readingValue(item, text, item.name);
  if (isProblem(value) || value.type !== "table") return [];
  return value.states.map((state) => (state === "entered" ? "" : state));
}

const noKey = (item: ReadingItem): Problem =>
  problem({
    code: "no-key",
    where: "readings",
    what: "--sort",
    got: `${item.name}, a reading without a key`,
    must: "have columns to sort by",
    hint: "name them under key in the page",
  });

/** In the order in which the page expects them, else by number and then by letter; a correction stays behind. */
function byKey(item: ReadingItem, rows: readonly Row[]): readonly Row[] {
  return rows.toSorted((a, b) => {
    for (const name of item.key ?? []) {
      const order = inOrder(a.texts[name] ?? "", b.texts[name] ?? "", item.expect?.[name] ?? []);
      if (order !== 0) return order;
    }
    return 0;
  });
}

function inOrder(a: string, b: string, expected: readonly string[]): number {
  if (a === b) return 0;
  const [placeA, placeB] = [expected.indexOf(a), expected.indexOf(b)];
  if (placeA >= 0 || placeB >= 0) {
    if (placeA < 0) return 1;
    return placeB < 0 ? -1 : placeA - placeB;
  }
  const [numberA, numberB] = [numberOf(a), numberOf(b)];
  if (numberA !== undefined || numberB !== undefined) {
    if (numberA === undefined) return 1;
    if (numberB === undefined) return -1;
    if (numberA !== numberB) return numberA - numberB;
  }
  return a < b ? -1 : 1;
}

const numberOf = (text: string): number | undefined =>
  /^[-+]?\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
