// The bolts of a trial about their mean, the spread that they support, and the scatter that is counted with.
import { dot, text as label } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import type { Trial } from "../../pictures/trial-spread.ts";
import { percent, rounded } from "../../pictures/words.ts";
import { numberText } from "../../report/figure-text.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { airy, type Limit, placed } from "./chart.ts";
import { markAt } from "./flange.ts";
import { dimension, text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";

export function drawTrial(trial: Trial, width: number, unitOf: UnitChoice): SVGSVGElement {
  const shown = unitOf("force");
  const at = (si: number) => inUnit(si, shown);
  const { bolts, mean, spread, scatter } = trial;
  const ends = (share: number): [number, number] => [at(mean * (1 - share)), at(mean * (1 + share))];
  const supported = ends(spread);
  const counted = scatter === undefined ? undefined : ends(scatter);
  const dots = bolts.flatMap(({ preload }, row) =>
    preload === undefined ? [] : [{ row, value: at(preload), words: numberText(preload, "force", shown) }],
  );
  const last = bolts.length;
  const number = rounded(0);
  const limits: readonly Limit[] = [
    ...(counted ?? []).map((end, i) => ({
      at: end,
      words: `${i === 0 ? "−" : "+"}${percent(scatter ?? 0)}`,
    })),
    { at: at(mean), words: `mean ${numberText(mean, "force", shown)}`, is: "middle" },
  ];
  const [from, to] = airy([...dots.map(({ value }) => value), ...supported, ...(counted ?? [])]);
  return rowCharts(width, {
    title: `preload, ${unitLabel(shown)}`,
    names: [...bolts.map((bolt) => bolt.name), ""],
    left: 34,
    right: Math.min(width, 720) - 24,
    from,
    to,
    limits,
    allowed: counted,
    number,
    marks: [
      dot(dots, { x: "value", y: "row", r: 4.5, className: "point" }),
      label(dots, {
        x: "value",
        y: "row",
        dx: 10,
        textAnchor: "start",
        text: "words",
      }),
      placed((x, y) => [
        dimension(x(supported[0]), y(last) + 6, x(supported[1]), y(last) + 6),
        text(`supports ±${percent(spread)}`, x(at(mean)), y(last), "middle", "strong-text"),
        ...bolts.flatMap(({ preload }, row) =>
          preload === undefined
            ? [
                markAt("no answer", x(from) + 9, y(row)),
                text("missing", x(from) + 20, y(row) + 4.5, "start", "limit-text"),
              ]
            : [],
        ),
      ]),
    ],
  });
}
