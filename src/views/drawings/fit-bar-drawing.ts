// Tolerance bands of hole and shaft on one scale of deviation, with the real pair where it is known.
// Clearances on the drawing are distances between the bands drawn here.
import { scaleLinear } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import { clearanceWords, type Fit } from "../../pictures/fit-bar.ts";
import { numberText, setText } from "../../report/figure-text.ts";
import { roundDecimal } from "../../units/format.ts";
import { inUnit } from "../../units/in-unit.ts";
import { svg } from "../dom.ts";
import { dimension, freshId, hatch, type Label, labelColumn, line, picture, text } from "./marks.ts";

export function drawFit(fit: Fit, width: number, unitOf: UnitChoice): SVGSVGElement {
  const height = Math.round(Math.min(380, Math.max(280, width * 0.42)));
  const gutter = width < 520 ? 168 : 190;
  const [left, right, top, foot] = [58, width - gutter, 24, height - 30];
  const deviations = [fit.holeMax, fit.holeMin, fit.shaftMax, fit.shaftMin, fit.hole, fit.shaft].flatMap(
    (size) => (size === undefined ? [] : [(size - fit.size) * 1e6]),
  );
  const [low, high] = [Math.min(0, ...deviations), Math.max(0, ...deviations)];
  const room = Math.max(1, high - low) * 0.14;
  const y = scaleLinear([low - room, high + room], [foot, top]);
  const at = (size: number) => y((size - fit.size) * 1e6);
  const band = (right - left) * 0.3;
  const [holeAt, shaftAt] = [left + (right - left) * 0.08, right - (right - left) * 0.06 - band];
  const id = freshId("band");
  const root = picture(width, height);
  const block = (kind: string, x: number, upper: number, lower: number) =>
    svg("rect", {
      class: kind,
      x,
      y: at(upper),
      width: band,
      height: Math.max(1, at(lower) - at(upper)),
      fill: kind === "band shaft" ? `url(#${id})` : undefined,
    });
  const middle = (holeAt + band + shaftAt) / 2;
  root.append(
    hatch(id, 6),
    ...y
      .ticks(5)
      .flatMap((tick) => [
        line("grid", left, y(tick), right, y(tick)),
        text(`${tick > 0 ? "+" : ""}${tick}`.replace("-", "−"), left - 8, y(tick) + 4, "end", "quiet-text"),
      ]),
    text("µm", left - 8, top - 10, "end", "quiet-text"),
    line("zero", left, y(0), right, y(0)),
    block("band hole", holeAt, fit.holeMax, fit.holeMin),
    block("band shaft", shaftAt, fit.shaftMax, fit.shaftMin),
    text("hole", holeAt + band / 2, at(fit.holeMax) - 7, "middle", "strong-text"),
    text("shaft", shaftAt + band / 2, at(fit.shaftMax) - 7, "middle", "strong-text"),
    ...(fit.hole === undefined ? [] : [line("real", holeAt - 8, at(fit.hole), middle, at(fit.hole))]),
    ...(fit.shaft === undefined
      ? []
      : [line("real", middle, at(fit.shaft), shaftAt + band + 8, at(fit.shaft))]),
    ...(fit.hole === undefined || fit.shaft === undefined
      ? []
      : [dimension(middle, at(fit.hole), middle, at(fit.shaft))]),
    text(
      `0 is ${setText(fit.size, "length", unitOf("length"))}${width < 520 ? ", enlarged" : "; deviations drawn enlarged"}`,
      left,
      height - 6,
      "start",
      "quiet-text",
    ),
    labelColumn(labels(fit, at, unitOf), right + 14, right, top, foot),
  );
  return root;
}

function labels(fit: Fit, at: (size: number) => number, unitOf: UnitChoice): readonly Label[] {
  const shown = unitOf("length");
  const number = (size: number) =>
    shown.text === "mm"
      ? roundDecimal(inUnit(size, shown), { decimals: 3 })
      : numberText(size, "length", shown);
  const found: Label[] = [
    { words: `hole max ${number(fit.holeMax)}`, y: at(fit.holeMax) },
    { words: `hole min ${number(fit.holeMin)}`, y: at(fit.holeMin) },
    { words: `shaft max ${number(fit.shaftMax)}`, y: at(fit.shaftMax) },
    { words: `shaft min ${number(fit.shaftMin)}`, y: at(fit.shaftMin) },
  ];
  if (fit.hole !== undefined && fit.shaft !== undefined)
    found.push({
      words: clearanceWords(fit.hole - fit.shaft),
      y: (at(fit.hole) + at(fit.shaft)) / 2,
      kind: "accent-text",
    });
  return found;
}
