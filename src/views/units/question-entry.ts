// The one box. Made apart from the answer, so that it takes typing before the answer's code is there.
import { el } from "../dom.ts";

let made = 0;

export function questionEntry(): HTMLInputElement {
  made += 1;
  return el("input", {
    ...plainField(`unit-question-${made}`),
    class: "question-entry",
    placeholder: "140 in lb",
    enterkeyhint: "done",
    "aria-describedby": `unit-question-${made}-read`,
    "aria-label": "A quantity with its unit",
  });
}

export const plainField = (id: string) => ({
  id,
  type: "text",
  autocomplete: "off",
  autocapitalize: "off",
  spellcheck: "false",
});
