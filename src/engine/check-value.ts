// A check compares a value with limits and says one of five things. It never shows a value
// when there is no answer, and a waiver never turns into proven.
import type { CheckItem } from "../document/item.ts";
import { formatShort, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { statedDoubt } from "../methods/stated-doubt.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Contribution, clear, differenceOf, halfWidth, joined, type Standing } from "../standing.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { kindsAgree } from "../units/kind.ts";
import { oneValue, quantity } from "../units/quantity.ts";
import { judge } from "../verdict.ts";
import { asked, reason, shownUnit, warningOf, warningWords } from "./check-words.ts";
import { formulaTree, workOut } from "./formula.ts";
import type { CheckValue, FormulaValue } from "./line.ts";
import { meant } from "./meant.ts";
import type { Results } from "./scope.ts";
import { carriedOf, guarded, known, plainCheck, worded, worse } from "./verdict-of.ts";

export function checkValue(
  item: CheckItem,
  results: Results,
  unitOf: UnitChoice = usualUnit,
): CheckValue | Problem {
  const that = workOut(item.name, item.says, item.that, results);
  if (isProblem(that)) return that;
  if (that.kind === "yes/no") return truthCheck(item, that, results);
  const least = limitOf(item.between?.[0] ?? item.atLeast, "lower limit", that, results);
  if (isProblem(least)) return least;
  const most = limitOf(item.between?.[1] ?? item.atMost, "upper limit", that, results);
  if (isProblem(most)) return most;
  const [atLeast, atMost] = [least?.si, most?.si];
  const typed = [item.atLeast, item.atMost, ...(item.between ?? [])].filter((text) => text !== undefined);
  const shown = shownUnit(that, results, unitOf, typed);
  if (item.uncertainty?.trim().endsWith("%") && shown.text !== "%") return shareOf(item.uncertainty);
  const declared = limitOf(item.uncertainty, "uncertainty", that, results);
  if (isProblem(declared)) return declared;
  const limits = { atLeast, atMost };
  const fault = faultOf(item, limits, declared?.si ?? 0, (si) => formatShort(si, shown));
  if (fault) return fault;
  const standing = joined([
    that.named.standing,
    ...[least, most, declared].flatMap((one) => one?.standing ?? []),
  ]);
  const sides = [
    ...(least ? [{ limits: { atLeast }, doubt: apart(that, least) }] : []),
    ...(most ? [{ limits: { atMost }, doubt: apart(that, most) }] : []),
  ];
  const widths = sides.map(({ doubt }) => halfWidth(doubt));
  const scale = Math.abs(that.si) + that.step.scale();
  const states = sides.map((side, i) =>
    judge(that.si, side.limits, Math.max(declared?.si ?? 0, widths[i] ?? 0), scale),
  );
  const byNumbers = worse(states);
  const judged = guarded(byNumbers, standing.reservations);
  const uncertainty = Math.max(declared?.si ?? 0, ...widths);
  const carried = carriedOf(sides[widths.indexOf(Math.max(...widths))]?.doubt ?? []);
  return {
    type: "check",
    state: item.waived ? "waived" : judged,
    judged,
    kind: that.kind,
    unit: shown,
    si: that.si,
    yes: undefined,
    limits,
    uncertainty,
    carried,
    ...known(standing),
    ...worded(reason(that, limits, uncertainty, byNumbers, shown, carried.from), standing.reservations),
    waived: item.waived,
    step: that.step,
  };
}

interface Bound {
  readonly si: number;
  readonly standing: Standing;
}

/** Doubt of the value less its limit: what both rest on falls out. */
const apart = (that: FormulaValue, limit: Bound): readonly Contribution[] =>
  differenceOf(that.named.standing.doubt, limit.standing.doubt);

/** A limit typed directly takes the kind of the value; a name or a formula has to agree with it. */
function limitOf(
  text: string | undefined,
  what: string,
  that: FormulaValue,
  results: Results,
): Bound | undefined | Problem {
  if (text === undefined) return undefined;
  const plain = (si: number): Bound => ({ si, standing: clear });
  const kind =
    what === "uncertainty" && that.kind === "temperature" ? "temperature difference" : that.named.typed.kind;
  if (isZero(text)) return plain(0);
  if (kind !== undefined) {
    const read = what === "uncertainty" ? oneValue : quantity;
    const found = meant(text, (typed) => read(typed, kind));
    if (isProblem(found))
      return dimensionFault(text, what, that) ?? found.with({ what: `${what} · ${found.what}` });
    if ("quantity" in found)
      return { si: found.quantity.si, standing: { ...clear, doubt: statedDoubt(what, found.quantity) } };
  }
  const worked = workOut(what, undefined, text, results);
  if (isProblem(worked)) return worked.with({ what: `${what} · ${worked.what}` });
  const found = worked.named.typed.kind;
  if (!sameDimension(worked.dimension, that.dimension) && worked.si !== 0)
    return unlike(what, dimensionWords(worked.dimension), that);
  if (kind !== undefined && found !== undefined && !kindsAgree(kind, found)) return unlike(what, found, that);
  return { si: worked.si, standing: worked.named.standing };
}

/** A zero of any kind is zero. */
function isZero(text: string): boolean {
  const tree = formulaTree(text);
  return !isProblem(tree) && tree.type === "number" && tree.value === 0;
}

function dimensionFault(text: string, what: string, that: FormulaValue): Problem | undefined {
  const read = quantity(text);
  return isProblem(read) || sameDimension(read.unit.dimension, that.dimension)
    ? undefined
    : unlike(what, dimensionWords(read.unit.dimension), that);
}

/** A share of the value and points of a ratio cannot be told apart, so neither is taken. */
const shareOf = (got: string): Problem =>
  problem({
    code: "share-as-uncertainty",
    what: "uncertainty",
    got,
    must: "be a half-width in the unit of the value, or a formula",
    hint: "for a share of the value write it out, as uncertainty: 0.2 * name",
  });

const unlike = (what: string, got: string, that: FormulaValue): Problem =>
  problem({
    code: "dimension",
    what,
    got,
    must: `be a ${that.named.typed.kind ?? dimensionWords(that.dimension)}, as the value it limits`,
  });

function faultOf(
  item: CheckItem,
  limits: CheckValue["limits"],
  uncertainty: number,
  words: (si: number) => string,
): Problem | undefined {
  const { atLeast, atMost } = limits;
  const what = item.says ?? item.name;
  if (atLeast === undefined && atMost === undefined)
    return problem({
      code: "no-limit",
      what,
      got: "no limit",
      must: "have atLeast, atMost or between",
      hint: "or compare inside the formula: that: a <= b",
    });
  if (uncertainty < 0)
    return problem({
      code: "negative-uncertainty",
      what: "uncertainty",
      got: words(uncertainty),
      must: "be at least 0",
      why: "it is a half-width",
    });
  if (atLeast !== undefined && atMost !== undefined && atLeast > atMost)
    return problem({
      code: "crossed-limits",
      what,
      got: `a lower limit of ${words(atLeast)} above the upper limit of ${words(atMost)}`,
      must: "have a range",
      why: "no value lies between",
    });
  return undefined;
}

function truthCheck(item: CheckItem, that: FormulaValue, results: Results): CheckValue | Problem {
  const limited = [item.atLeast, item.atMost, item.between, item.uncertainty].some(
    (limit) => limit !== undefined,
  );
  if (limited)
    return problem({
      code: "limit-of-a-truth",
      what: item.says ?? item.name,
      got: "a limit beside a yes or no",
      must: "stand without limits",
      hint: "a yes has no size",
    });
  const yes = that.si === 1;
  const question = asked(item.that, results);
  const because = yes ? undefined : warningOf(item.that, results);
  const said = because ? warningWords(because) : `${question}: ${yes ? "yes" : "no"}`;
  return plainCheck(item, {
    passes: yes,
    reason: said,
    because,
    standing: that.named.standing,
    step: that.step,
  });
}
