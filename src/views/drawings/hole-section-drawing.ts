// The bore drawn: one section for each direction, walls off nominal by a stated factor.

import type { UnitChoice } from "../../methods/solution.ts";
import {
  allReadings,
  type Bore,
  type BoreReading,
  type DepthRow,
  nextReading,
} from "../../pictures/hole-section.ts";
import { type Small, smallLength } from "../../pictures/lengths.ts";
import { spaced } from "../../pictures/words.ts";
import { numberText, setText } from "../../report/figure-text.ts";
import { svg } from "../dom.ts";
import { breadthOf } from "./breadth.ts";
import { freshId, hatch, line, picture, text } from "./marks.ts";

interface Words {
  readonly number: (si: number) => string;
  readonly small: Small;
  readonly nominal: string;
}

interface Frame {
  readonly left: number;
  readonly width: number;
  readonly half: number;
  /** The farthest a wall moves outward, px. */
  readonly shift: number;
  readonly top: number;
  /** px off nominal on one side for one metre of diameter. */
  readonly perMetre: number;
  readonly hatch: string;
}

const each = 64; // px for one depth
const head = 46;
const mostFactor = 1000;

export function drawBore(bore: Bore, width: number, unitOf: UnitChoice): SVGSVGElement {
  const shown = unitOf("length");
  const words: Words = {
    number: (si) => numberText(si, "length", shown),
    small: smallLength(unitOf),
    nominal: setText(bore.nominal, "length", shown),
  };
  const { directions, depths } = bore;
  const told = width >= 560 ? 190 : 0;
  const gap = 14;
  const section = Math.min(280, (width - told - gap * (directions.length - 1)) / directions.length);
  const shift = section * 0.13; // px that the largest deviation moves a wall, at most
  const half = section / 2 - shift - 10;
  const trueScale = (2 * half) / bore.nominal;
  const factor = bore.exaggeration ?? usualFactor(bore, trueScale, shift);
  const id = freshId("wall");
  const foot = head + depths.length * each;
  const root = picture(width, foot + 44);
  root.append(hatch(id, 7));
  const next = nextReading(bore);
  for (const [i, direction] of directions.entries()) {
    const frame: Frame = {
      left: i * (section + gap),
      width: section,
      half,
      shift,
      top: head,
      perMetre: (trueScale * factor) / 2,
      hatch: id,
    };
    root.append(...sectionMarks(bore, i, frame));
    root.append(
      text(`bore ${direction}`, frame.left + section / 2, 16, "middle", "strong-text"),
      ...depths.flatMap((depth, row) => boxAt(depth, i, row, frame, words, next)),
    );
  }
  const end = directions.length * (section + gap);
  if (told > 0)
    root.append(
      text("mean and oval", end + 24, 16, "start", "strong-text"),
      ...depths.flatMap((depth, i) => toldAt(depth, end + 24, head + (i + 0.5) * each, words)),
    );
  root.append(
    ...splitLine(bore, Math.min(width, end - gap), told > 0),
    text(`Deviation from ${words.nominal} drawn ×${factor};`, 2, foot + 20, "start", "quiet-text"),
    text("depths evenly spaced, the top one on top.", 2, foot + 36, "start", "quiet-text"),
  );
  return root;
}

/** 1, 2 or 5 times a power of ten: the walls move visibly and stay in the picture. */
function usualFactor(bore: Bore, trueScale: number, shift: number): number {
  const off = allReadings(bore).flatMap(({ value }) =>
    value === undefined ? [] : [Math.abs(value - bore.nominal)],
  );
  const most = Math.max(0, ...off);
  if (most === 0) return mostFactor;
  const free = (2 * shift) / (most * trueScale);
  const power = 10 ** Math.floor(Math.log10(free));
  const nice = ([5, 2, 1].find((step) => step * power <= free) ?? 1) * power;
  return Math.max(1, Math.min(mostFactor, nice));
}

const wallAt = (frame: Frame, off: number): number => {
  const moved = Math.max(-frame.half * 0.6, Math.min(frame.shift + 4, off * frame.perMetre));
  return frame.half + moved;
};

