// Rows of a file added to a reading. What is there stays; a blank is filled; a row with a key that is there
// already corrects it and says why; the same reading once more is nothing new.
import { type Problem, problem } from "../problem.ts";
import { edited } from "./edited.ts";
import { nothingRead, type Skipped } from "./file-rows.ts";
import type { Fate, PlannedRow } from "./plan-import.ts";
import { isSetAside, saying } from "./remarks.ts";
import { type Headed, rowFault } from "./row-faults.ts";
import { fillsBlanks, idOf, rowName, saysNoMore } from "./same-reading.ts";
import type { Fields, Row, Table } from "./table.ts";

export interface File extends Headed {
  /** Columns that the file fills. */
  readonly names: readonly string[];
}

/** A row of the page, or one that the file has put behind it. */
interface Standing {
  row: Row;
  /** Line of the file that says the same or fills it. */
  met: number | undefined;
}

export interface Met {
  readonly rows: readonly PlannedRow[];
  readonly skipped: readonly Skipped[];
  readonly gone: readonly Row[];
}

export function planAdded(own: Table, file: File, reason: string): Met {
  const standing = new Map<string, Standing[]>();
  const at = (row: Row): Standing[] => {
    const id = idOf(own.item, file.names, row);
    const found = standing.get(id) ?? [];
    standing.set(id, found);
    return found;
  };
  for (const row of own.rows) at(row).push({ row, met: undefined });
  const skipped: Skipped[] = [];
  const rows = file.rows.flatMap((row): PlannedRow | [] => {
    const there = at(row);
    const same = there.find((one) => one.met === undefined && saysNoMore(row, one.row));
    if (same) {
      same.met = row.line;
      return { row, fate: "same", meets: same.row };
    }
    if (!saysSomething(own, row)) {
      skipped.push({ line: row.line, why: nothingRead });
      return [];
    }
    const before = own.item.key ? there.findLast((one) => !isSetAside(one.row.texts)) : undefined;
    const meets = before?.row;
    const found = fateOf(own, row, before, file, reason);
    if (found.fate === "fills a blank" && before) {
      before.met = row.line;
      before.row = filled(before.row, row);
    } else if (found.fate !== "refused") there.push({ row, met: row.line });
    return { row, meets, ...found };
  });
  return { rows, skipped, gone: [] };
}

/** More than its key, where there is more to be said: a blank is missing, never zero. */
function saysSomething({ item }: Table, { texts }: Row): boolean {
  const told = Object.keys(texts).filter((name) => !item.key?.includes(name));
  return told.length === 0 || told.some((name) => texts[name] !== "");
}

/** A second row of the file for the same place says itself why it corrects the first. */
function fateOf(
  { item }: Table,
  row: Row,
  before: Standing | undefined,
  file: File,
  reason: string,
): { readonly fate: Fate; readonly problem?: Problem } {
  const fault = rowFault(item, row, file);
  if (fault) return { fate: "refused", problem: fault };
  if (!before) return { fate: "new" };
  if (before.met === undefined && fillsBlanks(row, before.row)) return { fate: "fills a blank" };
  if ((row.texts["reason"] ?? "") !== "") return { fate: "corrects" };
  const name = rowName(item, row);
  if (before.met !== undefined) return { fate: "refused", problem: twiceInFile(name, row.line, before.met) };
  if (reason.trim() !== "") return { fate: "corrects" };
  const asks = problem({
    code: "no-reason",
    what: `line ${row.line}`,
    got: `${name}, which the page has already`,
    must: "say why it corrects the earlier one in a column reason",
  });
  return { fate: "asked", problem: asks };
}

export const twiceInFile = (name: string, line: number, first: number): Problem =>
  problem({
    code: "duplicate-reading",
    what: `line ${line}`,
    got: `${name} again, after line ${first}`,
    must: "stand once, or say why it corrects the earlier one in a column reason",
  });

function filled(before: Row, { texts, worth }: Row): Row {
  const blanks = (own: Fields, more: Fields): Fields => ({
    ...own,
    ...Object.fromEntries(Object.entries(more).filter(([name]) => (own[name] ?? "") === "")),
  });
  return { ...before, texts: blanks(before.texts, texts), worth: blanks(before.worth, worth) };
}

export function addedText(own: Table, rows: readonly PlannedRow[]): string {
  const changed = new Map<number, Fields>();
  const added: Fields[] = [];
  for (const { row, fate, meets } of rows) {
    const says = Object.fromEntries(Object.entries(row.texts).filter(([, text]) => text !== ""));
    if (fate === "fills a blank" && meets) changed.set(meets.index, fillingOnly(says, meets.texts));
    else if (fate !== "same") added.push({ ...(fate === "corrects" && takenOver(meets)), ...says });
  }
  return edited(own, { changed, added });
}

function fillingOnly(says: Fields, before: Fields): Fields {
  const blank = Object.entries(says).filter(([name]) => (before[name] ?? "") === "");
  const { reason } = says;
  const why =
    reason === undefined || before["reason"] === reason ? "" : saying(before["reason"] ?? "", reason);
  return { ...Object.fromEntries(blank), ...(why !== "" && { reason: why }) };
}

/** What a row does not say is taken over from the row it corrects; why, by whom and its state are its own. */
const takenOver = (meets: Row | undefined): Fields => ({
  ...meets?.texts,
  state: "",
  reason: "",
  by: "",
});
