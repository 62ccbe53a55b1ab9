// The rows of a file as rows of the reading, in the manner of the table they go into: fields with their unit where the
// table has another, tags as the page spells them, one row for each place where headings name places.
import { isQuantity } from "../document/column-heading.ts";
import type { CsvTable } from "../document/csv.ts";
import { pointed } from "../document/decimal-mark.ts";
import { keyColumns } from "../document/place-words.ts";
import { isProblem, type Problem } from "../problem.ts";
import { type ImportColumn, openColumn } from "./import-columns.ts";
import { isWorkedOut } from "./remarks.ts";
import {
  type Column,
  columnNamed,
  type Fields,
  type Row,
  rowOf,
  type Table,
  unguarded,
  withUnit,
} from "./table.ts";

export interface FileRows {
  readonly rows: readonly Row[];
  readonly skipped: readonly Skipped[];
  readonly faults: readonly Problem[];
  /** "Along as along": tags of another case than the page's. */
  readonly readAs: readonly string[];
}

export interface Skipped {
  readonly line: number;
  readonly why: string;
}

export const nothingRead = "no reading stands on it";

interface Source {
  readonly from: Column;
  readonly to: Column;
  readonly place: Fields | undefined;
}

/** `to` are the columns of the table that the rows go into. */
export function fileRows(
  table: Table,
  csv: CsvTable,
  columns: readonly ImportColumn[],
  to: readonly Column[],
): FileRows {
  const sources = columns.flatMap((column): Source[] => {
    const from = column.column === undefined ? undefined : openColumn(column);
    if (!from || isProblem(from)) return [];
    return [{ from, to: columnNamed({ columns: to }, from.name) ?? from, place: column.place }];
  });
  const tags = tagsOf(table);
  const rows: Row[] = [];
  const faults: Problem[] = [];
  const skipped = csv.blankLines.map((line): Skipped => ({ line, why: "nothing stands on it" }));
  const said = new Set<string>(); // a unit that is missed is told once for its column
  for (const { line, fields } of csv.rows) {
    const common: Record<string, string> = {};
    const placed: Fields[] = [];
    for (const { from, to: own, place } of sources) {
      const text = fieldText(fields[from.at] ?? "", from, own, csv);
      if (isProblem(text)) {
        if (text.code !== "no-unit" || !said.has(from.heading))
          faults.push(text.with({ what: `line ${line}, ${place ? from.heading : from.name}` }));
        said.add(from.heading);
      } else if (!place) common[from.name] = tags.read(from.name, text);
      else if (text !== "") placed.push({ ...place, [from.name]: text });
    }
    const wide = sources.some(({ place }) => place);
    const made = wide ? placed.map((fields) => ({ ...common, ...fields })) : [common];
    if (made.length === 0) skipped.push({ line, why: nothingRead });
    for (const texts of made) rows.push(rowOf({ line, index: rows.length }, texts, to));
  }
  return { rows, skipped, faults, readAs: tags.readAs() };
}

/** Checked as a quantity, and written with its unit where the table has another. */
function fieldText(field: string, from: Column, to: Column, { decimal }: CsvTable): string | Problem {
  const typed = unguarded(field.trim());
  if (from.name === "state" && isWorkedOut(typed)) return "";
  if (typed === "" || !isQuantity(from.kind)) return typed;
  const number = pointed(typed, decimal);
  if (isProblem(number)) return number;
  const read = from.read(number);
  if (isProblem(read)) return read.with({ got: read.got?.replace(number, typed) ?? typed });
  return from.unit?.text === to.unit?.text ? number : withUnit(number, from.unit);
}

/** A tag that the page knows, or an earlier row, in this case or another is that tag. */
function tagsOf({ item, rows }: Table) {
  const names = [...new Set([...keyColumns(item), ...Object.keys(item.expect ?? {})])];
  const known = new Map(
    names.filter((name) => !isQuantity(item.columns[name])).map((name) => [name, tagBook()]),
  );
  for (const [name, book] of known) {
    for (const tag of item.expect?.[name] ?? []) book.add(tag);
    for (const { texts } of rows) book.add(texts[name] ?? "");
  }
  const others = new Set<string>();
  const read = (name: string, text: string): string => {
    const tag = known.get(name)?.read(text) ?? text;
    if (tag !== text) others.add(`${text} as ${tag}`);
    return tag;
  };
  return { read, readAs: () => [...others] };
}

function tagBook() {
  const exact = new Set<string>();
  const anyCase = new Map<string, string | undefined>();
  const add = (tag: string): void => {
    if (exact.has(tag)) return;
    exact.add(tag);
    const low = tag.toLowerCase();
    anyCase.set(low, anyCase.has(low) ? undefined : tag);
  };
  const read = (text: string): string => {
    if (exact.has(text)) return text;
    const tag = anyCase.get(text.toLowerCase());
    if (tag === undefined) add(text);
    return tag ?? text;
  };
  return { add, read };
}
