// What a change came to, in one sentence for those who listen.
import type { Line } from "../engine/line.ts";
import { isProblem } from "../problem.ts";
import { counted } from "../words.ts";
import { labelOf } from "./labels.ts";
import { isCheck, stateCounts, stateOf } from "./states.ts";

/** "Net torque at the nut changed; 6 values with it; 8 checks: 1 fails, 2 unproven." */
export function changeSentence(
  edited: Line | undefined,
  changed: readonly string[],
  lines: readonly Line[],
): string {
  const states = lines.filter(isCheck).map(stateOf);
  const begin = edited
    ? `${labelOf(edited.item)} ${isProblem(edited.value) ? "cannot be read" : "changed"}`
    : "Changed";
  const others = changed.filter((name) => name !== edited?.name).length;
  const counts = stateCounts(states.filter((state) => state !== "proven")) || "all proven";
  return `${begin}; ${counted(others, "value")} with it; ${counted(states.length, "check")}: ${counts}.`;
}
