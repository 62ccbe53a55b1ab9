// The lid from the side, along x and along y: its tilt exaggerated by a stated factor, the allowed tilt
// as lines through its middle. The height of the lid is not to scale; its tilt is what the view is for.
import type { Gaps } from "../../pictures/gap-map.ts";
import { signed } from "../../pictures/lengths.ts";
import { svg } from "../dom.ts";
import { broken } from "./breadth.ts";
import type { Shown } from "./gap-map-drawing.ts";
import { freshId, hatch, line, text } from "./marks.ts";

interface View {
  readonly name: "x" | "y";
  readonly tilt: number | undefined;
  /** Places along it, m. */
  readonly low: number;
  readonly high: number;
}

const viewHeight = 118;

const mostRise = 18; // px at either end

/** 1, 2 or 5 times a power of ten, the largest that keeps the steepest lid of all steps in its view. */
function tiltFactor({ steps }: Gaps, views: readonly View[], scale: number): number {
  const rises = views.flatMap(({ name, low, high }) =>
    steps.map((step) => (Math.abs((name === "x" ? step.tiltX : step.tiltY) ?? 0) * (high - low) * scale) / 2),
  );
  const steepest = Math.max(...rises);
  if (!(steepest > 0)) return 1;
  const most = mostRise / steepest;
  const power = 10 ** Math.floor(Math.log10(most));
  return Math.max(1, ([5, 2, 1].find((step) => step * power <= most) ?? 1) * power);
}

export function lidViews(
  gaps: Gaps,
  shown: Shown,
  width: number,
): { readonly height: number; readonly marks: readonly SVGElement[] } {
  const { now } = gaps;
  const span = (of: "x" | "y") => now.stations.map((station) => station[of]);
  const views: readonly View[] = (["x", "y"] as const).map((name) => ({
    name,
    tilt: name === "x" ? now.tiltX : now.tiltY,
    low: Math.min(...span(name)),
    high: Math.max(...span(name)),
  }));
  const id = freshId("half");
  const longest = Math.max(...views.map(({ low, high }) => high - low)) || 1;
  const scale = (width - 24) / longest;
  const factor = tiltFactor(gaps, views, scale);
  const limit = now.tiltLimit === undefined ? "" : `; dashed: allowed ${shown.tilt.number(now.tiltLimit)}`;
  const notes = broken(`lengths to scale, height not${limit}`, width);
  return {
    height: 22 + views.length * viewHeight + 14 + notes.length * 15,
    marks: [
      hatch(id, 6),
      text(`side views, tilt ×${factor}`, 2, 13, "start", "strong-text"),
      ...views.flatMap((view, i) =>
        oneView(view, 22 + i * viewHeight, scale, { gaps, shown, factor, id, width }),
      ),
      ...notes.map((note, i) =>
        text(note, 2, 22 + views.length * viewHeight + 14 + i * 15, "start", "quiet-text"),
      ),
    ],
  };
}

interface Drawn {
  readonly gaps: Gaps;
  readonly shown: Shown;
  readonly factor: number;
  readonly id: string;
  readonly width: number;
}

function oneView(
  view: View,
  top: number,
  scale: number,
  { gaps, shown, factor, id, width }: Drawn,
): SVGElement[] {
  const length = Math.max(30, (view.high - view.low) * scale);
  const [left, middle] = [12, 12 + length / 2];
  const face = top + 86;
  const lid = top + 52;
  const slope = (view.tilt ?? 0) * factor;
  const at = (x: number, tilt: number) => lid - (x - middle) * tilt;
  const right = left + length;
  const thick = 16;
  const allowed = gaps.now.tiltLimit;
  const limits =
    allowed === undefined
      ? []
      : [allowed * factor, -allowed * factor].map((tilt) =>
          line(
            "limit",
            left - 6,
            clampTo(at(left - 6, tilt), top, face),
            right + 6,
            clampTo(at(right + 6, tilt), top, face),
          ),
        );
  const value =
    view.tilt === undefined ? "no answer" : `${signed(shown.tilt.number(view.tilt))} ${shown.tilt.label}`;
  return [
    svg("rect", { class: "part", x: left, y: face, width: length, height: 14 }),
    svg("rect", { class: "closed-region", x: left, y: face, width: length, height: 14, fill: `url(#${id})` }),
    ...limits,
    svg("path", {
      class: "part lid",
      d: `M${left} ${at(left, slope)} L${right} ${at(right, slope)} V${at(right, slope) - thick} L${left} ${at(left, slope) - thick}z`,
    }),
    text(`along ${view.name}`, left, top + 14, "start", "quiet-text"),
    text(value, Math.min(width - 2, Math.max(right, left + 180)), top + 14, "end", "strong-text"),
    text(view.name, right + 4, face + 12, "start", "quiet-text"),
  ];
}

const clampTo = (y: number, top: number, foot: number): number => Math.max(top + 18, Math.min(foot, y));
