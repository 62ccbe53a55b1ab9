// Charts of measured data by the plotting library: it gives scales, axes and marks, the sheet gives colours and type.
import { type Markish, type PlotOptions, plot } from "@observablehq/plot";
import { extent } from "d3";
import { svg } from "../dom.ts";

type Place = (value: number) => number;

/** Words and marks of states, which the library does not have, placed by its scales. */
export const placed =
  (of: (x: Place, y: Place) => readonly SVGElement[]): Markish =>
  (_, { x, y }) =>
    svg(
      "g",
      {},
      ...of(
        (value) => Number(x?.(value)),
        (value) => Number(y?.(value)),
      ),
    );

/** A group whose marks carry the classes of the sheet; the library's own style element would break the page's policy. */
export function chart(options: PlotOptions): SVGGElement {
  const made = plot({ axis: null, ...options, document });
  const group = svg("g", { "text-anchor": "middle", fill: "none" });
  for (const mark of Array.from(made.children)) {
    if (mark.tagName === "style") continue;
    const kind = mark.getAttribute("class");
    if (kind !== null) {
      mark.removeAttribute("class");
      for (const shape of Array.from(mark.children)) shape.setAttribute("class", kind);
    }
    group.append(mark);
  }
  return group;
}

export interface Limit {
  readonly at: number;
  readonly words: string;
  /** A limit is judged by, a middle only told. */
  readonly is?: "limit" | "middle";
}

export const limitLine = ({ is }: Limit): string => (is === "middle" ? "thin" : "limit");
export const limitText = ({ is }: Limit): string => (is === "middle" ? "quiet-text" : "limit-text");

/** A domain from least to most with a little air. */
export function airy(values: readonly number[]): [from: number, to: number] {
  const [low = 0, high = 1] = extent(values);
  const air = (high - low || Math.abs(high) || 1) * 0.08;
  return [low - air, high + air];
}
