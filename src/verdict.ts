// What a check says. "No answer" is a result of its own: it never carries a value,
// and a waiver never turns into proven.

/** What a check says. */
export type State = "proven" | "unproven" | "fails" | "no answer" | "waived";

/** All states, the worst first. */
export const states: readonly State[] = ["fails", "no answer", "unproven", "waived", "proven"];

/** Limits and value in SI; `uncertainty` is the expanded half-width of the value. */
export interface Limits {
  readonly atLeast?: number | undefined;
  readonly atMost?: number | undefined;
}

/**
 * Share of the sizes compared that is rounding and no difference: binary numbers miss a typed decimal by up
 * to 1.2e-16 of it, so a few thousand sums stay below, and of 25 mm it is 25 fm.
 */
const slack = 1e-12;

/**
 * The one comparison at a limit: what lies on the limit is inside it. A difference carries the rounding of
 * the sizes it was taken from, 25.0153 mm − 25.0003 mm that of 25 mm and not that of 15 µm; `scale` is the
 * largest of them.
 */
export function atMost(a: number, b: number, scale = 0): boolean {
  const room = slack * Math.max(Math.abs(a), Math.abs(b), Math.abs(scale));
  return a <= b || (Number.isFinite(room) && a - b <= room);
}

/**
 * Guarded decision: proven when the whole uncertainty lies inside, fails when it lies outside,
 * else unproven. The idea is that of ISO 14253-1 (from memory). With no uncertainty the state is
 * proven or fails; a value on the limit is inside. `scale` as for atMost.
 */
export function judge(value: number, limits: Limits, uncertainty = 0, scale = 0): State {
  const { atLeast: least, atMost: most } = limits;
  if (!Number.isFinite(value) || !Number.isFinite(uncertainty) || uncertainty < 0) return "no answer";
  if (Number.isNaN(least) || Number.isNaN(most)) return "no answer";
  if (least === undefined && most === undefined) return "no answer";
  const low = value - uncertainty;
  const high = value + uncertainty;
  const size = Math.max(Math.abs(value), Math.abs(scale));
  const within = (a: number, b: number) => atMost(a, b, size);
  if ((least !== undefined && !within(least, high)) || (most !== undefined && !within(low, most)))
    return "fails";
  if ((least !== undefined && !within(least, low)) || (most !== undefined && !within(high, most)))
    return "unproven";
  return "proven";
}
