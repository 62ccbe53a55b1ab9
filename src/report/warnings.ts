// Warnings of a line: of a method with the outputs that it spoils, of a given whose reading should be confirmed.
import type { Line } from "../engine/line.ts";
import type { Solution } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";

export interface Warning {
  /** Key of the row that warns, where a line has an answer for each. */
  readonly row: string | undefined;
  readonly warning: Problem;
  readonly spoils: readonly string[];
}

export function warningsOf({ value }: Line): readonly Warning[] {
  if (isProblem(value)) return [];
  switch (value.type) {
    case "quantity":
      return value.confirm ? [{ row: undefined, warning: value.confirm, spoils: [] }] : [];
    case "solution":
      return ofSolution(value.solution, undefined);
    case "rows":
      return value.rows.flatMap(({ key, value: answer }) =>
        !isProblem(answer) && answer.type === "solution" ? ofSolution(answer.solution, key) : [],
      );
    default:
      return [];
  }
}

const ofSolution = ({ warnings, spoilt }: Solution, row: string | undefined): readonly Warning[] =>
  warnings.map((warning) => ({
    row,
    warning,
    spoils: Object.entries(spoilt).flatMap(([output, by]) =>
      by.some(({ code, what }) => code === warning.code && what === warning.what) ? [output] : [],
    ),
  }));
