// A waiver names who and why, and what the numbers say without it.
import type { CheckValue } from "../engine/line.ts";

/** "waived by R. Vance: replaced next week; without the waiver: fails" */
export function waiverWords({ waived, judged }: CheckValue): string | undefined {
  if (!waived) return undefined;
  const without = judged === "proven" ? "" : `; without the waiver: ${judged}`;
  return `waived by ${waived.by}: ${waived.why.replace(/\.$/, "")}${without}`;
}
