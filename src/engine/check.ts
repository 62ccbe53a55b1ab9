// A check compares a value with limits and says one of five things. It never shows a value
// when there is no answer, and a waiver never turns into proven.
import type { CheckItem } from "../document/item.ts";
import { methods } from "../methods/index.ts";
import { formatShort, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { formatIn } from "../units/format.ts";
import type { Unit } from "../units/unit.ts";
import { judge, type State } from "../verdict.ts";
import type { CheckValue, FormulaValue } from "./cell.ts";
import { workOut } from "./formula.ts";
import type { Results } from "./scope.ts";

export function checkValue(
  item: CheckItem,
  results: Results,
  unitOf: UnitChoice = usualUnit,
): CheckValue | Problem {
  const that = workOut(item.name, item.says, item.that, results);
  if (isProblem(that)) return that;
  const waived = item.waived;
  if (that.kind === "yes/no") return truthCheck(item, that, results);
  const limit = (text: string | undefined, what: string): number | undefined | Problem => {
    if (text === undefined) return undefined;
    const worked = workOut(what, undefined, text, results);
    if (isProblem(worked)) return worked.with({ what: `${what} · ${worked.what}` });
    if (!sameDimension(worked.dimension, that.dimension) && worked.si !== 0)
      return problem({
        code: "dimension",
        what,
        got: dimensionWords(worked.dimension),
        must: `be a ${dimensionWords(that.dimension)}, as the value it limits`,
      });
    return worked.si;
  };
  const atLeast = limit(item.between?.[0] ?? item.atLeast, "lower limit");
  const atMost = limit(item.between?.[1] ?? item.atMost, "upper limit");
  const uncertainty = limit(item.uncertainty, "uncertainty") ?? 0;
  if (isProblem(atLeast)) return atLeast;
  if (isProblem(atMost)) return atMost;
  if (isProblem(uncertainty)) return uncertainty;
  if (atLeast === undefined && atMost === undefined)
    return problem({
      code: "no-limit",
      what: item.says ?? item.name,
      got: "no limit",
      must: "have atLeast, atMost or between",
      hint: "or compare inside the formula: that: a <= b",
    });
  const limits = { atLeast, atMost };
  const judged = judge(that.si, limits, uncertainty);
  const shown = shownUnit(that, results, unitOf);
  if (judged === "no answer")
    return problem({
      code: "not-finite",
      what: item.says ?? item.name,
      got: "no finite number",
      must: "be compared with its limit",
    });
  return {
    type: "check",
    state: waived ? "waived" : judged,
    judged,
    kind: that.kind,
    unit: shown,
    si: that.si,
    yes: undefined,
    limits,
    uncertainty,
    why: reason(that, limits, uncertainty, judged, shown),
    waived,
    step: that.step,
  };
}

function truthCheck(item: CheckItem, that: FormulaValue, results: Results): CheckValue {
  const yes = that.si === 1;
  const judged: State = yes ? "proven" : "fails";
  return {
    type: "check",
    state: item.waived ? "waived" : judged,
    judged,
    kind: undefined,
    unit: undefined,
    si: Number.NaN,
    yes,
    limits: {},
    uncertainty: 0,
    why: yes
      ? `${asked(item.that, results)}: yes`
      : (warningOf(item.that, results) ?? `${asked(item.that, results)}: no`),
    waived: item.waived,
    step: that.step,
  };
}

/** What a yes or no answers: the output's own words, else the formula as written. */
function asked(that: string, results: Results): string {
  const [name = "", part = ""] = that.split(".");
  const cell = results.get(name);
  if (!cell || isProblem(cell) || cell.type !== "solution") return that;
  return methods.get(cell.solution.method)?.outputs[part]?.says ?? that;
}

/** The method's own words, where the check asks for an output of a method that warned. */
function warningOf(that: string, results: Results): string | undefined {
  const cell = results.get(that.split(".")[0] ?? that);
  const warning =
    cell && !isProblem(cell) && cell.type === "solution" ? cell.solution.warnings[0] : undefined;
  return warning && `${warning.why}: ${warning.what} is ${warning.got}, must ${warning.must}`;
}

/** The unit the page asks for where the checked working stands, else that of its kind. */
function shownUnit(that: FormulaValue, results: Results, unitOf: UnitChoice): Unit {
  const { tree } = that.step;
  const cell = tree.type === "name" ? results.get(tree.name) : undefined;
  const asked = cell && !isProblem(cell) && cell.type === "formula" ? cell.unit : undefined;
  return asked ?? unitOf(that.kind === "yes/no" ? "ratio" : that.kind);
}

/** "1.19 against at most 0.9": digits are added until value and limit differ as shown. */
function reason(
  that: FormulaValue,
  limits: CheckValue["limits"],
  guard: number,
  judged: State,
  shown: Unit,
): string {
  const text = (si: number, digits: number) =>
    digits === 4 ? formatIn(si, shown) : formatIn(si, shown, { significant: digits });
  const nearby = [limits.atLeast, limits.atMost].filter((l): l is number => l !== undefined && l !== that.si);
  let digits = 4;
  while (digits < 12 && nearby.some((l) => text(l, digits) === text(that.si, digits))) digits += 1;
  const limitText = (si: number) => {
    const short = formatShort(si, shown);
    return short.length < text(si, digits).length ? short : text(si, digits);
  };
  const bounds = [
    limits.atLeast !== undefined && `at least ${limitText(limits.atLeast)}`,
    limits.atMost !== undefined && `at most ${limitText(limits.atMost)}`,
  ].filter(Boolean);
  const doubt = guard > 0 ? ` ± ${formatIn(guard, shown, { significant: 2 })}` : "";
  const word =
    judged === "proven" ? "" : judged === "unproven" ? ", within the uncertainty of the limit" : "";
  return `${text(that.si, digits)}${doubt} against ${bounds.join(" and ")}${word}`;
}
