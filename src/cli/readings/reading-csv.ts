// A reading as CSV, the same bytes each time: every row with its fields as typed, units in the heads,
// a comma between the fields and a point for the decimal mark, whatever the page has.
import { headingFor } from "../../document/column-heading.ts";
import type { ReadingItem } from "../../document/item.ts";
import { withOwnRemarks } from "../../document/remark-columns.ts";
import { writeCsv } from "../../document/write-csv.ts";
import { type Problem, problem } from "../../problem.ts";
import { textIn } from "./key-words.ts";

import { isOpen, openTable, type TableRow } from "./open-table.ts";
import { headingOf } from "./rows-now.ts";

export interface ReadingCsv {
  readonly csv: string;
  readonly rows: number;
  readonly columns: number;
}

export function readingCsv(named: ReadingItem, sorted: boolean): ReadingCsv | Problem {
  const item = withOwnRemarks(named);
  const { delimiter, decimal, columns } = item;
  if (sorted && !item.key) return noKey(item);
  const names = Object.keys(columns);
  if (item.rows.trim() === "") {
    const heads = names.map((name) => headingFor(name, columns[name]));
    return { csv: writeCsv(heads, []), rows: 0, columns: names.length };
  }
  const table = openTable(item, item.rows, { delimiter, decimal, isFile: false });
  if (!isOpen(table)) return (table[0] ?? unread).at(item.name);
  const heads = names.map((name) => {
    const found = table.columns.find((column) => column.name === name);
    return found ? headingOf(found) : name;
  });
  const rows = sorted ? byKey(item, table.rows) : table.rows;
  const csv = writeCsv(
    heads,
    rows.map((row) => names.map((name) => textIn(row, name))),
  );
  return { csv, rows: rows.length, columns: names.length };
}

const unread = problem({ code: "csv", what: "rows", must: "be a table" });

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
function byKey(item: ReadingItem, rows: readonly TableRow[]): readonly TableRow[] {
  return rows.toSorted((a, b) => {
    for (const name of item.key ?? []) {
      const order = inOrder(textIn(a, name), textIn(b, name), item.expect?.[name] ?? []);
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
