// Rows of a file added to a reading. What is there stays; a blank is filled; a row with a key that is there
// already corrects it and says why; the same reading once more is nothing new.
import type { ReadingItem } from "../../document/item.ts";
import { type Problem, problem } from "../../problem.ts";
import type { Fate, Plan, PlannedRow } from "./import-plan.ts";
import { fillsBlanks, idOf, isSetAside, keyWords, saysNoMore, textIn } from "./key-words.ts";
import type { MappedColumn } from "./mapped-columns.ts";
import type { OpenTable, TableRow } from "./open-table.ts";
import { rowFault } from "./row-faults.ts";
import { fieldText, lineOf, type RowsNow, withRows } from "./rows-now.ts";

/** A row of the page, or one that the file has put behind it. */
interface Standing {
  readonly row: TableRow;
  readonly fromFile: boolean;
  /** Line of the file that says the same or fills it. */
  met: number | undefined;
}

export function planAdded(item: ReadingItem, now: RowsNow, file: OpenTable): Plan | readonly Problem[] {
  const names = file.columns.map(({ name }) => name);
  const standing = new Map<string, Standing[]>();
  const at = (row: TableRow): Standing[] => {
    const id = idOf(item, names, row);
    const found = standing.get(id) ?? [];
    standing.set(id, found);
    return found;
  };
  for (const row of now.rows) at(row).push({ row, fromFile: false, met: undefined });
  const rows: PlannedRow[] = [];
  const faults: Problem[] = [];
  const skipped = file.csv.blankLines.map((line) => ({ line, why: "nothing stands on it" }));
  for (const row of file.rows) {
    const there = at(row);
    const same = there.find((one) => one.met === undefined && saysNoMore(row, one.row));
    if (same) {
      same.met = row.line;
      rows.push({ row, fate: "same", meets: same.row });
      continue;
    }
    if (saysNothing(item, names, row)) {
      skipped.push({ line: row.line, why: "no reading stands on it" });
      continue;
    }
    const found = fateOf(item, row, there, file);
    if ("fate" in found) {
      rows.push({ row, ...found });
      if (found.fate !== "fills a blank") there.push({ row, fromFile: true, met: row.line });
    } else faults.push(found);
  }
  if (faults.length > 0) return faults;
  skipped.sort((a, b) => a.line - b.line);
  return { rows, skipped, gone: [], text: textWith(now, file, rows) };
}

/** Nothing but its key: a blank is missing, never zero. */
function saysNothing(item: ReadingItem, names: readonly string[], row: TableRow): boolean {
  const told = names.filter((name) => !item.key?.includes(name));
  return told.length > 0 && told.every((name) => textIn(row, name) === "");
}

function fateOf(
  item: ReadingItem,
  row: TableRow,
  there: readonly Standing[],
  file: OpenTable,
): { fate: Fate; meets: TableRow | undefined } | Problem {
  const fault = rowFault(item, row, file);
  if (fault) return fault;
  const before = item.key ? there.findLast((one) => !isSetAside(one.row)) : undefined;
  if (!before) return { fate: "new", meets: undefined };
  if (before.met === undefined && fillsBlanks(row, before.row)) {
    before.met = row.line;
    return { fate: "fills a blank", meets: before.row };
  }
  if (textIn(row, "reason") !== "") return { fate: "corrects", meets: before.row };
  return noReason(item, row, before);
}

const noReason = (item: ReadingItem, row: TableRow, { met }: Standing): Problem =>
  problem({
    code: met !== undefined ? "duplicate-reading" : "no-reason",
    what: `line ${row.line}`,
    got:
      met !== undefined
        ? `${keyWords(item, row)} again, after line ${met}`
        : `${keyWords(item, row)}, which the page has already`,
    must: `${met !== undefined ? "stand once, or " : ""}say why it corrects the earlier one in a column reason`,
  });

function textWith(now: RowsNow, file: OpenTable, rows: readonly PlannedRow[]): string {
  const from = new Map(file.columns.map((column) => [column.name, column]));
  const anew = new Map<number, string>();
  const added: string[] = [];
  for (const { row, fate, meets } of rows) {
    if (fate === "same") continue;
    const fields = now.columns.map(
      (to) => fieldOf(row, from.get(to.name), to, now) || keptOf(fate, meets, to, now),
    );
    const line = lineOf(ordered(fields, now), now.csv.delimiter);
    if (fate === "fills a blank" && meets) anew.set(meets.line, line);
    else added.push(line);
  }
  return withRows(now, anew, added);
}

const fieldOf = (row: TableRow, from: MappedColumn | undefined, to: MappedColumn, now: RowsNow): string =>
  from ? fieldText(textIn(row, to.name), from, to, now.csv.decimal) : "";

/** What a row does not say is taken over from the row it fills or corrects; why and state are its own. */
function keptOf(fate: Fate, meets: TableRow | undefined, to: MappedColumn, now: RowsNow): string {
  if (!meets || fate === "new") return "";
  if (fate === "corrects" && (to.name === "reason" || to.name === "state")) return "";
  return fieldText(textIn(meets, to.name), to, to, now.csv.decimal);
}

/** By the place of their headings in the page. */
function ordered(fields: readonly string[], { columns, csv }: RowsNow): readonly string[] {
  const line = csv.headings.map(() => "");
  for (const [i, { at }] of columns.entries()) line[at] = fields[i] ?? "";
  return line;
}
