// Five states, each a word with a mark of its own shape: nothing is said by colour alone.
import type { State } from "../verdict.ts";
import { el, svg } from "./dom.ts";

export type Mark = State | "warning";

const ring = { cx: 8, cy: 8, r: 6, fill: "none", stroke: "currentColor", "stroke-width": 1.8 };

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
