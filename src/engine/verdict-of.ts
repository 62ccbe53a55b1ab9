// From a standing to what a check says: a value with a reservation proves nothing, and every cause is named.
import type { CheckItem } from "../document/item.ts";
import type { WorkedStep } from "../methods/solution.ts";
import { type Problem, sentence } from "../problem.ts";
import { type Contribution, halfWidth, merged, type Standing } from "../standing.ts";
import type { State } from "../verdict.ts";
import type { CheckValue } from "./line.ts";

const order: readonly State[] = ["no answer", "fails", "unproven", "proven"];

export const worse = (states: readonly State[]): State =>
  order.find((state) => states.includes(state)) ?? "no answer";

/** At most unproven where the number may not hold. */
export const guarded = (state: State, reservations: readonly Problem[]): State =>
  state === "proven" && reservations.length > 0 ? "unproven" : state;

/** The reason alone, and with "; it may not hold: hole 13 with 4 readings set aside". */
export const worded = (reason: string, reservations: readonly Problem[]) => ({
  reason,
  why:
    reservations.length === 0
      ? reason
      : `${reason}; it may not hold: ${reservations.map(sentence).join("; ")}`,
});

/** The width that the causes come to, and their names with the largest first. */
export function carriedOf(doubt: readonly Contribution[]): CheckValue["carried"] {
  const causes = new Map<string, number>();
  for (const { group, says = group, up, down } of merged(doubt))
    causes.set(says, Math.max(causes.get(says) ?? 0, Math.abs(up), Math.abs(down)));
  const from = [...causes].sort(([, a], [, b]) => b - a).map(([name]) => name);
  return { halfWidth: halfWidth(doubt), from };
}

export const known = ({ reservations, memory, unsourced }: Standing) => ({ reservations, memory, unsourced });

interface Outcome {
  readonly passes: boolean;
  readonly reason: string;
  readonly because?: Problem | undefined;
  readonly standing: Standing;
  readonly step: WorkedStep;
}

/** A check without a number: a truth, a text, a finding. */
export function plainCheck(
  item: CheckItem,
  { passes, reason, because, standing, step }: Outcome,
): CheckValue {
  const judged = guarded(passes ? "proven" : "fails", standing.reservations);
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
    carried: { halfWidth: 0, from: [] },
    ...known(standing),
    ...worded(reason, standing.reservations),
    because,
    waived: item.waived,
    step,
  };
}
