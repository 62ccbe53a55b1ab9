// The margin of a check as a short bar. On every check the limit stands at the same place, inside to its
// left and outside to its right, so that a glance down the page compares margins.
import type { CheckValue } from "../../engine/line.ts";
import { svg } from "../dom.ts";

/** Share of the bar's width at which a single limit, or the upper of two, stands. */
const limitAt = 66;
const lowerAt = 12;
/** Width that a deviation as large as the limit itself takes. */
const scale = 60;
/** With the limit written above it, or small and without words. */
const sizes = { worded: { height: 36, middle: 25 }, small: { height: 18, middle: 9 } } as const;

const percent = (x: number): string => `${Math.round(x * 100) / 100}%`;
const kept = (x: number): number => Math.min(98.5, Math.max(1.5, x));

interface Placed {
  readonly at: number;
  readonly beyond: boolean;
}

/** Where a value stands on the bar: pure layout, no judgement. */
export function placeOnBar(si: number, limits: CheckValue["limits"]): Placed {
  const { atLeast, atMost } = limits;
  const raw =
    atLeast !== undefined && atMost !== undefined
      ? lowerAt + ((si - atLeast) / (atMost - atLeast)) * (limitAt - lowerAt)
      : atMost !== undefined
        ? limitAt + ((si - atMost) / sizeOf(atMost, si)) * scale
        : limitAt + (((atLeast ?? 0) - si) / sizeOf(atLeast ?? 0, si)) * scale;
  return { at: kept(raw), beyond: raw !== kept(raw) };
}

const sizeOf = (limit: number, si: number): number => Math.abs(limit) || Math.abs(si) || 1;

export function marginBar(value: CheckValue, limitWords: string | undefined, words: string): SVGSVGElement {
  const { limits, si, uncertainty } = value;
  const { height, middle } = limitWords === undefined ? sizes.small : sizes.worded;
  const both = limits.atLeast !== undefined && limits.atMost !== undefined;
  const placed = placeOnBar(si, limits);
  const spread = Math.abs(placeOnBar(si + uncertainty, limits).at - placed.at);
  const outside = [
    svg("rect", {
      class: "outside",
      x: percent(limitAt),
      y: middle - 4,
      width: percent(100 - limitAt),
      height: 8,
    }),
    both && svg("rect", { class: "outside", x: 0, y: middle - 4, width: percent(lowerAt), height: 8 }),
  ];
  const edges = both ? [lowerAt, limitAt] : [limitAt];
  return svg(
    "svg",
    { class: `bar ${value.judged}`, height, width: "100%", role: "img", "aria-label": words },
    svg("rect", {
      class: "inside",
      x: both ? percent(lowerAt) : 0,
      y: middle - 4,
      width: percent(both ? limitAt - lowerAt : limitAt),
      height: 8,
    }),
    ...outside,
    spread > 0.2 &&
      edges.map((edge) =>
        svg("rect", {
          class: "guard",
          x: percent(edge - spread),
          y: middle - 4,
          width: percent(2 * spread),
          height: 8,
        }),
      ),
    ...edges.map((edge) =>
      svg("line", { class: "limit", x1: percent(edge), x2: percent(edge), y1: middle - 8, y2: middle + 8 }),
    ),
    limitWords !== undefined &&
      svg("text", { class: "limit-text", x: percent(limitAt), y: 12, "text-anchor": "middle" }, limitWords),
    spread > 0.2 &&
      svg("line", {
        class: "doubt",
        x1: percent(kept(placed.at - spread)),
        x2: percent(kept(placed.at + spread)),
        y1: middle,
        y2: middle,
      }),
    ...valueMark(placed, middle),
  );
}

/** A disc where it stands; an arrowhead at the end when it lies off the bar. */
function valueMark({ at, beyond }: Placed, middle: number): readonly SVGElement[] {
  if (!beyond) return [svg("circle", { class: "value", cx: percent(at), cy: middle, r: 5.5 })];
  const nested = svg("svg", { x: percent(at), y: middle - 7, width: 14, height: 14, overflow: "visible" });
  nested.append(svg("path", { class: "value", d: at > 50 ? "M-7 0 5 7 -7 14z" : "M7 0 -5 7 7 14z" }));
  return [nested];
}
