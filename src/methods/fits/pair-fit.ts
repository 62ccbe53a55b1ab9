// What a shank in a hole has to keep: clearances, limits and uncertainties, shared by the methods on pairs.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { judge, type State } from "../../verdict.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import type { ListField, QuantityField, TextField } from "../field.ts";
import { cellNumber, numberOf, rowsOf, textOf } from "../inside.ts";
import type { Insides, Limit, Steps } from "../method.ts";

export const clearances: Steps = {
  tightest: "holeSmallest - shankLargest",
  loosest: "holeLargestDepthMean - shankMean",
};
export const uncertaintyStep: Steps = { uncertainty: "sqrt(holeUncertainty ^ 2 + shankUncertainty ^ 2)" };

const optional = (symbol: string, says: string) =>
  ({ kind: "length", symbol, says, optional: true }) as const satisfies QuantityField;

export const pairLimitFields = {
  tightestAllowed: optional("c_min", "tightest clearance allowed, negative for interference"),
  loosestAllowed: optional("c_max", "loosest clearance allowed"),
  limits: {
    kind: "list",
    says: "both limits in one row",
    optional: true,
    one: true,
    of: {
      tightest: optional("c_min", "tightest clearance allowed"),
      loosest: optional("c_max", "loosest clearance allowed"),
    },
  } as const satisfies ListField,
  ends: {
    kind: "text",
    says: "the end that matters, where the other has no limit",
    optional: true,
    choices: ["both", "tightest", "loosest"],
  } as const satisfies TextField,
  holeUncertainty: optional("U_h", "expanded uncertainty of the hole"),
  shankUncertainty: optional("U_s", "expanded uncertainty of the shank"),
  uncertainties: {
    kind: "list",
    says: "both uncertainties in one row",
    optional: true,
    one: true,
    of: {
      hole: optional("U_h", "expanded uncertainty of the hole"),
      shank: optional("U_s", "expanded uncertainty of the shank"),
    },
  } as const satisfies ListField,
};

/** What the fields give as single numbers, for a procedure to hand on. */
export const pairLimitGives = {
  tightestAllowed: { kind: "length", symbol: "c_min" },
  loosestAllowed: { kind: "length", symbol: "c_max" },
  holeUncertainty: { kind: "length", symbol: "U_h" },
  shankUncertainty: { kind: "length", symbol: "U_s" },
  tightestOpen: { kind: "count", says: "tightest end without a limit" },
  loosestOpen: { kind: "count", says: "loosest end without a limit" },
} as const;

/** An end that nobody judged proves nothing, unless it is said that it does not matter. */
export const openEnds = (spoils: readonly string[]): readonly Limit[] =>
  (["tightest", "loosest"] as const).map((end) => ({
    that: `${end}Open == 0`,
    else: `${end} not judged: no limit given`,
    hint: `give ${end}Allowed, or name the other in ends where this one does not matter`,
    warn: "spoils",
    spoils,
  }));

export interface PairLimits {
  readonly tightestAllowed?: number;
  readonly loosestAllowed?: number;
  /** 1 where an end has no limit and is not said to be without matter, else 0. */
  readonly tightestOpen: number;
  readonly loosestOpen: number;
  readonly holeUncertainty: number;
  readonly shankUncertainty: number;
}

/** A number from its own field or from a column of a one-row list, not from both. */
function fieldOrRow(
  inputs: Insides,
  field: string,
  [list, column]: readonly [string, string],
): number | undefined | Problem {
  const single = numberOf(inputs, field);
  const listed = cellNumber(rowsOf(inputs, list)[0] ?? {}, column);
  if (single !== undefined && listed !== undefined)
    return problem({
      code: "given-twice",
      what: field,
      got: `${field} and ${list}`,
      must: "be given once",
    });
  return single ?? listed;
}

const places = [
  ["tightestAllowed", ["limits", "tightest"]],
  ["loosestAllowed", ["limits", "loosest"]],
  ["holeUncertainty", ["uncertainties", "hole"]],
  ["shankUncertainty", ["uncertainties", "shank"]],
] as const;

