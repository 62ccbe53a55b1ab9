// Which outputs stand as columns, each with one unit in its head, and the lines of one row.
import type { RowsValue } from "../../engine/line.ts";
import type { OutputValue } from "../../methods/field.ts";
import { methods } from "../../methods/register.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, root } from "../../problem.ts";
import { numberText, outputText } from "../../report/figure-text.ts";
import { inPlace } from "../../report/problem-words.ts";
import { saysOf } from "../../report/step-words.ts";
import { type Unit, unitLabel } from "../../units/unit.ts";
import { capital } from "../../words.ts";
import { el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { stateMark, stateWord } from "./state-mark.ts";

export interface AnswerColumn {
  /** Name of the output; none for a formula, which has one answer. */
  readonly output: string | undefined;
  readonly says: string;
  readonly unit: Unit | undefined;
}

type Answer = RowsValue["rows"][number];

/** A glance takes in about this many beside the key. */
const mostShown = 6;

export function answerColumns(
  value: RowsValue,
  read: ReadonlySet<string>,
  unitOf: UnitChoice,
): readonly AnswerColumn[] {
  const kindsFound = new Map<string, OutputValue["kind"]>();
  for (const { value: answer } of value.rows) {
    if (isProblem(answer)) continue;
    if (answer.type === "formula")
      return [
        {
          output: undefined,
          says: "value",
          unit: answer.kind === "yes/no" ? undefined : (answer.unit ?? unitOf(answer.kind ?? "ratio")),
        },
      ];
    for (const [name, output] of Object.entries(answer.solution.outputs))
      if (output.kind !== "list" && !kindsFound.has(name)) kindsFound.set(name, output.kind);
  }
  const order = Object.keys(methods.get(value.method ?? "")?.outputs ?? {});
  const all = [...kindsFound.keys()].sort((a, b) => order.indexOf(a) - order.indexOf(b));
  const wanted = all.filter((name) => read.has(name));
  const told = all.filter((name) => kindsFound.get(name) === "text" && !wanted.includes(name)); // verdict words
  const shown = wanted.length > 0 ? [...wanted, ...told] : all;
  return shown.slice(0, mostShown).map((output) => ({
    output,
    says: saysOf(value.method ?? "", output),
    unit: unitFor(kindsFound.get(output), unitOf),
  }));
}

function unitFor(kind: OutputValue["kind"] | undefined, unitOf: UnitChoice): Unit | undefined {
  return kind === undefined || kind === "text" || kind === "yes/no" || kind === "list"
    ? undefined
    : unitOf(kind);
}

export function answerHead({ says, unit }: AnswerColumn): HTMLElement {
  const label = unit === undefined ? "" : unitLabel(unit);
  return el(
    "th",
    { scope: "col", class: unit ? "number-head" : undefined },
    capital(says),
    label !== "" && el("span", { class: "head-unit" }, ` / ${label}`),
  );
}

export function answerCells(
  one: Answer,
  columns: readonly AnswerColumn[],
  context: PageContext,
): readonly HTMLElement[] {
  const { value } = one;
  if (isProblem(value))
    return [
      el(
        "td",
        { colspan: Math.max(1, columns.length), class: "no-answer-cell" },
        stateWord("no answer"),
        " ",
        el("span", { class: "quiet" }, inPlace(root(value))),
      ),
    ];
  const warned = value.type === "solution" && value.solution.warnings.length > 0;
  return columns.map((column, i) => {
    const mark =
      warned &&
      i === 0 &&
      el("span", { class: "row-warning" }, stateMark("warning"), el("span", { class: "unseen" }, "warning"));
    if (value.type === "formula") {
      const text =
        value.kind === "yes/no"
          ? value.si === 1
            ? "yes"
            : "no"
          : figureIn(value.si, value.kind ?? "ratio", column, context);
      return el("td", { class: "answer-number" }, text);
    }
    const output = column.output === undefined ? undefined : value.solution.outputs[column.output];
    if (output === undefined) return el("td", { class: "quiet" }, "–");
    const isNumber = "si" in output;
    const text = isNumber
      ? figureIn(output.si, output.kind, column, context)
      : outputText(output, context.unitOf);
    return el("td", { class: isNumber ? "answer-number" : undefined }, mark, text);
  });
}

const figureIn = (
  si: number,
  kind: Extract<OutputValue, { si: number }>["kind"],
  { unit }: AnswerColumn,
  context: PageContext,
): string => numberText(si, kind, unit ?? context.unitOf(kind));
