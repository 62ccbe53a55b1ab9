// What has no answer besides checks: lines, rows, inputs of pictures, values that a note asks for.
import type { Line } from "../engine/line.ts";
import { noteOfLine } from "../engine/unbound-numbers.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { type ItemOf, rowNames } from "./row-names.ts";
import { isCheck } from "./states.ts";

/** Pictures hold their inputs, workings over a table their rows: each with an answer or without. */
export function missingParts({ item, value }: Line, itemOf: ItemOf): readonly Problem[] {
  if (isProblem(value)) return [];
  if (value.type === "picture") return Object.values(value.inputs).filter(isProblem).slice(0, 1);
  if (value.type !== "rows") return [];
  const nameOf = rowNames(item, value, itemOf);
  return value.rows.flatMap((row) => (isProblem(row.value) ? [root(row.value).at(nameOf(row))] : []));
}

/** Values that a note asks for and that have no answer. */
const missingInNote = (line: Line): readonly Problem[] =>
  Object.entries(noteOfLine(line)?.bound ?? {}).flatMap(([formula, { problem }]) =>
    problem ? [root(problem).at(`{${formula}}`)] : [],
  );

/** Whether anything of a page is left without an answer. */
export const isOpen = (line: Line, itemOf: ItemOf): boolean =>
  isProblem(line.value) || missingParts(line, itemOf).length > 0 || missingInNote(line).length > 0;

export interface WithoutAnswer {
  readonly line: Line;
  /** What stands in its note, and not in the line itself. */
  readonly inNote: boolean;
  readonly problem: Problem;
}

/** Lines other than checks first, then what their notes ask for. */
export const withoutAnswer = (lines: readonly Line[], itemOf: ItemOf): readonly WithoutAnswer[] => [
  ...lines
    .filter((line) => !isCheck(line))
    .flatMap((line) =>
      (isProblem(line.value) ? [line.value] : missingParts(line, itemOf)).map((problem) => ({
        line,
        inNote: false,
        problem,
      })),
    ),
  ...lines.flatMap((line) => missingInNote(line).map((problem) => ({ line, inNote: true, problem }))),
];
