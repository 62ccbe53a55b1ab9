// Each clearance from tightest to loosest with its uncertainty, against what the owner allows: a thin end across a
// limit is what "unproven" means.
import { rect, ruleY } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import type { Fits } from "../../pictures/fits-against-limits.ts";
import { smallLength } from "../../pictures/lengths.ts";
import { airy, placed } from "./chart.ts";
import { kindOf, markAt } from "./flange.ts";
import { text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";

export function drawFits(all: Fits, width: number, unitOf: UnitChoice): SVGSVGElement {
  const small = smallLength(unitOf);
  const at = (si: number) => si / small.one;
  const number = (value: number) => small.set(value * small.one);
  const [low, high] = [at(all.tightestAllowed), at(all.loosestAllowed)];
  const bars = all.fits.flatMap(({ tightest, loosest, uncertainty, state }, row) => {
    if (tightest === undefined || loosest === undefined) return [];
    const [from, to] = [tightest, loosest].map(at);
    return [{ row, from: from ?? 0, to: to ?? 0, doubt: at(uncertainty), state }];
  });
  type Bar = (typeof bars)[number];
  const [from, to] = airy([low, high, ...bars.flatMap((bar) => [bar.from - bar.doubt, bar.to + bar.doubt])]);
  const right = Math.min(width - 92, 720);
  return rowCharts(width, {
    title: `clearance, ${small.label}`,
    names: all.fits.map(({ position }) => position),
    left: 34,
    right,
    from,
    to,
    limits: [
      { at: low, words: `tightest ${number(low)}` },
      { at: high, words: `loosest ${number(high)}` },
    ],
    allowed: [low, high],
    number,
    marks: [
      ruleY(bars, {
        y: "row",
        x1: ({ from: tight, doubt }: Bar) => tight - doubt,
        x2: ({ to: loose, doubt }: Bar) => loose + doubt,
        className: "strong",
      }),
      rect(bars, {
        x1: "from",
        x2: "to",
        y1: ({ row }: Bar) => row - 0.25,
        y2: ({ row }: Bar) => row + 0.25,
        className: "reach",
      }),
      placed((_, y) =>
        all.fits.flatMap(({ state }, row) => [
          markAt(state, right + 12, y(row)),
          ...(state === "proven"
            ? []
            : [text(state, right + 22, y(row) + 4.5, "start", `state-text ${kindOf(state)}`)]),
        ]),
      ),
    ],
  });
}
