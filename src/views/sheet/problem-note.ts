// A problem beside the thing it is about: one sentence with the remedy, and a tap that applies it.
import type { Line } from "../../engine/line.ts";
import type { Problem } from "../../problem.ts";
import { labelOf } from "../../report/labels.ts";
import { inPlace } from "../../report/problem-words.ts";
import { onScreen } from "../../units/on-screen.ts";
import { capital, ended } from "../../words.ts";
import { el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";

export function problemNote(
  found: Problem,
  id: string | undefined,
  apply?: (text: string) => void,
): HTMLElement {
  const suggestions = apply ? found.suggestions.slice(0, 6) : [];
  return el(
    "div",
    { class: "problem" },
    el("p", { id }, inPlace(found)),
    suggestions.length > 0 &&
      el(
        "p",
        { class: "suggestions" },
        el("span", { class: "quiet" }, suggestions.length === 1 ? "use " : "use one of "),
        ...suggestions.map((text) =>
          el("button", { type: "button", class: "suggestion", onclick: () => apply?.(text) }, onScreen(text)),
        ),
      ),
  );
}

/** A reading that a person should confirm: "A mass unit stands where a force belongs. Is kgf·m meant?" */
export function confirmNote(
  found: Problem,
  id: string | undefined,
  answers: { readonly yes: () => void; readonly no: () => void },
): HTMLElement {
  const words = onScreen(found.why ?? found.hint ?? found.what)
    .split("; ")
    .map(capital)
    .join(". ");
  const button = (text: string, act: () => void) =>
    el("button", { type: "button", class: "suggestion", onclick: act }, text);
  return el(
    "div",
    { class: "problem" },
    el("p", { id }, ended(words)),
    el(
      "p",
      { class: "suggestions" },
      button("Yes, as read", answers.yes),
      button("No, type again", answers.no),
    ),
  );
}

/** Why a line has no answer: its own trouble, or a link to the line where it began. */
export function noAnswerNote(line: Line, found: Problem, context: PageContext): HTMLElement {
  const guilty = line.guilty;
  if (guilty === undefined || guilty === line.name) return problemNote(found, undefined);
  const item = context.itemOf(guilty);
  return el(
    "p",
    { class: "waiting" },
    "Waits for ",
    el(
      "a",
      { href: context.address(guilty) },
      `line ${context.lineNumber(guilty)}, ${item ? labelOf(item) : guilty}`,
    ),
    ", which has no answer.",
  );
}
