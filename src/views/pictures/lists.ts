// Lists that a picture draws: rows of a table, answers or checks by row. A reading that is missing is a
// cell that is not there.
import type { ScalarOutput } from "../../methods/field.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { type Kind, kindsAgree } from "../../units/kind.ts";
import type { State } from "../../verdict.ts";
import { states } from "../../verdict.ts";
import type { PictureInputs } from "./drawing.ts";
import { missing, noAnswer, wrongKind } from "./inputs.ts";

export type Row = Readonly<Record<string, ScalarOutput>>;
export type Columns = Readonly<Record<string, Kind | "text">>;

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

/** Rows of a list input; each has the columns it must have, and no column of a wrong kind. */
export function rowsOf(
  picture: string,
  inputs: PictureInputs,
  name: string,
  must: Columns,
  may: Columns = {},
): readonly Row[] | Problem {
  const input = inputs[name];
  if (input === undefined) return missing(picture, name, "list");
  if (isProblem(input)) return noAnswer(picture, name, input);
  if (input.kind !== "list") return wrongKind(picture, name, "list", input.kind);
  for (const [i, row] of input.rows.entries()) {
    const odd = oddCell(row, must, true) ?? oddCell(row, may, false);
    if (odd)
      return problem({ code: "odd-row", what: `picture ${picture}`, where: `${name} row ${i + 1}`, ...odd });
  }
  return input.rows;
}

export function maybeRows(
  picture: string,
  inputs: PictureInputs,
  name: string,
  must: Columns,
  may: Columns = {},
): readonly Row[] | undefined | Problem {
  return inputs[name] === undefined ? undefined : rowsOf(picture, inputs, name, must, may);
}

function oddCell(
  row: Row,
  columns: Columns,
  needed: boolean,
): { readonly got: string; readonly must: string } | undefined {
  for (const [column, kind] of Object.entries(columns)) {
    const cell = column === "position" ? (row["position"] ?? row["hole"]) : row[column];
    if (cell === undefined) {
      if (needed) return { got: `no ${column}`, must: `have a ${kind} for ${column}` };
      continue;
    }
    if (kind !== "text" && (!("si" in cell) || !kindsAgree(cell.kind, kind)))
      return { got: `${column} as ${cell.kind}`, must: `be a ${kind}` };
  }
  return undefined;
}

/** A single word that a picture takes, such as a step or a pass. */
export function maybeWord(
  picture: string,
  inputs: PictureInputs,
  name: string,
): string | undefined | Problem {
  const input = inputs[name];
  if (input === undefined) return undefined;
  if (isProblem(input)) return noAnswer(picture, name, input);
  if (input.kind === "list") return wrongKind(picture, name, "text", "list");
  return wordIn({ word: input }, "word");
}

/** 2 before 10, and N3 after both. */
export const byName = (a: string, b: string): number => a.localeCompare(b, "en", { numeric: true });

export const only = (rows: readonly Row[], column: string, word: string): readonly Row[] =>
  rows.filter((row) => wordIn(row, column) === word);
