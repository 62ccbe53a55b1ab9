// The bore drawn: one section for each direction, walls off nominal by a stated factor.
import { svg } from "../dom.ts";
import { allReadings, type Bore, type BoreReading, type DepthRow, nextReading } from "./bore-readings.ts";
import type { Small } from "./lengths.ts";
import { freshId, hatch, line, picture, text } from "./marks.ts";
import { breadthOf, spaced } from "./words.ts";

interface Words {
  readonly number: (si: number) => string;
  readonly small: Small;
  readonly nominal: string;
}

interface Frame {
  readonly left: number;
  readonly width: number;
  readonly half: number;
  readonly top: number;
  /** px off nominal on one side for one metre of diameter. */
  readonly perMetre: number;
  readonly hatch: string;
}

const each = 64; // px for one depth
const head = 46;
const shift = 22; // px that the largest deviation moves a wall, at most
const mostFactor = 1000;

export function drawBore(bore: Bore, width: number, words: Words): SVGSVGElement {
  const { directions, depths } = bore;
  const told = width >= 560 ? 190 : 0;
  const gap = 14;
  const section = Math.min(230, (width - told - gap * (directions.length - 1)) / directions.length);
  const half = section / 2 - shift - 10;
  const trueScale = (2 * half) / bore.nominal;
  const factor = bore.exaggeration ?? usualFactor(bore, trueScale);
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
      text("mean and oval", end + 12, 16, "start", "strong-text"),
      ...depths.flatMap((depth, i) => toldAt(depth, end + 12, head + (i + 0.5) * each, words)),
    );
  root.append(
    ...splitLine(bore, Math.min(width, end - gap)),
    text(`off ${words.nominal} drawn ×${factor};`, 2, foot + 20, "start", "quiet-text"),
    text("depths evenly spaced, top at the top", 2, foot + 36, "start", "quiet-text"),
  );
  return root;
}

/** 1, 2 or 5 times a power of ten: the walls move visibly and stay in the picture. */
function usualFactor(bore: Bore, trueScale: number): number {
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
  const moved = Math.max(-frame.half * 0.6, Math.min(shift + 4, off * frame.perMetre));
  return frame.half + moved;
};

function sectionMarks({ depths, nominal }: Bore, direction: number, frame: Frame): readonly SVGElement[] {
  const { left, width, half, top } = frame;
  const middle = left + width / 2;
  const foot = top + depths.length * each;
  const points = depths.flatMap((depth, i) => {
    const value = depth.readings[direction]?.value;
    return value === undefined ? [] : [{ y: top + (i + 0.5) * each, off: value - nominal }];
  });
  const [first, last] = [points[0], points.at(-1)];
  const all =
    first && last
      ? [{ ...first, y: top }, ...points, { ...last, y: foot }]
      : [
          { y: top, off: 0 },
          { y: foot, off: 0 },
        ];
  const walls = [-1, 1].map((side) => {
    const outer = middle + side * (width / 2);
    const inner = all.map(({ y, off }) => `L${middle + side * wallAt(frame, off)} ${y}`).join(" ");
    return svg("path", {
      class: "wall",
      d: `M${outer} ${top} ${inner} L${outer} ${foot}`,
      fill: `url(#${frame.hatch})`,
    });
  });
  const nominals = [-1, 1].map((side) =>
    line("nominal", middle + side * half, top - 6, middle + side * half, foot + 6),
  );
  return [...walls, ...nominals, line("centre", middle, top - 8, middle, foot + 6)];
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

function splitLine({ depths, splitAfter }: Bore, right: number): readonly SVGElement[] {
  const at = depths.findIndex(({ depth }) => depth === splitAfter);
  if (at < 0) return [];
  const y = head + (at + 1) * each;
  return [line("split", 0, y, right, y), text("split line", right, y - 5, "end", "region-text")];
}