export function pairLimits(inputs: Insides): PairLimits | Problem {
  const found: Partial<Record<(typeof places)[number][0], number>> = {};
  for (const [field, place] of places) {
    const value = fieldOrRow(inputs, field, place);
    if (isProblem(value)) return value;
    if (value !== undefined) found[field] = value;
  }
  const { holeUncertainty, shankUncertainty, ...limits } = found;
  if (holeUncertainty === undefined) return missing("uncertainty of the hole", "holeUncertainty");
  if (shankUncertainty === undefined) return missing("uncertainty of the shank", "shankUncertainty");
  if (limits.tightestAllowed === undefined && limits.loosestAllowed === undefined)
    return missing("limits of the clearance", "tightestAllowed or loosestAllowed");
  const ends = textOf(inputs, "ends") ?? "both";
  const fault = ends === "both" ? undefined : wrongEnd(ends, limits);
  if (fault) return fault;
  const open = (limit: number | undefined) => (limit === undefined && ends === "both" ? 1 : 0);
  return {
    ...limits,
    tightestOpen: open(limits.tightestAllowed),
    loosestOpen: open(limits.loosestAllowed),
    holeUncertainty,
    shankUncertainty,
  };
}

/** The end that alone matters has a limit, and the other has none. */
function wrongEnd(only: string, limits: Pick<PairLimits, "tightestAllowed" | "loosestAllowed">) {
  const both = limits.tightestAllowed !== undefined && limits.loosestAllowed !== undefined;
  const own = only === "tightest" ? limits.tightestAllowed : limits.loosestAllowed;
  if (!both && own !== undefined) return undefined;
  return problem({
    code: "odd-end",
    what: pairLimitFields.ends.says,
    got: both ? `${only}, and limits for both ends` : `${only}, and a limit for the other end alone`,
    must: both ? "be left out where both ends have limits" : "be the end that has a limit",
  });
}

const missing = (what: string, name: string): Problem =>
  problem({
    code: "missing-input",
    what,
    got: "nothing",
    must: `be given as ${name}`,
    hint: name.includes("ncertainty")
      ? "from the certificate of the gauge, for example 3 um; 0 um says that it is exact"
      : "limits of a fit come from the maker or the engineer",
  });

export interface HoleSize {
  readonly holeSmallest: number;
  readonly holeLargestDepthMean: number;
}
export interface ShankSize {
  readonly shankLargest: number;
  readonly shankMean: number;
}

export interface PairState {
  readonly tightest: number;
  readonly loosest: number;
  readonly tightestState?: State;
  readonly loosestState?: State;
  /** The worse of the two; unproven at best where an end was not judged. */
  readonly state: State;
}

const worst: readonly State[] = ["no answer", "fails", "unproven", "proven"];

/** Both ends of the clearance against their limits, each guarded by the uncertainty. */
export function pairState(
  sizes: HoleSize & ShankSize,
  limits: PairLimits,
  uncertainty: number,
): PairState | Problem {
  const found = evaluateSteps(clearances, { ...sizes });
  if (isProblem(found)) return found;
  const { tightest = Number.NaN, loosest = Number.NaN } = found;
  const { tightestAllowed: atLeast, loosestAllowed: atMost } = limits;
  const scale = Math.max(sizes.holeLargestDepthMean, sizes.shankLargest);
  const tightestState = atLeast === undefined ? undefined : judge(tightest, { atLeast }, uncertainty, scale);
  const loosestState = atMost === undefined ? undefined : judge(loosest, { atMost }, uncertainty, scale);
  const open = limits.tightestOpen + limits.loosestOpen > 0 ? "unproven" : undefined;
  const state = worst.find((each) => [tightestState, loosestState, open].includes(each)) ?? "no answer";
  return {
    tightest,
    loosest,
    state,
    ...(tightestState && { tightestState }),
    ...(loosestState && { loosestState }),
  };
}
