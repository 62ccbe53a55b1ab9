// Each clearance from tightest to loosest with its uncertainty, against what the owner allows: a thin end across a
// limit is what "unproven" means.
import { rect, ruleY } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { type State, states } from "../../verdict.ts";
import { capital } from "../words.ts";
import { airy, placed } from "./chart.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { markAt } from "./flange.ts";
import { type Numbers, numbersOf } from "./inputs.ts";
import { type Small, smallLength } from "./lengths.ts";
import { byName, numberIn, positionIn, rowsOf, stateIn } from "./lists.ts";
import { text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";
import { listed } from "./words.ts";

interface Fit {
  readonly position: string;
  readonly tightest: number | undefined;
  readonly loosest: number | undefined;
  readonly uncertainty: number;
  readonly state: State;
}

interface Fits extends Numbers<"fits-against-limits"> {
  readonly fits: readonly Fit[];
}

const name = "fits-against-limits";

export function fitsAgainstLimits(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const limits = numbersOf(name, inputs);
  if (isProblem(limits)) return limits;
  const rows = rowsOf(name, inputs, "pairs");
  if (isProblem(rows)) return rows;
  const fits = rows
    .map(
      (row): Fit => ({
        position: positionIn(row),
        tightest: numberIn(row, "tightest"),
        loosest: numberIn(row, "loosest"),
        uncertainty: numberIn(row, "uncertainty") ?? 0,
        state: stateIn(row),
      }),
    )
    .toSorted((a, b) => byName(a.position, b.position));
  const all: Fits = { ...limits, fits };
  const small = smallLength(unitOf);
  const cell = (si: number | undefined) => (si === undefined ? "" : small.number(si));
  return {
    draw: (width) => draw(all, width, small),
    sentence: sentenceOf(all, small),
    table: {
      title: "fits as a table",
      head: [
        "position",
        `tightest/${small.label}`,
        `loosest/${small.label}`,
        `uncertainty/${small.label}`,
        "state",
      ],
      rows: fits.map(({ position, tightest, loosest, uncertainty, state }) => [
        position,
        cell(tightest),
        cell(loosest),
        cell(uncertainty),
        state,
      ]),
    },
  };
}

function sentenceOf({ fits, tightestAllowed, loosestAllowed }: Fits, small: Small): string {
  const by = (state: State) => fits.filter((fit) => fit.state === state).map(({ position }) => position);
  return [
    `${by("proven").length} of ${fits.length} fits are proven between ${small.set(tightestAllowed)} and ${small.set(loosestAllowed)} ${small.label}.`,
    ...states
      .filter((state) => state !== "proven" && by(state).length > 0)
      .map((state) => `${capital(state)}: ${listed(by(state))}.`),
    "Thick from tightest to loosest, thin the uncertainty beyond.",
  ].join(" ");
}

function draw(all: Fits, width: number, small: Small): SVGSVGElement {
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
            : [text(state, right + 22, y(row) + 4.5, "start", `state-text ${state.replace(" ", "-")}`)]),
        ]),
      ),
    ],
  });
}
