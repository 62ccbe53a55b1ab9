// What a file would do to a reading, worked out before anything is changed: all of it, or nothing. The terminal and the
// page ask this one plan; each only words it and brings the answers.

import { isQuantity } from "../document/column-heading.ts";
import { type CsvTable, readCsv } from "../document/csv.ts";
import type { DecimalMark, Delimiter, ReadingItem } from "../document/item.ts";
import type { TableValue } from "../engine/line.ts";
import { readingValue } from "../engine/reading.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { edited } from "./edited.ts";
import { fileRows, type Skipped } from "./file-rows.ts";
import { mostCharacters, textFault, tooLarge } from "./file-text.ts";
import {
  type ColumnAnswers,
  headingFaults,
  type ImportColumn,
  importColumns,
  openColumn,
} from "./import-columns.ts";
import { missingColumns } from "./missing-columns.ts";
import { farOff } from "./odd.ts";
import { addedText, planAdded } from "./plan-added.ts";
import { planReplaced, replacedText, withUnitsOf } from "./plan-replaced.ts";
import { remarks, saying } from "./remarks.ts";
import {
  type Column,
  columnOf,
  fieldFaults,
  has,
  headLineOf,
  openTable,
  type Row,
  type Table,
} from "./table.ts";

/**
 * corrects: a further row that stands for an earlier one. changed: another row in its place. asked: it waits for a
 * reason. refused: it cannot be taken at all.
 */
export type Fate = "new" | "same" | "fills a blank" | "corrects" | "changed" | "asked" | "refused";

export interface PlannedRow {
  readonly row: Row;
  readonly fate: Fate;
  /** The row of the page that it meets. */
  readonly meets: Row | undefined;
  /** Why it is asked about or refused. */
  readonly problem?: Problem | undefined;
  /** What it was asked for was answered by the person, not in the file. */
  readonly isAnswered?: boolean;
}

export interface ImportAnswers extends ColumnAnswers {
  readonly mode: "add" | "replace";
  readonly delimiter?: Delimiter | undefined;
  readonly decimal?: DecimalMark | undefined;
  /** Why rows of the file correct rows that are there, where they do not say it themselves. */
  readonly reason: string;
  /** Why values that lie far from all others are taken. */
  readonly far: string;
  /** Who says so. */
  readonly by: string;
}

export const noAnswers: ImportAnswers = { mode: "add", columns: {}, units: {}, reason: "", far: "", by: "" };

export interface ImportPlan {
  /** How the file was read; none where it could not be. */
  readonly csv: CsvTable | undefined;
  readonly columns: readonly ImportColumn[];
  /** "Along as along" */
  readonly readAs: readonly string[];
  readonly rows: readonly PlannedRow[];
  readonly skipped: readonly Skipped[];
  /** Rows of the page that would be there no more. */
  readonly gone: readonly Row[];
  /** What has to be mended in the file or answered about its headings, in the order of its lines. */
  readonly faults: readonly Problem[];
  /** What a reason settles. */
  readonly asked: readonly Problem[];
  /** The page's rows as they are; none where they cannot be read. */
  readonly own: Table | undefined;
  /** The columns that the rows are written for. */
  readonly to: readonly Column[];
  /** The rows of the reading afterwards; none while anything hinders. */
  readonly text: string | undefined;
  readonly after: TableValue | undefined;
}

const nothing: ImportPlan = {
  csv: undefined,
  columns: [],
  readAs: [],
  rows: [],
  skipped: [],
  gone: [],
  faults: [],
  asked: [],
  own: undefined,
  to: [],
  text: undefined,
  after: undefined,
};

export function planImport(
  item: ReadingItem,
  current: string,
  file: string,
  answers: ImportAnswers,
): ImportPlan {
  const wrong = textFault(file);
  if (wrong) return { ...nothing, faults: [wrong] };
  const { table: csv, problems } = readCsv(file, {
    delimiter: answers.delimiter,
    decimal: answers.decimal,
    isFile: true,
    isNumeric: (head) => importColumns(item, [head], answers).some(({ kind }) => isQuantity(kind)),
  });
  if (!csv) return { ...nothing, faults: problems };
  const columns = importColumns(item, csv.headings, answers);
  const read = { ...nothing, csv, columns };
  const headLine = headLineOf(file);
  const twice = headingFaults(columns, headLine);
  if (twice.length > 0) return { ...read, faults: twice };
  const own = openTable(item, current, unitsSaid(columns));
  if (isProblem(own)) return { ...read, faults: [own.at(item.name)] };
  const missing = missingColumns(own, columns, csv, { headLine, whole: answers.mode === "replace" });
  if (missing) return { ...read, faults: [missing] };
  const unread = [...own.faults, ...fieldFaults(own)].map((p) => p.at(item.name));
  if (unread.length > 0) return { ...read, faults: unread };
  if (csv.rows.length === 0 && own.rows.length > 0) return { ...read, own, faults: [noRows(headLine)] };
  return { ...read, ...outcome({ item, current, own, csv, columns, answers }) };
}

const unitsSaid = (columns: readonly ImportColumn[]) =>
  new Map(
    columns.flatMap((column) => {
      const found = column.column === undefined ? undefined : openColumn(column);
      return found && !isProblem(found) && found.unit ? [[found.name, found.unit] as const] : [];
    }),
  );

