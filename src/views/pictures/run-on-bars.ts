// Run-on torque nut by nut in the band that a locking nut has to keep.
import { text as label, type Markish, rect } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { setText } from "../figure.ts";
import { placed, rounded } from "./chart.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { markAt } from "./flange.ts";
import { numbersOf } from "./inputs.ts";
import { byName, numberIn, positionIn, rowsOf } from "./lists.ts";
import { text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";
import { listed } from "./words.ts";

interface Nut {
  readonly position: string;
  readonly runOn: number | undefined;
}

interface Nuts {
  readonly nuts: readonly Nut[];
  readonly least: number;
  readonly most: number;
}

export function runOnBars(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const limits = numbersOf("run-on-bars", inputs);
  if (isProblem(limits)) return limits;
  const rows = rowsOf("run-on-bars", inputs, "nuts");
  if (isProblem(rows)) return rows;
  const nuts = rows
    .map((row): Nut => ({ position: positionIn(row), runOn: numberIn(row, "runOn") }))
    .toSorted((a, b) => byName(a.position, b.position));
  const all: Nuts = { nuts, ...limits };
  const torque = (si: number) => setText(si, "torque", unitOf("torque"));
  return {
    draw: (width) => draw(all, width, unitOf),
    sentence: sentenceOf(all, torque),
    table: {
      title: "run-on torque as a table",
      head: ["position", "run-on torque", "band"],
      rows: nuts.map((nut) => [
        nut.position,
        nut.runOn === undefined ? "missing" : torque(nut.runOn),
        words(nut, all),
      ]),
    },
  };
}

function words({ runOn }: Nut, { least, most }: Nuts): string {
  if (runOn === undefined) return "missing";
  if (runOn < least) return "below";
  return runOn > most ? "above" : "inside";
}

function sentenceOf(all: Nuts, torque: (si: number) => string): string {
  const { nuts, least, most } = all;
  const by = (word: string) => nuts.filter((nut) => words(nut, all) === word);
  const named = (found: readonly Nut[]) =>
    listed(found.map(({ position, runOn }) => `${position} (${runOn === undefined ? "" : torque(runOn)})`));
  const [below, above, missing] = [by("below"), by("above"), by("missing")];
  return [
    `${by("inside").length} of ${nuts.length} nuts have a run-on torque between ${torque(least)} and ${torque(most)}.`,
    ...(below.length > 0 ? [`Below: ${named(below)}.`] : []),
    ...(above.length > 0 ? [`Above: ${named(above)}.`] : []),
    ...(missing.length > 0 ? [`Missing: ${listed(missing.map(({ position }) => position))}.`] : []),
  ].join(" ");
}

function draw(all: Nuts, width: number, unitOf: UnitChoice): SVGSVGElement {
  const shown = unitOf("torque");
  const inShown = (si: number) => inUnit(si, shown);
  const number = rounded(0);
  const [low, high] = [inShown(all.least), inShown(all.most)];
  const bars = all.nuts.flatMap((nut, row) =>
    nut.runOn === undefined ? [] : [{ row, end: inShown(nut.runOn), state: words(nut, all) }],
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
