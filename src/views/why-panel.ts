// "Why this number?" The chain back to givens and readings, each with its line.
import { isMethodItem } from "../document/item.ts";
import type { Line } from "../engine/line.ts";
import { names } from "../formula/tree.ts";
import { methods } from "../methods/register.ts";
import type { Solution, WorkedStep } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import { cite } from "../source.ts";
import { type Child, el, replace } from "./dom.ts";
import { figureText, outputText } from "./figure.ts";
import { saysOf } from "./items/says-of.ts";
import { lineLink } from "./more.ts";
import { namesRead } from "./names-read.ts";
import { onScreen } from "./on-screen.ts";
import type { PageContext } from "./page-context.ts";
import { noAnswerNote } from "./problem-note.ts";
import { stateWord } from "./state-mark.ts";
import { threeLines } from "./three-lines.ts";
import { ofRow, readingsOfRow } from "./why-row.ts";
import { counted, labelOf } from "./words.ts";

export interface WhyPanel {
  readonly element: HTMLDialogElement;
  readonly show: (context: PageContext, name: string, output?: string, row?: string) => void;
  readonly close: () => void;
}

export function whyPanel(): WhyPanel {
  const content = el("div", { class: "why-content" });
  const close = el("button", { type: "button", class: "tool", onclick: () => element.close() }, "Close");
  const element = el(
    "dialog",
    { class: "panel why", "aria-labelledby": "why-title" },
    el("div", { class: "panel-bar" }, el("h2", { id: "why-title" }, "Why this number"), close),
    content,
  );
  element.addEventListener("click", (event) => {
    const on = event.target;
    if (on === element || (on instanceof Element && on.closest("a"))) element.close();
  });
  return {
    element,
    show: (context, name, output, row) => {
      replace(content, chain(context, name, output, row));
      element.showModal();
      content.scrollTop = 0;
    },
    close: () => element.close(),
  };
}

/** From the number down to what was given; a line that was met before is only pointed at. */
function chain(
  context: PageContext,
  start: string,
  output: string | undefined,
  row: string | undefined,
): HTMLElement {
  const behind = context.live.why(start);
  const lines = new Map(behind.map((line) => [line.name, line]));
  const met = new Set<string>();
  const entry = (
    name: string,
    read: string | undefined,
    tags: Readonly<Record<string, string>> | undefined,
  ): HTMLElement | undefined => {
    const whole = lines.get(name);
    if (!whole) return undefined;
    const { line, key, tags: own } = ofRow(whole, tags, name === start ? row : undefined);
    const head = el(
      "p",
      { class: "why-head" },
      el("span", {}, lineLink(name, context), key !== undefined && ` · ${key}`),
      el("span", { class: "why-value" }, valueText(line, read, context)),
    );
    if (met.has(name)) return el("li", {}, head, el("p", { class: "quiet" }, "as above"));
    met.add(name);
    const inputs = namesRead(line.item, (used) => line.uses.includes(used));
    const children = inputs.flatMap(({ name: used, output: part }) => entry(used, part, own) ?? []);
    return el(
      "li",
      {},
      head,
      ...explanation(line, read, context, own),
      children.length > 0 && el("ol", { class: "why-list" }, ...children),
    );
  };
  const givens = behind.filter((line) => line.item.kind === "given" || line.item.kind === "reading").length;
  return el(
    "div",
    {},
    el("p", { class: "quiet" }, `Rests on ${counted(givens, "given or reading", "givens and readings")}.`),
    el("ol", { class: "why-list first" }, entry(start, output, undefined)),
  );
}

function valueText(line: Line, output: string | undefined, context: PageContext): string {
  const { value } = line;
  if (isProblem(value)) return "no answer";
  switch (value.type) {
    case "quantity":
      return figureText(
        value.si,
        value.kind,
        value.kind === undefined ? value.typed.unit : context.unitOf(value.kind),
      );
    case "formula":
      if (value.kind === "yes/no") return value.si === 1 ? "yes" : "no";
      return figureText(value.si, value.kind, value.unit ?? context.unitOf(value.kind ?? "ratio"));
    case "check":
      return onScreen(value.why);
    case "text":
      return value.text;
    case "table":
      return counted(value.rows, "row");
    case "rows":
      return counted(value.rows.length, "answer");
    case "checks":
      return value.why;
    case "solution": {
      const all = Object.keys(value.solution.outputs);
      const name = output ?? (all.length === 1 ? all[0] : undefined);
      const found = name === undefined ? undefined : value.solution.outputs[name];
      return found ? outputText(found, context.unitOf) : `${all.length} outputs`;
    }
    default:
      return "";
  }
}

function explanation(
  line: Line,
  output: string | undefined,
  context: PageContext,
  tags: Readonly<Record<string, string>> | undefined,
): readonly Child[] {
  const { item, value } = line;
  const source = item.source !== undefined && el("p", { class: "quiet" }, item.source);
  if (isProblem(value)) {
    const waits = value.cause !== undefined && tags !== undefined; // one row of a line, its cause is further down
    return [
      waits
        ? el("p", { class: "waiting" }, "Waits for what stands below.")
        : noAnswerNote(line, value, context),
      source,
    ];
  }
  switch (value.type) {
    case "quantity":
      return [el("p", { class: "quiet" }, `given, typed as ${value.typed.text}`), source];
    case "text":
      return [el("p", { class: "quiet" }, "given"), source];
    case "formula":
      return [threeLines(value.step, context.unitOf, value.unit), source];
    case "check":
      return [stateWord(value.state), threeLines(value.step, context.unitOf, value.unit), source];
    case "solution":
      return [
        methodWords(line),
        ...stepsTo(value.solution, output).map((step) => stepLines(step, value.solution, context)),
        source,
      ];
    case "table":
      return [readingsOfRow(value, tags, labelOf(line.item)), source];
    default:
      return [source];
  }
}

const methodWords = (line: Line): Child =>
  line.item.kind === "working" &&
  isMethodItem(line.item) &&
  el("p", { class: "quiet" }, methods.get(line.item.by)?.question ?? line.item.by);

function stepLines(step: WorkedStep, solved: Solution, context: PageContext): HTMLElement {
  return el(
    "div",
    { class: "step" },
    el("p", { class: "step-name" }, step.says ?? saysOf(solved.method, step.name)),
    threeLines(step, context.unitOf),
    step.source !== undefined && el("p", { class: "quiet" }, cite(step.source)),
  );
}

/** The steps of a method that lead to one output, in the order they ran. */
function stepsTo(solved: Solution, output: string | undefined): readonly WorkedStep[] {
  if (output === undefined) return solved.working;
  const wanted = new Set([output]);
  for (const step of solved.working.toReversed())
    if (wanted.has(step.name)) for (const name of names(step.tree)) wanted.add(name);
  return solved.working.filter((step) => wanted.has(step.name));
}
