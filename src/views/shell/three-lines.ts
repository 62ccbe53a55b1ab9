// A step of a working in three lines: symbols, numbers with units, result.
import { plain, type Shown, symbolOf } from "../../formula/show.ts";
import type { UnitChoice, WorkedStep } from "../../methods/solution.ts";
import { figureText } from "../../report/figure-text.ts";
import { stepLines } from "../../report/step-words.ts";
import type { Unit } from "../../units/unit.ts";
import { el } from "../dom.ts";
import { breadth, mathLine } from "../sheet/mathml.ts";

const equals: Shown = { type: "operator", text: "=" };

/** Beyond this a line is written as text that wraps: on paper, and on a narrow screen. */
const widest = { paper: 46, phone: 26 } as const;

export function threeLines(step: WorkedStep, unitOf: UnitChoice, chosen?: Unit): HTMLElement {
  const lines = stepLines(step, unitOf, resultShown(step, unitOf, chosen));
  return el(
    "div",
    { class: step.symbol.length <= 5 ? "lines short-left" : "lines" },
    ...lines.flatMap((shown, i) => line(i === 0 ? symbolOf(step.symbol) : undefined, shown)),
  );
}

/** Left side and right side stand in two columns, so that the equal signs stand below each other. */
function line(left: Shown | undefined, right: Shown): readonly HTMLElement[] {
  const size = breadth(right) + (left ? breadth(left) : 0);
  const width = size > widest.paper ? " over-paper over-phone" : size > widest.phone ? " over-phone" : "";
  const spoken = [...(left ? [left] : []), equals, right];
  const leftMath = left && mathLine([left]);
  leftMath?.setAttribute("aria-hidden", "true");
  const rightMath = mathLine([equals, right], spoken);
  return [
    el("div", { class: "left-side" }, leftMath),
    el(
      "div",
      { class: `right-side${width}` },
      rightMath,
      el("span", { class: "linear" }, `= ${plain(right)}`),
    ),
  ];
}

const resultText = (step: WorkedStep, unitOf: UnitChoice, chosen?: Unit): string =>
  step.kind === "yes/no"
    ? step.result()
    : figureText(step.si, step.kind, chosen ?? step.unit ?? unitOf(step.kind ?? "ratio"));

function resultShown(step: WorkedStep, unitOf: UnitChoice, chosen: Unit | undefined): Shown {
  const text = resultText(step, unitOf, chosen);
  const gap = text.indexOf(" ");
  if (step.kind === "yes/no") return { type: "symbol", text };
  return gap < 0
    ? { type: "number", text }
    : { type: "number", text: text.slice(0, gap), unit: text.slice(gap + 1) };
}
