// What a file would do to a reading, worked out before anything is written: all of it, or nothing.
import type { ReadingItem } from "../../document/item.ts";
import { remarksSaid, withOwnRemarks, withRemarkColumns } from "../../document/remark-columns.ts";
import { withRemarks } from "../../document/rows-text.ts";
import type { TableValue } from "../../engine/line.ts";
import { readingValue } from "../../engine/reading.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { doubtfulValues } from "./doubtful-values.ts";
import { isOpen, type OpenTable, openTable, type TableRow } from "./open-table.ts";
import { planAdded } from "./plan-added.ts";
import { planReplaced } from "./plan-replaced.ts";
import { type RowsNow, rowsNow } from "./rows-now.ts";

/** corrects: a further row that stands for an earlier one. changed: another row in its place. */
export type Fate = "new" | "same" | "fills a blank" | "corrects" | "changed";

export interface PlannedRow {
  readonly row: TableRow;
  readonly fate: Fate;
  /** The row of the page that it meets. */
  readonly meets: TableRow | undefined;
}

export interface Plan {
  readonly rows: readonly PlannedRow[];
  readonly skipped: readonly { readonly line: number; readonly why: string }[];
  /** Rows of the page that would be there no more. */
  readonly gone: readonly TableRow[];
  /** The rows of the reading afterwards. */
  readonly text: string;
}

export interface ImportHow {
  readonly mode: "add" | "replace";
  readonly delimiter?: OpenTable["csv"]["delimiter"] | undefined;
  readonly decimal?: OpenTable["csv"]["decimal"] | undefined;
  /** Values far from all others are taken as they are. */
  readonly asRead: boolean;
}

export interface Import extends Plan {
  readonly table: OpenTable;
  readonly now: RowsNow;
  readonly after: TableValue;
}

export function planImport(named: ReadingItem, file: string, how: ImportHow): Import | readonly Problem[] {
  const opened = openedFile(withOwnRemarks(named), file, how);
  if (!("item" in opened)) return opened;
  const { item, table } = opened;
  const { rowsLine: _line, ...bare } = item;
  const now = rowsNow(item, table);
  if (isProblem(now)) return [now];
  if (table.rows.length === 0 && now.rows.length > 0) return [noRows(table.headLine)];
  const plan = how.mode === "add" ? planAdded(item, now, table) : planReplaced(item, now, table);
  if (!isPlan(plan)) return plan;
  const doubtful = how.asRead ? [] : doubtfulValues(item, now, plan.rows, table);
  if (doubtful.length > 0) return doubtful;
  const after = readingValue(bare, plan.text, item.name);
  if (isProblem(after)) return [after];
  if (after.type !== "table") throw new Error("a reading is a table");
  return { ...plan, table, now, after };
}

interface OpenedFile {
  readonly item: ReadingItem;
  readonly table: OpenTable;
}

/** A file may say what is set aside, why and by whom: the rows take a column for it where they have none. */
function openedFile(item: ReadingItem, file: string, how: ImportHow): OpenedFile | readonly Problem[] {
  const opening = { ...how, isFile: true, whole: how.mode === "replace" };
  const table = openTable(item, file, opening);
  if (!isOpen(table)) return table;
  const said = remarksSaid(table.csv).filter((name) => !Object.hasOwn(item.columns, name));
  if (said.length === 0) return { item, table };
  const rows = item.rows.trim() === "" ? item.rows : withRemarks(item, item.rows, said);
  if (isProblem(rows)) return [rows];
  const roomier = { ...withRemarkColumns(item, said), rows };
  const again = openTable(roomier, file, opening);
  return isOpen(again) ? { item: roomier, table: again } : again;
}

const isPlan = (plan: Plan | readonly Problem[]): plan is Plan => "text" in plan;

const noRows = (headLine: number): Problem =>
  problem({
    code: "csv-empty",
    what: `line ${headLine}`,
    got: "headings with no row below",
    must: "have at least one row",
  });
