// Says that the file does not have what the screen has, how to put that right, and the steps back and forth.
import { el } from "../dom.ts";
import type { Keeping } from "../kept/keeper.ts";

interface BarState {
  readonly changed: boolean;
  /** Whether there is a step to take back, and one to make again. */
  readonly undo: boolean;
  readonly redo: boolean;
  readonly keeping: Keeping;
}

export interface ChangedBar {
  readonly element: HTMLElement;
  readonly update: (state: BarState) => void;
}

export function changedBar(actions: {
  readonly undo: () => void;
  readonly redo: () => void;
  readonly save: () => void;
  readonly backToFile: () => void;
}): ChangedBar {
  const words = el("span", { class: "changed-words" });
  const step = (says: string, title: string, act: () => void) =>
    el(
      "button",
      { type: "button", class: "tool step", "aria-label": `${says} last change`, title, onclick: act },
      says,
    );
  const undo = step("Undo", "Ctrl+Z outside an entry", actions.undo);
  const redo = step("Redo", "Ctrl+Shift+Z or Ctrl+Y outside an entry", actions.redo);
  const back = el("button", { type: "button", class: "tool", onclick: ask }, "Back to the file");
  const save = el("button", { type: "button", class: "tool strong", onclick: actions.save }, "Save file");
  const element = el(
    "div",
    { class: "changed-bar", role: "region", "aria-label": "changes not saved", hidden: true },
    words,
    el("span", { class: "tools" }, undo, redo, back, save),
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
    update: (state) => {
      const { changed, keeping } = state;
      element.hidden = !changed && !state.redo && keeping === "kept";
      undo.disabled = !state.undo;
      redo.disabled = !state.redo;
      sure = false;
      back.textContent = "Back to the file";
      back.disabled = !changed || keeping === "another tab";
      words.textContent = wording[keeping](changed);
    },
  };
}

const wording: Readonly<Record<Keeping, (changed: boolean) => string>> = {
  kept: (changed) => (changed ? "Changed here, not saved to a file" : "As the file has it"),
  "not kept": (changed) =>
    changed
      ? "Changed here, not saved to a file; this browser cannot keep it, so save before you leave"
      : "This browser cannot keep what is entered; save the file before you leave",
  "another tab": () =>
    "Open in another tab too, which keeps what is entered: nothing can be entered here. Close one of the two and load again",
};
