// Tilt and twist step by step, each against its limit: one look tells where the lid began to hang.
import { scaleLinear, scalePoint } from "d3";
import { type Gaps, overTilt, overTwist, type Step } from "../../pictures/gap-map.ts";
import type { Small } from "../../pictures/lengths.ts";
import { forReading } from "../../report/figure-text.ts";
import { roundDecimal } from "../../units/format.ts";
import { svg } from "../dom.ts";
import { markAt } from "./flange.ts";
import type { Shown } from "./gap-map-drawing.ts";
import { dot, line, text } from "./marks.ts";

const tiltHeight = 104;
const twistHeight = 62;
const head = 36;
const between = 10;

export const historyHeight = ({ steps }: Gaps): number =>
  head + tiltHeight + (hasTwist(steps) ? between + head + twistHeight : 0) + 48;

const hasTwist = (steps: readonly Step[]): boolean => steps.some(({ twist }) => twist !== undefined);

interface Strip {
  readonly title: string;
  readonly top: number;
  readonly height: number;
  readonly small: Small;
  readonly of: (step: Step) => number | undefined;
  readonly limit: (step: Step) => number | undefined;
  /** What is said of a step without a limit. */
  readonly without: (step: Step) => string | undefined;
  readonly over: (step: Step) => boolean;
}

export function stepHistory(gaps: Gaps, shown: Shown, width: number): readonly SVGElement[] {
  const { steps, now, twistLimit } = gaps;
  const [left, right] = [46, Math.min(width, 900) - 18];
  const x = scalePoint(
    steps.map(({ step }) => step),
    [left + 14, right - 14],
  );
  const at = (step: Step) => x(step.step) ?? left;
  const strips: Strip[] = [
    {
      title: `tilt by step, ${shown.tilt.label}`,
      top: head,
      height: tiltHeight,
      small: shown.tilt,
      of: ({ tilt }) => tilt,
      limit: ({ tiltLimit }) => tiltLimit,
      without: ({ free }) => (!gaps.limited ? undefined : free ? "free" : "none"),
      over: overTilt,
    },
    {
      title: `twist by step, ${shown.gap.label}`,
      top: head + tiltHeight + between + head,
      height: twistHeight,
      small: shown.gap,
      of: ({ twist }) => twist,
      limit: () => twistLimit,
      without: () => undefined,
      over: (step) => overTwist(step, twistLimit),
    },
  ];
  const drawn = hasTwist(steps) ? strips : strips.slice(0, 1);
  const last = drawn.at(-1);
  const foot = (last?.top ?? 0) + (last?.height ?? 0);
  const each = (right - left) / Math.max(1, steps.length);
  const thin = Math.ceil(34 / each);
  return [
    svg("rect", { class: "here", x: at(now) - 13, y: head - 4, width: 26, height: foot - head + 44, rx: 3 }),
    ...drawn.flatMap((strip) => oneStrip(strip, steps, at, { left, right })),
    text("step", left - 8, foot + 21, "end", "quiet-text"),
    text("gap", left - 8, foot + 38, "end", "quiet-text"),
    ...steps.flatMap((step, i) =>
      i % thin === 0 || step === now
        ? [
            text(step.step, at(step), foot + 21, "middle", step === now ? "strong-text" : ""),
            text(
              step.mean === undefined ? "–" : short(step.mean, shown.gap),
              at(step),
              foot + 38,
              "middle",
              "quiet-text",
            ),
          ]
        : [],
    ),
  ];
}

/** Two or three figures are enough under the axis: 0.48, 1.8, 35. */
function short(si: number, small: Small): string {
  const value = Number(small.number(si).replace("−", "-"));
  return forReading(
    roundDecimal(value, { decimals: Math.abs(value) >= 9.5 ? 0 : Math.abs(value) >= 1 ? 1 : 2 }),
  );
}

function oneStrip(
  strip: Strip,
  steps: readonly Step[],
  at: (step: Step) => number,
  { left, right }: { readonly left: number; readonly right: number },
): readonly SVGElement[] {
  const { top, height, of, limit, over, small } = strip;
  const foot = top + height;
  const limits = steps.flatMap((step) => limit(step) ?? []);
  const values = steps.flatMap((step) => of(step) ?? []);
  const most = Math.max(...values, ...(limits.length > 0 ? [Math.min(...limits) * 1.5] : []), 1e-9) * 1.18;
  const y = scaleLinear([0, most], [foot, top]);
  const firstLimit = limits[0];
  return [
    text(strip.title, 2, top - 22, "start", "strong-text"),
    line("axis", left, foot, right, foot),
    text("0", left - 8, foot + 4, "end", "quiet-text"),
    ...(firstLimit === undefined || firstLimit > most
      ? []
      : [text(small.set(firstLimit), left - 8, y(firstLimit) + 4, "end", "limit-text")]),
    ...steps.flatMap((step) => {
      const value = of(step);
      const px = at(step);
      const marks = limitMark(limit(step), px, y, {
        top,
        most,
        small,
        without: strip.without(step),
      });
      if (value === undefined) return [...marks, markAt("no answer", px, foot - 8)];
      const stem = line("stem", px, foot, px, y(value));
      return over(step)
        ? [
            ...marks,
            stem,
            markAt("fails", px, y(value)),
            text(small.number(value), px, y(value) - 11, "middle", "limit-text"),
          ]
        : [...marks, stem, dot(px, y(value))];
    }),
  ];
}

/** A short bar at the limit; an arrow where it lies beyond the strip, a word where there is none. */
function limitMark(
  limit: number | undefined,
  px: number,
  y: (value: number) => number,
  {
    top,
    most,
    small,
    without,
  }: {
    readonly top: number;
    readonly most: number;
    readonly small: Small;
    readonly without: string | undefined;
  },
): readonly SVGElement[] {
  if (limit === undefined) return without ? [text(without, px, top + 6, "middle", "quiet-text")] : [];
  if (limit <= most) return [line("limit-bar", px - 11, y(limit), px + 11, y(limit))];
  return [
    svg("path", {
      class: "limit-arrow",
      d: `M${px} ${top + 22} V${top + 11} M${px - 4} ${top + 15} L${px} ${top + 10} L${px + 4} ${top + 15}`,
    }),
    text(small.set(limit), px, top + 6, "middle", "limit-text"),
  ];
}
