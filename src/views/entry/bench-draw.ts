// Shows where the entry stands: progress, plan, place, figure, and what can be done there.

import { isQuantity } from "../../document/column-heading.ts";
import { isProblem } from "../../problem.ts";
import { type Step, textAt } from "../../readings/places.ts";
import { counted } from "../../words.ts";
import { type Child, el, replace } from "../dom.ts";
import { figureParts, underWords } from "./bench-figure.ts";
import { frontAt, meaningOf } from "./bench-state.ts";
import type { Flow } from "./flow.ts";

export interface DrawActions {
  readonly choose: (text: string) => void;
  readonly cannotRead: () => void;
  readonly setAside: () => void;
  readonly redo: () => void;
}

export function drawAll(flow: Flow, actions: DrawActions): void {
  const { parts, spot, context } = flow;
  const step = spot.steps[flow.at];
  const wanted = spot.steps.filter((one) => !one.optional || one.text !== "");
  const left = wanted.filter((one) => one.state === "missing");
  const all = wanted.length;
  parts.progress.textContent = `${all - left.length} of ${all} read`;
  parts.keeping.textContent = keepingWords[context.keeping()];
  parts.keeping.classList.toggle("not-kept", context.keeping() !== "kept");
  parts.keys.undo.disabled = context.lastChanged() !== flow.name;
  parts.element.classList.toggle("asking", flow.pending !== undefined);
  parts.map.show(spot.steps, step);
  parts.place.textContent = step?.words ?? "no place";
  parts.said.textContent = [flow.said, step && left.length === 0 ? doneWords(spot.steps) : ""]
    .join(" ")
    .trim();
  if (!step) return;
  const typed = flow.pending ?? parts.entry.value;
  const front = frontAt(context, spot, step);
  const meaning = typed.trim() === "" ? undefined : meaningOf(step, typed, front);
  const shown = { step, typed, front, meaning };
  parts.entry.toggleAttribute("aria-invalid", false);
  if (isProblem(meaning)) parts.entry.setAttribute("aria-invalid", "true");
  replace(parts.figure, ...figureParts(shown));
  parts.under.textContent = underWords(shown);
  parts.under.classList.toggle("wrong", isProblem(meaning));
  replace(parts.actions, ...(flow.pending === undefined ? actionsAt(flow, step, actions) : []));
}

const keepingWords = {
  kept: "Each reading is kept on this device as it is entered.",
  "not kept": "This browser does not keep what is entered. Save the file before you leave.",
  "another tab":
    "Open in another tab, which keeps what is entered: nothing is taken here. Close one of them.",
} as const;

function doneWords(steps: readonly Step[]): string {
  const odd = steps.filter((step) => step.state === "odd").length;
  const aside = steps.filter((step) => step.state === "set aside").length;
  const more = [odd > 0 && `${odd} odd`, aside > 0 && `${aside} set aside`].filter(Boolean).join(", ");
  return `All ${counted(steps.length, "reading")} taken${more === "" ? "" : `; ${more}`}.`;
}

function actionsAt(flow: Flow, step: Step, actions: DrawActions): readonly Child[] {
  const button = (words: string, act: () => void) =>
    el("button", { type: "button", class: "bench-action", onclick: act }, words);
  const choices = isQuantity(step.kind) || step.text !== "" ? [] : known(flow, step);
  return [
    ...choices.map((text) => button(text, () => actions.choose(text))),
    step.state === "missing" && button("Cannot be read", actions.cannotRead),
    step.text !== "" && step.state !== "set aside" && button("Set aside", actions.setAside),
    flow.context.lastUndone() === flow.name && button("Put back", actions.redo),
  ];
}

/** Tags that this column has already, the most used first: one tap each. */
function known({ spot }: Flow, step: Step): readonly string[] {
  const counts = new Map<string, number>();
  for (let row = 0; row < spot.table.rows; row += 1) {
    const text = textAt(spot.table, step.column, row);
    if (text !== "") counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 4)
    .map(([text]) => text);
}
