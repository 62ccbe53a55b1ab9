// A record as first written is never changed: what it lacks may stand in a correcting table of the page, with its
// reason. Such a place is not the next one to be read.
import type { ReadingItem } from "../document/item.ts";
import { keyColumns } from "../document/place-words.ts";
import type { Line } from "../engine/line.ts";
import { isProblem } from "../problem.ts";
import { idOf, placeOfRow, type Step, textAt } from "./places.ts";

/** The steps, each that is missing here and stands in another table of the same places with where and why. */
export function standsElsewhere(
  item: ReadingItem,
  steps: readonly Step[],
  lines: readonly Line[],
): readonly Step[] {
  const keys = keyColumns(item);
  const reasons = new Map<string, string>();
  for (const { item: other, value } of lines) {
    if (other.kind !== "reading" || other.name === item.name) continue;
    if (isProblem(value) || value.type !== "table") continue;
    if (keys.length === 0 || keyColumns(other).join(",") !== keys.join(",")) continue;
    for (const [row, state] of value.states.entries()) {
      const why = textAt(value, "reason", row);
      if (why === "" || (state !== "entered" && state !== "odd")) continue;
      reasons.set(idOf(placeOfRow(item, value, row)), `stands in ${other.says ?? other.name}: ${why}`);
    }
  }
  return steps.map((step) => {
    const reason = reasons.get(idOf(step.place));
    const isOpen = step.state === "missing" && step.reason === "" && !step.optional;
    return isOpen && reason !== undefined ? { ...step, reason } : step;
  });
}
