// Pieces that every picture draws the same way, and their look: both come with the first picture of a page.
import "./pictures.css";
import { svg } from "../dom.ts";

export const picture = (width: number, height: number): SVGSVGElement =>
  svg("svg", { viewBox: `0 0 ${width} ${height}`, class: "drawing", width, height });

export const line = (kind: string, x1: number, y1: number, x2: number, y2: number): SVGLineElement =>
  svg("line", { class: kind, x1, y1, x2, y2 });

export const path = (kind: string, d: string | null): SVGPathElement =>
  svg("path", { class: kind, d: d ?? "" });

export type Anchor = "start" | "middle" | "end";

export const text = (
  words: string,
  x: number,
  y: number,
  anchor: Anchor = "start",
  kind = "",
): SVGTextElement => svg("text", { x, y, "text-anchor": anchor, class: kind }, words);

export const dot = (x: number, y: number, kind = "point"): SVGCircleElement =>
  svg("circle", { class: kind, cx: x, cy: y, r: 4.5 });

/** A dimension: line with a slash at each end, as on a drawing. */
export function dimension(x1: number, y1: number, x2: number, y2: number): SVGGElement {
  const slash = (x: number, y: number) => svg("path", { d: `M${x - 4} ${y + 4} ${x + 4} ${y - 4}` });
  return svg("g", { class: "dimension" }, svg("line", { x1, y1, x2, y2 }), slash(x1, y1), slash(x2, y2));
}

/** Hatching that still reads when printed in grey. */
export function hatch(id: string, gap: number, both = false): SVGDefsElement {
  const lines = svg("path", {
    d: both ? `M0 0 L${gap} ${gap}M${gap} 0 L0 ${gap}` : `M0 ${gap} L${gap} 0`,
    class: "hatch-line",
  });
  return svg(
    "defs",
    {},
    svg("pattern", { id, width: gap, height: gap, patternUnits: "userSpaceOnUse" }, lines),
  );
}

export interface Label {
  readonly words: string;
  readonly y: number;
  readonly kind?: string;
  /** Where its thread begins, when not at the common place. */
  readonly from?: number;
}

/** Labels in a column, pushed apart until none covers another; a thread leads back where one had to move. */
export function labelColumn(
  labels: readonly Label[],
  x: number,
  from: number,
  top: number,
  bottom: number,
): SVGGElement {
  const apart = 17;
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const places: number[] = [];
  for (const label of sorted) places.push(Math.max(label.y, (places.at(-1) ?? top - apart) + apart));
  for (let i = places.length - 1; i >= 0; i -= 1) {
    const limit = i === places.length - 1 ? bottom : (places[i + 1] ?? bottom) - apart;
    places[i] = Math.min(places[i] ?? bottom, limit);
  }
  return svg(
    "g",
    {},
    ...sorted.flatMap((label, i) => {
      const y = places[i] ?? label.y;
      return [
        svg("path", {
          class: "leader",
          d: `M${label.from ?? from} ${label.y} L${Math.max(label.from ?? from, x - 14)} ${label.y} L${x - 4} ${y}`,
        }),
        text(label.words, x, y + 4, "start", label.kind ?? ""),
      ];
    }),
  );
}

let drawn = 0;
/** An id of its own for each pattern on the page. */
export const freshId = (name: string): string => {
  drawn += 1;
  return `${name}-${drawn}`;
};
