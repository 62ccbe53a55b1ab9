// What stands behind the answer of a method: its question, steps, other outputs, sources and remarks.
import { isRecordOnly } from "../../methods/field.ts";
import { methods } from "../../methods/register.ts";
import type { Solution } from "../../methods/solution.ts";
import type { Problem } from "../../problem.ts";
import { outputText } from "../../report/figure-text.ts";
import { inPlace } from "../../report/problem-words.ts";
import { saysOf, stepName } from "../../report/step-words.ts";
import { cite } from "../../source.ts";
import { type Child, el } from "../dom.ts";
import { list, part } from "../shell/more.ts";
import type { PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { listTable } from "./list-output.ts";
import { stateMark } from "./state-mark.ts";

export const warning = (problem: Problem): HTMLElement =>
  el(
    "p",
    { class: "warning" },
    stateMark("warning"),
    el("span", {}, el("b", {}, "warning"), ` ${inPlace(problem)}`),
  );

export function methodParts(
  solved: Solution,
  shown: readonly string[],
  context: PageContext,
): readonly Child[] {
  const known = methods.get(solved.method);
  const question = known?.question;
  const sources = [...new Set(solved.sources.map(cite))];
  const read = Object.entries(solved.outputs).filter(([name]) => !isRecordOnly(known?.outputs[name]));
  const rest = read.filter(([name]) => !shown.includes(name));
  return [
    question !== undefined && el("p", { class: "question" }, question),
    ...read.map(
      ([name, output]) =>
        output.kind === "list" &&
        output.rows.length > 0 &&
        listTable(solved.method, name, output.rows, context),
    ),
    solved.working.length > 0 &&
      part("steps", el("div", { class: "steps" }, ...stepList(solved, shown, context, sources.length > 1))),
    rest.length > 0 &&
      part(
        "other outputs",
        el(
          "dl",
          { class: "outputs" },
          ...rest.flatMap(([name, output]) => [
            el("dt", {}, saysOf(solved.method, name), " ", el("code", {}, name)),
            el("dd", {}, outputText(output, context.unitOf)),
          ]),
        ),
      ),
    sources.length > 0 && part(sources.length === 1 ? "source" : "sources", list(sources)),
    solved.notes.length > 0 && part("remarks", list(solved.notes)),
  ];
}

/** Each step once; a source is named where it changes. Steps that stand above already are not printed twice. */
function stepList(
  solved: Solution,
  shown: readonly string[],
  context: PageContext,
  cited: boolean,
): readonly HTMLElement[] {
  let before: string | undefined;
  return solved.working.map((step) => {
    const source = step.source && cite(step.source);
    const lines = threeLines(step, context.unitOf);
    const broad = lines.querySelector(".over-phone") !== null;
    const repeated = shown.slice(0, 2).includes(step.name);
    const named = cited && source !== undefined && source !== before;
    before = source;
    return el(
      "div",
      { class: `step${broad ? " broad" : ""}${repeated ? " repeated" : ""}` },
      el("p", { class: "step-name" }, stepName(solved.method, step)),
      lines,
      named && el("p", { class: "quiet" }, source),
    );
  });
}
