// The bolts of a trial about their mean, the spread that they support, and the scatter that is counted with.

import type { UnitChoice } from "../methods/solution.ts";
import type { Problem } from "../problem.ts";
import { figureText } from "../report/figure-text.ts";
import { type Given, list, maybe, number } from "./fields.ts";
import { cannotDraw, picture } from "./picture.ts";
import { numberIn, positionIn } from "./rows.ts";
import { percent } from "./words.ts";

const of = {
  trial: list({}, { position: "text", preload: "force", value: "force" }),
  mean: number("force"),
  spread: number("ratio"),
  scatter: maybe("ratio"),
};

interface Bolt {
  readonly name: string;
  readonly preload: number | undefined;
}

export interface Trial extends Omit<Given<typeof of>, "trial"> {
  readonly bolts: readonly Bolt[];
}

export const trialSpread = picture({
  id: "trial-spread",
  question:
    "How far do the bolts of a trial lie from their mean, and does that support the scatter counted with?",
  of,
  model,
  says,
  table: ({ bolts, mean }, unitOf) => {
    const force = (si: number) => figureText(si, "force", unitOf("force"));
    return {
      title: "trial as a table",
      head: ["bolt", "preload", "against the mean"],
      rows: [
        ...bolts.map(({ name, preload }) =>
          preload === undefined
            ? [name, "missing", ""]
            : [name, force(preload), signedPercent(preload / mean - 1)],
        ),
        ["mean", force(mean), ""],
      ],
    };
  },
});

function model({ trial, ...given }: Given<typeof of>): Trial | Problem {
  const bolts = trial.map((row, i) => ({
    name: positionIn(row) || String(i + 1),
    preload: numberIn(row, "preload") ?? numberIn(row, "value"),
  }));
  return bolts.some(({ preload }) => preload !== undefined)
    ? { ...given, bolts }
    : cannotDraw("no-rows", "no preload in trial", "have at least one");
}

const signedPercent = (share: number): string => `${share < 0 ? "" : "+"}${percent(share)}`;

function says({ bolts, mean, spread, scatter }: Trial, unitOf: UnitChoice): string {
  const force = (si: number) => figureText(si, "force", unitOf("force"));
  const read = bolts.flatMap(({ preload }) => preload ?? []);
  const missing = bolts.filter(({ preload }) => preload === undefined).map(({ name }) => name);
  return [
    `Preload of ${read.length} bolts from ${force(Math.min(...read))} to ${force(Math.max(...read))}, mean ${force(mean)}.`,
    ...(missing.length > 0 ? [`Missing: ${missing.join(", ")}.`] : []),
    `The trial supports ±${percent(spread)}${scatter === undefined ? "." : `, ${spread <= scatter ? "within" : "more than"} the ±${percent(scatter)} counted with.`}`,
  ].join(" ");
}
