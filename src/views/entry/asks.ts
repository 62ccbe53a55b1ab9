// What the entry asks: whether an unlikely value is meant, and why a reading is corrected or set aside.

import type { Step } from "../../readings/places.ts";
import type { Question } from "../../readings/plausible.ts";
import { type Child, el } from "../dom.ts";

export interface Ask {
  readonly element: HTMLElement;
  readonly focus: () => void;
}

const choice = (words: string, act: () => void, style = ""): HTMLButtonElement =>
  el("button", { type: "button", class: `bench-choice ${style}`, onclick: act }, words);

function asked(question: Child, name: string, ...children: readonly Child[]): HTMLElement {
  return el("div", { class: "bench-ask", role: "group", "aria-label": name }, question, ...children);
}

/** The focus stands on "Type again", so that a second Enter never keeps what was asked about. */
export function questionAsk(
  { words, choices }: Question,
  answers: { readonly keep: (text: string) => void; readonly again: () => void },
): Ask {
  const again = choice("Type again", answers.again);
  const [typed, ...meant] = choices;
  const keeps = [
    ...meant.map((text) => choice(text, () => answers.keep(text), "large")),
    typed !== undefined &&
      choice(meant.length > 0 ? typed : `Keep ${typed}`, () => answers.keep(typed), "large"),
  ];
  return {
    element: asked(
      el("p", { role: "alert" }, words),
      words,
      el("div", { class: "bench-choices" }, ...keeps, again),
    ),
    focus: () => again.focus({ preventScroll: true }),
  };
}

const quick = {
  correct: ["typed wrong", "read again", "wrong place"],
  "set aside": ["gauge slipped", "wrong place", "part changed"],
  "cannot read": ["surface scored", "gauge does not enter", "out of reach"],
} as const;

/** Nothing is corrected or set aside without a reason: one tap, or own words. */
export function reasonAsk(
  purpose: keyof typeof quick,
  step: Step,
  text: string,
  answers: {
    readonly who: string;
    readonly reason: (text: string, by: string) => void;
    readonly leave: () => void;
  },
): Ask {
  const words = {
    correct: `Why ${text} in place of ${step.text}? The first stays in the table.`,
    "set aside": `Why is ${step.text} set aside? It stays in the table.`,
    "cannot read": "Why can it not be read? It stays missing.",
  }[purpose];
  const leaveWords = {
    correct: "Do not change",
    "set aside": "Do not set aside",
    "cannot read": "Back to the reading",
  } as const;
  const field = el("input", {
    type: "text",
    class: "reason-entry",
    id: "bench-reason",
    autocomplete: "off",
    enterkeyhint: "done",
    placeholder: "in your own words",
  });
  const who = el("input", {
    type: "text",
    class: "reason-entry",
    id: "bench-who",
    autocomplete: "off",
    enterkeyhint: "done",
    placeholder: "your name",
  });
  who.value = answers.who;
  const say = (why: string): void => {
    const [reason, by] = [why.trim(), who.value.trim()];
    if (by === "") {
      field.value = reason; // kept until the name is there
      who.focus();
    } else if (reason === "") field.focus();
    else answers.reason(reason, by);
  };
  const give = (): void => say(field.value);
  for (const one of [field, who])
    one.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      give();
    });
  const reasons = quick[purpose].map((reason) => choice(reason, () => say(reason)));
  return {
    element: asked(
      el("label", { for: "bench-reason" }, words),
      words,
      el("div", { class: "bench-who" }, el("label", { for: "bench-who" }, "Who says so"), who),
      el("div", { class: "bench-choices" }, ...reasons),
      el(
        "div",
        { class: "bench-choices" },
        field,
        choice("Keep", give, "strong"),
        choice(leaveWords[purpose], answers.leave),
      ),
    ),
    focus: () => reasons[0]?.focus({ preventScroll: true }),
  };
}
