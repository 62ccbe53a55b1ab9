// A check that a list stays empty: each row of it is a finding, with its own words.
import type { CheckItem } from "../document/item.ts";
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { formatValue, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { ChecksValue, CheckValue, RowOf } from "./cell.ts";
import { summed } from "./each.ts";
import { workOut } from "./formula.ts";
import { type Results, unknownName, upstream } from "./scope.ts";

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
  if (output.rows.length === 0)
    return { type: "checks", key: "finding", state: "proven", rows: [], why: "nothing found" };
  const step = workOut(item.name, item.says, "1", results);
  if (isProblem(step)) return step;
  const rows = output.rows.map((row): RowOf<CheckValue> => {
    const words = wordsOf(row, unitOf);
    const value: CheckValue = {
      type: "check",
      state: item.waived ? "waived" : "fails",
      judged: "fails",
      kind: undefined,
      unit: undefined,
      si: Number.NaN,
      yes: false,
      limits: {},
      uncertainty: 0,
      why: words.why,
      waived: item.waived,
      step: step.step,
    };
    return { key: words.key, tags: words.tags, value };
  });
  const checks = summed("finding", rows);
  return { ...checks, why: `${rows.length} found: ${rows.map((row) => row.key).join("; ")}` };
}

type Row = Extract<OutputValue, { kind: "list" }>["rows"][number];

/** The texts that name a place make the key, everything else the words. */
function wordsOf(row: Row, unitOf: UnitChoice): { key: string; tags: Record<string, string>; why: string } {
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
    why: rest
      .map(([name, value]) => (value.kind === "text" ? text(value) : `${name} ${text(value)}`))
      .filter((words) => words !== "")
      .join("; "),
  };
}
