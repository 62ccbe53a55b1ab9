// The window against scatter as a drawing: floor and ceiling, where it is open, where no torque passes.
import { area, line as d3line, type ScaleLinear, scaleLinear } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import type { At, Window } from "../../pictures/preload-window.ts";
import { percent } from "../../pictures/words.ts";
import { figureText } from "../../report/figure-text.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { svg } from "../dom.ts";
import { dot, freshId, hatch, labelColumn, line, path, picture, text } from "./marks.ts";

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

export function drawWindow(
  { series, here, closesAt, torque }: Window,
  width: number,
  unitOf: UnitChoice,
): SVGSVGElement {
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
    ...axes({ x, shown, left, right, top, foot, narrow, label: unitLabel(unit) }),
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

interface Axes {
  readonly x: ScaleLinear<number, number>;
  readonly shown: ScaleLinear<number, number>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly narrow: boolean;
  readonly label: string;
}

function axes({ x, shown, left, right, top, foot, narrow, label }: Axes): readonly SVGElement[] {
  return [
    line("axis", left, foot, right, foot),
    line("axis", left, foot, left, top),
    ...x
      .ticks(narrow ? 2 : 5)
      .flatMap((tick) => [
        line("tick", x(tick), foot, x(tick), foot + 5),
        text(
          tick === 0 ? "0" : `±${percent(tick)}`,
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
    text(label, left, top - 10, "middle", "quiet-text"),
  ];
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
      ? text(`±${percent(here.scatter)}`, at + 6, foot - 26, "start", "accent-text")
      : text(`this page ±${percent(here.scatter)}`, at + 6, top + 6, "start", "accent-text"),
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
      text(`closes at ±${percent(closesAt)}`, x(closesAt) + 6, foot - 8, "start", "quiet-text"),
    );
  return words;
}
