// Charts with one row for each position: they read the same on a phone and on paper.
import { type ScaleLinear, scaleLinear } from "d3";
import { svg } from "../dom.ts";
import { line, text } from "./marks.ts";

export const rowHeight = 20;
export const rowsTop = 44;

export interface Band {
  readonly low: number;
  readonly high: number;
  readonly lowWords: string;
  readonly highWords: string;
  /** The median or target that the band lies about. */
  readonly middle?: number;
}

export interface PanelAsked {
  readonly left: number;
  readonly right: number;
  readonly from: number;
  readonly to: number;
  readonly title: string;
  readonly band?: Band | undefined;
  /** What is told of the scale where there is no band: places and their words. */
  readonly ticks?: readonly (readonly [at: number, words: string])[];
  readonly rows: number;
}

export interface Panel {
  readonly x: ScaleLinear<number, number>;
  readonly y: (row: number) => number;
  readonly back: readonly SVGElement[];
}

export function panel({ left, right, from, to, title, band, ticks = [], rows }: PanelAsked): Panel {
  const x = scaleLinear([from, to], [left, right]);
  const y = (row: number) => rowsTop + (row + 0.5) * rowHeight;
  const foot = rowsTop + rows * rowHeight;
  return {
    x,
    y,
    back: [
      text(title, left, 12, "start", "strong-text"),
      ...(band ? bandMarks(band, x, foot) : []),
      ...ticks.map(([at, words]) => text(words, x(at), 32, "middle", "quiet-text")),
      line("axis", left, rowsTop - 2, left, foot),
    ],
  };
}

function bandMarks(band: Band, x: ScaleLinear<number, number>, foot: number): readonly SVGElement[] {
  const [low, high] = [x(band.low), x(band.high)];
  const [left = 0] = x.range();
  const close = high - low < 64;
  const middle = (low + high) / 2;
  const top = rowsTop - 4;
  return [
    svg("rect", { class: "allowed", x: low, y: top, width: high - low, height: foot - top }),
    line("limit", low, top, low, foot),
    line("limit", high, top, high, foot),
    ...(band.middle === undefined ? [] : [line("thin", x(band.middle), top, x(band.middle), foot)]),
    ...(close
      ? [
          text(band.lowWords, middle - 4, 32, "end", "limit-text"),
          text(band.highWords, middle + 4, 32, "start", "limit-text"),
        ]
      : [
          text(band.lowWords, Math.max(left, low), 32, low - left < 20 ? "start" : "middle", "limit-text"),
          text(band.highWords, high, 32, "middle", "limit-text"),
        ]),
  ];
}

/** Names at the left and a fine line along each row. */
export const rowLabels = (names: readonly string[], x: number, right: number): readonly SVGElement[] =>
  names.flatMap((name, i) => {
    const y = rowsTop + (i + 0.5) * rowHeight;
    return [line("grid", x + 8, y, right, y), text(name, x, y + 4.5, "end", "strong-text")];
  });
