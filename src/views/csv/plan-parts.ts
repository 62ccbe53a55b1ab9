// What the person sees of a file before it is taken: how it was read, what each heading fills, what hinders by
// line, and the first rows as they would stand.
import type { DecimalMark, Delimiter, ReadingItem } from "../../document/item.ts";
import type { Problem } from "../../problem.ts";
import { type Child, el } from "../dom.ts";
import { inPlace } from "../problem-note.ts";
import { headWords } from "../readings/reading-words.ts";
import { counted } from "../words.ts";
import type { ImportAnswers, ImportPlan } from "./import-plan.ts";
import { mapping } from "./mapping.ts";

export interface PlanView {
  readonly item: ReadingItem;
  readonly plan: ImportPlan;
  readonly answers: ImportAnswers;
  readonly answer: (changed: Partial<ImportAnswers>) => void;
  readonly add: () => void;
  readonly leave: () => void;
}

export function planParts(view: PlanView): readonly Child[] {
  const { plan } = view;
  return [
    plan.read !== "" && el("p", { class: "quiet" }, `Read with ${plan.read}.`),
    plan.columns.length > 0 && mapping(view),
    plan.faults.length > 0 && faults(view),
    plan.skipped.length > 0 && skipped(plan),
    plan.rows.length > 0 && preview(plan),
    plan.wantReason > 0 || view.answers.reason !== "" ? reasonField(view) : undefined,
    actions(view),
  ];
}

const mostListed = 12;

function faults({ plan, answer }: PlanView): HTMLElement {
  const all = plan.faults.length;
  return el(
    "div",
    { class: "problem" },
    el("p", { class: "asks" }, `${counted(all, "thing")} to settle first. Nothing is added until then.`),
    el(
      "ul",
      { class: "fault-list" },
      ...plan.faults
        .slice(0, mostListed)
        .map((fault) => el("li", {}, inPlace(fault), ...choices(fault, answer))),
    ),
    all > mostListed && el("p", { class: "quiet" }, `and ${all - mostListed} more`),
  );
}

/** Where the text leaves two readings open, the person decides; a mixture is no choice. */
function choices(fault: Problem, answer: PlanView["answer"]): readonly Child[] {
  const button = (words: string, changed: Partial<ImportAnswers>) =>
    el("button", { type: "button", class: "suggestion", onclick: () => answer(changed) }, words);
  if (fault.code === "csv-delimiter")
    return fault.suggestions.filter(isDelimiter).map((delimiter) => button(delimiter, { delimiter }));
  const isOpen = fault.code === "csv-decimal" && fault.suggestions.length === 1;
  return isOpen
    ? fault.suggestions.filter(isMark).map((decimal) => button(`decimal ${decimal}`, { decimal }))
    : [];
}

const isDelimiter = (text: string): text is Delimiter =>
  text === "comma" || text === "semicolon" || text === "tab";
const isMark = (text: string): text is DecimalMark => text === "comma" || text === "point";

function skipped({ skipped: lines }: ImportPlan): HTMLElement {
  const words = lines.slice(0, mostListed).map(({ line, why }) => `line ${line} (${why})`);
  const rest = lines.length - words.length;
  return el("p", { class: "quiet" }, `Skipped: ${words.join(", ")}${rest > 0 ? ` and ${rest} more` : ""}.`);
}

const firstRows = 8;

function preview(plan: ImportPlan): HTMLElement {
  const names = [...new Set(plan.rows.flatMap(({ fields }) => Object.keys(fields)))];
  const units = new Map(plan.columns.map((column) => [column.column, column.unit]));
  const rest = plan.rows.length - firstRows;
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": "rows as they would stand" },
    el(
      "table",
      { class: "readings" },
      el(
        "thead",
        {},
        el(
          "tr",
          {},
          ...["line", ...names.map((name) => headWords(name, units.get(name))), ""].map((text) =>
            el("th", { scope: "col" }, text),
          ),
        ),
      ),
      el(
        "tbody",
        {},
        ...plan.rows
          .slice(0, firstRows)
          .map(({ line, fields, fate }) =>
            el(
              "tr",
              {},
              el("td", { class: "quiet" }, `${line}`),
              ...names.map((name) => el("td", {}, fields[name] ?? "")),
              el("td", { class: "quiet" }, fate),
            ),
          ),
      ),
    ),
    rest > 0 && el("p", { class: "quiet" }, `and ${counted(rest, "row")} more`),
  );
}

function reasonField({ plan, answers, answer }: PlanView): HTMLElement {
  const field = el("input", {
    type: "text",
    id: "import-reason",
    class: "reason-entry",
    autocomplete: "off",
  });
  field.value = answers.reason;
  field.addEventListener("change", () => answer({ reason: field.value }));
  const corrections = plan.rows.filter(
    ({ fate, fields }) => fate === "corrects" && (fields["reason"] ?? "") === "",
  ).length;
  return el(
    "p",
    { class: "import-reason" },
    el(
      "label",
      { for: "import-reason" },
      `Why: ${counted(corrections, "row")} of the file ${corrections === 1 ? "corrects" : "correct"} what is there. The first readings stay in the table.`,
    ),
    field,
  );
}

function actions({ plan, add, leave }: PlanView): HTMLElement {
  const count = (fate: string) => plan.rows.filter((row) => row.fate === fate).length;
  const bring = plan.rows.length - count("there already");
  const words = [
    count("fills a blank") > 0 && `${count("fills a blank")} fill a blank`,
    count("corrects") > 0 && `${count("corrects")} correct what is there`,
    count("there already") > 0 && `${count("there already")} are there already`,
    plan.odd > 0 && `${plan.odd} will be odd and asked about`,
  ].filter(Boolean);
  return el(
    "div",
    { class: "import-actions" },
    words.length > 0 && el("p", {}, `${words.join("; ")}.`),
    el(
      "span",
      { class: "tools" },
      el(
        "button",
        { type: "button", class: "tool strong", disabled: plan.text === undefined, onclick: add },
        plan.faults.length > 0 ? "Nothing to add yet" : `Add ${counted(bring, "reading")}`,
      ),
      el("button", { type: "button", class: "tool", onclick: leave }, "Do not add"),
    ),
  );
}
