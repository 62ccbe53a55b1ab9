// Angle, torque and stretch drawn as panels that share their rows.
import { dot } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import { angleWord, type Nut, type Story, torqueOff } from "../../pictures/tightened.ts";
import { rounded } from "../../pictures/words.ts";
import { inUnit } from "../../units/in-unit.ts";
import type { Kind } from "../../units/kind.ts";
import { unitLabel } from "../../units/unit.ts";
import { airy, placed } from "./chart.ts";
import { markAt } from "./flange.ts";
import { text } from "./marks.ts";
import { type RowChart, rowCharts } from "./row-chart.ts";

interface Band {
  readonly low: number;
  readonly high: number;
  readonly middle: number;
}

interface Series {
  readonly title: string;
  readonly share: number;
  readonly of: (nut: Nut) => number | undefined;
  readonly number: (value: number) => string;
  readonly band?: Band | undefined;
  readonly off: (nut: Nut) => string | undefined;
  readonly wanted: boolean;
}

export function drawAngles(story: Story, width: number, unitOf: UnitChoice): SVGSVGElement {
  const all = seriesOf(story, unitOf);
  const [left, right] = [34, Math.min(width, 900) - 14];
  const gap = 30;
  const room = right - left - gap * (all.length - 1);
  const shares = all.reduce((sum, { share }) => sum + share, 0);
  let from = left;
  const charts = all.map((series, i) => {
    const to = from + (room * series.share) / shares;
    const asked = chartOf(series, story.nuts, from, to, i === 0);
    from = to + gap;
    return asked;
  });
  return rowCharts(width, ...charts);
}

/** All numbers in the units shown. */
function seriesOf(story: Story, unitOf: UnitChoice): readonly Series[] {
  const { middle, band, target, torqueBand } = story;
  const shown = (kind: Kind) => (si: number | undefined) =>
    si === undefined ? undefined : inUnit(si, unitOf(kind));
  const titled = (word: string, kind: Kind) => `${word}, ${unitLabel(unitOf(kind))}`;
  const about = (at: number, off: number, kind: Kind): Band => {
    const [low, high, between] = [at - off, at + off, at].map((si) => inUnit(si, unitOf(kind)));
    return { low: low ?? 0, high: high ?? 0, middle: between ?? 0 };
  };
  const series: Series[] = [
    {
      title: titled("angle", "angle"),
      share: 3,
      of: ({ angle }) => shown("angle")(angle),
      number: rounded(1),
      off: (nut) => (["low", "high"].includes(angleWord(nut, story)) ? angleWord(nut, story) : undefined),
      wanted: true,
      band: about(middle, band, "angle"),
    },
    {
      title: titled("torque", "torque"),
      share: 2.4,
      of: ({ torque }) => shown("torque")(torque),
      number: rounded(0),
      off: (nut) => torqueOff(nut, story),
      wanted: true,
      band:
        target === undefined || torqueBand === undefined
          ? undefined
          : about(target, target * torqueBand, "torque"),
    },
    {
      title: titled("stretch", "length"),
      share: 2,
      of: ({ stretch }) => shown("length")(stretch),
      number: rounded(3),
      off: () => undefined,
      wanted: false,
    },
  ];
  return series.filter(({ of }) => story.nuts.some((nut) => of(nut) !== undefined));
}

/** From the values, with a little air; dots carry their number where they are odd. */
function chartOf(
  series: Series,
  nuts: readonly Nut[],
  left: number,
  right: number,
  named: boolean,
): RowChart {
  const { band, of, off, number, title } = series;
  const dots = nuts.flatMap((nut, row) => {
    const value = of(nut);
    return value === undefined ? [] : [{ row, value, word: off(nut) }];
  });
  const missing = series.wanted ? nuts.flatMap((nut, row) => (of(nut) === undefined ? [row] : [])) : [];
  const odd = dots.filter(({ word }) => word !== undefined);
  const [from, to] = airy([...dots.map(({ value }) => value), ...(band ? [band.low, band.high] : [])]);
  return {
    title,
    names: nuts.map(({ position }) => position),
    left,
    right,
    from,
    to,
    limits: band
      ? [
          { at: band.low, words: number(band.low) },
          { at: band.high, words: number(band.high) },
          { at: band.middle, words: number(band.middle), is: "middle" },
        ]
      : [],
    allowed: band && [band.low, band.high],
    number,
    named,
    marks: [
      dot(dots, { x: "value", y: "row", r: 4.5, className: "point" }),
      dot(odd, { x: "value", y: "row", r: 8.5, className: "outlier" }),
      placed((x, y) => [
        ...odd.map(({ row, value, word }) => {
          const start = x(value) < (left + right) / 2;
          const at = start ? x(value) + 13 : x(value) - 13;
          return text(`${number(value)} ${word}`, at, y(row) + 4.5, start ? "start" : "end", "limit-text");
        }),
        ...missing.flatMap((row) => [
          markAt("no answer", left + 9, y(row)),
          text("missing", left + 20, y(row) + 4.5, "start", "limit-text"),
        ]),
      ]),
    ],
  };
}
