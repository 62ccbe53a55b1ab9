// What a file would do to a reading, worked out before anything is changed: all of it, or nothing.

import { isQuantity, meantBy } from "../../document/column-heading.ts";
import { readCsv } from "../../document/csv.ts";
import type { DecimalMark, Delimiter, ReadingItem } from "../../document/item.ts";
import { keyColumns } from "../../document/place-words.ts";
import { withRemarkColumns } from "../../document/remark-columns.ts";
import {
  type Fields,
  fieldsOf,
  openRows,
  type RowsText,
  remarks,
  withAll,
  withRemarks,
} from "../../document/rows-text.ts";
import { readingValue } from "../../engine/reading.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { mostCharacters, tooLarge } from "./file-text.ts";
import { type ColumnAnswers, columnFaults, type ImportColumn, importColumns } from "./import-columns.ts";
import { type FileRow, fileRows } from "./import-rows.ts";

export interface ImportAnswers extends ColumnAnswers {
  readonly delimiter?: Delimiter | undefined;
  readonly decimal?: DecimalMark | undefined;
  /** Why rows of the file correct rows that are there. */
  readonly reason: string;
}

export type Fate = "new" | "fills a blank" | "there already" | "corrects";

export interface ImportPlan {
  /** "comma between fields, decimal point" */
  readonly read: string;
  readonly columns: readonly ImportColumn[];
  readonly rows: readonly (FileRow & { readonly fate: Fate })[];
  readonly skipped: readonly { readonly line: number; readonly why: string }[];
  readonly faults: readonly Problem[];
  /** Corrections that still want a reason. */
  readonly wantReason: number;
  /** The rows of the reading afterwards; none while anything hinders. */
  readonly text: string | undefined;
  /** Readings that would be odd. */
  readonly odd: number;
}

const nothing: Omit<ImportPlan, "faults"> = {
  read: "",
  columns: [],
  rows: [],
  skipped: [],
  wantReason: 0,
  text: undefined,
  odd: 0,
};

export function planImport(
  item: ReadingItem,
  current: string,
  file: string,
  answers: ImportAnswers,
): ImportPlan {
  const large = tooLarge(file, "table");
  if (large) return { ...nothing, faults: [large] };
  const own = openRows(item, current);
  if (isProblem(own)) return { ...nothing, faults: [own] };
  const roomy = withRemarkColumns(item, remarks);
  const { table, problems } = readCsv(file, {
    delimiter: answers.delimiter,
    decimal: answers.decimal,
    isFile: true,
    isNumeric: (head) => {
      const column = answers.columns[head.text] ?? meantBy(head, roomy.columns)?.name;
      return column === undefined || isQuantity(roomy.columns[column]);
    },
  });
  if (!table) return { ...nothing, faults: problems };
  const read = `${table.delimiter} between fields, decimal ${table.decimal}`;
  const columns = importColumns(roomy, table, answers);
  const badColumns = columnFaults(item, columns);
  if (badColumns.length > 0) return { ...nothing, read, columns, faults: badColumns };
  const { rows, skipped, faults } = fileRows(item, table, columns, own);
  if (faults.length > 0) return { ...nothing, read, columns, skipped, faults };
  return { ...outcome(item, own, rows, answers.reason), read, columns, skipped };
}

interface Outcome {
  readonly rows: readonly (FileRow & { readonly fate: Fate })[];
  readonly faults: readonly Problem[];
  readonly wantReason: number;
  readonly text: string | undefined;
  readonly odd: number;
}

