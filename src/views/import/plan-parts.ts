// What the person sees of a file before it is taken: how it was read, what each heading fills, what hinders by
// line, and the first rows as they would stand.
import type { DecimalMark, Delimiter, ReadingItem } from "../../document/item.ts";
import type { Problem } from "../../problem.ts";
import {
  type Fate,
  type ImportAnswers,
  type ImportPlan,
  nothingNew,
  type PlannedRow,
} from "../../readings/plan-import.ts";
import { headWords } from "../../readings/row-words.ts";
import { inPlace } from "../../report/problem-words.ts";
import { counted } from "../../words.ts";
import { type Child, el } from "../dom.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import { rememberWho } from "../shell/who.ts";
import { mapping } from "./mapping.ts";

export interface PlanView {
  readonly item: ReadingItem;
  /** The rows of the reading now. */
  readonly current: string;
  readonly plan: ImportPlan;
  readonly answers: ImportAnswers;
  readonly answer: (changed: Partial<ImportAnswers>) => void;
  readonly add: () => void;
  readonly leave: () => void;
}

export function planParts(view: PlanView): readonly Child[] {
  const { plan, current, answers } = view;
  const { csv, readAs } = plan;
  const faults = plan.text === current ? [nothingNew(plan)] : plan.faults.map(asChosenHere);
  const isCorrected = isAsked(plan, "no-reason") || answers.reason !== "";
  const isFar = isAsked(plan, "far-off") || answers.far !== "";
  return [
    csv && el("p", { class: "quiet" }, `Read with ${csv.delimiter} between fields, decimal ${csv.decimal}.`),
    plan.columns.length > 0 && mapping(view),
    faults.length > 0 && listed(view, faults),
    plan.skipped.length > 0 && skipped(plan),
    readAs.length > 0 && el("p", { class: "quiet" }, `Read ${readAs.slice(0, mostListed).join(", ")}.`),
    faults.length === 0 && plan.rows.length > 0 && preview(plan),
    isCorrected && correctsField(view),
    isFar && farField(view),
    (isCorrected || isFar) && whoField(view),
    actions(view, faults.length > 0),
  ];
}

const isAsked = ({ asked }: ImportPlan, code: string): boolean => asked.some((p) => p.code === code);

/** What is mended in a file elsewhere is chosen in the table below here. */
function asChosenHere(fault: Problem): Problem {
  const hint = here[fault.code];
  return hint === undefined ? fault : fault.with({ hint });
}

const here: Readonly<Record<string, string>> = {
  "column-twice": "leave one of the two out above",
  "missing-column": "choose above which heading holds it",
  "no-unit": "choose its unit above",
};

const mostListed = 12;

function listed({ answer }: PlanView, faults: readonly Problem[]): HTMLElement {
  const all = faults.length;
  return el(
    "div",
    { class: "problem" },
    el("p", { class: "asks" }, `${counted(all, "thing")} to settle first. Nothing is added until then.`),
    el(
      "ul",
      { class: "fault-list" },
      ...faults.slice(0, mostListed).map((fault) => el("li", {}, inPlace(fault), ...choices(fault, answer))),
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

const fateWords: Partial<Record<Fate, string>> = { same: "there already", asked: "asked about" };

function preview(plan: ImportPlan): HTMLElement {
  const names = [...new Set(plan.rows.flatMap(({ row }) => Object.keys(row.texts)))];
  const heads = names.map((name) =>
    headWords(name, plan.to.find((column) => column.name === name)?.unit?.text),
  );
  const rest = plan.rows.length - firstRows;
  const line = ({ row, fate }: PlannedRow): HTMLElement =>
    el(
      "tr",
      {},
      el("td", { class: "quiet" }, `${row.line}`),
      ...names.map((name) => el("td", {}, row.texts[name] ?? "")),
      el("td", { class: "quiet" }, fateWords[fate] ?? fate),
    );
  return scrollTable(
    "rows as they would stand",
    { heads: ["line", ...heads, ""] },
    plan.rows.slice(0, firstRows).map(line),
    rest > 0 && el("p", { class: "quiet" }, `and ${counted(rest, "row")} more`),
  );
}

function correctsField({ plan, answers, answer }: PlanView): HTMLElement {
  const rows = plan.rows.filter(
    ({ fate, problem, isAnswered }) => problem?.code === "no-reason" || (fate === "corrects" && isAnswered),
  ).length;
  const words = `Why: ${counted(rows, "row")} of the file ${rows === 1 ? "corrects" : "correct"} what is there. The first readings stay in the table.`;
  return whyField("import-reason", words, answers.reason, (reason) => answer({ reason }));
}

function farField({ plan, answers, answer }: PlanView): HTMLElement {
  const words = plan.asked.filter(({ code }) => code === "far-off").map((p) => inPlace(p.with({ hint: "" })));
  const rest = words.length - mostListed;
  const said = [...words.slice(0, mostListed), rest > 0 && `and ${rest} more`].filter(Boolean);
  const label = [...said, "Why they are taken: the reason stands beside them."].join(" ");
  return whyField("import-far", label, answers.far, (far) => answer({ far }));
}

const whoField = ({ answers, answer }: PlanView): HTMLElement =>
  whyField("import-who", "Who says so", answers.by, (by) => {
    rememberWho(by);
    answer({ by });
  });

function whyField(id: string, words: string, value: string, say: (text: string) => void): HTMLElement {
  const field = el("input", { type: "text", id, class: "reason-entry", autocomplete: "off" });
  field.value = value;
  field.addEventListener("change", () => say(field.value));
  return el("p", { class: "import-reason" }, el("label", { for: id }, words), field);
}

function actions({ plan, current, add, leave }: PlanView, isHindered: boolean): HTMLElement {
  const count = (fate: Fate) => plan.rows.filter((row) => row.fate === fate).length;
  const odd = plan.after?.states.filter((state) => state === "odd").length ?? 0;
  const words = [
    count("fills a blank") > 0 && `${count("fills a blank")} fill a blank`,
    count("corrects") > 0 && `${count("corrects")} correct what is there`,
    count("same") > 0 && `${count("same")} are there already`,
    odd > 0 && `${odd} will be odd and asked about`,
  ].filter(Boolean);
  const bring = counted(plan.rows.length - count("same"), "reading");
  return el(
    "div",
    { class: "import-actions" },
    words.length > 0 && el("p", {}, `${words.join("; ")}.`),
    el(
      "span",
      { class: "tools" },
      el(
        "button",
        {
          type: "button",
          class: "tool strong",
          disabled: plan.text === undefined || plan.text === current,
          onclick: add,
        },
        isHindered ? "Nothing to add yet" : `Add ${bring}`,
      ),
      el("button", { type: "button", class: "tool", onclick: leave }, "Do not add"),
    ),
  );
}
