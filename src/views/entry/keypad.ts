// Keys for a thumb: figures, point, rub out, enter; undo always in the same corner.
import { el } from "../dom.ts";

export interface Keypad {
  readonly element: HTMLElement;
  readonly undo: HTMLButtonElement;
}

export function keypad(actions: {
  readonly type: (text: string) => void;
  readonly rubOut: () => void;
  readonly enter: () => void;
  readonly undo: () => void;
  readonly letters: () => void;
}): Keypad {
  const key = (words: string, name: string, act: () => void, style = "") => {
    const button = el(
      "button",
      { type: "button", class: `key ${style}`, "aria-label": name, onclick: act },
      words,
    );
    // The entry keeps the focus, so that a keyboard beside the screen goes on working.
    button.addEventListener("pointerdown", (event) => event.preventDefault());
    return button;
  };
  const figure = (text: string) => key(text, text, () => actions.type(text), "figure-key");
  const undo = key("Undo", "take back the last entry", actions.undo, "word-key");
  const element = el(
    "div",
    { class: "keypad", role: "group", "aria-label": "keys" },
    ...["7", "8", "9"].map(figure),
    key("⌫", "rub out", actions.rubOut),
    ...["4", "5", "6"].map(figure),
    key(".", "point", () => actions.type("."), "figure-key"),
    ...["1", "2", "3"].map(figure),
    key("Enter", "enter", actions.enter, "enter-key word-key"),
    undo,
    figure("0"),
    key("abc", "letters, for a unit or a sign", actions.letters, "word-key"),
  );
  return { element, undo };
}
