// A working: three lines, the outputs the page reads, and the rest behind "more".
import { isMethodItem, type WorkingItem } from "../../document/item.ts";
import type { FormulaValue, Line } from "../../engine/line.ts";
import type { Solution } from "../../methods/solution.ts";
import { isProblem } from "../../problem.ts";
import { labelOf } from "../../report/labels.ts";
import { saysOf } from "../../report/step-words.ts";
import { el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { answer } from "./answer.ts";
import { figure, outputFigure } from "./figure.ts";
import { noAnswerNote } from "./problem-note.ts";
import { row } from "./row.ts";
import { methodParts, warning } from "./solution-parts.ts";
import { stateWord } from "./state-mark.ts";

/** Enough outputs at the line's right for a reader; the others stand behind "more". */
const mostShown = 4;

export function workingView(context: PageContext, line: Line, item: WorkingItem): ItemView {
  const { element, head, body, result } = row(context, line.name, item);
  if (isMethodItem(item)) head.append(el("span", { class: "method" }, item.by.replaceAll("-", " ")));
  const lines = el("div", { class: "working-lines" });
  const opened = more("all steps and sources", labelOf(item));
  body.append(lines, opened.element);

  const update = (now: Line): void => {
    const { value } = now;
    element.classList.toggle("unanswered", isProblem(value));
    if (isProblem(value)) {
      replace(lines, noAnswerNote(now, value, context));
      replace(result, stateWord("no answer"));
      opened.fill(() => [noteOf(now), nameInFormulas(now), ...relations(now, context)]);
    } else if (value.type === "formula") formula(now, value);
    else if (value.type === "solution") solution(now, value.solution);
  };

  function formula(now: Line, value: FormulaValue): void {
    replace(lines, threeLines(value.step, context.unitOf, value.unit));
    const shown =
      value.kind === "yes/no"
        ? el("span", { class: "figure" }, el("b", {}, value.si === 1 ? "yes" : "no"))
        : figure(value.si, value.kind, value.unit ?? context.unitOf(value.kind ?? "ratio"));
    replace(result, answer(context, now.name, shown));
    opened.fill(() => [noteOf(now), nameInFormulas(now), ...relations(now, context)]);
  }

  function solution(now: Line, solved: Solution): void {
    const names = shownOutputs(solved, context.outputsRead(now.name));
    const steps = names.flatMap((name) => solved.working.find((step) => step.name === name) ?? []);
    replace(
      lines,
      ...steps.slice(0, 2).map((step) => threeLines(step, context.unitOf)),
      ...solved.warnings.map(warning),
    );
    const only = Object.keys(solved.outputs).length === 1;
    replace(
      result,
      ...names.flatMap((name) => {
        const output = solved.outputs[name];
        if (!output) return [];
        const options = { output: name, label: only ? undefined : saysOf(solved.method, name) };
        return [answer(context, now.name, outputFigure(output, context.unitOf), options)];
      }),
    );
    opened.fill(() => [
      noteOf(now),
      ...methodParts(solved, names, context),
      nameInFormulas(now),
      ...relations(now, context),
    ]);
  }

  update(line);
  return { element, update };
}

/** What the page reads from it; else the first outputs. */
function shownOutputs(solved: Solution, read: ReadonlySet<string>): readonly string[] {
  const all = Object.keys(solved.outputs);
  const wanted = all.filter((name) => read.has(name));
  return (wanted.length > 0 ? wanted : all.slice(0, 2)).slice(0, mostShown);
}
