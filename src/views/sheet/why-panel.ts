// "Why this number?" The chain back to givens and readings, each with its line.
import { isMethodItem } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import { methods } from "../../methods/register.ts";
import type { Solution, WorkedStep } from "../../methods/solution.ts";
import { isProblem } from "../../problem.ts";
import { chainOf, type Link, restsOn, stepsTo, tableRowsOf, valueWords } from "../../report/chain.ts";
import { labelOf } from "../../report/labels.ts";
import { stepName } from "../../report/step-words.ts";
import { cite } from "../../source.ts";
import { type Child, el, replace } from "../dom.ts";
import { readingsTable } from "../entry/readings-table.ts";
import { lineLink } from "../shell/more.ts";
import type { PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { noAnswerNote } from "./problem-note.ts";
import { stateWord } from "./state-mark.ts";

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
      const behind = context.live.why(name);
      const chain = chainOf(behind, { name, output, row });
      replace(
        content,
        el(
          "div",
          {},
          el("p", { class: "quiet" }, restsOn(behind)),
          el("ol", { class: "why-list first" }, chain && entry(chain, context)),
        ),
      );
      element.showModal();
      content.scrollTop = 0;
    },
    close: () => element.close(),
  };
}

/** A line that was met before is only pointed at. */
function entry(link: Link, context: PageContext): HTMLElement {
  const { line, row, output, isAgain, behind } = link;
  const head = el(
    "p",
    { class: "why-head" },
    el("span", {}, lineLink(line.name, context), row !== undefined && ` · ${row}`),
    el("span", { class: "why-value" }, valueWords(line, output, context.unitOf)),
  );
  if (isAgain) return el("li", {}, head, el("p", { class: "quiet" }, "as above"));
  return el(
    "li",
    {},
    head,
    ...explanation(link, context),
    behind.length > 0 && el("ol", { class: "why-list" }, ...behind.map((one) => entry(one, context))),
  );
}

function explanation({ line, output, tags }: Link, context: PageContext): readonly Child[] {
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
        ...stepsTo(value.solution, output).map((step) => stepOf(step, value.solution, context)),
        source,
      ];
    case "table": {
      const found = tableRowsOf(value, tags);
      const table = found && readingsTable(value, `${labelOf(item)}, ${found.of}`, found.rows);
      return [table && el("div", { class: "why-readings" }, table), source];
    }
    default:
      return [source];
  }
}

const methodWords = ({ item }: Line): Child =>
  item.kind === "working" &&
  isMethodItem(item) &&
  el("p", { class: "quiet" }, methods.get(item.by)?.question ?? item.by);

const stepOf = (step: WorkedStep, solved: Solution, context: PageContext): HTMLElement =>
  el(
    "div",
    { class: "step" },
    el("p", { class: "step-name" }, stepName(solved.method, step)),
    threeLines(step, context.unitOf),
    step.source !== undefined && el("p", { class: "quiet" }, cite(step.source)),
  );
