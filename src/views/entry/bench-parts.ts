// What stands on the entry screen, from top to bottom.
import { el } from "../dom.ts";
import { type Keypad, keypad } from "./keypad.ts";
import { type PlaceMap, placeMap } from "./place-map.ts";

export interface BenchParts {
  readonly element: HTMLElement;
  readonly progress: HTMLElement;
  readonly keeping: HTMLElement;
  readonly map: PlaceMap;
  readonly place: HTMLElement;
  readonly entry: HTMLInputElement;
  readonly figure: HTMLElement;
  readonly under: HTMLElement;
  readonly ask: HTMLElement;
  readonly said: HTMLElement;
  readonly actions: HTMLElement;
  readonly keys: Keypad;
}

export interface BenchActions {
  readonly close: () => void;
  readonly step: (by: number) => void;
  readonly typed: () => void;
  readonly enter: () => void;
  readonly undo: () => void;
}

export function benchParts(title: string, actions: BenchActions): BenchParts {
  const entry = entryField(actions);
  const parts = {
    progress: el("span", { class: "bench-progress" }),
    keeping: el("p", { class: "bench-keeping" }),
    map: placeMap(),
    place: el("p", { class: "bench-place", id: "bench-place" }),
    entry,
    figure: el("div", { class: "bench-figure", "aria-hidden": "true" }),
    under: el("p", { class: "bench-under", id: "bench-under" }),
    ask: el("div", { class: "bench-asking" }),
    said: el("p", { class: "bench-said", role: "status", "aria-live": "polite" }),
    actions: el("div", { class: "bench-actions" }),
    keys: keysFor(entry, actions),
  };
  return { ...parts, element: laidOut(title, actions, parts) };
}

/** From the title at the top to the keys under the thumb. */
function laidOut(title: string, actions: BenchActions, parts: Omit<BenchParts, "element">): HTMLElement {
  const walk = (words: string, name: string, by: number) =>
    el(
      "button",
      { type: "button", class: "bench-walk", "aria-label": name, onclick: () => actions.step(by) },
      words,
    );
  return el(
    "div",
    { class: "bench-page" },
    el(
      "header",
      { class: "bench-bar" },
      el("h2", { id: "bench-title" }, title),
      parts.progress,
      el("button", { type: "button", class: "bench-close", onclick: actions.close }, "Close"),
    ),
    parts.keeping,
    el(
      "div",
      { class: "bench-view" },
      parts.map.element,
      el(
        "div",
        { class: "bench-where" },
        walk("‹", "place before", -1),
        parts.place,
        walk("›", "next place", 1),
      ),
      el("div", { class: "bench-entry" }, parts.figure, parts.entry),
      parts.under,
      parts.ask,
      parts.said,
      parts.actions,
    ),
    parts.keys.element,
  );
}

function keysFor(entry: HTMLInputElement, actions: BenchActions): Keypad {
  const put = (text: string): void => {
    entry.value = text;
    actions.typed();
  };
  return keypad({
    type: (text) => put(entry.value + text),
    rubOut: () => put(entry.value.slice(0, -1)),
    enter: actions.enter,
    undo: actions.undo,
    letters: () => {
      entry.inputMode = "text";
      entry.blur();
      entry.focus();
    },
  });
}

/** Takes the typing of a keyboard beside the screen; the keys below write into it too. No keyboard pops up for it. */
function entryField(actions: BenchActions): HTMLInputElement {
  const entry = el("input", {
    type: "text",
    id: "bench-entry",
    inputmode: "none",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    enterkeyhint: "next",
    "aria-labelledby": "bench-place",
    "aria-describedby": "bench-under",
  });
  entry.addEventListener("input", actions.typed);
  entry.addEventListener("keydown", (event) => {
    if (event.key !== "Enter") return;
    event.preventDefault();
    actions.enter();
  });
  return entry;
}
