// The figure of the entry: fixed digits quiet, typed ones strong, so that what Enter would keep is read at a glance.

import { isQuantity } from "../../document/column-heading.ts";
import { isProblem, type Problem } from "../../problem.ts";
import type { Front } from "../../readings/front-digits.ts";
import type { Step } from "../../readings/places.ts";
import { inPlace } from "../../report/problem-words.ts";
import { formatIn } from "../../units/format.ts";
import { onScreen } from "../../units/on-screen.ts";
import { unit, unitLabel } from "../../units/unit.ts";
import { type Child, el } from "../dom.ts";
import type { Meaning } from "./bench-state.ts";

export interface Shown {
  readonly step: Step;
  readonly typed: string;
  readonly front: Front | undefined;
  readonly meaning: Meaning | Problem | undefined;
}

export function figureParts({ step, typed, front, meaning }: Shown): readonly Child[] {
  const label = unitWords(step);
  const after = label !== "" && el("span", { class: "figure-unit" }, label);
  if (typed === "") {
    if (step.text !== "") return [el("span", { class: "figure-kept" }, step.text), after];
    if (front === undefined) return [el("span", { class: "figure-front" }, "–"), after];
    return [
      el("span", { class: "figure-front" }, front.front),
      el("span", { class: "figure-open" }, "··"),
      after,
    ];
  }
  if (meaning === undefined || isProblem(meaning) || !meaning.byFront)
    return [el("span", { class: "figure-typed" }, typed), after];
  const figures = typed.trim().length;
  return [
    el("span", { class: "figure-front" }, meaning.text.slice(0, cutBefore(meaning.text, figures))),
    el("span", { class: "figure-typed" }, meaning.text.slice(cutBefore(meaning.text, figures))),
    after,
  ];
}

/** Where the last so many figures begin. */
function cutBefore(text: string, figures: number): number {
  let at = text.length;
  for (let left = figures; left > 0 && at > 0; ) {
    at -= 1;
    if (/\d/.test(text[at] ?? "")) left -= 1;
  }
  return at;
}

/** What stands beneath: how it was read, or what keeps it from being read. */
export function underWords({ step, typed, front, meaning }: Shown): string {
  if (isProblem(meaning)) return inPlace(meaning);
  if (meaning !== undefined && typed !== "") {
    const own = step.unit === undefined ? undefined : unit(step.unit);
    const { value } = meaning;
    const other = value && own && !isProblem(own) && value.unit.text !== own.text;
    return other
      ? `read as ${formatIn(value.si, own, { label: true })}`
      : `read as ${onScreen(said(meaning, step))}`;
  }
  if (step.state === "set aside") return `set aside: ${step.reason}`;
  if (step.text !== "")
    return step.state === "odd"
      ? "odd: asked about; type again to correct it"
      : "read; type again to correct it";
  if (step.reason !== "") return step.reason;
  if (!isQuantity(step.kind)) return "choose, or type it";
  return front === undefined
    ? "type the reading"
    : `${front.front} stands; type the last two figures, or the whole number`;
}

const said = ({ text, value }: Meaning, step: Step): string =>
  value === undefined || step.unit === undefined || text.includes(" ") ? text : `${text} ${step.unit}`;

function unitWords(step: Step): string {
  const found = step.unit === undefined ? undefined : unit(step.unit);
  return found && !isProblem(found) ? unitLabel(found) : (step.unit ?? "");
}
