// A table, answers by row or checks by row as one list, as pictures and list inputs take it.
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { isProblem, root, sentence } from "../problem.ts";
import type { Contribution } from "../standing.ts";
import { formatIn } from "../units/format.ts";
import { readingDoubt } from "./lacking-readings.ts";
import type { CheckValue, FormulaValue, LineValue, RowOf, SolutionValue, TableValue } from "./line.ts";
import { rowsAtHand } from "./scope.ts";

export type ListOutput = Extract<OutputValue, { kind: "list" }>;
type Row = Record<string, ScalarOutput>;

const text = (words: string): ScalarOutput => ({ kind: "text", text: words });
const texts = (tags: Readonly<Record<string, string>>): Row =>
  Object.fromEntries(Object.entries(tags).map(([name, words]) => [name, text(words)]));

export function asList(line: LineValue): ListOutput | undefined {
  switch (line.type) {
    case "table":
      return { kind: "list", rows: rowsAtHand(line, undefined).map((i) => tableRow(line, i)) };
    case "rows":
      return { kind: "list", rows: line.rows.map((row) => answerRow(line.key, row)) };
    case "checks":
      return { kind: "list", rows: line.rows.map((row) => checkRow(line.key, row)) };
    default:
      return undefined;
  }
}

/** A missing reading leaves its column out of the row. */
export function tableRow(table: TableValue, i: number, tableName = ""): Row {
  const row: Row = { readingState: text(table.states[i] ?? "entered") };
  for (const column of table.columns) {
    const { name, kind, values, typed } = column;
    const value = values[i];
    if (kind === "tag" || kind === "text") {
      if ((typed[i] ?? "") !== "") row[name] = text(typed[i] ?? "");
    } else if (typeof value === "number")
      row[name] = { kind, si: value, ...withDoubt(readingDoubt(table, column, i, tableName)) };
  }
  return row;
}

function answerRow(
  key: string,
  { key: value, tags, value: answer }: RowOf<SolutionValue | FormulaValue>,
): Row {
  const row: Row = { ...texts(tags), [key]: text(value) };
  if (isProblem(answer)) return { ...row, problem: text(sentence(root(answer))) };
  if (answer.type === "formula") return { ...row, value: scalar(answer) };
  const isHeld = answer.standing.reservations.length > 0;
  for (const [name, output] of Object.entries(answer.solution.outputs))
    if (output.kind !== "list") row[name] = isHeld ? heldBack(output) : output;
  return row;
}

/** A verdict on a number that may not hold is at most unproven, in a list and in what is drawn from it too. */
const heldBack = (output: ScalarOutput): ScalarOutput =>
  output.kind === "text" && output.text === "proven" ? text("unproven") : output;

export const heldList = ({ rows }: ListOutput): ListOutput => ({
  kind: "list",
  rows: rows.map((row) =>
    Object.fromEntries(Object.entries(row).map(([name, output]) => [name, heldBack(output)])),
  ),
});

function scalar({ kind, si, unit, named }: FormulaValue): ScalarOutput {
  if (kind === "yes/no") return { kind, yes: si === 1 };
  if (kind === undefined) return text(unit ? formatIn(si, unit) : String(si));
  return { kind, si, ...withDoubt(named.standing.doubt) };
}

const withDoubt = (doubt: readonly Contribution[]) => (doubt.length === 0 ? {} : { doubt });

function checkRow(key: string, { key: value, tags, value: check }: RowOf<CheckValue>): Row {
  const row: Row = { ...texts(tags), [key]: text(value) };
  if (isProblem(check)) return { ...row, state: text("no answer"), why: text(sentence(root(check))) };
  const measured: Row =
    check.kind === undefined || !Number.isFinite(check.si)
      ? {}
      : { value: { kind: check.kind, si: check.si } };
  return { ...row, ...measured, state: text(check.state), why: text(check.why) };
}
