// One answer for each key of a table: the same working or check, once per row context.
import type { CheckItem, FormulaItem, MethodItem } from "../document/item.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { states } from "../verdict.ts";
import { checkValue } from "./check-value.ts";
import { contextsOf } from "./contexts.ts";
import type {
  ChecksValue,
  CheckValue,
  FormulaValue,
  LineValue,
  RowOf,
  RowsValue,
  SolutionValue,
} from "./line.ts";
import type { Results } from "./scope.ts";
import { textCheck } from "./text-check.ts";
import { worded } from "./verdict-of.ts";
import { formulaWorking, methodWorking } from "./working.ts";

export function rowsWorking(item: MethodItem | FormulaItem, results: Results): RowsValue | Problem {
  const contexts = contextsOf(item, results);
  if (isProblem(contexts)) return contexts;
  const rows = contexts.rows.map((row): RowOf<SolutionValue | FormulaValue> => {
    const here: Results = { get: results.get, keys: results.keys, row };
    const value = row.problem ?? ("formula" in item ? formulaWorking(item, here) : methodWorking(item, here));
    return { key: row.value, tags: row.tags, value: asAnswer(item.name, value) };
  });
  return { type: "rows", key: contexts.key, method: "by" in item ? item.by : undefined, rows };
}

const asAnswer = (name: string, value: LineValue | Problem): SolutionValue | FormulaValue | Problem => {
  if (isProblem(value) || value.type === "solution" || value.type === "formula") return value;
  return problem({ code: "not-an-answer", what: name, got: `a ${value.type}`, must: "be a working" });
};

export const oneCheck = (item: CheckItem, results: Results, unitOf: UnitChoice): CheckValue | Problem =>
  item.reads === undefined ? checkValue(item, results, unitOf) : textCheck(item, results);

export function rowsCheck(item: CheckItem, results: Results, unitOf: UnitChoice): ChecksValue | Problem {
  const contexts = contextsOf(item, results);
  if (isProblem(contexts)) return contexts;
  const rows = contexts.rows.map((row): RowOf<CheckValue> => {
    const here: Results = { get: results.get, keys: results.keys, row };
    return { key: row.value, tags: row.tags, value: row.problem ?? oneCheck(item, here, unitOf) };
  });
  return summed(contexts.key, rows);
}

/** The worst state stands for all, and the words name the rows that are not proven. */
export function summed(key: string, rows: readonly RowOf<CheckValue>[]): ChecksValue {
  const stateOf = ({ value }: RowOf<CheckValue>) => (isProblem(value) ? "no answer" : value.state);
  const state = states.find((s) => rows.some((row) => stateOf(row) === s)) ?? "no answer";
  const parts = states
    .filter((s) => s !== "proven")
    .map((s) => [s, rows.filter((row) => stateOf(row) === s).map((row) => row.key)] as const)
    .filter(([, keys]) => keys.length > 0)
    .map(([s, keys]) => `${s}: ${keys.join(", ")}`);
  const proven = rows.filter((row) => stateOf(row) === "proven").length;
  return {
    type: "checks",
    key,
    state,
    reservations: [],
    rows,
    ...worded([`${proven} of ${rows.length} proven`, ...parts].join("; "), []),
  };
}
