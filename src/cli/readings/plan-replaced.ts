// A file in place of all rows of a reading. What changes and what goes is named by line before it is written.
import type { ReadingItem } from "../../document/item.ts";
import { grouped } from "../../grouped.ts";
import { type Problem, problem } from "../../problem.ts";
import type { Plan, PlannedRow } from "./import-plan.ts";
import { idOf, isAlike, isSetAside, keyWords, textIn } from "./key-words.ts";
import type { MappedColumn } from "./mapped-columns.ts";
import type { OpenTable, TableRow } from "./open-table.ts";
import { rowFault } from "./row-faults.ts";
import { fieldText, headingOf, lineOf, lineText, type RowsNow } from "./rows-now.ts";

export function planReplaced(item: ReadingItem, now: RowsNow, file: OpenTable): Plan | readonly Problem[] {
  const names = file.columns.map(({ name }) => name);
  const left = grouped(now.rows, (row) => idOf(item, names, row));
  const first = new Map<string, TableRow>();
  const rows: PlannedRow[] = [];
  const faults: Problem[] = [];
  for (const row of file.rows) {
    const id = idOf(item, names, row);
    const there = left.get(id) ?? [];
    const same = there.find((one) => isAlike(row, one));
    const meets = same ?? there[0];
    const fault = (same ? undefined : rowFault(item, row, file)) ?? twiceFault(item, row, first.get(id));
    if (fault) faults.push(fault);
    if (meets) there.splice(there.indexOf(meets), 1);
    if (item.key && !isSetAside(row)) first.set(id, row);
    rows.push({ row, fate: same ? "same" : meets ? "changed" : "new", meets });
  }
  if (faults.length > 0) return faults;
  const gone = [...left.values()].flat().toSorted((a, b) => a.line - b.line);
  const skipped = file.csv.blankLines.map((line) => ({ line, why: "nothing stands on it" }));
  return { rows, skipped, gone, text: textOf(now, file, rows) };
}

function twiceFault(item: ReadingItem, row: TableRow, before: TableRow | undefined): Problem | undefined {
  if (!before || isSetAside(row) || textIn(row, "reason") !== "") return undefined;
  return problem({
    code: "duplicate-reading",
    what: `line ${row.line}`,
    got: `${keyWords(item, row)} again, after line ${before.line}`,
    must: "stand once, or say why it corrects the earlier one in a column reason",
  });
}

/** Headings take the units of the file, so that no number is converted; rows that are the same keep their bytes. */
function textOf(now: RowsNow, file: OpenTable, rows: readonly PlannedRow[]): string {
  const from = new Map(file.columns.map((column) => [column.name, column]));
  const to = now.columns.map((column) => ({ ...column, unit: from.get(column.name)?.unit ?? column.unit }));
  const headsStay = to.every(({ unit }, i) => unit?.text === now.columns[i]?.unit?.text);
  const stays =
    headsStay &&
    rows.length === now.rows.length &&
    rows.every(({ fate, meets }, i) => fate === "same" && meets === now.rows[i]);
  if (stays) return now.text;
  const { delimiter, decimal, newline } = now.csv;
  const places = now.csv.headings.map((_, at) => to.find((column) => column.at === at));
  const lines = rows.map(({ row, fate, meets }) => {
    if (headsStay && fate === "same" && meets) return lineText(now, meets.line);
    const field = (column: MappedColumn | undefined): string => {
      const source = column && from.get(column.name);
      return column && source ? fieldText(textIn(row, column.name), source, column, decimal) : "";
    };
    return lineOf(places.map(field), delimiter);
  });
  const head = headsStay
    ? lineText(now, now.headLine)
    : lineOf(
        places.map((column) => (column ? headingOf(column) : "")),
        delimiter,
      );
  return [head, ...lines].map((line) => line + newline).join("");
}
