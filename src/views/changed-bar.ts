// Says that the file does not have what the screen has, and how to put that right.
import { el } from "./dom.ts";

export interface ChangedBar {
  readonly element: HTMLElement;
  readonly update: (changed: boolean, canUndo: boolean, kept: boolean) => void;
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
    update: (changed, canUndo, kept) => {
      element.hidden = !changed;
      undo.disabled = !canUndo;
      sure = false;
      back.textContent = "Back to the file";
      words.textContent = kept
        ? "Changed here, not saved to a file"
        : "Changed here, not saved to a file; this browser cannot keep it, so save before you leave";
    },
  };
}
