// The working of one row: three lines for each step, warnings, and "why?"; and one row in full for paper.
import type { RowsValue } from "../../engine/line.ts";
import { isProblem, root } from "../../problem.ts";
import { inPlace } from "../../report/problem-words.ts";
import { saysOf, stepName } from "../../report/step-words.ts";
import { type Child, el } from "../dom.ts";
import { part } from "../shell/more.ts";
import type { PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { outputFigure } from "./figure.ts";
import { methodParts, warning } from "./solution-parts.ts";

type Answer = RowsValue["rows"][number];

export function rowWorking(one: Answer, name: string, noun: string, context: PageContext): readonly Child[] {
  const { value } = one;
  const why = (output?: string) => () => context.why(name, output, one.key);
  if (isProblem(value)) return [el("p", {}, inPlace(root(value))), whyButton(`${noun} ${one.key}`, why())];
  if (value.type === "formula")
    return [threeLines(value.step, context.unitOf, value.unit), whyButton(`${noun} ${one.key}`, why())];
  const { solution } = value;
  const steps = solution.working.map((step) =>
    el(
      "div",
      { class: "step" },
      el("p", { class: "step-name" }, stepName(solution.method, step)),
      threeLines(step, context.unitOf),
    ),
  );
  const outputs = Object.entries(solution.outputs).flatMap(([output, found]) =>
    found.kind === "list"
      ? []
      : [
          el("dt", {}, saysOf(solution.method, output)),
          el(
            "dd",
            {},
            outputFigure(found, context.unitOf),
            " ",
            whyButton(`${saysOf(solution.method, output)} of ${noun} ${one.key}`, why(output)),
          ),
        ],
  );
  return [
    ...solution.warnings.map(warning),
    el("dl", { class: "outputs" }, ...outputs),
    ...steps,
    solution.notes.length > 0 && el("p", { class: "quiet" }, solution.notes.join("; ")),
  ];
}

const whyButton = (about: string, act: () => void): HTMLElement =>
  el(
    "button",
    { type: "button", class: "why-link", onclick: act },
    "why?",
    el("span", { class: "unseen" }, ` ${about}`),
  );

/** Every row runs the same steps: one is shown in full, and on paper. */
export function workedOnce(value: RowsValue, context: PageContext): readonly Child[] {
  const first = value.rows.find((one) => !isProblem(one.value));
  if (!first || isProblem(first.value)) return [];
  const title = `worked for ${value.key} ${first.key}; the others run the same steps`;
  if (first.value.type === "formula")
    return [part(title, threeLines(first.value.step, context.unitOf, first.value.unit))];
  return [part(title, ...methodParts(first.value.solution, [], context))];
}
