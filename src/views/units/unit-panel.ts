// The unit answer over the page: one key or one tap, and the page below stays as it is. The box is
// there at once; the answer's code comes when the page is idle, or when it is first asked for.
import { el } from "../dom.ts";
import { questionEntry } from "./question-entry.ts";

export interface UnitPanel {
  readonly element: HTMLDialogElement;
  readonly open: () => void;
}

const idle = 1500;

export function unitPanel(): UnitPanel {
  const entry = questionEntry();
  const content = el("div", {}, el("section", { class: "unit-answer" }, entry));
  const close = el("button", { type: "button", class: "tool", onclick: () => element.close() }, "Close");
  const element = el(
    "dialog",
    { class: "panel units", "aria-labelledby": "units-title" },
    el("div", { class: "panel-bar" }, el("h2", { id: "units-title" }, "Units"), close),
    content,
  );
  element.addEventListener("click", (event) => {
    if (event.target === element) element.close();
  });
  let asked = false;
  const fetchAnswer = (): void => {
    if (asked) return;
    asked = true;
    void import("./unit-answer.ts").then(({ unitAnswer }) => {
      const answer = unitAnswer(entry);
      content.prepend(answer.element);
      const hadFocus = element.open;
      content.lastElementChild?.remove();
      if (hadFocus) entry.focus();
      answer.renew();
    });
  };
  setTimeout(fetchAnswer, idle);
  return {
    element,
    open: () => {
      element.showModal();
      entry.focus();
      entry.select();
      fetchAnswer();
    },
  };
}
