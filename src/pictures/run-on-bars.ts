// Run-on torque nut by nut in the band that a locking nut has to keep.

import type { UnitChoice } from "../methods/solution.ts";
import { setText } from "../report/figure-text.ts";
import { listed } from "../words.ts";
import { type Given, list, number } from "./fields.ts";
import { picture } from "./picture.ts";
import { byName, numberIn, positionIn } from "./rows.ts";

const of = {
  nuts: list({ position: "text" }, { runOn: "torque" }),
  least: number("torque"),
  most: number("torque"),
};

interface Nut {
  readonly position: string;
  readonly runOn: number | undefined;
}

export interface Nuts extends Omit<Given<typeof of>, "nuts"> {
  readonly nuts: readonly Nut[];
}

export const runOnBars = picture({
  id: "run-on-bars",
  question: "Which nuts have a run-on torque outside the band of a locking nut?",
  of,
  model: ({ nuts: rows, ...limits }: Given<typeof of>): Nuts => {
    const nuts = rows.map((row): Nut => ({ position: positionIn(row), runOn: numberIn(row, "runOn") }));
    return { ...limits, nuts: nuts.toSorted((a, b) => byName(a.position, b.position)) };
  },
  says,
  table: (all, unitOf) => ({
    title: "run-on torque as a table",
    head: ["position", "run-on torque", "band"],
    rows: all.nuts.map((nut) => [
      nut.position,
      nut.runOn === undefined ? "missing" : setText(nut.runOn, "torque", unitOf("torque")),
      againstBand(nut, all),
    ]),
  }),
});

export function againstBand({ runOn }: Nut, { least, most }: Nuts): string {
  if (runOn === undefined) return "missing";
  if (runOn < least) return "below";
  return runOn > most ? "above" : "inside";
}

function says(all: Nuts, unitOf: UnitChoice): string {
  const torque = (si: number) => setText(si, "torque", unitOf("torque"));
  const { nuts, least, most } = all;
  const by = (word: string) => nuts.filter((nut) => againstBand(nut, all) === word);
  const named = (found: readonly Nut[]) =>
    listed(found.map(({ position, runOn }) => `${position} (${runOn === undefined ? "" : torque(runOn)})`));
  const [below, above, missing] = [by("below"), by("above"), by("missing")];
  return [
    `${by("inside").length} of ${nuts.length} nuts have a run-on torque between ${torque(least)} and ${torque(most)}.`,
    ...(below.length > 0 ? [`Below: ${named(below)}.`] : []),
    ...(above.length > 0 ? [`Above: ${named(above)}.`] : []),
    ...(missing.length > 0 ? [`Missing: ${listed(missing.map(({ position }) => position))}.`] : []),
  ].join(" ");
}
