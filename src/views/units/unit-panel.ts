// The unit answer over the page: one key or one tap, and the page below stays as it is.
import "./unit-answer.css";
import { el } from "../dom.ts";
import { unitAnswer } from "./unit-answer.ts";

export interface UnitPanel {
  readonly element: HTMLDialogElement;
  readonly open: () => void;
}

export function unitPanel(): UnitPanel {
  const answer = unitAnswer();
  const close = el("button", { type: "button", class: "tool", onclick: () => element.close() }, "Close");
  const element = el(
    "dialog",
    { class: "panel units", "aria-labelledby": "units-title" },
    el("div", { class: "panel-bar" }, el("h2", { id: "units-title" }, "Units"), close),
    answer.element,
  );
  element.addEventListener("click", (event) => {
    if (event.target === element) element.close();
  });
  return {
    element,
    open: () => {
      element.showModal();
      answer.focus();
    },
  };
}
