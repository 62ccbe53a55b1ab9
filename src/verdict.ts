// What a check says. "No answer" is a result of its own: it never carries a value,
// and a waiver never turns into proven.

export type State = "proven" | "unproven" | "fails" | "no answer" | "waived";

export const states: readonly State[] = ["fails", "no answer", "unproven", "waived", "proven"];

/** Limits and value in SI; `uncertainty` is the expanded half-width of the value. */
export interface Limits {
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
}

/**
 * Guarded decision: proven when the whole uncertainty lies inside, fails when it lies outside,
 * else unproven. The idea is that of ISO 14253-1 (from memory). With no uncertainty the state is
 * proven or fails; a value on the limit is inside.
 */
export function judge(value: number, limits: Limits, uncertainty = 0): State {
  const { atLeast, atMost } = limits;
  if (!Number.isFinite(value) || !Number.isFinite(uncertainty) || uncertainty < 0) return "no answer";
  if (Number.isNaN(atLeast) || Number.isNaN(atMost)) return "no answer";
  if (atLeast === undefined && atMost === undefined) return "no answer";
  const low = value - uncertainty;
  const high = value + uncertainty;
  if ((atLeast !== undefined && high < atLeast) || (atMost !== undefined && low > atMost)) return "fails";
  if ((atLeast !== undefined && low < atLeast) || (atMost !== undefined && high > atMost)) return "unproven";
  return "proven";
}
