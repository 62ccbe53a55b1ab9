// Entering readings by thumb: one place at a time, large figures, nothing that needs two hands. Each entry goes
// into the page and into the kept store at once; closing loses nothing.
import "./bench.css";
import { isProblem, type Problem } from "../../problem.ts";
import { labelOf } from "../../report/labels.ts";
import { inPlace } from "../../report/problem-words.ts";
import { el, replace } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { benchParts } from "./bench-parts.ts";
import { firstWanted, type Spot, spotOf } from "./bench-state.ts";
import { askReason, enter, redo, undo } from "./entering.ts";
import { type Flow, goTo, leaveAsk, typed, walk } from "./flow.ts";

export interface Bench {
  readonly show: (context: PageContext, name: string, place?: string) => void;
}

export function bench(): Bench {
  const element = el("dialog", { class: "bench", "aria-labelledby": "bench-title" });
  document.body.append(element);
  const close = (): void => element.close();
  let flow: Flow | undefined;
  element.addEventListener("cancel", (event) => {
    if (flow?.pending === undefined) return;
    event.preventDefault(); // Escape leaves the question, not the screen
    leaveAsk(flow);
  });
  element.addEventListener("keydown", (event) => {
    const back = flow && stepKey(event, flow.parts.entry);
    if (flow && back) {
      event.preventDefault();
      (back === "undo" ? undo : redo)(flow);
      return;
    }
    const isElsewhere = event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey;
    if (!flow || isElsewhere || !/^[\d.]$/.test(event.key)) return;
    event.preventDefault();
    flow.parts.entry.value += event.key;
    typed(flow);
  });
  element.addEventListener("close", () => {
    flow = undefined;
    replace(element);
  });
  return {
    show: (context, name, place) => {
      const spot = spotOf(context, name);
      flow = isProblem(spot) ? undefined : flowOf(context, name, spot, close);
      replace(element, isProblem(spot) ? unreadable(spot, close) : flow?.parts.element);
      element.showModal();
      if (flow) begin(flow, place);
    },
  };
}

/** Ctrl+Z and its way back, where the focus is in no field that has letters of its own to take back. */
function stepKey(event: KeyboardEvent, entry: HTMLInputElement): "undo" | "redo" | undefined {
  const key = event.key.toLowerCase();
  const { target } = event;
  const hasLetters = target instanceof HTMLInputElement && (target !== entry || entry.value !== "");
  if (hasLetters || event.altKey || !(event.ctrlKey || event.metaKey)) return undefined;
  if (key === "y" || (key === "z" && event.shiftKey)) return "redo";
  return key === "z" ? "undo" : undefined;
}

const unreadable = (found: Problem, close: () => void): HTMLElement =>
  el(
    "div",
    { class: "bench-trouble" },
    el("h2", { id: "bench-title" }, "The table cannot be read"),
    el("p", {}, inPlace(found)),
    el("button", { type: "button", class: "tool strong", onclick: close }, "Close"),
  );

function flowOf(context: PageContext, name: string, spot: Spot, close: () => void): Flow {
  const parts = benchParts(labelOf(spot.item), {
    close,
    step: (by) => walk(flow, by),
    typed: () => typed(flow),
    enter: () => enter(flow),
    undo: () => undo(flow),
  });
  const acts = {
    choose: (text: string) => {
      parts.entry.value = text;
      enter(flow);
    },
    cannotRead: () => askReason(flow, "cannot read"),
    setAside: () => askReason(flow, "set aside"),
    redo: () => redo(flow),
  };
  const flow: Flow = { context, name, parts, acts, spot, at: 0, pending: undefined, said: "" };
  return flow;
}

function begin(flow: Flow, place: string | undefined): void {
  const { steps } = flow.spot;
  const asked = steps.findIndex((step) => step.id === place || step.id.startsWith(`${place}|`));
  goTo(flow, asked >= 0 ? asked : (firstWanted(steps) ?? 0));
}
