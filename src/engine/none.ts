// A check that a list stays empty: each row of it is a finding, with its own words.
import type { CheckItem } from "../document/item.ts";
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { formatValue, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { clear } from "../standing.ts";
import { summed } from "./each.ts";
import { workOut } from "./formula.ts";
import type { ChecksValue, CheckValue, RowOf } from "./line.ts";
import { outputStanding, type Results, unknownName, upstream } from "./scope.ts";
import { guarded, plainCheck, worded } from "./verdict-of.ts";

export function noneCheck(
  item: CheckItem,
  results: Results,
  unitOf: UnitChoice = usualUnit,
): ChecksValue | Problem {
  const [name = "", part = ""] = (item.none ?? "").split(".");
  const found = results.get(name);
  if (found === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(found)) return upstream(name, found);
  const output = found.type === "solution" ? found.solution.outputs[part] : undefined;
  if (output?.kind !== "list")
    return problem({
      code: "not-a-list",
      what: item.none ?? "none",
      got: found.type === "solution" ? "no such list" : `a ${found.type}`,
      must: "be a list that a method gives",
    });
  const reservations = found.type === "solution" ? outputStanding(found, part).reservations : [];
  if (output.rows.length === 0) {
    const judged = guarded("proven", reservations);
    const state = item.waived ? "waived" : judged;
    const said = worded("nothing found", reservations);
    return { type: "checks", key: "finding", state, reservations, rows: [], ...said };
  }
  const step = workOut(item.name, item.says, "1", results);
  if (isProblem(step)) return step;
  const rows = output.rows.map((row): RowOf<CheckValue> => {
    const words = wordsOf(row, unitOf);
    const value = plainCheck(item, { passes: false, reason: words.reason, standing: clear, step: step.step });
    return { key: words.key, tags: words.tags, value };
  });
  const checks = summed("finding", rows);
  const reason = `${rows.length} found: ${rows.map((row) => row.key).join("; ")}`;
  return { ...checks, reservations, ...worded(reason, reservations) };
}

type Row = Extract<OutputValue, { kind: "list" }>["rows"][number];

/** The texts that name a place make the key, everything else the words. */
function wordsOf(
  row: Row,
  unitOf: UnitChoice,
): { key: string; tags: Record<string, string>; reason: string } {
  const text = (value: ScalarOutput): string =>
    value.kind === "text"
      ? value.text
      : value.kind === "yes/no"
        ? value.yes
          ? "yes"
          : "no"
        : formatValue(value.si, value.kind, unitOf(value.kind));
  const entries = Object.entries(row);
  const places = entries.filter(([name]) => name === "pass" || name === "position" || name === "tag");
  const rest = entries.filter(([name]) => !places.some(([place]) => place === name));
  return {
    key: places
      .map(([name, value]) => (/^\d/.test(text(value)) ? `${name} ${text(value)}` : text(value)))
      .join(", "),
    tags: Object.fromEntries(places.map(([name, value]) => [name, text(value)])),
    reason: rest
      .map(([name, value]) => (value.kind === "text" ? text(value) : `${name} ${text(value)}`))
      .filter((words) => words !== "")
      .join("; "),
  };
}
