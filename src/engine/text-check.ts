// A check of a text: a head mark, the outcome of a pin test. A blank is missing, never a pass.
import type { CheckItem } from "../document/item.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { CheckValue } from "./cell.ts";
import { workOut } from "./formula.ts";
import { type Results, rowsAtHand, unknownName, upstream } from "./scope.ts";

export function textCheck(item: CheckItem, results: Results): CheckValue | Problem {
  const text = textOf(item.reads ?? "", results);
  if (isProblem(text)) return text;
  const step = workOut(item.name, item.says, "1", results);
  if (isProblem(step)) return step;
  const allowed = item.allowed ?? [];
  const passes = allowed.includes(text);
  const judged = passes ? "proven" : "fails";
  return {
    type: "check",
    state: item.waived ? "waived" : judged,
    judged,
    kind: undefined,
    unit: undefined,
    si: Number.NaN,
    yes: passes,
    limits: {},
    uncertainty: 0,
    why: passes ? text : `${text}, must be ${allowed.join(" or ")}`,
    waived: item.waived,
    step: step.step,
  };
}

function textOf(fullName: string, results: Results): string | Problem {
  const [name = "", part] = fullName.split(".");
  const cell = results.get(name);
  if (cell === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(cell)) return upstream(fullName, cell);
  const missing = problem({ code: "missing", what: fullName, got: "nothing", must: "be read" });
  if (cell.type === "text" && part === undefined) return cell.text;
  if (cell.type === "solution" && part !== undefined) {
    const output = cell.solution.outputs[part];
    return output?.kind === "text"
      ? output.text
      : problem({ code: "not-a-text", what: fullName, got: "no text", must: "be a text" });
  }
  if (cell.type === "rows" && part !== undefined) {
    const row = cell.rows.find((r) => r.key === results.row?.tags[cell.key]);
    if (!row) return missing;
    if (isProblem(row.value)) return upstream(fullName, row.value);
    const output = row.value.type === "solution" ? row.value.solution.outputs[part] : undefined;
    return output?.kind === "text"
      ? output.text
      : problem({ code: "not-a-text", what: fullName, got: "no text", must: "be a text" });
  }
  if (cell.type !== "table")
    return problem({ code: "not-a-text", what: fullName, got: `a ${cell.type}`, must: "be a text" });
  const column = cell.columns.find((c) => c.name === part);
  if (!column)
    return problem({
      code: "no-such-output",
      what: fullName,
      got: `no ${part ?? "column"} in ${name}`,
      must: `be one of ${cell.columns.map((c) => c.name).join(", ")}`,
    });
  const texts = [...new Set(rowsAtHand(cell, results.row).map((i) => column.typed[i] ?? ""))];
  const [only] = texts;
  if (only === undefined || texts.includes("")) return missing;
  return texts.length === 1 ? only : texts.join(" and ");
}
