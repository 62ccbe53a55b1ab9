// Angle, torque and stretch drawn as panels that share their rows.
import { extent } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import { roundDecimal } from "../../units/format.ts";
import { inUnit } from "../../units/in-unit.ts";
import type { Kind } from "../../units/kind.ts";
import { unitLabel } from "../../units/unit.ts";
import { svg } from "../dom.ts";
import { forReading } from "../figure.ts";
import { angleWord, type Story, type Told, torqueOff } from "./angle-by-nut.ts";
import { markAt } from "./flange.ts";
import { dot, picture, text } from "./marks.ts";
import { type Band, panel, rowHeight, rowLabels, rowsTop } from "./row-chart.ts";

interface Series {
  readonly title: string;
  readonly share: number;
  readonly of: (nut: Told) => number | undefined;
  readonly number: (si: number) => string;
  readonly band?: Band | undefined;
  readonly off: (nut: Told) => string | undefined;
  readonly wanted: boolean;
}

export function drawTold(story: Story, width: number, unitOf: UnitChoice): SVGSVGElement {
  const { nuts } = story;
  const all = seriesOf(story, unitOf);
  const [left, right] = [34, Math.min(width, 900) - 12];
  const gap = 22;
  const room = right - left - gap * (all.length - 1);
  const shares = all.reduce((sum, { share }) => sum + share, 0);
  const root = picture(width, rowsTop + nuts.length * rowHeight + 10);
  root.append(
    ...rowLabels(
      nuts.map(({ position }) => position),
      left - 8,
      right,
    ),
  );
  let from = left;
  for (const series of all) {
    const to = from + (room * series.share) / shares;
    root.append(...onePanel(series, nuts, from, to));
    from = to + gap;
  }
  return root;
}

function seriesOf(story: Story, unitOf: UnitChoice): readonly Series[] {
  const number = (kind: Kind, decimals: number) => (si: number) =>
    forReading(
      roundDecimal(inUnit(si, unitOf(kind)), { decimals })
        .replace(/(\.\d*?)0+$/, "$1")
        .replace(/\.$/, ""),
    );
  const titled = (word: string, kind: Kind) => `${word}, ${unitLabel(unitOf(kind))}`;
  const { middle, band, target, torqueBand } = story;
  const degrees = number("angle", 1);
  const torque = number("torque", 0);
  const angleOff = (nut: Told) => {
    const word = angleWord(nut, story);
    return word === "inside" || word === "missing" ? undefined : word;
  };
  const series: Series[] = [
    {
      title: `${titled("angle", "angle")}, median ${degrees(middle)}`,
      share: 3,
      of: ({ angle }) => angle,
      number: degrees,
      off: angleOff,
      wanted: true,
      band: {
        low: middle - band,
        high: middle + band,
        middle,
        lowWords: degrees(middle - band),
        highWords: degrees(middle + band),
      },
    },
    {
      title: titled("torque", "torque"),
      share: 2.4,
      of: (nut) => nut.torque,
      number: torque,
      off: (nut) => torqueOff(nut, story),
      wanted: true,
      band:
        target === undefined || torqueBand === undefined
          ? undefined
          : {
              low: target * (1 - torqueBand),
              high: target * (1 + torqueBand),
              middle: target,
              lowWords: torque(target * (1 - torqueBand)),
              highWords: torque(target * (1 + torqueBand)),
            },
    },
    {
      title: titled("stretch", "length"),
      share: 2,
      of: ({ stretch }) => stretch,
      number: number("length", 3),
      off: () => undefined,
      wanted: false,
    },
  ];
  return series.filter(({ of }) => story.nuts.some((nut) => of(nut) !== undefined));
}

/** From the values, with a little air; dots carry their number where they are odd. */
function onePanel(series: Series, nuts: readonly Told[], left: number, right: number): readonly SVGElement[] {
  const { band, of, off, number, title } = series;
  const values = [...nuts.flatMap((nut) => of(nut) ?? []), ...(band ? [band.low, band.high] : [])];
  const [low = 0, high = 1] = extent(values);
  const air = (high - low || Math.abs(high) || 1) * 0.08;
  const wide = (right - left) * ((high - low) / (high - low + 2 * air)) > 56;
  const ticks = band
    ? []
    : (wide ? [low, high] : [(low + high) / 2]).map((at): [number, string] => [at, number(at)]);
  const chart = panel({
    left,
    right,
    from: low - air,
    to: high + air,
    title,
    band,
    ticks,
    rows: nuts.length,
  });
  const marks = nuts.flatMap((nut, i) => {
    const value = of(nut);
    const y = chart.y(i);
    if (value === undefined)
      return series.wanted
        ? [markAt("no answer", left + 9, y), text("missing", left + 20, y + 4.5, "start", "limit-text")]
        : [];
    const at = chart.x(value);
    const word = off(nut);
    if (word === undefined) return [dot(at, y)];
    const outward = at < (left + right) / 2 ? "start" : "end";
    const words = `${number(value)} ${word}`;
    return [
      dot(at, y),
      svg("circle", { class: "outlier", cx: at, cy: y, r: 8.5 }),
      text(words, outward === "start" ? at + 13 : at - 13, y + 4.5, outward, "limit-text"),
    ];
  });
  return [...chart.back, ...marks];
}
