// One sentence for those who listen, about 700 ms after the last change.
import type { Line } from "../engine/line.ts";
import { isProblem } from "../problem.ts";
import { el } from "./dom.ts";
import { stateOf } from "./summary.ts";
import { counted, labelOf } from "./words.ts";

const quiet = 700;

export interface StatusLine {
  readonly element: HTMLElement;
  readonly say: (sentence: () => string) => void;
}

export function statusLine(): StatusLine {
  const element = el("p", { class: "unseen", role: "status", "aria-live": "polite", "aria-atomic": "true" });
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    element,
    say: (sentence) => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        element.textContent = sentence();
      }, quiet);
    },
  };
}

/** "Net torque at the nut changed; 6 values below it; of 8 checks 1 fails, 2 unproven." */
export function changeSentence(
  edited: Line | undefined,
  changed: readonly string[],
  lines: readonly Line[],
): string {
  const checks = lines.filter((line) => line.item.kind === "check");
  const counts = (["fails", "no answer", "unproven", "waived"] as const).flatMap((state) => {
    const n = checks.filter((line) => stateOf(line) === state).length;
    return n > 0 ? [`${n} ${state}`] : [];
  });
  const begin = edited
    ? `${labelOf(edited.item)} ${isProblem(edited.value) ? "cannot be read" : "changed"}`
    : "Changed";
  const others = changed.filter((name) => name !== edited?.name).length;
  const states = counts.length === 0 ? "all proven" : counts.join(", ");
  return `${begin}; ${counted(others, "value")} with it; ${counted(checks.length, "check")}: ${states}.`;
}
