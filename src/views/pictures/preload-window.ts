// Floor and ceiling of torque against scatter, worked out by the method for a series of scatters.
// Where they cross no torque passes, and the picture says so.
import { area, line as d3line, scaleLinear } from "d3";
import { solve } from "../../methods/index.ts";
import { preloadWindow } from "../../methods/preload/preload-window.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import { inUnit } from "../../units/in-unit.ts";
import type { Kind } from "../../units/kind.ts";
import { unitLabel } from "../../units/unit.ts";
import { svg } from "../dom.ts";
import { figureText } from "../figure.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { numbersOf, siValue } from "./inputs.ts";
import { dot, freshId, hatch, labelColumn, line, path, picture, text } from "./marks.ts";

const needed = {
  separationLoad: "force",
  scatter: "ratio",
  proofLoad: "force",
  nutFactor: "ratio",
  diameter: "length",
} as const satisfies Record<string, Kind>;
const optional = {
  separationFactor: "ratio",
  tripLoad: "force",
  tripFactor: "ratio",
  tripThermalChange: "force",
  relaxation: "ratio",
  assemblyShare: "ratio",
  warmUpChange: "force",
} as const satisfies Record<string, Kind>;

interface At {
  readonly scatter: number;
  readonly floor: number;
  readonly ceiling: number;
}

interface Window {
  readonly series: readonly At[];
  readonly here: At;
  /** The scatter at which the window closes; undefined when it never opens or never closes here. */
  readonly closesAt: number | undefined;
  readonly torque: number | undefined;
}

export function preloadWindowPicture(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const window = read(inputs);
  if (isProblem(window)) return window;
  const { here, closesAt, torque } = window;
  const shown = (si: number) => figureText(si, "torque", unitOf("torque"));
  const rows = [...window.series.filter((_, i) => i % 10 === 0), here].sort((a, b) => a.scatter - b.scatter);
  const open = here.floor <= here.ceiling;
  const closing = closesAt === undefined ? "" : ` The window closes at ±${share(closesAt)}.`;
  const chosen = torque === undefined ? "" : ` This page uses ${shown(torque)}.`;
  const sentence = open
    ? `At a scatter of ±${share(here.scatter)} the torque lies between ${shown(here.floor)} and ${shown(here.ceiling)}.`
    : `At a scatter of ±${share(here.scatter)} no torque passes: the floor of ${shown(here.floor)} lies above the ceiling of ${shown(here.ceiling)}.`;
  return {
    draw: (width) => draw(window, width, unitOf),
    sentence: sentence + closing + chosen,
    source: Object.values(preloadWindow.sources).slice(0, 1).map(cite).join(""),
    table: {
      title: "window against scatter as a table",
      head: ["scatter", "floor", "ceiling", "open"],
      rows: rows.map((at) => [
        `±${share(at.scatter)}${at === here ? ", this page" : ""}`,
        shown(at.floor),
        shown(at.ceiling),
        at.floor <= at.ceiling ? "yes" : "no torque passes",
      ]),
    },
  };
}

/** A share for a label. */
function share(of: number): string {
  return `${Math.round(of * 1000) / 10} %`;
}

function read(inputs: PictureInputs): Window | Problem {
  const numbers = numbersOf("preload-window", inputs, needed, { ...optional, torque: "torque" });
  if (isProblem(numbers)) return numbers;
  const kinds = { ...needed, ...optional };
  const given: Readonly<Record<string, number | undefined>> = numbers;
  const at = (scatter: number): At | Problem => {
    const values = Object.entries(kinds).flatMap(([name, kind]) => {
      const si = name === "scatter" ? scatter : given[name];
      return si === undefined ? [] : [[name, siValue(kind, si)] as const];
    });
    const solved = solve("preload-window", Object.fromEntries(values));
    if (isProblem(solved)) return solved;
    const { floorTorque, ceilingTorque } = solved.outputs;
    return { scatter, floor: number(floorTorque), ceiling: number(ceilingTorque) };
  };
  const here = at(numbers.scatter);
  if (isProblem(here)) return here;
  const widest = Math.min(0.95, Math.max(0.4, Math.ceil(numbers.scatter * 14) / 10));
  const series = Array.from({ length: 81 }, (_, i) => at((widest * i) / 80)).filter(
    (found): found is At => !isProblem(found),
  );
  return { series, here, closesAt: crossing(series, at), torque: numbers.torque };
}

const number = (output: unknown): number =>
  typeof output === "object" && output !== null && "si" in output ? Number(output.si) : Number.NaN;

function crossing(series: readonly At[], at: (scatter: number) => At | Problem): number | undefined {
  const after = series.findIndex((found) => found.floor > found.ceiling);
  const [open, closed] = [series[after - 1], series[after]];
  if (!open || !closed) return undefined;
  let [low, high] = [open.scatter, closed.scatter];
  for (let i = 0; i < 24; i += 1) {
    const found = at((low + high) / 2);
    if (isProblem(found)) return undefined;
    if (found.floor > found.ceiling) high = found.scatter;
    else low = found.scatter;
  }
  return low;
}

type Scale = (value: number) => number;

interface Plot {
  readonly x: Scale;
  /** From SI, by way of the unit shown, so that the ticks are round in that unit. */
  readonly y: Scale;
  readonly narrow: boolean;
  readonly words: (si: number) => string;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}

