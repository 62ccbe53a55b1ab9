// CSV text as rows of a reading: each field with its typed text and with its exact worth, so that 25.010 mm
// and 25.01 mm are known to be the same reading. Used for the page's own rows and for a file.
import { kindOfQuantity, meantBy, unitHint } from "../../document/column-heading.ts";
import { type CsvAnswers, type CsvTable, readCsv } from "../../document/csv.ts";
import { isBare, pointed } from "../../document/decimal-mark.ts";
import type { ReadingItem } from "../../document/item.ts";
import { guarded } from "../../document/write-csv.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { Kind } from "../../units/kind.ts";
import { oneValue } from "../../units/quantity.ts";
import { type MappedColumn, mapColumns } from "./mapped-columns.ts";
import { missingColumns } from "./missing-columns.ts";

export interface Field {
  /** As typed, with a point for the decimal mark. */
  readonly text: string;
  /** The same for fields of the same worth, whatever their unit and digits; empty where nothing stands. */
  readonly worth: string;
}

export interface TableRow {
  readonly line: number;
  readonly fields: ReadonlyMap<string, Field>;
}

export interface OpenTable {
  readonly csv: CsvTable;
  readonly headLine: number;
  readonly columns: readonly MappedColumn[];
  readonly leftOut: readonly string[];
  readonly rows: readonly TableRow[];
}

export interface Opening extends Pick<CsvAnswers, "delimiter" | "decimal"> {
  /** A file may hold what a page never does: quote marks set before a field, marks of the other kind. */
  readonly isFile: boolean;
  /** Every column has to be there, since nothing of the reading is kept beside the file. */
  readonly whole?: boolean;
}

export function openTable(item: ReadingItem, text: string, how: Opening): OpenTable | readonly Problem[] {
  const { table: csv, problems } = readCsv(text, {
    delimiter: how.delimiter,
    decimal: how.decimal,
    isFile: how.isFile,
    isNumeric: (heading) => kindOfQuantity(meantBy(heading, item.columns)?.kind) !== undefined,
  });
  if (!csv) return problems;
  const headLine = headLineOf(text);
  const { columns, leftOut, faults } = mapColumns(item, csv.headings, headLine);
  if (faults.length > 0) return faults;
  const missing = how.isFile ? missingColumns(item, columns, csv, { headLine, whole: how.whole }) : undefined;
  if (missing) return [missing];
  const wrong: Problem[] = [];
  const cells = columns.map((column) => readFields(column, csv, how.isFile, wrong));
  if (wrong.length > 0) return wrong.toSorted((a, b) => lineIn(a) - lineIn(b));
  const rows = csv.rows.map(({ line }, row) => ({
    line,
    fields: new Map(columns.map(({ name }, i) => [name, cells[i]?.[row] ?? nothing])),
  }));
  return { csv, headLine, columns, leftOut, rows };
}

export const isOpen = (opened: OpenTable | readonly Problem[]): opened is OpenTable => "csv" in opened;

const nothing: Field = { text: "", worth: "" };

const lineIn = ({ what }: Problem): number => Number(/^line (\d+)/.exec(what)?.[1] ?? 0);

/** The first line on which anything stands. */
const headLineOf = (text: string): number => {
  const before = /^(?:[^\S\n]*\n)*/.exec(text.replace(/^\uFEFF/, ""))?.[0] ?? "";
  return before.split("\n").length;
};

/** A quote mark that our writer set before a field, so that a grid program does not run it, is taken off. */
const unguarded = (text: string): string =>
  text.startsWith("'") && guarded(text.slice(1)) === text ? text.slice(1) : text;

function readFields(
  column: MappedColumn,
  { rows, decimal }: CsvTable,
  isFile: boolean,
  wrong: Problem[],
): Field[] {
  const kind = kindOfQuantity(column.kind);
  const known = new Map<string, Field>();
  let unitMissed = false;
  return rows.map(({ fields, line }) => {
    const typed = (fields[column.at] ?? "").trim();
    const text = isFile ? unguarded(typed) : typed;
    // a text that begins with such a quote mark of its own cannot be told from one that was given it
    if (kind === undefined || text === "") return { text, worth: unguarded(text) };
    const before = known.get(text);
    if (before) return before;
    if (isBare(text) && column.unit === undefined && kind !== "ratio" && kind !== "count") {
      if (!unitMissed) wrong.push(noUnit(column, kind, text, line));
      unitMissed = true;
      return nothing;
    }
    const number = pointed(text, decimal);
    const read = isProblem(number) ? number : worthOf(number, column);
    if (isProblem(read)) {
      wrong.push(read.with({ what: `line ${line}, ${column.name}`, got: read.got ?? text }));
      return nothing;
    }
    known.set(text, read);
    return read;
  });
}

function worthOf(text: string, { kind, unit }: MappedColumn): Field | Problem {
  const read = oneValue(isBare(text) && unit ? `${text} ${unit.text}` : text, kindOfQuantity(kind));
  if (isProblem(read)) return read.got === undefined ? read.with({ got: text }) : read;
  const { n, d, pi } = read.exact;
  return { text, worth: `${n}/${d}/${pi}` };
}

const noUnit = ({ name, heading }: MappedColumn, kind: Kind, text: string, line: number): Problem =>
  problem({
    code: "no-unit",
    what: `line ${line}, ${name}`,
    got: `${text} without a unit, under the heading ${heading}`,
    must: "have its unit in the heading",
    hint: unitHint(name, kind),
  });
