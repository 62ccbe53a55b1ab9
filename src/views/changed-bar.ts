// Says that the file does not have what the screen has, and how to put that right.
import { el } from "./dom.ts";
import type { Keeping } from "./keeper.ts";

export interface ChangedBar {
  readonly element: HTMLElement;
  readonly update: (changed: boolean, canUndo: boolean, keeping: Keeping) => void;
}

export function changedBar(actions: {
  readonly undo: () => void;
  readonly save: () => void;
  readonly backToFile: () => void;
}): ChangedBar {
  const words = el("span", { class: "changed-words" });
  const undo = el("button", { type: "button", class: "tool", onclick: actions.undo }, "Undo last change");
  const back = el("button", { type: "button", class: "tool", onclick: ask }, "Back to the file");
  const save = el("button", { type: "button", class: "tool strong", onclick: actions.save }, "Save file");
  const element = el(
    "div",
    { class: "changed-bar", role: "region", "aria-label": "changes not saved", hidden: true },
    words,
    el("span", { class: "tools" }, undo, back, save),
  );
  let sure = false;

  /** Dropping all changes is asked once more in place. */
  function ask(): void {
    if (sure) actions.backToFile();
    sure = !sure;
    back.textContent = sure ? "Drop all changes: press again" : "Back to the file";
  }
  return {
    element,
    update: (changed, canUndo, keeping) => {
      element.hidden = !changed && keeping === "kept";
      undo.disabled = !canUndo;
      sure = false;
      back.textContent = "Back to the file";
      back.disabled = !changed;
      words.textContent = wording[keeping](changed);
    },
  };
}

const wording: Readonly<Record<Keeping, (changed: boolean) => string>> = {
  kept: () => "Changed here, not saved to a file",
  "not kept": (changed) =>
    changed
      ? "Changed here, not saved to a file; this browser cannot keep it, so save before you leave"
      : "This browser cannot keep what is entered; save the file before you leave",
  "another tab": (changed) =>
    `${changed ? "Changed here; open" : "Open"} in another tab too: what is entered here is not kept. Close one of the two and load again`,
};
