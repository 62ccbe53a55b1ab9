// The rows of a reading as text: a row added, or fields of one row filled. Every other byte stays.

import { isProblem, type Problem, problem } from "../problem.ts";
import { blankEnd } from "./blank-end.ts";
import { headingFor, isQuantity, meantBy } from "./column-heading.ts";
import { type CsvTable, delimiters, readCsv } from "./csv.ts";
import type { ReadingItem } from "./item.ts";
import { remarkColumns } from "./reading-table.ts";

export interface RowsText {
  readonly text: string;
  readonly table: CsvTable;
  /** The column that each heading means. */
  readonly columns: readonly (string | undefined)[];
  /** Unit of each column, as its heading says it. */
  readonly units: Readonly<Record<string, string | undefined>>;
}

/** Column → text of its field. */
export type Fields = Readonly<Record<string, string>>;

export function openRows(item: ReadingItem, text: string): RowsText | Problem {
  const { delimiter, decimal } = item;
  const columns = { ...remarkColumns, ...item.columns };
  const begun = text.trim() === "" ? `${writtenHeadings(item)}\n` : text;
  const isNumeric = (head: CsvTable["headings"][number]) => {
    const meant = meantBy(head, columns);
    return isQuantity(meant?.kind);
  };
  const { table, problems } = readCsv(begun, { delimiter, decimal, isNumeric });
  if (!table) return problems[0] ?? problem({ code: "csv", what: item.name, must: "be a table" });
  const meant = table.headings.map((head) => meantBy(head, columns));
  return {
    text: begun,
    table,
    columns: meant.map((one) => one?.name),
    units: Object.fromEntries(meant.flatMap((one) => (one ? [[one.name, one.unit]] : []))),
  };
}

const writtenHeadings = (item: ReadingItem): string =>
  Object.entries(item.columns)
    .map(([name, kind]) => headingFor(name, kind))
    .join(",");

export const has = (rows: RowsText, column: string): boolean => rows.columns.includes(column);

/** The same rows with one more column at the end, blank in every row. */
function withColumn(rows: RowsText, column: string): string {
  const mark = delimiters[rows.table.delimiter];
  const starts = lineStarts(rows.text);
  const first = rows.table.rows.length > 0 ? placeOf(rows, 0, starts).begin : rows.text.length;
  const heads = blankEnd(rows.text.slice(0, first));
  const ends = rows.table.rows.map((_, row) => placeOf(rows, row, starts).end);
  let text = rows.text.slice(0, heads) + mark + column;
  let at = heads;
  for (const end of ends) {
    text += rows.text.slice(at, end) + mark;
    at = end;
  }
  return text + rows.text.slice(at);
}

export function fieldsOf(rows: RowsText, row: number): Fields {
  const fields = rows.table.rows[row]?.fields ?? [];
  return Object.fromEntries(
    rows.columns.flatMap((column, i) => (column === undefined ? [] : [[column, (fields[i] ?? "").trim()]])),
  );
}

export const withRow = (rows: RowsText, fields: Fields): string => withAll(rows, new Map(), [fields]);

export function withFields(rows: RowsText, row: number, changed: Fields): string | Problem {
  return rows.table.rows[row]
    ? withAll(rows, new Map([[row, changed]]), [])
    : problem({ code: "no-such-row", what: `row ${row + 1}`, must: "be in the table" });
}

/** Fields of some rows filled and rows added, in one go. */
export function withAll(
  rows: RowsText,
  changed: ReadonlyMap<number, Fields>,
  added: readonly Fields[],
): string {
  const { newline } = rows.table;
  const starts = lineStarts(rows.text);
  const parts: string[] = [];
  let at = 0;
  for (const [row, fields] of [...changed].sort(([a], [b]) => a - b)) {
    const { begin, end } = placeOf(rows, row, starts);
    parts.push(rows.text.slice(at, begin), changedLine(rows, row, fields));
    at = end;
  }
  parts.push(rows.text.slice(at));
  if (added.length > 0 && !rows.text.endsWith("\n")) parts.push(newline);
  for (const fields of added) parts.push(lineOf(rows, ordered(rows, fields)), newline);
  return parts.join("");
}

function changedLine(rows: RowsText, row: number, changed: Fields): string {
  const found = rows.table.rows[row];
  const fields = rows.columns.map((column, i) =>
    column !== undefined && Object.hasOwn(changed, column)
      ? asWritten(rows, changed[column] ?? "")
      : (found?.fields[i] ?? ""),
  );
  return lineOf(rows, fields, found?.quoted);
}

const ordered = (rows: RowsText, fields: Fields): readonly string[] =>
  rows.columns.map((column) => asWritten(rows, column === undefined ? "" : (fields[column] ?? "")));

/** Numbers take the decimal mark of the table. */
const asWritten = ({ table }: RowsText, field: string): string =>
  table.decimal === "comma" && /^[-+\u2212]?\d*\.\d+(\s|$)/.test(field) ? field.replace(".", ",") : field;

function lineOf({ table }: RowsText, fields: readonly string[], quoted: readonly boolean[] = []): string {
  const mark = delimiters[table.delimiter];
  // A row of one empty field would be a blank line, which says nothing.
  if (fields.length === 1 && fields[0] === "") return '""';
  return fields
    .map((field, i) =>
      quoted[i] || field.includes(mark) || /["\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field,
    )
    .join(mark);
}

/** Where a row stands in the text, without the end of its line. */
function placeOf(
  { text, table }: RowsText,
  row: number,
  starts: readonly number[],
): { begin: number; end: number } {
  const begin = starts[(table.rows[row]?.line ?? 1) - 1] ?? 0;
  const next = table.rows[row + 1]?.line;
  const end = next === undefined ? text.length : (starts[next - 1] ?? text.length);
  return { begin, end: begin + blankEnd(text.slice(begin, end)) };
}

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}

export const remarks = ["state", "reason", "by"] as const;

export type Remark = (typeof remarks)[number];

/** The rows with the columns a remark needs, or the problem that kept them from being read. */
export function withRemarks(item: ReadingItem, text: string, columns: readonly Remark[]): string | Problem {
  let now = text;
  for (const column of columns) {
    const rows = openRows(item, now);
    if (isProblem(rows)) return rows;
    now = has(rows, column) ? rows.text : withColumn(rows, column);
  }
  return now;
}

/** The rows with one change, or the problem that kept them from being read. */
export function changedRows(
  item: ReadingItem,
  text: string,
  change: (rows: RowsText) => string | Problem,
): string | Problem {
  const rows = openRows(item, text);
  return isProblem(rows) ? rows : change(rows);
}
