// Floor and ceiling of torque against scatter, worked out by the method for a series of scatters.
// Where they cross no torque passes, and the picture says so.

import { preloadWindow as byMethod } from "../methods/preload/preload-window.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { figureText } from "../report/figure-text.ts";
import { type Given, maybe, number } from "./fields.ts";
import { picture, worked } from "./picture.ts";
import { percent } from "./words.ts";

const of = {
  separationLoad: number("force"),
  scatter: number("ratio"),
  proofLoad: number("force"),
  nutFactor: number("ratio"),
  diameter: number("length"),
  separationFactor: maybe("ratio"),
  tripLoad: maybe("force"),
  tripFactor: maybe("ratio"),
  tripThermalChange: maybe("force"),
  relaxation: maybe("ratio"),
  assemblyShare: maybe("ratio"),
  warmUpChange: maybe("force"),
  torque: maybe("torque"),
};

export interface At {
  readonly scatter: number;
  readonly floor: number;
  readonly ceiling: number;
}

export interface Window {
  readonly series: readonly At[];
  readonly here: At;
  /** The scatter at which the window closes; undefined when it never opens or never closes here. */
  readonly closesAt: number | undefined;
  readonly torque: number | undefined;
}

export const preloadWindow = picture({
  id: "preload-window",
  question:
    "Which torques keep the joint shut and the bolt below its limit, and at what scatter is none left?",
  of,
  by: [byMethod],
  limited: true,
  model,
  says,
  table,
});

const isOpen = ({ floor, ceiling }: At): boolean => floor <= ceiling;

function model({ torque, ...given }: Given<typeof of>): Window | Problem {
  const at = (scatter: number): At | Problem => {
    const found = worked(byMethod, { ...given, scatter }, "floorTorque", "ceilingTorque");
    return isProblem(found) ? found : { scatter, floor: found.floorTorque, ceiling: found.ceilingTorque };
  };
  const here = at(given.scatter);
  if (isProblem(here)) return here;
  const widest = Math.min(0.95, Math.max(0.4, Math.ceil(given.scatter * 14) / 10));
  const series = Array.from({ length: 81 }, (_, i) => at((widest * i) / 80)).filter(
    (found): found is At => !isProblem(found),
  );
  return { series, here, closesAt: crossing(series, at), torque };
}

function crossing(series: readonly At[], at: (scatter: number) => At | Problem): number | undefined {
  const after = series.findIndex((found) => !isOpen(found));
  const [open, closed] = [series[after - 1], series[after]];
  if (!open || !closed) return undefined;
  let [low, high] = [open.scatter, closed.scatter];
  for (let i = 0; i < 24; i += 1) {
    const found = at((low + high) / 2);
    if (isProblem(found)) return undefined;
    if (isOpen(found)) low = found.scatter;
    else high = found.scatter;
  }
  return low;
}

function says({ here, closesAt, torque }: Window, unitOf: UnitChoice): string {
  const shown = (si: number) => figureText(si, "torque", unitOf("torque"));
  const start = `At a scatter of ±${percent(here.scatter)}`;
  return [
    isOpen(here)
      ? `${start} the torque lies between ${shown(here.floor)} and ${shown(here.ceiling)}.`
      : `${start} no torque passes: the floor of ${shown(here.floor)} lies above the ceiling of ${shown(here.ceiling)}.`,
    ...(closesAt === undefined ? [] : [`The window closes at ±${percent(closesAt)}.`]),
    ...(torque === undefined ? [] : [`This page uses ${shown(torque)}.`]),
  ].join(" ");
}

function table({ series, here }: Window, unitOf: UnitChoice) {
  const shown = (si: number) => figureText(si, "torque", unitOf("torque"));
  const others = series.filter((at, i) => i % 10 === 0 && Math.abs(at.scatter - here.scatter) > 1e-9);
  return {
    title: "window against scatter as a table",
    head: ["scatter", "floor", "ceiling", "open"],
    rows: [...others, here]
      .toSorted((a, b) => a.scatter - b.scatter)
      .map((at) => [
        `±${percent(at.scatter)}${at === here ? ", this page" : ""}`,
        shown(at.floor),
        shown(at.ceiling),
        isOpen(at) ? "yes" : "no torque passes",
      ]),
  };
}