/** Walls where the bore is read; where it is not, the nominal lines stand alone. */
function sectionMarks({ depths, nominal }: Bore, direction: number, frame: Frame): readonly SVGElement[] {
  const { left, width, half, top } = frame;
  const middle = left + width / 2;
  const foot = top + depths.length * each;
  const offs = depths.map(({ readings }) => {
    const value = readings[direction]?.value;
    return value === undefined ? undefined : value - nominal;
  });
  return [
    ...runs(offs).flatMap((run) => [-1, 1].map((side) => wall(run, side, middle, frame))),
    ...[-1, 1].map((side) => line("nominal", middle + side * half, top - 6, middle + side * half, foot + 6)),
    line("centre", middle, top - 10, middle, top + 8),
    line("centre", middle, foot - 8, middle, foot + 8),
  ];
}

interface Run {
  readonly from: number;
  readonly offs: readonly number[];
}

/** Depths read one after the other. */
function runs(offs: readonly (number | undefined)[]): readonly Run[] {
  const found: { from: number; offs: number[] }[] = [];
  for (const [i, off] of offs.entries()) {
    const last = found.at(-1);
    if (off === undefined) continue;
    if (last && last.from + last.offs.length === i) last.offs.push(off);
    else found.push({ from: i, offs: [off] });
  }
  return found;
}

function wall({ from, offs }: Run, side: number, middle: number, frame: Frame): SVGElement {
  const begin = frame.top + from * each;
  const end = begin + offs.length * each;
  const outer = middle + side * (frame.width / 2);
  const x = (off: number | undefined) => middle + side * wallAt(frame, off ?? 0);
  const inner = offs.map((off, i) => `L${x(off)} ${begin + (i + 0.5) * each}`).join(" ");
  return svg("path", {
    class: "wall",
    d: `M${outer} ${begin} L${x(offs[0])} ${begin} ${inner} L${x(offs.at(-1))} ${end} L${outer} ${end}`,
    fill: `url(#${frame.hatch})`,
  });
}

function boxAt(
  depth: DepthRow,
  direction: number,
  row: number,
  frame: Frame,
  words: Words,
  next: BoreReading | undefined,
): readonly SVGElement[] {
  const reading = depth.readings[direction];
  if (!reading) return [];
  const { value, remark } = reading;
  const middle = frame.left + frame.width / 2;
  const y = frame.top + (row + 0.5) * each;
  const shown = value === undefined ? (reading === next ? "next" : "missing") : words.number(value);
  const breadth = Math.max(64, breadthOf(shown) + 12);
  const kind =
    value === undefined ? (reading === next ? "box next" : "box missing") : remark ? "box odd" : "box filled";
  return [
    svg("rect", { class: kind, x: middle - breadth / 2, y: y - 9, width: breadth, height: 26, rx: 2 }),
    text(shown, middle, y + 8.5, "middle", value === undefined ? "missing-text" : "strong-text"),
    text(
      remark ? `${spaced(depth.depth)}, ${remark}` : spaced(depth.depth),
      middle,
      y - 14,
      "middle",
      remark ? "limit-text" : "quiet-text",
    ),
  ];
}

function toldAt(depth: DepthRow, x: number, y: number, { number, small }: Words): readonly SVGElement[] {
  if (depth.mean === undefined) return [text("not read", x, y + 8, "start", "quiet-text")];
  const oval =
    depth.ovality === undefined
      ? "one direction only"
      : depth.ovality < 5e-8 // m: less than a tenth of a micrometre is not told
        ? "round"
        : `${small.text(depth.ovality)}, wide ${depth.wide ?? ""}`;
  return [text(number(depth.mean), x, y), text(oval, x, y + 16, "start", "quiet-text")];
}

function splitLine({ depths, splitAfter }: Bore, right: number, beside: boolean): readonly SVGElement[] {
  const at = depths.findIndex(({ depth }) => depth === splitAfter);
  if (at < 0) return [];
  const y = head + (at + 1) * each;
  return [
    line("split", 0, y, right, y),
    beside
      ? text("split line", right + 8, y + 4.5, "start", "region-text")
      : text("split", right - 5, y - 5, "end", "region-text"),
  ];
}