function outcome(item: ReadingItem, there: RowsText, rows: readonly FileRow[], reason: string): Outcome {
  const placed = fates(item, there, rows);
  const own = withRoom(item, there, placed);
  if (isProblem(own)) return { rows: placed, faults: [own], wantReason: 0, text: undefined, odd: 0 };
  const corrections = placed.filter(
    ({ fate, fields }) => fate === "corrects" && (fields["reason"] ?? "") === "",
  );
  const wantReason = reason.trim() === "" ? corrections.length : 0;
  const faults = nothingNew(item, own, placed);
  if (faults.length > 0) return { rows: placed, faults, wantReason: 0, text: undefined, odd: 0 };
  const changed = new Map<number, Fields>();
  const added: Fields[] = [];
  for (const { fate, row, fields } of placed) {
    if (fate === "there already") continue;
    if (fate === "fills a blank" && row !== undefined) changed.set(row, filledFields(own, row, fields));
    else if (fate === "corrects") {
      const before = row === undefined ? {} : { ...fieldsOf(own, row), state: "" };
      added.push({ ...before, reason: reason.trim() || "asked", ...withoutBlanks(fields) });
    } else added.push(fields);
  }
  const text = withAll(own, changed, added);
  const value = readingValue(item, text, "file");
  if (isProblem(value)) return { rows: placed, faults: [value], wantReason, text: undefined, odd: 0 };
  if (text.length > mostCharacters) {
    const large = tooLarge(text, item.name);
    return { rows: placed, faults: large ? [large] : [], wantReason, text: undefined, odd: 0 };
  }
  const odd = value.type === "table" ? value.states.filter((state) => state === "odd").length : 0;
  return { rows: placed, faults: [], wantReason, text: wantReason > 0 ? undefined : text, odd };
}

const withoutBlanks = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, text]) => text !== ""));

const filledFields = (own: RowsText, row: number, fields: Fields): Fields => {
  const before = fieldsOf(own, row);
  return Object.fromEntries(
    Object.entries(fields).filter(([name, text]) => text !== "" && before[name] === ""),
  );
};

type Placed = FileRow & { readonly fate: Fate; readonly row: number | undefined };

function fates(item: ReadingItem, own: RowsText, rows: readonly FileRow[]): readonly Placed[] {
  const keys = keyColumns(item);
  const idOf = (fields: Fields) => keys.map((key) => fields[key] ?? "").join("·");
  const last = new Map<string, number>();
  if (keys.length > 0) for (const row of own.table.rows.keys()) last.set(idOf(fieldsOf(own, row)), row);
  const met = new Set<string>();
  return rows.map((row): Placed => {
    const id = idOf(row.fields);
    const at = keys.length > 0 ? last.get(id) : undefined;
    const again = keys.length > 0 && met.has(id);
    met.add(id);
    if (again) return { ...row, fate: "corrects", row: undefined };
    if (at === undefined) return { ...row, fate: "new", row: undefined };
    const before = fieldsOf(own, at);
    const told = Object.entries(row.fields).filter(([, text]) => text !== "");
    if (told.every(([name, text]) => before[name] === text))
      return { ...row, fate: "there already", row: at };
    const onlyBlanks = told.every(([name, text]) => before[name] === text || before[name] === "");
    return { ...row, fate: onlyBlanks ? "fills a blank" : "corrects", row: at };
  });
}

/** A column of remarks comes with the first row that says something in it, that of reasons with a correction. */
function withRoom(item: ReadingItem, there: RowsText, placed: readonly Placed[]): RowsText | Problem {
  const wanted = remarks.filter(
    (name) =>
      placed.some(({ fields }) => (fields[name] ?? "") !== "") ||
      (name === "reason" && placed.some(({ fate }) => fate === "corrects")),
  );
  if (wanted.length === 0) return there;
  const text = withRemarks(item, there.text, wanted);
  return isProblem(text) ? text : openRows(item, text);
}

/** The same file a second time changes nothing, and says so. */
function nothingNew(item: ReadingItem, own: RowsText, placed: readonly Placed[]): readonly Problem[] {
  const all = own.table.rows.length;
  const tail = keyColumns(item).length === 0 && placed.length > 0 && placed.length <= all;
  const repeated =
    tail &&
    placed.every(({ fields }, i) => {
      const before = fieldsOf(own, all - placed.length + i);
      return Object.entries(fields).every(([name, text]) => before[name] === text);
    });
  if (!repeated && placed.some(({ fate }) => fate !== "there already")) return [];
  return [
    problem({
      code: "nothing-new",
      what: "table",
      got: placed.length === 0 ? "no reading" : `${placed.length} readings that are all there already`,
      must: "bring something new",
    }),
  ];
}
