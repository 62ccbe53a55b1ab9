// A check of a text: a head mark, the outcome of a pin test. A blank is missing, never a pass.
import type { CheckItem } from "../document/item.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { clear, reserved, type Standing } from "../standing.ts";
import { workOut } from "./formula.ts";
import { lackingReadings } from "./lacking-readings.ts";
import type { CheckValue, SolutionValue } from "./line.ts";
import { outputStanding, type Results, rowsAtHand, unknownName, upstream } from "./scope.ts";
import { plainCheck } from "./verdict-of.ts";

export function textCheck(item: CheckItem, results: Results): CheckValue | Problem {
  const found = textOf(item.reads ?? "", results);
  if (isProblem(found)) return found;
  const { text, standing } = found;
  const step = workOut(item.name, item.says, "1", results);
  if (isProblem(step)) return step;
  const allowed = item.allowed ?? [];
  const passes = allowed.includes(text);
  const reason = passes ? text : `${text}, must be ${allowed.join(" or ")}`;
  return plainCheck(item, { passes, reason, standing, step: step.step });
}

interface TextRead {
  readonly text: string;
  readonly standing: Standing;
}

function ofSolution(value: SolutionValue, part: string, fullName: string): TextRead | Problem {
  const output = value.solution.outputs[part];
  return output?.kind === "text"
    ? { text: output.text, standing: outputStanding(value, part) }
    : problem({ code: "not-a-text", what: fullName, got: "no text", must: "be a text" });
}

function textOf(fullName: string, results: Results): TextRead | Problem {
  const [name = "", part] = fullName.split(".");
  const line = results.get(name);
  if (line === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(line)) return upstream(fullName, line);
  const missing = problem({ code: "missing", what: fullName, got: "nothing", must: "be read" });
  if (line.type === "text" && part === undefined) return { text: line.text, standing: clear };
  if (line.type === "solution" && part !== undefined) return ofSolution(line, part, fullName);
  if (line.type === "rows" && part !== undefined) {
    const row = line.rows.find((r) => r.key === results.row?.tags[line.key]);
    if (!row) return missing;
    if (isProblem(row.value)) return upstream(fullName, row.value);
    return row.value.type === "solution"
      ? ofSolution(row.value, part, fullName)
      : problem({ code: "not-a-text", what: fullName, got: "no text", must: "be a text" });
  }
  if (line.type !== "table")
    return problem({ code: "not-a-text", what: fullName, got: `a ${line.type}`, must: "be a text" });
  const column = line.columns.find((c) => c.name === part);
  if (!column)
    return problem({
      code: "no-such-output",
      what: fullName,
      got: `no ${part ?? "column"} in ${name}`,
      must: `be one of ${line.columns.map((c) => c.name).join(", ")}`,
    });
  const texts = [...new Set(rowsAtHand(line, results.row).map((i) => column.typed[i] ?? ""))];
  const [only] = texts;
  if (only === undefined || texts.includes("")) return missing;
  return {
    text: texts.length === 1 ? only : texts.join(" and "),
    standing: reserved(clear, ...lackingReadings(line, name, results.row, part)),
  };
}
