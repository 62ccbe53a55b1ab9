// A given looks written in: a pencil entry on a dotted line, kept exactly as typed, with how it was
// understood beneath it and any problem beside it. Typing never moves the focus.
import type { GivenItem } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { readingText, spreadWords } from "../../report/given-words.ts";
import { labelOf } from "../../report/labels.ts";
import { el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { confirmNote, problemNote } from "./problem-note.ts";
import { lineId, row } from "./row.ts";
import { sourceEntry } from "./source-entry.ts";

export function givenView(context: PageContext, line: Line, item: GivenItem): ItemView {
  const { name } = line;
  const id = `${lineId(name)}-entry`;
  const label = el("label", { for: id }, labelOf(item));
  const { element, body, result, reference } = row(context, name, item, { label });
  const entry = item.choices
    ? choiceEntry(id, item.choices, context.typed(item.name))
    : textEntry(id, context.typed(item.name), item.as);
  entry.setAttribute("aria-describedby", `${id}-read ${id}-problem`);
  entry.addEventListener("input", () => {
    shrink();
    context.edit(name, entry.value);
  });
  const reading = el("span", { class: "read", id: `${id}-read` });
  const trouble = el("div", { class: "trouble" });
  const opened = more("more", labelOf(item));
  result.append(el("span", { class: "entry" }, entry), reading);
  const source = sourceEntry(context, item, reference);
  body.append(trouble, source.element, opened.element);

  /** The type shrinks a little rather than hiding the end of a long entry. */
  const shrink = () => entry.classList.toggle("long", entry.value.length > 16);
  const put = (text: string) => {
    entry.dispatchEvent(new Event("change", { bubbles: true })); // what was typed before is a change of its own
    entry.value = text;
    shrink();
    context.edit(name, text);
    entry.focus();
  };
  const update = (now: Line): void => {
    const { value } = now;
    const wrong = isProblem(value);
    entry.toggleAttribute("aria-invalid", false);
    if (wrong) entry.setAttribute("aria-invalid", "true");
    element.classList.toggle("unanswered", wrong);
    if (!wrong && value.type === "quantity") source.update(value.sourceState);
    reading.textContent = wrong ? "not read" : readingText(now, item, context.unitOf);
    if (wrong) replace(trouble, problemNote(value, `${id}-problem`, put));
    else if (value.type === "quantity" && value.confirm) {
      const keep = (): void => {
        context.confirm(item.name, entry.value);
        entry.focus();
      };
      const again = (): void => {
        entry.focus();
        if (entry instanceof HTMLInputElement) entry.select();
      };
      replace(trouble, confirmNote(value.confirm, `${id}-problem`, { yes: keep, no: again }));
    } else replace(trouble);
    opened.fill(() => [noteOf(now), spreadPart(item), nameInFormulas(now), ...relations(now, context)]);
  };
  shrink();
  update(line);
  return {
    element,
    update,
    setText: (text) => {
      entry.value = text;
      shrink();
    },
    setSource: source.setText,
  };
}

/** A plain text field: units, fractions and commas must be typeable, and the unit needs letters. */
const textEntry = (id: string, typed: string, as: string | undefined): HTMLInputElement => {
  const entry = el("input", {
    id,
    type: "text",
    autocomplete: "off",
    autocapitalize: "off",
    spellcheck: "false",
    enterkeyhint: "done",
    placeholder: as === "text" ? "text" : "number and unit",
  });
  entry.value = typed;
  return entry;
};

function choiceEntry(id: string, choices: readonly string[], typed: string): HTMLSelectElement {
  const known = choices.includes(typed) ? choices : [typed, ...choices];
  const entry = el("select", { id }, ...known.map((choice) => el("option", { value: choice }, choice)));
  entry.value = typed;
  return entry;
}

function spreadPart(item: GivenItem): HTMLElement | undefined {
  if (!item.spread) return undefined;
  return el("section", { class: "part" }, el("h4", {}, "spread"), el("p", {}, spreadWords(item.spread)));
}
