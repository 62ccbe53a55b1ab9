// A table of readings, read once: rows of fields by column, each with its typed text and with its exact worth, so that
// 25.010 mm and 25.01 mm are known to be the same reading. It is changed as data and written as text only at the end
// (edited.ts). The page's own rows; a file's are brought into the same form (file-rows.ts).
import { headingFor, isQuantity, kindOfQuantity, meantBy, unitHint } from "../document/column-heading.ts";
import { type CsvTable, delimiters } from "../document/csv.ts";
import { isBare, pointed } from "../document/decimal-mark.ts";
import type { ColumnKind, ReadingItem } from "../document/item.ts";
import { readRows, remarkColumns } from "../document/reading-table.ts";
import { guarded } from "../document/write-csv.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { oneValue } from "../units/quantity.ts";
import { type Unit, unit } from "../units/unit.ts";

/** Column → text of its field. */
export type Fields = Readonly<Record<string, string>>;

interface Field {
  /** The same for fields of the same worth, whatever their unit and digits; empty where nothing stands. */
  readonly worth: string;
  readonly si: number | undefined;
}

export interface Column {
  readonly name: string;
  readonly kind: ColumnKind;
  /** Place among the headings, from 0. */
  readonly at: number;
  /** As typed. */
  readonly heading: string;
  /** From the heading; a field may still carry its own. */
  readonly unit: Unit | undefined;
  /** What a text with a point for its decimal mark is worth in this column. */
  readonly read: (text: string) => Field | Problem;
}

export interface Row {
  /** Line of its text on which it starts. */
  readonly line: number;
  /** Place among the rows, from 0. */
  readonly index: number;
  /** As typed, with a point for the decimal mark. */
  readonly texts: Fields;
  readonly worth: Fields;
}

export interface Table {
  readonly item: ReadingItem;
  readonly text: string;
  readonly csv: CsvTable;
  /** Line of the headings. */
  readonly headLine: number;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly faults: readonly Problem[];
}

/** The rows of a page; of a reading that holds nothing yet its headings, in these units where they are known. */
export function openTable(
  item: ReadingItem,
  text: string,
  units: ReadonlyMap<string, Unit> = new Map(),
): Table | Problem {
  const known = { ...remarkColumns, ...item.columns };
  const begun = text.trim() === "" ? headingsOf(item, units) : text;
  const { table: csv, problems } = readRows(item, begun);
  if (!csv) return problems[0] ?? problem({ code: "csv", what: item.name, must: "be a table" });
  const faults: Problem[] = [];
  const columns = csv.headings.flatMap((heading, at): Column[] => {
    const meant = meantBy(heading, known);
    if (!meant) return [];
    const kind = kindOfQuantity(meant.kind);
    const found = kind === undefined || meant.unit === undefined ? undefined : unit(meant.unit, kind);
    if (isProblem(found)) faults.push(found);
    const { name } = meant;
    const inUnit = isProblem(found) ? undefined : found;
    return [columnOf({ name, kind: meant.kind, at, heading: heading.text.trim(), unit: inUnit })];
  });
  const rows = csv.rows.map(({ line, fields }, index) =>
    rowOf(
      { line, index },
      Object.fromEntries(columns.map(({ name, at, kind }) => [name, textOf(fields[at], kind, csv)])),
      columns,
    ),
  );
  return { item, text: begun, csv, headLine: headLineOf(begun), columns, rows, faults };
}

const headingsOf = (item: ReadingItem, units: ReadonlyMap<string, Unit>): string =>
  `${Object.entries(item.columns)
    .map(([name, kind]) => headingFor(name, kind, units.get(name)))
    .join(delimiters[item.delimiter ?? "comma"])}\n`;

function textOf(field: string | undefined, kind: ColumnKind, { decimal }: CsvTable): string {
  const typed = (field ?? "").trim();
  if (decimal === "point" || !isQuantity(kind)) return typed;
  const number = pointed(typed, decimal);
  return isProblem(number) ? typed : number;
}

/** The worth of its fields is worked out when it is first asked for: an entry by thumb never asks. */
export function rowOf(at: Pick<Row, "line" | "index">, texts: Fields, columns: readonly Column[]): Row {
  let known: Fields | undefined;
  return {
    ...at,
    texts,
    get worth() {
      known ??= Object.fromEntries(columns.map(({ name, read }) => [name, worthOf(texts[name] ?? "", read)]));
      return known;
    },
  };
}

function worthOf(text: string, read: Column["read"]): string {
  const found = read(text);
  return isProblem(found) ? text : found.worth;
}

/** Which fields of the page cannot be read; in an open page they stay as typed. */
export const fieldFaults = ({ columns, rows }: Table): readonly Problem[] =>
  rows.flatMap(({ line, texts }) =>
    columns.flatMap(({ name, read }) => {
      const found = read(texts[name] ?? "");
      return isProblem(found) ? [found.with({ what: `line ${line}, ${name}` })] : [];
    }),
  );

export function columnOf(parts: Omit<Column, "read">): Column {
  const known = new Map<string, Field | Problem>();
  const read = (text: string): Field | Problem => {
    const before = known.get(text);
    if (before) return before;
    const found = fieldOf(text, parts);
    known.set(text, found);
    return found;
  };
  return { ...parts, read };
}

function fieldOf(text: string, { name, kind, heading, unit: inUnit }: Omit<Column, "read">): Field | Problem {
  const of = kindOfQuantity(kind);
  // a text that begins with such a quote mark of its own cannot be told from one that was given it
  if (of === undefined || text === "") return { worth: unguarded(text), si: undefined };
  if (isBare(text) && inUnit === undefined && of !== "ratio" && of !== "count")
    return problem({
      code: "no-unit",
      what: name,
      got: `${text} without a unit, under the heading ${heading}`,
      must: "have its unit in the heading",
      hint: unitHint(name, of),
    });
  const read = oneValue(withUnit(text, inUnit), of);
  if (isProblem(read)) return read.got === undefined ? read.with({ got: text }) : read;
  const { n, d, pi } = read.exact;
  return { worth: `${n}/${d}/${pi}`, si: read.si };
}

/** A quote mark that our writer set before a field, so that a grid program does not run it, is taken off. */
export const unguarded = (text: string): string =>
  text.startsWith("'") && guarded(text.slice(1)) === text ? text.slice(1) : text;

/** "25.012 mm": with the unit of its column where the text names none of its own. */
export const withUnit = (text: string, inUnit: Unit | undefined): string =>
  isBare(text) && inUnit !== undefined && inUnit.text !== "1" ? `${text} ${inUnit.text}` : text;

export const headingOf = ({ name, kind, unit: inUnit }: Column): string =>
  inUnit === undefined ? name : headingFor(name, kind, inUnit);

export const columnNamed = ({ columns }: Pick<Table, "columns">, name: string): Column | undefined =>
  columns.find((column) => column.name === name);

export const has = (table: Table, name: string): boolean => columnNamed(table, name) !== undefined;

/** The first line on which anything stands. */
export const headLineOf = (text: string): number => {
  const before = /^(?:[^\S\n]*\n)*/.exec(text.replace(/^\uFEFF/, ""))?.[0] ?? "";
  return before.split("\n").length;
};
