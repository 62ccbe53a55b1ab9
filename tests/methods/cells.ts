// Rows of a list output as plain texts, numbers and truths.
import type { Solution } from "../../src/methods/solution.ts";
import type { Problem } from "../../src/problem.ts";
import { answer } from "./helpers.ts";

export type Cells = Readonly<Record<string, string | number | boolean>>;

export function cells(result: Solution | Problem, name: string): readonly Cells[] {
  const found = answer(result).outputs[name];
  if (found?.kind !== "list") throw new Error(`no list ${name}`);
  return found.rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([column, cell]) => [
        column,
        cell.kind === "text" ? cell.text : cell.kind === "yes/no" ? cell.yes : cell.si,
      ]),
    ),
  );
}

export function text(result: Solution | Problem, name: string): string {
  const found = answer(result).outputs[name];
  if (found?.kind !== "text") throw new Error(`no text ${name}`);
  return found.text;
}
