// The rows of a reading as they stand in the page, and the text of rows put into them in the same manner:
// delimiter, decimal mark and order of the columns stay, and rows that are not touched keep every byte.
import { blankEnd } from "../../document/blank-end.ts";
import { headingFor, kindOfQuantity } from "../../document/column-heading.ts";
import { delimiters } from "../../document/csv.ts";
import { isBare } from "../../document/decimal-mark.ts";
import type { DecimalMark, Delimiter, ReadingItem } from "../../document/item.ts";
import { type Problem, problem } from "../../problem.ts";
import type { MappedColumn } from "./mapped-columns.ts";
import { isOpen, type OpenTable, openTable } from "./open-table.ts";

interface Place {
  readonly begin: number;
  readonly end: number;
}

export interface RowsNow extends OpenTable {
  readonly text: string;
  /** By the line on which a row starts. */
  readonly places: ReadonlyMap<number, Place>;
}

/** A reading without any text yet takes its headings from the file. */
export function rowsNow(item: ReadingItem, file: OpenTable): RowsNow | Problem {
  const text = item.rows.trim() === "" ? begun(item, file.columns) : item.rows;
  const { delimiter, decimal } = item;
  const opened = openTable(item, text, { delimiter, decimal, isFile: false });
  if (isOpen(opened)) return { ...opened, text, places: placesOf(opened, text) };
  return (opened[0] ?? problem({ code: "csv", what: item.name, must: "be a table" })).at(item.name);
}

function begun(item: ReadingItem, columns: readonly MappedColumn[]): string {
  const heads = Object.entries(item.columns).map(([name, kind]) => {
    const found = columns.find((column) => column.name === name);
    return found ? headingOf(found) : headingFor(name, kind);
  });
  return `${heads.join(delimiters[item.delimiter ?? "comma"])}\n`;
}

export const headingOf = ({ name, unit }: MappedColumn): string =>
  unit === undefined || unit.text === "1" ? name : `${name}/${unit.text}`;

/** Where each line of the table stands in the text, without its end. */
function placesOf({ csv, headLine }: OpenTable, text: string): Map<number, Place> {
  const starts = [0, 0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) starts.push(at + 1);
  const lines = [headLine, ...csv.rows.map((row) => row.line)];
  return new Map(
    lines.map((line, i) => {
      const begin = starts[line] ?? text.length;
      const next = lines[i + 1];
      const end = next === undefined ? text.length : (starts[next] ?? text.length);
      return [line, { begin, end: begin + blankEnd(text.slice(begin, end), isSpace) }];
    }),
  );
}

const isSpace = (character: string): boolean => character !== "\n" && character.trim() === "";

/** The field of a file's row as the page writes it: with its unit where the page's heading has another. */
export function fieldText(text: string, from: MappedColumn, to: MappedColumn, decimal: DecimalMark): string {
  if (text === "" || kindOfQuantity(to.kind) === undefined) return text;
  const { unit } = from;
  const other = unit !== undefined && unit.text !== "1" && unit.text !== to.unit?.text;
  const whole = isBare(text) && other ? `${text} ${unit.text}` : text;
  return decimal === "comma" ? whole.replace(/^([-+\u2212]?\d*)\.(\d)/, "$1,$2") : whole;
}

/** One line in the manner of the table. */
export function lineOf(fields: readonly string[], delimiter: Delimiter): string {
  const mark = delimiters[delimiter];
  // A row of one empty field would be a blank line, which says nothing.
  if (fields.length === 1 && fields[0] === "") return '""';
  const quoted = (field: string) =>
    field.includes(mark) || /["\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field;
  return fields.map(quoted).join(mark);
}

/** The text with some rows written anew and others added behind. */
export function withRows(now: RowsNow, anew: ReadonlyMap<number, string>, added: readonly string[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const [line, text] of [...anew].sort(([a], [b]) => a - b)) {
    const { begin, end } = placeIn(now, line);
    parts.push(now.text.slice(at, begin), text);
    at = end;
  }
  parts.push(now.text.slice(at));
  const kept = parts.join("");
  if (added.length === 0) return kept;
  const end = now.csv.newline;
  return `${kept.slice(0, blankEnd(kept, isSpace))}${end}${added.map((line) => line + end).join("")}`;
}

export const lineText = (now: RowsNow, line: number): string => {
  const { begin, end } = placeIn(now, line);
  return now.text.slice(begin, end);
};

function placeIn({ places }: RowsNow, line: number): Place {
  const found = places.get(line);
  if (!found) throw new Error(`line ${line} is no row of the table`);
  return found;
}