interface Task {
  readonly item: ReadingItem;
  readonly current: string;
  readonly own: Table;
  readonly csv: CsvTable;
  readonly columns: readonly ImportColumn[];
  readonly answers: ImportAnswers;
}

function outcome({ item, current, own, csv, columns, answers }: Task): Partial<ImportPlan> {
  const isAdded = answers.mode === "add";
  const to = withRemarks(isAdded ? own.columns : withUnitsOf(own.columns, unitsSaid(columns)));
  const { rows: found, skipped: blank, faults: unread, readAs } = fileRows(own, csv, columns, to);
  const names = [
    ...new Set(columns.flatMap(({ column, place }) => [column ?? "", ...Object.keys(place ?? {})])),
  ];
  const file = { columns, rows: found, names: names.filter((name) => name !== "") };
  const {
    rows: met,
    skipped: empty,
    gone,
  } = isAdded ? planAdded(own, file, answers.reason) : planReplaced(own, file);
  const isFar = unread.length > 0 ? () => undefined : farOff(own, to, found);
  const rows = met.map((planned) => (answers.far === "" ? askedAbout(planned, isFar(planned.row)) : planned));
  const told = (fate: Fate) => rows.flatMap(({ fate: its, problem: p }) => (its === fate && p ? [p] : []));
  const faults = [...unread, ...told("refused")].toSorted((a, b) => lineIn(a) - lineIn(b));
  const asked = told("asked");
  const skipped = [...blank, ...empty].toSorted((a, b) => a.line - b.line);
  const planned = { own, to, rows, gone, skipped, readAs };
  if (faults.length > 0 || asked.length > 0) return { ...planned, faults, asked };
  const said = rows.map((one) => withReason(one, answers, isFar));
  const text = textAfter(said, { current, own, to, isAdded });
  if (text.length > mostCharacters) return { ...planned, faults: [tooLarge(`${text.length} characters`)] };
  const { rowsLine: _line, ...bare } = item;
  const after = readingValue(bare, text, item.name);
  if (isProblem(after)) return { ...planned, faults: [after] };
  if (after.type !== "table") throw new Error("a reading is a table");
  return { ...planned, rows: said, text, after };
}

const withRemarks = (columns: readonly Column[]): readonly Column[] => [
  ...columns,
  ...remarks
    .filter((name) => !columns.some((column) => column.name === name))
    .map((name) => columnOf({ name, kind: "text", at: -1, heading: name, unit: undefined })),
];

/** What can hardly be a reading waits for a reason, unless the row brings its own. */
function askedAbout(planned: PlannedRow, far: Problem | undefined): PlannedRow {
  const isSettled = planned.fate === "same" || planned.fate === "refused" || planned.fate === "asked";
  if (!far || isSettled || (planned.row.texts["reason"] ?? "") !== "") return planned;
  return { ...planned, fate: "asked", problem: far };
}

/** With the reasons that the person gives for it. */
function withReason(
  planned: PlannedRow,
  { reason, far, by }: ImportAnswers,
  isFar: (row: Row) => Problem | undefined,
): PlannedRow {
  const { row, fate } = planned;
  if (fate === "same" || (row.texts["reason"] ?? "") !== "") return planned;
  const why = [fate === "corrects" ? reason.trim() : "", far !== "" && isFar(row) ? far.trim() : ""];
  const words = saying(...why);
  if (words === "") return planned;
  const said = { reason: words, by: row.texts["by"] || by.trim() };
  const [texts, worth] = [row.texts, row.worth].map((fields) => ({ ...fields, ...said }));
  return { ...planned, row: { ...row, texts: texts ?? {}, worth: worth ?? {} }, isAnswered: true };
}

interface Afterwards {
  readonly current: string;
  readonly own: Table;
  readonly to: readonly Column[];
  readonly isAdded: boolean;
}

/** A column of remarks comes with the first row that says something in it. */
function textAfter(rows: readonly PlannedRow[], { current, own, to, isAdded }: Afterwards): string {
  if (isAdded && rows.every(({ fate }) => fate === "same")) return current;
  const columns = remarks.filter(
    (name) =>
      !has(own, name) && rows.some(({ row, fate }) => fate !== "same" && (row.texts[name] ?? "") !== ""),
  );
  const roomy = columns.length === 0 ? own : openTable(own.item, edited(own, { columns }));
  if (isProblem(roomy)) throw new Error("a table with one column more is a table");
  return isAdded ? addedText(roomy, rows) : replacedText(roomy, rows, to);
}

const lineIn = ({ what }: Problem): number => Number(/^line (\d+)/.exec(what)?.[1] ?? 0);

const noRows = (headLine: number): Problem =>
  problem({
    code: "csv-empty",
    what: `line ${headLine}`,
    got: "headings with no row below",
    must: "have at least one row",
  });

/** The same file a second time changes nothing, and says so. */
export const nothingNew = ({ rows }: ImportPlan): Problem =>
  problem({
    code: "nothing-new",
    what: "table",
    got: rows.length === 0 ? "no reading" : `${rows.length} readings that are all there already`,
    must: "bring something new",
  });
