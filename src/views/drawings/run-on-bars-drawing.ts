// Run-on torque nut by nut in the band that a locking nut has to keep.
import { text as label, type Markish, rect } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import { againstBand, type Nuts } from "../../pictures/run-on-bars.ts";
import { rounded } from "../../pictures/words.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { placed } from "./chart.ts";
import { markAt } from "./flange.ts";
import { text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";

export function drawRunOn(all: Nuts, width: number, unitOf: UnitChoice): SVGSVGElement {
  const shown = unitOf("torque");
  const inShown = (si: number) => inUnit(si, shown);
  const number = rounded(0);
  const [low, high] = [inShown(all.least), inShown(all.most)];
  const bars = all.nuts.flatMap((nut, row) =>
    nut.runOn === undefined ? [] : [{ row, end: inShown(nut.runOn), state: againstBand(nut, all) }],
  );
  const missing = [...all.nuts.entries()].flatMap(([row, { runOn }]) => (runOn === undefined ? [row] : []));
  const inside = bars.filter(({ state }) => state === "inside");
  const out = bars.filter(({ state }) => state !== "inside");
  return rowCharts(width, {
    title: `run-on torque, ${unitLabel(shown)}`,
    names: all.nuts.map(({ position }) => position),
    left: 34,
    right: Math.min(width - 86, 654),
    from: 0,
    to: Math.max(high, ...bars.map(({ end }) => end)) * 1.02,
    limits: [
      { at: low, words: `least ${number(low)}` },
      { at: high, words: `most ${number(high)}` },
    ],
    allowed: [low, high],
    number,
    marks: [
      bar(inside, "bar"),
      bar(out, "bar out"),
      label(inside, {
        x: "end",
        y: "row",
        text: ({ end }: { end: number }) => number(end),
        dx: 6,
        textAnchor: "start",
      }),
      placed((x, y) => [
        ...out.flatMap(({ row, end, state }) => [
          markAt("fails", x(end) + 11, y(row)),
          text(`${number(end)} ${state}`, x(end) + 21, y(row) + 4.5, "start", "limit-text"),
        ]),
        ...missing.flatMap((row) => [
          markAt("no answer", x(0) + 10, y(row)),
          text("missing", x(0) + 22, y(row) + 4.5, "start", "limit-text"),
        ]),
      ]),
    ],
  });
}

interface Bar {
  readonly row: number;
  readonly end: number;
}

const bar = (bars: readonly Bar[], className: string): Markish =>
  rect(bars, {
    x1: 0,
    x2: "end",
    y1: ({ row }: Bar) => row - 0.25,
    y2: ({ row }: Bar) => row + 0.25,
    className,
  });
