// A reading item → typed columns in SI. A blank is missing; every field keeps its text and its line.
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Kind } from "../units/kind.ts";
import { oneValue, type Quantity } from "../units/quantity.ts";
import { type Unit, unit } from "../units/unit.ts";
import { isQuantity, meantBy, unitHint } from "./column-heading.ts";
import { type CsvReading, type CsvTable, readCsv } from "./csv.ts";
import { isBare, pointed } from "./decimal-mark.ts";
import type { ColumnKind, DecimalMark, ReadingItem } from "./item.ts";
import { toCamelCase } from "./names.ts";

interface ReadingColumn {
  readonly name: string;
  readonly kind: ColumnKind;
  /** From the heading; a field may still carry its own. */
  readonly unit?: Unit;
  /** As typed, spaces at the ends aside; undefined where nothing stands. */
  readonly texts: readonly (string | undefined)[];
  /** SI values of a column of quantities; undefined where missing or refused. */
  readonly values?: readonly (number | undefined)[];
}

export interface ReadingTable {
  readonly columns: Readonly<Record<string, ReadingColumn>>;
  /** For each row its line: in the page file where that is known, else in the table. */
  readonly lines: readonly number[];
  readonly problems: readonly Problem[];
}

/** Columns that any table may have: that a row is set aside, why, and who said so. */
export const remarkColumns: Readonly<Record<string, ColumnKind>> = {
  state: "text",
  reason: "text",
  by: "text",
};

/** The columns named in the item, and those remarks that stand among the headings. */
function columnsOf(item: ReadingItem, heads: Heads): readonly (readonly [string, ColumnKind])[] {
  const remarks = Object.entries(remarkColumns).filter(
    ([name]) => !Object.hasOwn(item.columns, name) && heads.has(name),
  );
  return [...Object.entries(item.columns), ...remarks];
}

/** The rows of a page as they are written. */
export const readRows = ({ columns, delimiter, decimal }: ReadingItem, rows: string): CsvReading =>
  readCsv(rows, { delimiter, decimal, isNumeric: (heading) => isQuantity(meantBy(heading, columns)?.kind) });

export function readingTable(item: ReadingItem, file?: string): ReadingTable {
  const { table, problems } = readRows(item, item.rows);
  const shift = item.rowsLine === undefined ? 0 : item.rowsLine - 1;
  const where = (line?: number) =>
    file === undefined || item.rowsLine === undefined
      ? item.name
      : `${file}:${line === undefined ? item.place.line : line + shift}:1`;
  const lineOf = (p: Problem) => Number(/^line (\d+)/.exec(p.what)?.[1] ?? 1);
  if (!table) return { columns: {}, lines: [], problems: problems.map((p) => p.at(where(lineOf(p)))) };

  const heads = headsOf(table, item.columns);
  const found: Problem[] = [...strangeHeadings(item, table, heads)];
  const columns: Record<string, ReadingColumn> = {};
  for (const [name, kind] of columnsOf(item, heads)) {
    const column = readColumn({ name, kind, heads, table, where });
    if (isProblem(column)) {
      found.push(column);
      continue;
    }
    columns[name] = column.column;
    found.push(...column.problems);
  }
  const lines = table.rows.map((row) => row.line + shift);
  return { columns, lines, problems: found.map((p) => p.at(where())) };
}

interface Found {
  readonly at: number;
  readonly unit: string | undefined;
}

/** By the column that a heading means; the first one counts. */
type Heads = ReadonlyMap<string, Found>;

function headsOf({ headings }: CsvTable, own: ReadingItem["columns"]): Heads {
  const columns = { ...remarkColumns, ...own };
  const heads = new Map<string, Found>();
  for (const [at, heading] of headings.entries()) {
    const meant = meantBy(heading, columns);
    if (meant && !heads.has(meant.name)) heads.set(meant.name, { at, unit: meant.unit });
  }
  return heads;
}

function strangeHeadings(item: ReadingItem, table: CsvTable, heads: Heads): readonly Problem[] {
  const known = new Set(columnsOf(item, heads).map(([name]) => heads.get(name)?.at));
  return table.headings.flatMap((heading, at) => {
    if (known.has(at)) return [];
    const name = toCamelCase(heading.name) || "columnName";
    return [
      problem({
        code: "unknown-column",
        what: `column ${heading.text.trim()} of ${item.name}`,
        must: "be named under columns",
        hint: `add ${name}: text, or its kind, to columns`,
        suggestions: [`${name}: text`],
      }),
    ];
  });
}

interface ColumnTask {
  readonly name: string;
  readonly kind: ColumnKind;
  readonly heads: Heads;
  readonly table: CsvTable;
  readonly where: (line?: number) => string;
}

function readColumn(task: ColumnTask): { column: ReadingColumn; problems: readonly Problem[] } | Problem {
  const { name, kind, table } = task;
  const found = task.heads.get(name);
  if (!found) {
    const got = table.headings.map((heading) => heading.text.trim()).join(", ");
    return problem({
      code: "missing-column",
      what: `column ${name}`,
      got: `headings ${got}`,
      must: "stand in the first line of rows",
      hint: kind === "tag" || kind === "text" ? `write the heading ${name}` : unitHint(name, kind),
    });
  }
  const texts = table.rows.map((row) => {
    const text = (row.fields[found.at] ?? "").trim();
    return text === "" ? undefined : text;
  });
  if (kind === "tag" || kind === "text") return { column: { name, kind, texts }, problems: [] };
  const inHeading = found.unit === undefined ? undefined : unit(found.unit, kind);
  if (isProblem(inHeading)) return inHeading;
  if (
    inHeading === undefined &&
    kind !== "ratio" &&
    kind !== "count" &&
    texts.some((text) => text !== undefined && isBare(text))
  )
    return noUnit(name, kind);
  const { values, problems } = readValues(texts, task, kind, inHeading);
  return { column: { name, kind, ...(inHeading ? { unit: inHeading } : {}), texts, values }, problems };
}

const noUnit = (name: string, kind: Kind): Problem =>
  problem({
    code: "no-unit",
    what: `column ${name}`,
    got: "numbers without a unit",
    must: "carry its unit in the heading",
    hint: unitHint(name, kind),
  });

function readValues(
  texts: readonly (string | undefined)[],
  { name, table, where }: ColumnTask,
  kind: Kind,
  inHeading: Unit | undefined,
) {
  const problems: Problem[] = [];
  const known = new Map<string, number | undefined>();
  const values = texts.map((text, i) => {
    if (text === undefined) return undefined;
    if (known.has(text)) return known.get(text);
    const read = readField(text, table.decimal, kind, inHeading);
    const line = table.rows[i]?.line ?? 0;
    if (isProblem(read)) problems.push(refusedField(read, text, `${name} on line ${line}`, where(line)));
    else known.set(text, read.si);
    return isProblem(read) ? undefined : read.si;
  });
  return { values, problems };
}

const refusedField = (
  { code, got = "", must, why, hint, suggestions }: Problem,
  text: string,
  what: string,
  where: string,
) => problem({ code, what, where, got: got || text, must, why, hint, suggestions });

function readField(
  text: string,
  decimal: DecimalMark,
  kind: Kind,
  inHeading: Unit | undefined,
): Quantity | Problem {
  const number = pointed(text, decimal);
  if (isProblem(number)) return number;
  return oneValue(inHeading && isBare(text) ? `${number} ${inHeading.text}` : number, kind);
}
