// A clearance as a bar from tightest to loosest in the frame of what is allowed, lying or standing.
import { scaleLinear } from "d3";
import type { FitMap, HoleMark } from "../../pictures/fit-map.ts";
import type { Small } from "../../pictures/lengths.ts";
import { svg } from "../dom.ts";
import { text } from "./marks.ts";
import type { Box } from "./plan.ts";

export interface Gauge {
  readonly low: number;
  readonly high: number;
  readonly from: number;
  readonly to: number;
  readonly small: Small;
}

/** One scale for the whole plan, so that bars can be compared across it. */
export function gaugeOf({ holes, tightestAllowed, loosestAllowed }: FitMap, small: Small): Gauge {
  const ends = holes.flatMap(({ tightest, loosest }) =>
    [tightest, loosest].filter((end): end is number => end !== undefined),
  );
  return {
    low: tightestAllowed,
    high: loosestAllowed,
    from: Math.min(tightestAllowed, ...ends),
    to: Math.max(loosestAllowed, ...ends),
    small,
  };
}

const thick = 7;
const least = 2.5; // px: a bar of no length still shows

export function lyingGauge(hole: HoleMark, gauge: Gauge, box: Box): readonly SVGElement[] {
  const x = scaleLinear([gauge.from, gauge.to], [box.x + 2, box.x + box.width - 2]);
  const { tightest, loosest } = hole;
  const [low, high] = [x(gauge.low), x(gauge.high)];
  const frame = [
    svg("rect", { class: "allowed", x: low, y: box.y, width: high - low, height: thick + 4 }),
    ...[low, high].map((at) =>
      svg("path", { class: "allowed-end", d: `M${at} ${box.y - 2} V${box.y + thick + 6}` }),
    ),
  ];
  if (tightest === undefined || loosest === undefined) return frame;
  const [a, b] = [x(tightest), x(loosest)];
  return [
    ...frame,
    svg("rect", {
      class: "reach",
      x: Math.min(a, b - least),
      y: box.y + 2,
      width: Math.max(least, b - a),
      height: thick,
    }),
  ];
}

export function standingGauge(hole: HoleMark, gauge: Gauge, box: Box): readonly SVGElement[] {
  const y = scaleLinear([gauge.from, gauge.to], [box.y + box.height - 4, box.y + 4]);
  const { tightest, loosest } = hole;
  const [low, high] = [y(gauge.low), y(gauge.high)];
  const left = box.x + 9;
  const frame = [
    svg("rect", { class: "allowed", x: left, y: high, width: thick + 4, height: low - high }),
    ...[low, high].map((at) =>
      svg("path", { class: "allowed-end", d: `M${left - 2} ${at} H${left + thick + 6}` }),
    ),
  ];
  if (tightest === undefined || loosest === undefined) return frame;
  const [a, b] = [y(tightest), y(loosest)];
  const apart = Math.max(14, a - b);
  const inside = (at: number) =>
    Math.max(box.y + apart / 2 + 6, Math.min(box.y + box.height - apart / 2 - 6, at));
  const middle = inside((a + b) / 2);
  return [
    ...frame,
    svg("rect", {
      class: "reach",
      x: left + 2,
      y: Math.min(b, a - least),
      width: thick,
      height: Math.max(least, a - b),
    }),
    text(gauge.small.number(loosest), left + thick + 8, middle - apart / 2 + 4.5),
    text(gauge.small.number(tightest), left + thick + 8, middle + apart / 2 + 4.5),
  ];
}

export const reachWords = ({ tightest, loosest }: HoleMark, { small }: Gauge): string =>
  tightest === undefined || loosest === undefined
    ? "no answer"
    : `${small.number(tightest)} to ${small.number(loosest)}`;