function draw({ series, here, closesAt, torque }: Window, width: number, unitOf: UnitChoice): SVGSVGElement {
  const unit = unitOf("torque");
  const narrow = width < 560;
  const height = Math.round(Math.min(380, Math.max(280, width * 0.46)));
  const [left, right, top, foot] = [48, narrow ? width - 8 : width - 206, 24, height - 42];
  const widest = series.at(-1)?.scatter ?? 1;
  const values = [...series.flatMap((at) => [at.floor, at.ceiling]), torque ?? here.floor].map((si) =>
    inUnit(si, unit),
  );
  const x = scaleLinear([0, widest], [left, right]);
  const shown = scaleLinear([Math.min(...values) * 0.9, Math.max(...values) * 1.05], [foot, top]);
  const y = (si: number) => shown(inUnit(si, unit));
  const curve = (of: "floor" | "ceiling") =>
    d3line<At>(
      (at) => x(at.scatter),
      (at) => y(at[of]),
    )(series);
  const open = series.filter((at) =>
    closesAt === undefined ? at.floor <= at.ceiling : at.scatter <= closesAt,
  );
  const closed = series.filter((at) => at.floor > at.ceiling);
  const between = area<At>(
    (at) => x(at.scatter),
    (at) => y(at.floor),
    (at) => y(at.ceiling),
  );
  const id = freshId("closed");
  const root = picture(width, height);
  root.append(
    hatch(id, 7, true),
    path("open-region", between(open)),
    svg("path", { class: "closed-region", d: between(closed) ?? "", fill: `url(#${id})` }),
    line("axis", left, foot, right, foot),
    line("axis", left, foot, left, top),
    ...x
      .ticks(narrow ? 2 : 5)
      .flatMap((tick) => [
        line("tick", x(tick), foot, x(tick), foot + 5),
        text(
          tick === 0 ? "0" : `±${share(tick)}`,
          x(tick),
          foot + 18,
          x(tick) > right - 20 && narrow ? "end" : "middle",
          "quiet-text",
        ),
      ]),
    ...shown
      .ticks(4)
      .flatMap((tick) => [
        line("tick", left - 5, shown(tick), left, shown(tick)),
        text(String(tick), left - 8, shown(tick) + 4, "end", "quiet-text"),
      ]),
    text("scatter of preload", right, foot + 36, "end", "quiet-text"),
    text(unitLabel(unit), left, top - 10, "middle", "quiet-text"),
    path("strong", curve("floor")),
    path("strong", curve("ceiling")),
  );
  const plot: Plot = { x, y, narrow, words: (si) => figureText(si, "torque", unit), right, top, foot };
  root.append(
    ...regionWords(closed, closesAt, plot),
    ...marked(here, torque, plot),
    ...curveWords(series, plot),
  );
  return root;
}

/** Each curve is named at the curve: at its right end, or where there is no room there, at its left. */
function curveWords(series: readonly At[], { x, y, narrow, right, top, foot }: Plot): readonly SVGElement[] {
  const [first, last] = [series[0], series.at(-1)];
  if (!first || !last) return [];
  const names = { floor: "floor: joint stays shut", ceiling: "ceiling: bolt below proof" };
  if (narrow)
    return [
      text(names.ceiling, x(first.scatter) + 8, top + 2, "start", "strong-text"),
      text(
        names.floor,
        x(first.scatter) + 8,
        Math.min(foot - 8, y(first.floor) + 24),
        "start",
        "strong-text",
      ),
    ];
  const labels = [
    { words: names.floor, y: y(last.floor), kind: "strong-text" },
    { words: names.ceiling, y: y(last.ceiling), kind: "strong-text" },
  ];
  return [labelColumn(labels, right + 16, right, top, foot)];
}

/** This page's scatter and torque, with the ends of its window. */
function marked(
  here: At,
  torque: number | undefined,
  { x, y, narrow, words, top, foot }: Plot,
): readonly SVGElement[] {
  const at = x(here.scatter);
  const kind = here.floor > here.ceiling ? "point open" : "point";
  const [upper, lower] = here.floor > here.ceiling ? [here.floor, here.ceiling] : [here.ceiling, here.floor];
  const near = narrow ? "end" : "start";
  const side = narrow ? -9 : 9;
  return [
    line("accent-line", at, top + (narrow ? 8 : 0), at, foot),
    narrow
      ? text(`±${share(here.scatter)}`, at + 6, foot - 26, "start", "accent-text")
      : text(`this page ±${share(here.scatter)}`, at + 6, top + 6, "start", "accent-text"),
    dot(at, y(here.floor), kind),
    dot(at, y(here.ceiling), kind),
    text(words(upper), at + side, y(upper) - 6, near),
    text(words(lower), at + side, y(lower) + 16, near),
    ...(torque === undefined
      ? []
      : [
          svg("path", { class: "accent-point", d: `M${at - 6} ${y(torque)} l6 -6 l6 6 l-6 6z` }),
          text(
            words(torque),
            narrow ? at + 10 : at - 10,
            y(torque) + 4,
            narrow ? "start" : "end",
            "accent-text",
          ),
        ]),
  ];
}

function regionWords(
  closed: readonly At[],
  closesAt: number | undefined,
  { x, y, narrow, right, foot }: Plot,
): readonly SVGElement[] {
  const [begin, end] = [closed[0], closed.at(-1)];
  if (!end || !begin) return [];
  const words: SVGElement[] = [];
  if (narrow) words.push(text("no torque passes", right - 4, y(end.ceiling) + 18, "end", "region-text"));
  else
    words.push(
      text(
        "no torque passes",
        x(begin.scatter * 0.3 + end.scatter * 0.7),
        y((end.floor + end.ceiling) / 2) + 4,
        "middle",
        "region-text",
      ),
    );
  if (closesAt !== undefined && !narrow)
    words.push(
      line("tick dashed", x(closesAt), y(begin.floor) + 6, x(closesAt), foot),
      text(`closes at ±${share(closesAt)}`, x(closesAt) + 6, foot - 8, "start", "quiet-text"),
    );
  return words;
}
