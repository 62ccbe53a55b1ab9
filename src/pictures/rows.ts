// Lists that a picture draws: rows of a table, answers or checks by row. A reading that is missing is a
// cell that is not there.
import type { ScalarOutput } from "../methods/field.ts";
import { type State, states } from "../verdict.ts";

export type Row = Readonly<Record<string, ScalarOutput>>;

/** A text, or a number that serves as one, such as a position typed as a count. */
export function wordIn(row: Row, column: string): string | undefined {
  const cell = row[column];
  if (cell === undefined) return undefined;
  if (cell.kind === "text") return cell.text;
  if (cell.kind === "yes/no") return cell.yes ? "yes" : "no";
  return Number.isInteger(cell.si) ? String(cell.si) : undefined;
}

export function numberIn(row: Row, column: string): number | undefined {
  const cell = row[column];
  return cell && "si" in cell && Number.isFinite(cell.si) ? cell.si : undefined;
}

export const yesIn = (row: Row, column: string): boolean => {
  const cell = row[column];
  if (cell?.kind === "yes/no") return cell.yes;
  return cell?.kind === "text" && /^(yes|true|moved)$/i.test(cell.text);
};

/** The five states only; any other word is no answer. */
export const stateIn = (row: Row): State =>
  states.find((state) => state === wordIn(row, "state")) ?? "no answer";

/** Where a row belongs: a position, or the hole of a pair. */
export const positionIn = (row: Row): string => wordIn(row, "position") ?? wordIn(row, "hole") ?? "";

/** 2 before 10, and N3 after both. */
export const byName = (a: string, b: string): number => a.localeCompare(b, "en", { numeric: true });

export const only = (rows: readonly Row[], column: string, word: string): readonly Row[] =>
  rows.filter((row) => wordIn(row, column) === word);
