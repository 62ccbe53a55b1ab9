// Five states of a check and four of a reading, each a word with a mark of its own shape: nothing is said by
// colour alone.
import type { Mark } from "../../report/states.ts";
import { el, svg } from "../dom.ts";

const ring = { cx: 8, cy: 8, r: 6, fill: "none", stroke: "currentColor", "stroke-width": 1.8 };

const square = {
  x: 2,
  y: 2,
  width: 12,
  height: 12,
  fill: "none",
  stroke: "currentColor",
  "stroke-width": 1.6,
};
const stroke = (d: string) => svg("path", { d, fill: "none", stroke: "currentColor", "stroke-width": 1.8 });

function shape(mark: Mark): SVGElement[] {
  switch (mark) {
    case "proven":
      return [svg("circle", { cx: 8, cy: 8, r: 6.8, fill: "currentColor" })];
    case "unproven":
      return [svg("circle", ring), svg("path", { d: "M8 2a6 6 0 0 0 0 12z", fill: "currentColor" })];
    case "fails":
      return [
        svg("path", {
          d: "M2.5 2.5 13.5 13.5M13.5 2.5 2.5 13.5",
          stroke: "currentColor",
          "stroke-width": 2.8,
        }),
      ];
    case "no answer":
      return [svg("circle", { ...ring, "stroke-dasharray": "3 2.4" })];
    case "waived":
      return [
        svg("circle", ring),
        svg("path", { d: "M0 8h16", stroke: "currentColor", "stroke-width": 1.8 }),
      ];
    case "missing":
      return [svg("rect", { ...square, "stroke-dasharray": "3 2.4" })];
    case "odd":
      return [stroke("M8 1.5 14.5 8 8 14.5 1.5 8z"), stroke("M8 5v3.4M8 9.8v1.4")];
    case "corrected":
      return [svg("rect", square), stroke("M0 8h16")];
    case "set aside":
      return [svg("rect", square), stroke("M2 14 14 2")];
    case "warning":
      return [
        svg("path", {
          d: "M8 2 14.5 13.5h-13z",
          fill: "none",
          stroke: "currentColor",
          "stroke-width": 1.6,
          "stroke-linejoin": "round",
        }),
        svg("path", { d: "M8 6.2v3.6M8 11v1.3", stroke: "currentColor", "stroke-width": 1.6 }),
      ];
  }
}

export const stateMark = (mark: Mark): SVGSVGElement =>
  svg(
    "svg",
    { class: "mark", viewBox: "0 0 16 16", width: 16, height: 16, "aria-hidden": "true" },
    ...shape(mark),
  );

export const stateWord = (mark: Mark): HTMLElement =>
  el("span", { class: `state ${mark.replace(" ", "-")}` }, stateMark(mark), el("span", {}, mark));
