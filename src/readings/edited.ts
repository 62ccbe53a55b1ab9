// A table with some fields changed and rows added, as text: delimiter, decimal mark and order of the columns stay, and
// every byte that is not touched.
import { blankEnd } from "../document/blank-end.ts";
import { isQuantity } from "../document/column-heading.ts";
import { delimiters } from "../document/csv.ts";
import type { Delimiter, ReadingItem } from "../document/item.ts";
import { isProblem, type Problem } from "../problem.ts";
import type { Remark } from "./remarks.ts";
import { type Fields, has, openTable, type Table } from "./table.ts";

export interface Edits {
  /** Columns that a remark needs, added where they are not there. */
  readonly columns?: readonly Remark[];
  /** By the place of the row, from 0. */
  readonly changed?: ReadonlyMap<number, Fields>;
  readonly added?: readonly Fields[];
}

export function edited(table: Table, { columns = [], changed = new Map(), added = [] }: Edits): string {
  const { text, csv, headLine } = table;
  const more = columns.filter((name) => !has(table, name));
  const mark = delimiters[csv.delimiter];
  const heads = placesOfColumns(table, more);
  const lines = lineStarts(text);
  const rowLines = csv.rows.map(({ line }) => line);
  const head = placeOf(text, lines, headLine, rowLines[0]);
  const parts = [text.slice(0, head.end), ...more.map((name) => mark + name)];
  let at = head.end;
  let last = head.end;
  for (const [i, line] of rowLines.entries()) {
    const { begin, end } = placeOf(text, lines, line, rowLines[i + 1]);
    const fields = changed.get(i);
    last = end;
    if (fields) parts.push(text.slice(at, begin), changedLine(table, heads, i, fields));
    else if (more.length > 0) parts.push(text.slice(at, end), mark.repeat(more.length));
    else continue;
    at = end;
  }
  if (added.length === 0) return [...parts, text.slice(at)].join("");
  const { newline } = csv;
  const rows = added.map((fields) => newline + newLine(table, heads, fields));
  return [...parts, text.slice(at, last), ...rows, newline].join("");
}

/** The rows with one change, or the problem that kept them from being read. */
export function changedRows(
  item: ReadingItem,
  text: string,
  change: (table: Table) => Edits,
): string | Problem {
  const table = openTable(item, text);
  return isProblem(table) ? table : edited(table, change(table));
}

/** The column of each heading, in order; none for a heading that means none. */
const placesOfColumns = (
  { columns, csv }: Table,
  more: readonly string[],
): readonly (string | undefined)[] => [
  ...csv.headings.map((_, at) => columns.find((column) => column.at === at)?.name),
  ...more,
];

function changedLine(
  table: Table,
  heads: readonly (string | undefined)[],
  row: number,
  changed: Fields,
): string {
  const found = table.csv.rows[row];
  const fields = heads.map((name, i) =>
    name !== undefined && Object.hasOwn(changed, name)
      ? asWritten(table, name, changed)
      : (found?.fields[i] ?? ""),
  );
  return lineOf(fields, table.csv.delimiter, found?.quoted);
}

/** A row in the manner of the table, its fields in this order of columns. */
export const newLine = (table: Table, heads: readonly (string | undefined)[], fields: Fields): string =>
  lineOf(
    heads.map((name) => asWritten(table, name, fields)),
    table.csv.delimiter,
  );

/** Numbers take the decimal mark of the table. */
function asWritten({ csv, item }: Table, name: string | undefined, fields: Fields): string {
  const text = (name === undefined ? undefined : fields[name]) ?? "";
  return csv.decimal === "comma" && name !== undefined && isQuantity(item.columns[name])
    ? text.replace(/^([-+\u2212]?\d*)\.(\d)/, "$1,$2")
    : text;
}

/** One line in the manner of a table. */
export function lineOf(
  fields: readonly string[],
  delimiter: Delimiter,
  quoted: readonly boolean[] = [],
): string {
  const mark = delimiters[delimiter];
  // A row of one empty field would be a blank line, which says nothing.
  if (fields.length === 1 && fields[0] === "") return '""';
  return fields
    .map((field, i) =>
      quoted[i] || field.includes(mark) || /["\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field,
    )
    .join(mark);
}

/** The heading and each row as they stand, without their line ends. */
export function linesNow({ text, csv, headLine }: Table): {
  readonly head: string;
  readonly rows: readonly string[];
} {
  const starts = lineStarts(text);
  const lines = [headLine, ...csv.rows.map(({ line }) => line)];
  const [head = "", ...rows] = lines.map((line, i) => {
    const { begin, end } = placeOf(text, starts, line, lines[i + 1]);
    return text.slice(begin, end);
  });
  return { head, rows };
}

/** Where what begins on a line stands in the text, without its end and the blank lines behind it. */
function placeOf(text: string, starts: readonly number[], line: number, next: number | undefined) {
  const begin = starts[line - 1] ?? text.length;
  const end = next === undefined ? text.length : (starts[next - 1] ?? text.length);
  return { begin, end: begin + blankEnd(text.slice(begin, end), isSpace) };
}

const isSpace = (character: string): boolean => character !== "\n" && character.trim() === "";

function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  return starts;
}
