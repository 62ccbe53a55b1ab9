// Where the entry stands, and the moves from one place to the next.

import { isQuantity } from "../../document/column-heading.ts";
import { nextWanted, type Step } from "../../readings/places.ts";
import { replace } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import type { Ask } from "./asks.ts";
import { type DrawActions, drawAll } from "./bench-draw.ts";
import type { BenchParts } from "./bench-parts.ts";
import type { Spot } from "./bench-state.ts";

export interface Flow {
  readonly context: PageContext;
  readonly name: string;
  readonly parts: BenchParts;
  readonly acts: DrawActions;
  spot: Spot;
  at: number;
  /** What was typed and is being asked about. */
  pending: string | undefined;
  said: string;
}

export const stepAt = ({ spot, at }: Flow): Step | undefined => spot.steps[at];

export function goTo(flow: Flow, at: number): void {
  flow.at = at;
  flow.parts.entry.value = "";
  flow.parts.entry.inputMode = isQuantity(stepAt(flow)?.kind) ? "none" : "text";
  leaveAsk(flow);
}

export function walk(flow: Flow, by: number): void {
  const all = flow.spot.steps.length;
  flow.said = "";
  if (all > 0) goTo(flow, (flow.at + by + all) % all);
}

export const advance = (flow: Flow): void => goTo(flow, nextWanted(flow.spot.steps, flow.at) ?? flow.at);

export function leaveAsk(flow: Flow): void {
  flow.pending = undefined;
  replace(flow.parts.ask);
  draw(flow);
  flow.parts.entry.focus({ preventScroll: true });
}

export function typed(flow: Flow): void {
  flow.said = "";
  if (flow.pending === undefined) draw(flow);
  else leaveAsk(flow);
}

/** The figure stays to be seen while it is asked about; a figure typed now is the next try. */
export function put(flow: Flow, pending: string, ask: Ask): void {
  flow.pending = pending;
  flow.parts.entry.value = "";
  draw(flow);
  replace(flow.parts.ask, ask.element);
  ask.focus();
}

export function say(flow: Flow, words: string): void {
  flow.said = words;
  leaveAsk(flow);
}

const draw = (flow: Flow): void => drawAll(flow, flow.acts);
