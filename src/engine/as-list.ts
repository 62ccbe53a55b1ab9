// A table, answers by row or checks by row as one list, as pictures and list inputs take it.
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { isProblem, root, sentence } from "../problem.ts";
import type { CellValue, CheckValue, FormulaValue, RowOf, SolutionValue, TableValue } from "./cell.ts";
import { rowsAtHand } from "./scope.ts";

export type ListOutput = Extract<OutputValue, { kind: "list" }>;
type Row = Record<string, ScalarOutput>;

const text = (words: string): ScalarOutput => ({ kind: "text", text: words });
const texts = (tags: Readonly<Record<string, string>>): Row =>
  Object.fromEntries(Object.entries(tags).map(([name, words]) => [name, text(words)]));

export function asList(cell: CellValue): ListOutput | undefined {
  switch (cell.type) {
    case "table":
      return { kind: "list", rows: rowsAtHand(cell, undefined).map((i) => tableRow(cell, i)) };
    case "rows":
      return { kind: "list", rows: cell.rows.map((row) => answerRow(cell.key, row)) };
    case "checks":
      return { kind: "list", rows: cell.rows.map((row) => checkRow(cell.key, row)) };
    default:
      return undefined;
  }
}

/** A missing reading leaves its column out of the row. */
export function tableRow(table: TableValue, i: number): Row {
  const row: Row = { readingState: text(table.states[i] ?? "entered") };
  for (const { name, kind, values, typed } of table.columns) {
    const value = values[i];
    if (kind === "tag" || kind === "text") {
      if ((typed[i] ?? "") !== "") row[name] = text(typed[i] ?? "");
    } else if (typeof value === "number") row[name] = { kind, si: value };
  }
  return row;
}

export function answerRow(
  key: string,
  { key: value, tags, value: answer }: RowOf<SolutionValue | FormulaValue>,
): Row {
  const row: Row = { ...texts(tags), [key]: text(value) };
  if (isProblem(answer)) return { ...row, problem: text(sentence(root(answer))) };
  if (answer.type === "formula") return { ...row, value: scalar(answer) };
  for (const [name, output] of Object.entries(answer.solution.outputs))
    if (output.kind !== "list") row[name] = output;
  return row;
}

const scalar = (answer: FormulaValue): ScalarOutput =>
  answer.kind === "yes/no" ? { kind: "yes/no", yes: answer.si === 1 } : { kind: answer.kind, si: answer.si };

function checkRow(key: string, { key: value, tags, value: check }: RowOf<CheckValue>): Row {
  const row: Row = { ...texts(tags), [key]: text(value) };
  if (isProblem(check)) return { ...row, state: text("no answer"), why: text(sentence(root(check))) };
  const measured: Row =
    check.kind === undefined || !Number.isFinite(check.si)
      ? {}
      : { value: { kind: check.kind, si: check.si } };
  return { ...row, ...measured, state: text(check.state), why: text(check.why) };
}
