// The bolts of a trial about their mean, the spread that they support, and the scatter that is counted with.
import { dot, text as label } from "@observablehq/plot";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { figureText, numberText } from "../figure.ts";
import { airy, type Limit, placed, rounded } from "./chart.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { markAt } from "./flange.ts";
import { type Numbers, numbersOf } from "./inputs.ts";
import { numberIn, positionIn, rowsOf } from "./lists.ts";
import { dimension, text } from "./marks.ts";
import { rowCharts } from "./row-chart.ts";

interface Bolt {
  readonly name: string;
  readonly preload: number | undefined;
}

interface Trial extends Numbers<"trial-spread"> {
  readonly bolts: readonly Bolt[];
}

const name = "trial-spread";
const percent = (share: number): string => `${rounded(1)(share * 100)} %`;

export function trialSpread(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const numbers = numbersOf(name, inputs);
  if (isProblem(numbers)) return numbers;
  const rows = rowsOf(name, inputs, "trial");
  if (isProblem(rows)) return rows;
  const bolts = rows.map((row, i) => ({
    name: positionIn(row) || String(i + 1),
    preload: numberIn(row, "preload") ?? numberIn(row, "value"),
  }));
  if (bolts.every(({ preload }) => preload === undefined))
    return problem({
      code: "no-rows",
      what: `picture ${name}`,
      got: "no preload in trial",
      must: "have at least one",
    });
  const trial: Trial = { ...numbers, bolts };
  const force = (si: number) => figureText(si, "force", unitOf("force"));
  return {
    draw: (width) => draw(trial, width, unitOf),
    sentence: sentenceOf(trial, force),
    table: {
      title: "trial as a table",
      head: ["bolt", "preload", "against the mean"],
      rows: [
        ...bolts.map(({ name: bolt, preload }) =>
          preload === undefined
            ? [bolt, "missing", ""]
            : [bolt, force(preload), signedPercent(preload / numbers.mean - 1)],
        ),
        ["mean", force(numbers.mean), ""],
      ],
    },
  };
}

const signedPercent = (share: number): string => `${share < 0 ? "" : "+"}${percent(share)}`;

function sentenceOf({ bolts, mean, spread, scatter }: Trial, force: (si: number) => string): string {
  const read = bolts.flatMap(({ preload }) => (preload === undefined ? [] : [preload]));
  const missing = bolts.filter(({ preload }) => preload === undefined).map((bolt) => bolt.name);
  return [
    `Preload of ${read.length} bolts from ${force(Math.min(...read))} to ${force(Math.max(...read))}, mean ${force(mean)}.`,
    ...(missing.length > 0 ? [`Missing: ${missing.join(", ")}.`] : []),
    `The trial supports ±${percent(spread)}${scatter === undefined ? "." : `, ${spread <= scatter ? "within" : "more than"} the ±${percent(scatter)} counted with.`}`,
  ].join(" ");
}

function draw(trial: Trial, width: number, unitOf: UnitChoice): SVGSVGElement {
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
