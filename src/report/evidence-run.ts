// Runs reference rows through the methods and compares in the printed unit; shared by the command and the test.
// A row whose note begins "disagrees:" is kept as printed and has to miss: if it ever agrees, we want to know.
import { solve } from "../methods/index.ts";
import { isProblem, type Problem, problem, sentence } from "../problem.ts";
import { inUnit } from "../units/in-unit.ts";
import { unit } from "../units/unit.ts";
import { disagrees, type EvidenceRow } from "./evidence-rows.ts";

export interface RowOutcome {
  readonly row: EvidenceRow;
  /** Error as a share of the tolerance; NaN where there is no answer. */
  readonly share: number;
  readonly failure?: string;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;

type ListText = readonly Record<string, string>[];
const isListText = (value: unknown): value is ListText => Array.isArray(value) && value.every(isRecord);

/** A list is JSON text; anything else is the text of a quantity or a designation. */
function valueOfInput(id: string, text: string): string | ListText {
  if (!text.startsWith("[")) return text;
  const list: unknown = JSON.parse(text);
  if (!isListText(list)) throw new Error(`${id}: not a list: ${text}`);
  return list;
}

/** "torque=480 N.m; layers=[{…}]", as on the command line. */
function inputsOf(row: EvidenceRow): Record<string, string | ListText> {
  const pairs = row.inputs.split("; ").map((part) => {
    const at = part.indexOf("=");
    return [part.slice(0, at), valueOfInput(row.id, part.slice(at + 1))] as const;
  });
  return Object.fromEntries(pairs);
}

/** Follows "frusta.0.stiffness" into the outputs. */
function outputAt(outputs: unknown, path: string): unknown {
  return path.split(".").reduce((value, step) => {
    if (!isRecord(value)) return undefined;
    const inside = isRecord(value["rows"]) ? value["rows"] : value;
    return inside[step];
  }, outputs);
}

/** What the method gives for the row, in the printed unit; yes and no are 1 and 0. */
function answerOf(id: string, row: EvidenceRow): number | Problem {
  const solution = solve(id, inputsOf(row));
  if (isProblem(solution)) return solution;
  const output = outputAt(solution.outputs, row.output);
  if (isRecord(output) && typeof output["yes"] === "boolean") return Number(output["yes"]);
  if (!isRecord(output) || typeof output["si"] !== "number")
    return problem({ code: "no-output", where: id, what: row.output, got: "no such output" });
  if (row.unit === "") return output["si"];
  const printedUnit = unit(row.unit);
  return isProblem(printedUnit) ? printedUnit : inUnit(output["si"], printedUnit);
}

/** "yes" and "no" are 1 and 0. */
export const printedNumber = (text: string): number =>
  text === "yes" ? 1 : text === "no" ? 0 : Number(text);

// A tie on the half digit (48.45 printed as 48.5) agrees: the slack covers the last bits of the doubles.
const tie = 1 + 1e-9;

export function runRow(id: string, row: EvidenceRow): RowOutcome {
  const answer = answerOf(id, row);
  if (isProblem(answer)) return { row, share: Number.NaN, failure: `${row.id}: ${sentence(answer)}` };
  const [printed, tolerance] = [printedNumber(row.printed), Number(row.tolerance)];
  const error = Math.abs(answer - printed);
  const share = tolerance === 0 ? (error === 0 ? 0 : Number.POSITIVE_INFINITY) : error / tolerance;
  const agrees = share <= tie;
  if (agrees === !disagrees(row)) return { row, share };
  const found = `printed ${row.printed} ${row.unit}, got ${answer.toPrecision(8)}, tolerance ${row.tolerance}`;
  return {
    row,
    share,
    failure: agrees ? `${row.id} is marked as disagreeing but agrees: ${found}` : `${row.id}: ${found}`,
  };
}

/** The row nearest to its tolerance among those that agree; none where no row agrees. */
export const worstOf = (outcomes: readonly RowOutcome[]): RowOutcome | undefined =>
  outcomes
    .filter(({ row, failure }) => failure === undefined && !disagrees(row))
    .toSorted((a, b) => b.share - a.share)[0];

/** "4.2 %" */
export const shareText = (share: number): string => `${(share * 100).toFixed(1)} %`;
