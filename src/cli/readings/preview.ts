// What an import does, as lines of text and as data: how the file was read, then every row that is not the same.
import type { ReadingItem } from "../../document/item.ts";
import { isProblem } from "../../problem.ts";
import { openColumn } from "../../readings/import-columns.ts";
import type { Fate, ImportPlan, PlannedRow } from "../../readings/plan-import.ts";
import { rowName } from "../../readings/same-reading.ts";
import { columnNamed, type Row, withUnit } from "../../readings/table.ts";
import { firstFew } from "../../words.ts";
import { columns } from "../columns.ts";
import { countsOf, countWords } from "./reading-summary.ts";

export interface Shown {
  readonly page: string;
  readonly item: ReadingItem;
  readonly from: string;
  readonly mode: "add" | "replace";
  readonly plan: ImportPlan;
  readonly changesPage: boolean;
  readonly written: boolean;
}

const fates: readonly Fate[] = ["new", "same", "fills a blank", "corrects", "changed"];

interface Change {
  readonly column: string;
  readonly from: string;
  readonly to: string;
}

/** Fields that say something else than the row they meet. */
function changesOf(
  { row, meets }: PlannedRow,
  { to, own }: ImportPlan,
  mode: Shown["mode"],
): readonly Change[] {
  return to.flatMap((column) => {
    const { name } = column;
    const [worth, before] = [row.worth[name] ?? "", meets?.worth[name] ?? ""];
    if (worth === before || !Object.hasOwn(row.texts, name) || (worth === "" && mode === "add")) return [];
    const unit = own && columnNamed(own, name)?.unit;
    return [
      {
        column: name,
        from: withUnit(meets?.texts[name] ?? "", unit),
        to: withUnit(row.texts[name] ?? "", column.unit),
      },
    ];
  });
}

const mostLines = 40;

export function previewLines(shown: Shown): string[] {
  const { page, item, from, plan, mode, changesPage, written } = shown;
  const counts = fates.map((fate) => [fate, countOf(plan, fate)] as const);
  const count = [
    ...counts.filter(([, n]) => n > 0).map(([fate, n]) => `${n} ${fate}`),
    ...(plan.gone.length > 0 ? [`${plan.gone.length} of the page gone`] : []),
    ...(plan.skipped.length > 0 ? [`${plan.skipped.length} skipped`] : []),
  ];
  const told = rowLines(shown);
  const afterwards = plan.after ? countWords(plan.after) : "";
  const leftOut = leftOutOf(plan);
  return [
    `${page} · ${item.name}: ${item.says ?? "no words"}`,
    `from ${from}: ${plan.csv?.delimiter} between fields, decimal ${plan.csv?.decimal}`,
    ...columns(columnRows(plan), "  "),
    ...(leftOut.length > 0 ? [`  left out: ${firstFew(leftOut, 20)}`] : []),
    ...(plan.readAs.length > 0 ? [`  read ${firstFew(plan.readAs, 20)}`] : []),
    `${plan.rows.length} rows ${mode === "add" ? "to add" : "in place of all"}: ${count.join(", ") || "none"}`,
    ...columns(told.slice(0, mostLines), "  "),
    ...(told.length > mostLines ? [`  and ${told.length - mostLines} more; --json shows them all`] : []),
    `afterwards ${plan.after?.rows} rows${afterwards === "" ? "" : `: ${afterwards}`}`,
    conclusion(changesPage, written),
  ];
}

const countOf = ({ rows }: ImportPlan, fate: Fate): number => rows.filter((row) => row.fate === fate).length;

/** Headings that fill no column. */
const leftOutOf = ({ columns: all }: ImportPlan): readonly string[] =>
  all.flatMap(({ heading, column }) => (column === undefined ? [heading] : []));

function conclusion(changesPage: boolean, written: boolean): string {
  if (!changesPage) return "nothing to write: the page says all of it already";
  return written ? "written into the page" : "nothing is written yet: --write puts it into the page";
}

interface Filled {
  readonly name: string;
  readonly heading: string;
  readonly kind: string;
  readonly unit: string;
}

/** The columns that are filled, each with its heading and the unit that this says. */
const filledIn = ({ columns: all }: ImportPlan): readonly Filled[] =>
  all.flatMap((one) => {
    const found = one.column === undefined ? undefined : openColumn(one);
    if (!found || isProblem(found)) return [];
    const { name, heading, kind, unit } = found;
    return [{ name, heading, kind, unit: unit === undefined || unit.text === "1" ? "" : unit.text }];
  });

const columnRows = (plan: ImportPlan): string[][] =>
  filledIn(plan).map(({ name, heading, unit: text }) => {
    const own = plan.own && columnNamed(plan.own, name)?.unit?.text;
    const kept = own === undefined || own === text ? "" : `, kept so; the page has ${own}`;
    return [name, `from ${heading}`, text === "" ? "" : `in ${text}${kept}`];
  });

function rowLines({ item, plan, mode }: Shown): string[][] {
  const told = plan.rows
    .filter(({ fate }) => fate !== "same")
    .map((planned) => ({
      line: planned.row.line,
      fate: planned.fate as string,
      text: `${rowName(item, planned.row)}${changeWords(planned, plan, mode, item)}`,
    }));
  const skipped = plan.skipped.map(({ line, why }) => ({ line, fate: "skipped", text: why }));
  return [
    ...[...told, ...skipped]
      .toSorted((a, b) => a.line - b.line)
      .map(({ line, fate, text }) => [`line ${line}`, fate, text]),
    ...plan.gone.map((row) => [`page line ${pageLine(item, row) ?? "?"}`, "gone", rowName(item, row)]),
  ];
}

function changeWords(planned: PlannedRow, plan: ImportPlan, mode: Shown["mode"], item: ReadingItem): string {
  const changes = changesOf(planned, plan, mode).filter(
    ({ column }) => !item.key?.includes(column) && (item.key || planned.meets),
  );
  const said = changes.map(({ column, from, to }) =>
    from === "" ? `${column} ${to}` : `${column} ${from} → ${to || "nothing"}`,
  );
  return said.length === 0 ? "" : `: ${said.join(", ")}`;
}

/** Line of the page file, where the rows stand there as a block. */
const pageLine = ({ rowsLine }: ReadingItem, { line }: Row): number | null =>
  rowsLine === undefined ? null : line + rowsLine - 1;

export function previewRecord(shown: Shown) {
  const { page, item, from, mode, plan, changesPage, written } = shown;
  const { csv, after } = plan;
  return {
    file: page,
    reading: item.name,
    from,
    mode,
    delimiter: csv?.delimiter,
    decimal: csv?.decimal,
    columns: filledIn(plan),
    leftOut: leftOutOf(plan),
    counts: Object.fromEntries(
      fates.map((fate) => [fate === "fills a blank" ? "fillsABlank" : fate, countOf(plan, fate)]),
    ),
    rows: plan.rows.map((planned) => ({
      line: planned.row.line,
      fate: planned.fate,
      key: Object.fromEntries((item.key ?? []).map((name) => [name, planned.row.texts[name] ?? ""])),
      pageLine: planned.meets ? pageLine(item, planned.meets) : null,
      changes: planned.fate === "same" ? [] : changesOf(planned, plan, mode),
    })),
    gone: plan.gone.map((row) => ({ pageLine: pageLine(item, row), key: rowName(item, row) })),
    skipped: plan.skipped,
    afterwards: after && { rows: after.rows, states: countsOf(after), wanted: after.wanted },
    changesPage,
    written,
  };
}
