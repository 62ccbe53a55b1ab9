// A number in the result field, large, with its unit.
import type { OutputValue } from "../../methods/field.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { numberText, outputText } from "../../report/figure-text.ts";
import type { Kind } from "../../units/kind.ts";
import { type Unit, unitLabel } from "../../units/unit.ts";
import { el } from "../dom.ts";

/** The number large, its unit after it. */
export function figure(si: number, kind: Kind | undefined, shown: Unit): HTMLElement {
  const label = unitLabel(shown);
  const number = numberText(si, kind, shown);
  const tight = /^[°′″]$/.test(label);
  return el(
    "span",
    { class: "figure" },
    el("b", {}, number),
    label !== "" && !tight && " ",
    label !== "" && el("span", { class: "unit" }, label),
  );
}

export function outputFigure(value: OutputValue, unitOf: UnitChoice, chosen?: Unit): HTMLElement {
  if (value.kind === "text" || value.kind === "yes/no" || value.kind === "list")
    return el("span", { class: "figure" }, el("b", {}, outputText(value, unitOf)));
  return figure(value.si, value.kind, chosen ?? unitOf(value.kind));
}
