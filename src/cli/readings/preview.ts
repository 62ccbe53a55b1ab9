// What an import does, as lines of text and as data: how the file was read, then every row that is not the same.
import type { ReadingItem } from "../../document/item.ts";
import { columns } from "../columns.ts";
import { withOwnUnit } from "./doubtful-values.ts";
import type { Fate, Import, PlannedRow } from "./import-plan.ts";
import { firstFew } from "./in-list.ts";
import { keyWords, textIn } from "./key-words.ts";
import type { TableRow } from "./open-table.ts";
import { countsOf, countWords } from "./reading-summary.ts";

export interface Shown {
  readonly page: string;
  readonly item: ReadingItem;
  readonly from: string;
  readonly mode: "add" | "replace";
  readonly plan: Import;
  readonly changesPage: boolean;
  readonly written: boolean;
}

const fates: readonly Fate[] = ["new", "same", "fills a blank", "corrects", "changed"];

const marks = { comma: "comma", semicolon: "semicolon", tab: "tab" } as const;

interface Change {
  readonly column: string;
  readonly from: string;
  readonly to: string;
}

/** Fields that say something else than the row they meet. */
function changesOf(
  { row, meets }: PlannedRow,
  { table, now }: Import,
  mode: Shown["mode"],
): readonly Change[] {
  return table.columns.flatMap((column) => {
    const own = now.columns.find(({ name }) => name === column.name) ?? column;
    const field = row.fields.get(column.name);
    const before = meets?.fields.get(column.name);
    if (!field || field.worth === (before?.worth ?? "")) return [];
    if (field.worth === "" && mode === "add") return [];
    return [
      {
        column: column.name,
        from: withOwnUnit(before?.text ?? "", own),
        to: withOwnUnit(field.text, column),
      },
    ];
  });
}

const mostLines = 40;

export function previewLines(shown: Shown): string[] {
  const { page, item, from, plan, mode, changesPage, written } = shown;
  const { csv } = plan.table;
  const counts = fates.map((fate) => [fate, plan.rows.filter((row) => row.fate === fate).length] as const);
  const count = [
    ...counts.filter(([, n]) => n > 0).map(([fate, n]) => `${n} ${fate}`),
    ...(plan.gone.length > 0 ? [`${plan.gone.length} of the page gone`] : []),
    ...(plan.skipped.length > 0 ? [`${plan.skipped.length} skipped`] : []),
  ];
  const told = rowLines(shown);
  return [
    `${page} · ${item.name}: ${item.says ?? "no words"}`,
    `from ${from}: ${marks[csv.delimiter]} between fields, decimal ${csv.decimal}`,
    ...columns(columnRows(shown), "  "),
    ...(plan.table.leftOut.length > 0 ? [`  left out: ${firstFew(plan.table.leftOut, 20)}`] : []),
    `${plan.rows.length} rows ${mode === "add" ? "to add" : "in place of all"}: ${count.join(", ") || "none"}`,
    ...columns(told.slice(0, mostLines), "  "),
    ...(told.length > mostLines ? [`  and ${told.length - mostLines} more; --json shows them all`] : []),
    `afterwards ${plan.after.rows} rows${countWords(plan.after) === "" ? "" : `: ${countWords(plan.after)}`}`,
    conclusion(changesPage, written),
  ];
}

function conclusion(changesPage: boolean, written: boolean): string {
  if (!changesPage) return "nothing to write: the page says all of it already";
  return written ? "written into the page" : "nothing is written yet: --write puts it into the page";
}

function columnRows({ plan }: Shown): string[][] {
  return plan.table.columns.map(({ name, heading, unit }) => [
    name,
    `from ${heading}`,
    unit === undefined || unit.text === "1" ? "" : unitWords(name, unit.text, plan),
  ]);
}

function unitWords(name: string, text: string, { now }: Import): string {
  const own = now.columns.find((column) => column.name === name)?.unit?.text;
  return own === undefined || own === text ? `in ${text}` : `in ${text}, kept so; the page has ${own}`;
}

function rowLines({ item, plan, mode }: Shown): string[][] {
  const told = plan.rows
    .filter(({ fate }) => fate !== "same")
    .map((planned) => ({
      line: planned.row.line,
      fate: planned.fate as string,
      text: `${keyWords(item, planned.row)}${changeWords(planned, plan, mode, item)}`,
    }));
  const skipped = plan.skipped.map(({ line, why }) => ({ line, fate: "skipped", text: why }));
  return [
    ...[...told, ...skipped]
      .toSorted((a, b) => a.line - b.line)
      .map(({ line, fate, text }) => [`line ${line}`, fate, text]),
    ...plan.gone.map((row) => [`page line ${pageLine(item, row) ?? "?"}`, "gone", keyWords(item, row)]),
  ];
}

function changeWords(planned: PlannedRow, plan: Import, mode: Shown["mode"], item: ReadingItem): string {
  const changes = changesOf(planned, plan, mode).filter(
    ({ column }) => !item.key?.includes(column) && (item.key || planned.meets),
  );
  const said = changes.map(({ column, from, to }) =>
    from === "" ? `${column} ${to}` : `${column} ${from} → ${to || "nothing"}`,
  );
  return said.length === 0 ? "" : `: ${said.join(", ")}`;
}

/** Line of the page file, where the rows stand there as a block. */
const pageLine = ({ rowsLine }: ReadingItem, { line }: TableRow): number | null =>
  rowsLine === undefined ? null : line + rowsLine - 1;

export function previewRecord(shown: Shown) {
  const { page, item, from, mode, plan, changesPage, written } = shown;
  const { csv, leftOut } = plan.table;
  return {
    file: page,
    reading: item.name,
    from,
    mode,
    delimiter: csv.delimiter,
    decimal: csv.decimal,
    columns: plan.table.columns.map(({ name, heading, kind, unit }) => ({
      name,
      heading,
      kind,
      unit: unit === undefined || unit.text === "1" ? "" : unit.text,
    })),
    leftOut,
    counts: Object.fromEntries(
      fates.map((fate) => [
        fate === "fills a blank" ? "fillsABlank" : fate,
        plan.rows.filter((row) => row.fate === fate).length,
      ]),
    ),
    rows: plan.rows.map((planned) => ({
      line: planned.row.line,
      fate: planned.fate,
      key: Object.fromEntries((item.key ?? []).map((name) => [name, textIn(planned.row, name)])),
      pageLine: planned.meets ? pageLine(item, planned.meets) : null,
      changes: planned.fate === "same" ? [] : changesOf(planned, plan, mode),
    })),
    gone: plan.gone.map((row) => ({ pageLine: pageLine(item, row), key: keyWords(item, row) })),
    skipped: plan.skipped,
    afterwards: { rows: plan.after.rows, states: countsOf(plan.after), wanted: plan.after.wanted },
    changesPage,
    written,
  };
}
