// A torque wrench with its adapter, from the side and to scale, with the number to set.

import type { UnitChoice } from "../../methods/solution.ts";
import type { Lever } from "../../pictures/wrench.ts";
import { setText } from "../../report/figure-text.ts";
import { svg } from "../dom.ts";
import { dimension, line, picture, text } from "./marks.ts";

export function drawWrench(lever: Lever, width: number, unitOf: UnitChoice): SVGSVGElement {
  const torque = (si: number) => setText(si, "torque", unitOf("torque"));
  const length = (si: number) => setText(si, "length", unitOf("length"));
  const reach = { x: lever.adapter * Math.cos(lever.angle), y: lever.adapter * Math.sin(lever.angle) };
  const left = Math.max(reach.x, 0);
  const span = lever.length * 1.12 + left;
  const scale = (width - 48) / span;
  const head = Math.max(10, Math.min(18, lever.length * scale * 0.035));
  const up = Math.max(reach.y, 0) * scale;
  const down = Math.max(-reach.y, 0) * scale;
  const axis = 78 + up + head;
  const height = Math.round(axis + down + head + 64);
  const square = 24 + left * scale;
  const hand = square + lever.length * scale;
  const nut = { x: square - reach.x * scale, y: axis - reach.y * scale };
  const root = picture(width, height);
  root.append(
    ...parts({ square, hand, axis, head, span: lever.length * scale, nut }),
    line("centre", hand, axis - head * 1.3, hand, axis + down + head + 22),
    line("centre", square, axis, square, axis + down + head + 22),
    dimension(square, axis + down + head + 16, hand, axis + down + head + 16),
    dimension(nut.x, axis + down + head + 16, square, axis + down + head + 16),
    line("centre", nut.x, nut.y, nut.x, axis + down + head + 22),
    text(
      `L ${length(lever.length)} to the middle of the hand`,
      (square + hand) / 2,
      axis + down + head + 36,
      "middle",
    ),
    text("fastener", nut.x, nut.y - head * 1.4, nut.x < 60 ? "start" : "middle", "quiet-text"),
    text(
      `adapter ${length(lever.adapter)}${lever.angle === 0 ? "" : ` at ${setText(lever.angle, "angle", unitOf("angle"))}`}`,
      Math.min(nut.x, square),
      axis + down + head + 56,
      "start",
    ),
    text(`set ${torque(lever.setting)}`, width - 24, 34, "end", "big-text"),
  );
  if (lever.target !== undefined)
    root.append(text(`for ${torque(lever.target)} at the fastener`, width - 24, 54, "end", "quiet-text"));
  return root;
}

interface Places {
  readonly square: number;
  readonly hand: number;
  readonly axis: number;
  readonly head: number;
  /** Square to hand as drawn. */
  readonly span: number;
  readonly nut: { readonly x: number; readonly y: number };
}

/** Handle, body and head as one side view, all lengths to the same scale. */
function parts({ square, hand, axis, head, span, nut }: Places): readonly SVGElement[] {
  return [
    svg("rect", {
      class: "part",
      x: square,
      y: axis - head * 0.42,
      width: span * 0.92,
      height: head * 0.84,
      rx: 2,
    }),
    svg("rect", {
      class: "part grip",
      x: hand - span * 0.12,
      y: axis - head * 0.7,
      width: span * 0.24,
      height: head * 1.4,
      rx: head * 0.6,
    }),
    svg("circle", { class: "part", cx: square, cy: axis, r: head }),
    svg("path", { class: "part adapter", d: bar(square, axis, nut.x, nut.y, head * 0.5) }),
    svg("path", { class: "part", d: hexagon(nut.x, nut.y, head * 0.95) }),
    svg("rect", {
      class: "square",
      x: square - head * 0.35,
      y: axis - head * 0.35,
      width: head * 0.7,
      height: head * 0.7,
    }),
  ];
}

function bar(x1: number, y1: number, x2: number, y2: number, half: number): string {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [(-(y2 - y1) / length) * half, ((x2 - x1) / length) * half];
  return `M${x1 + nx} ${y1 + ny} L${x2 + nx} ${y2 + ny} L${x2 - nx} ${y2 - ny} L${x1 - nx} ${y1 - ny}z`;
}

function hexagon(x: number, y: number, r: number): string {
  const points = Array.from(
    { length: 6 },
    (_, i) => `${x + r * Math.cos((i * Math.PI) / 3)} ${y + r * Math.sin((i * Math.PI) / 3)}`,
  );
  return `M${points.join(" L")}z`;
}
