// The rows of a file as rows of the reading: what each would add, and by line what keeps it out.
import { unitHint } from "../../document/column-heading.ts";
import type { CsvTable } from "../../document/csv.ts";
import { isBare, pointed } from "../../document/decimal-mark.ts";
import type { ReadingItem } from "../../document/item.ts";
import { keyColumns, placeWords } from "../../document/place-words.ts";
import type { Fields, RowsText } from "../../document/rows-text.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { oneValue } from "../../units/quantity.ts";
import { askedColumns } from "../readings/places.ts";
import type { ImportColumn } from "./import-columns.ts";

export interface FileRow {
  /** Line of the file. */
  readonly line: number;
  readonly fields: Fields;
}

export interface FileRows {
  readonly rows: readonly FileRow[];
  readonly skipped: readonly { readonly line: number; readonly why: string }[];
  readonly faults: readonly Problem[];
}

export function fileRows(
  item: ReadingItem,
  table: CsvTable,
  columns: readonly ImportColumn[],
  own: RowsText,
): FileRows {
  const rows: FileRow[] = [];
  const faults: Problem[] = [];
  const skipped = table.blankLines.map((line) => ({ line, why: "blank" }));
  for (const row of table.rows) {
    const common: Record<string, string> = {};
    const single: { readonly place: Fields; readonly fields: Fields }[] = [];
    for (const column of columns) {
      if (column.column === undefined) continue;
      const text = fieldText((row.fields[column.at] ?? "").trim(), column, table, own);
      if (isProblem(text)) {
        faults.push(text.with({ what: `line ${row.line}, ${column.heading}` }));
        continue;
      }
      if (column.place) single.push({ place: column.place, fields: { [column.column]: text } });
      else common[column.column] = text;
    }
    const made =
      single.length > 0 ? single.map(({ place, fields }) => ({ ...common, ...place, ...fields })) : [common];
    const read = made.filter((fields) => holdsSomething(item, fields));
    if (read.length === 0) skipped.push({ line: row.line, why: "nothing read on it" });
    rows.push(...read.map((fields) => ({ line: row.line, fields })));
  }
  return { rows, skipped, faults: [...faults, ...keyFaults(item, rows)] };
}

/** A row with nothing but its keys says nothing; a blank is missing, never zero. */
function holdsSomething(item: ReadingItem, fields: Fields): boolean {
  const keys = new Set(keyColumns(item));
  const asked = askedColumns(item);
  const told = asked.length > 0 ? [...asked, "reason", "state"] : Object.keys(fields);
  return told.some((name) => (asked.length === 0 || !keys.has(name)) && (fields[name] ?? "") !== "");
}

/** Checked as a quantity, and written with its unit where the reading has another. */
function fieldText(
  text: string,
  { column, kind, unit: unitText, heading }: ImportColumn,
  table: CsvTable,
  own: RowsText,
): string | Problem {
  if (kind === undefined || text === "") return text;
  const number = pointed(text, table.decimal);
  if (isProblem(number)) return number;
  if (!isBare(text)) {
    const found = oneValue(number, kind);
    return isProblem(found) ? found : number;
  }
  if (unitText === undefined && kind !== "ratio" && kind !== "count")
    return problem({
      code: "no-unit",
      what: heading,
      got: `${text} without a unit`,
      must: "have one",
      hint: `choose the unit of ${heading} below, or ${unitHint(column ?? heading, kind)}`,
    });
  const found = oneValue(unitText === undefined ? number : `${number} ${unitText}`, kind);
  if (isProblem(found)) return found;
  const same = unitText === undefined || own.units[column ?? ""] === unitText;
  return same ? number : `${number} ${unitText}`;
}

const idOf = (keys: readonly string[], fields: Fields): string =>
  keys.map((key) => fields[key] ?? "").join("·");

function keyFaults(item: ReadingItem, rows: readonly FileRow[]): readonly Problem[] {
  const keys = keyColumns(item);
  const first = new Map<string, number>();
  const faults: Problem[] = [];
  for (const { line, fields } of rows) {
    const blank = keys.find((key) => (fields[key] ?? "") === "");
    if (blank !== undefined) {
      faults.push(
        problem({
          code: "no-key",
          what: `line ${line}`,
          got: `no ${blank}`,
          must: "say which reading it is",
        }),
      );
      continue;
    }
    const strange = keys.find((key) => item.expect?.[key] && !item.expect[key].includes(fields[key] ?? ""));
    if (strange !== undefined) faults.push(notExpected(item, strange, fields, line, rows));
    const id = idOf(keys, fields);
    const before = first.get(id);
    if (keys.length > 0 && before !== undefined && (fields["reason"] ?? "") === "")
      faults.push(
        problem({
          code: "duplicate-reading",
          what: `line ${line}`,
          got: `${placeWords(
            item,
            keys.map((key) => [key, fields[key] ?? ""]),
          )} again, first in line ${before}`,
          must: "stand once, or say in a column reason why it corrects the first",
        }),
      );
    if (before === undefined) first.set(id, line);
  }
  return faults;
}

function notExpected(
  item: ReadingItem,
  key: string,
  fields: Fields,
  line: number,
  rows: readonly FileRow[],
): Problem {
  const expected = item.expect?.[key] ?? [];
  const swapped = Object.keys(fields).find(
    (other) =>
      other !== key && rows.length > 1 && rows.every((row) => expected.includes(row.fields[other] ?? "")),
  );
  return problem({
    code: "not-expected",
    what: `line ${line}`,
    got: `${key} ${fields[key]}`,
    must: `be one of ${expected.slice(0, 12).join(", ")}${expected.length > 12 ? ", …" : ""}`,
    hint:
      swapped === undefined ? undefined : `the column ${swapped} holds these: are the two columns swapped?`,
  });
}
