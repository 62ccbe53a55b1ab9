// A table from a file into a reading: pasted, dropped or chosen; shown with its columns and units before anything
// is changed; then all of it, or nothing.
import "./import.css";
import type { ReadingItem } from "../../document/item.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { textOfBytes } from "../../readings/file-text.ts";
import { type ImportAnswers, noAnswers, planImport } from "../../readings/plan-import.ts";
import { labelOf } from "../../report/labels.ts";
import { inPlace } from "../../report/problem-words.ts";
import { el, replace } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { rememberedWho } from "../shell/who.ts";
import { planParts } from "./plan-parts.ts";

export interface ImportPanel {
  readonly show: (context: PageContext, name: string) => void;
}

export function importPanel(): ImportPanel {
  const content = el("div", { class: "import-content" });
  const close = el("button", { type: "button", class: "tool", onclick: () => element.close() }, "Close");
  const element = el(
    "dialog",
    { class: "panel import", "aria-labelledby": "import-title" },
    el("div", { class: "panel-bar" }, el("h2", { id: "import-title" }, "Add readings from CSV"), close),
    content,
  );
  document.body.append(element);
  let take: ((file: File | undefined) => void) | undefined;
  element.addEventListener("close", () => replace(content));
  element.addEventListener("dragover", (event) => event.preventDefault());
  element.addEventListener("drop", (event) => {
    event.preventDefault();
    take?.(event.dataTransfer?.files[0]);
  });
  return {
    show: (context, name) => {
      const item = context.itemOf(name);
      if (item?.kind !== "reading") return;
      const parts = importParts(context, item, () => element.close());
      take = parts.take;
      replace(content, parts.element);
      element.showModal();
      parts.focus();
    },
  };
}

const firstAnswers = (): ImportAnswers => ({ ...noAnswers, by: rememberedWho() });

function pasteField(): HTMLTextAreaElement {
  return el("textarea", {
    id: "import-text",
    class: "paste",
    rows: 4,
    spellcheck: "false",
    autocomplete: "off",
    placeholder: "Paste a table with one line of headings, or drop a file here",
  });
}

function csvField(take: (file: File | undefined) => void): HTMLInputElement {
  const field = el("input", {
    type: "file",
    accept: ".csv,.tsv,.txt,text/csv",
    class: "unseen",
    "aria-label": "CSV file",
    tabindex: "-1",
  });
  field.addEventListener("change", () => {
    const [file] = field.files ?? [];
    field.value = "";
    take(file);
  });
  return field;
}

function importParts(context: PageContext, item: ReadingItem, close: () => void) {
  const outcome = el("div", { class: "import-outcome", role: "status", "aria-live": "polite" });
  const paste = pasteField();
  let text = "";
  let answers = firstAnswers();

  const answer = (changed: Partial<ImportAnswers>): void => {
    const focused = document.activeElement?.id;
    answers = { ...answers, ...changed };
    renew();
    if (focused) document.getElementById(focused)?.focus();
  };
  const renew = (): void => {
    if (text.trim() === "") {
      replace(outcome);
      return;
    }
    const current = context.typed(item.name);
    const plan = planImport(item, current, text, answers);
    const add = (): void => {
      if (plan.text === undefined) return;
      context.edit(item.name, plan.text);
      close();
    };
    replace(outcome, ...planParts({ item, current, plan, answers, answer, add, leave: close }));
  };
  const put = (found: string | Problem): void => {
    answers = firstAnswers();
    text = isProblem(found) ? "" : found;
    if (isProblem(found)) replace(outcome, el("p", { class: "problem" }, inPlace(found)));
    else renew();
  };
  const take = (file: File | undefined): void => {
    if (!file) return;
    paste.value = "";
    void file.arrayBuffer().then((bytes) => put(textOfBytes(new Uint8Array(bytes))));
  };
  paste.addEventListener("input", () => put(paste.value));
  const field = csvField(take);
  const choose = el(
    "button",
    { type: "button", class: "tool", onclick: () => field.click() },
    "Choose a file",
  );
  const label = el("label", { for: "import-text" }, `Into ${labelOf(item)}`);
  const element = el("div", {}, label, paste, el("p", { class: "tools" }, choose, field), outcome);
  return { element, take, focus: () => paste.focus() };
}
