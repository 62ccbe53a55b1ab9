// The limit of tilt against the gap, drawn with the first millimetres wide, where control must be tightest.
import { line as d3line, scaleLinear, scalePow } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import { above, type DowelLimit, type TiltAt } from "../../pictures/dowel-limit.ts";
import { gapLength, type Small, slope } from "../../pictures/lengths.ts";
import { svg } from "../dom.ts";
import { markAt } from "./flange.ts";
import { dot, freshId, hatch, line, path, picture, text } from "./marks.ts";

interface Plot {
  readonly x: (gap: number) => number;
  readonly y: (tilt: number) => number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  readonly narrow: boolean;
}

export function drawDowelLimit(limit: DowelLimit, width: number, unitOf: UnitChoice): SVGSVGElement {
  const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
  const { engagedLength, steps } = limit;
  const plot = plotOf(limit, width);
  const { x, left, right, top, foot, narrow } = plot;
  const outline = d3line()(withinPlot(limit, plot)) ?? "";
  const id = freshId("jam");
  const clear = x(engagedLength);
  const root = picture(width, foot + 46);
  const clearWords = narrow ? ([right, "end"] as const) : ([clear + 8, "start"] as const);
  root.append(
    hatch(id, 7),
    svg("path", { class: "jam-region", d: `${outline} L${left} ${top}z`, fill: `url(#${id})` }),
    ...axesOf(plot, gap, tilt, engagedLength),
    path("strong", outline),
    line("thin dashed", clear, top, clear, foot),
    text("dowels clear:", clearWords[0], top + 70, clearWords[1], "region-text"),
    text("any tilt", clearWords[0], top + 86, clearWords[1], "region-text"),
    text(narrow ? "jams" : "the dowels jam", left + 10, top + 16, "start", "region-text"),
    ...limitWords(limit, plot, tilt),
  );
  for (const at of steps) root.append(...stepMark(at, steps, plot, tilt));
  return root;
}

/** The curve as far as it stays in the plot, ended where it leaves it. */
function withinPlot({ curve }: Pick<DowelLimit, "curve">, { x, y, top }: Plot): [number, number][] {
  const points = curve.map(({ gap, allowed }): [number, number] => [x(gap), y(allowed)]);
  const out = points.findIndex(([, at]) => at < top);
  const [inside, outside] = [points[out - 1], points[out]];
  if (!inside || !outside) return points;
  const share = (inside[1] - top) / (inside[1] - outside[1]);
  return [...points.slice(0, out), [inside[0] + share * (outside[0] - inside[0]), top]];
}

/** The limit in numbers where the dowels start and where two thirds of them are out. */
function limitWords({ curve }: DowelLimit, { x, y, top }: Plot, tilt: Small): readonly SVGElement[] {
  const [first, later] = [curve[0], curve[Math.round((curve.length * 2) / 3)]];
  return [
    ...(first
      ? [text(`limit ${tilt.number(first.allowed)}`, x(0) + 8, y(first.allowed) + 17, "start", "strong-text")]
      : []),
    ...(later && y(later.allowed) > top
      ? [
          text(tilt.number(later.allowed), x(later.gap) + 9, y(later.allowed) + 15, "start", "strong-text"),
          dot(x(later.gap), y(later.allowed), "point open"),
        ]
      : []),
  ];
}

function plotOf({ engagedLength, curve, steps }: DowelLimit, width: number): Plot {
  const narrow = width < 520;
  const [left, right, top] = [46, Math.min(width, 900) - (narrow ? 8 : 30), 26];
  const foot = top + (narrow ? 230 : 270);
  const widest = Math.max(engagedLength * 1.35, ...steps.map(({ gap }) => gap * 1.06));
  const most = Math.max((curve[0]?.allowed ?? 0) * 3.2, ...steps.map((each) => each.tilt * 1.25));
  const x = scalePow([0, widest], [left, right]).exponent(0.5);
  const y = scaleLinear([0, most], [foot, top]);
  return { x: (gap) => x(Math.max(0, gap)), y: (at) => y(at), left, right, top, foot, narrow };
}

function axesOf(plot: Plot, gap: Small, tilt: Small, engagedLength: number): readonly SVGElement[] {
  const { x, y, left, right, top, foot } = plot;
  return [
    line("axis", left, foot, right, foot),
    line("axis", left, foot, left, top),
    ...gapTicks(plot, gap, engagedLength).flatMap((at) => [
      line("tick", x(at), foot, x(at), foot + 5),
      text(gap.set(at), x(at), foot + 18, "middle", "quiet-text"),
    ]),
    text(`gap, ${gap.label}; the start drawn wide`, right, foot + 38, "end", "quiet-text"),
    ...tiltTicks(y, top).flatMap((at) => [
      line("tick", left - 5, y(at), left, y(at)),
      text(tilt.set(at), left - 8, y(at) + 4, "end", "quiet-text"),
    ]),
    text(`tilt, ${tilt.label}`, 2, 12, "start", "quiet-text"),
  ];
}

/** 1, 2 and 5 times powers of ten in the unit of the gap, where they stand clear of each other, and the end. */
function gapTicks({ x, right }: Plot, gap: Small, engagedLength: number): readonly number[] {
  const found = [0, engagedLength];
  const round = [-2, -1, 0, 1, 2, 3].flatMap((power) =>
    [1, 2, 5].map((step) => step * 10 ** power * gap.one),
  );
  for (const at of round.toReversed())
    if (x(at) <= right && found.every((other) => Math.abs(x(other) - x(at)) > 34)) found.push(at);
  return found;
}

function tiltTicks(y: (tilt: number) => number, top: number): readonly number[] {
  const found: number[] = [];
  for (const step of [0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01, 0.02])
    if (y(0) - y(step) >= 34) {
      for (let at = 0; y(at) >= top - 1; at += step) found.push(at);
      return found;
    }
  return [0];
}

/** Steps above the limit carry a cross and both numbers; the others a dot with the number of the step. */
function stepMark(at: TiltAt, all: readonly TiltAt[], plot: Plot, tilt: Small): readonly SVGElement[] {
  const { x, y, narrow, right } = plot;
  const [px, py] = [x(at.gap), y(at.tilt)];
  if (above(at)) {
    const words = `step ${at.step}: ${tilt.number(at.tilt)}${narrow ? "" : `, allowed ${tilt.number(at.allowed ?? 0)}`}`;
    return [
      markAt("fails", px, py, 15),
      line("thin dashed", px, py + 10, px, y(at.allowed ?? 0) - 3),
      text(words, px + 13, py + 4.5, px > right - 120 ? "end" : "start", "limit-text"),
    ];
  }
  const crowded = all.some(
    (other) => other !== at && Math.abs(x(other.gap) - px) < 12 && other.tilt < at.tilt,
  );
  return [dot(px, py), text(at.step, px, py - (crowded ? 9 : 8), "middle", "strong-text")];
}
