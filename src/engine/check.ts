// A check compares a value with limits and says one of five things. It never shows a value
// when there is no answer, and a waiver never turns into proven.
import type { CheckItem } from "../document/item.ts";
import { type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { formatIn } from "../units/format.ts";
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
  if (that.kind === "yes/no") return truthCheck(item, that, waived);
  const limit = (text: string | undefined, what: string): number | undefined | Problem => {
    if (text === undefined) return undefined;
    const worked = workOut(what, undefined, text, results);
    if (isProblem(worked)) return problem({ ...worked, what: `${what} · ${worked.what}` });
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
  for (const found of [atLeast, atMost, uncertainty]) if (isProblem(found)) return found;
  if (atLeast === undefined && atMost === undefined)
    return problem({
      code: "no-limit",
      what: item.says ?? item.name,
      got: "no limit",
      must: "have atLeast, atMost or between",
      hint: "or compare inside the formula: that: a <= b",
    });
  const limits = { atLeast: atLeast as number | undefined, atMost: atMost as number | undefined };
  const guard = uncertainty as number;
  const judged = judge(that.si, limits, guard);
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
    si: that.si,
    yes: undefined,
    limits,
    uncertainty: guard,
    why: reason(that, limits, guard, judged, unitOf),
    waived,
    step: that.step,
  };
}

function truthCheck(item: CheckItem, that: FormulaValue, waived: CheckItem["waived"]): CheckValue {
  const judged: State = that.si === 1 ? "proven" : "fails";
  return {
    type: "check",
    state: waived ? "waived" : judged,
    judged,
    kind: undefined,
    si: Number.NaN,
    yes: that.si === 1,
    limits: {},
    uncertainty: 0,
    why: that.si === 1 ? `${item.that} holds` : `${item.that} does not hold`,
    waived,
    step: that.step,
  };
}

/** "1.19 against at most 0.9": digits are added until value and limit differ as shown. */
function reason(
  that: FormulaValue,
  limits: CheckValue["limits"],
  guard: number,
  judged: State,
  unitOf: UnitChoice,
): string {
  const kind = that.kind === "yes/no" ? "ratio" : that.kind;
  const shown = unitOf(kind);
  const text = (si: number, digits: number) => formatIn(si, shown, { significant: digits });
  const nearby = [limits.atLeast, limits.atMost].filter((l): l is number => l !== undefined && l !== that.si);
  let digits = 4;
  while (digits < 12 && nearby.some((l) => text(l, digits) === text(that.si, digits))) digits += 1;
  const bounds = [
    limits.atLeast !== undefined && `at least ${text(limits.atLeast, digits)}`,
    limits.atMost !== undefined && `at most ${text(limits.atMost, digits)}`,
  ].filter(Boolean);
  const doubt = guard > 0 ? ` ± ${text(guard, 3)}` : "";
  const word =
    judged === "proven" ? "" : judged === "unproven" ? ", within the uncertainty of the limit" : "";
  return `${text(that.si, digits)}${doubt} against ${bounds.join(" and ")}${word}`;
}
