// Floor and ceiling of torque against scatter, worked out by the method for a series of scatters.
// Where they cross no torque passes, and the picture says so.
import { type PictureField, pictureInputs } from "../../engine/picture-inputs.ts";
import { preloadWindow } from "../../methods/preload/preload-window.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import { figureText } from "../figure.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { numbersOf, siValue } from "./inputs.ts";
import { type At, drawWindow, share, type Window } from "./window-drawing.ts";

export function preloadWindowPicture(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const window = read(inputs);
  if (isProblem(window)) return window;
  const { here, closesAt, torque } = window;
  const shown = (si: number) => figureText(si, "torque", unitOf("torque"));
  const rows = [
    ...window.series.filter((at, i) => i % 10 === 0 && Math.abs(at.scatter - here.scatter) > 1e-9),
    here,
  ].sort((a, b) => a.scatter - b.scatter);
  const open = here.floor <= here.ceiling;
  const closing = closesAt === undefined ? "" : ` The window closes at ±${share(closesAt)}.`;
  const chosen = torque === undefined ? "" : ` This page uses ${shown(torque)}.`;
  const sentence = open
    ? `At a scatter of ±${share(here.scatter)} the torque lies between ${shown(here.floor)} and ${shown(here.ceiling)}.`
    : `At a scatter of ±${share(here.scatter)} no torque passes: the floor of ${shown(here.floor)} lies above the ceiling of ${shown(here.ceiling)}.`;
  return {
    draw: (width) => drawWindow(window, width, unitOf),
    sentence: sentence + closing + chosen,
    source: Object.values(preloadWindow.sources).slice(0, 1).map(cite).join(""),
    table: {
      title: "window against scatter as a table",
      head: ["scatter", "floor", "ceiling", "open"],
      rows: rows.map((at) => [
        `±${share(at.scatter)}${at === here ? ", this page" : ""}`,
        shown(at.floor),
        shown(at.ceiling),
        at.floor <= at.ceiling ? "yes" : "no torque passes",
      ]),
    },
  };
}

function read(inputs: PictureInputs): Window | Problem {
  const numbers = numbersOf("preload-window", inputs);
  if (isProblem(numbers)) return numbers;
  const { torque, ...given } = numbers;
  const fields: Readonly<Record<string, PictureField>> = pictureInputs["preload-window"].of;
  const at = (scatter: number): At | Problem => {
    const values = Object.entries({ ...given, scatter }).flatMap(([name, si]) => {
      const field = fields[name];
      return field?.is === "number" ? [[name, siValue(field.kind, si)] as const] : [];
    });
    const solved = preloadWindow.solveNamed(Object.fromEntries(values));
    if (isProblem(solved)) return solved;
    const { floorTorque, ceilingTorque } = solved.outputs;
    return { scatter, floor: number(floorTorque), ceiling: number(ceilingTorque) };
  };
  const here = at(numbers.scatter);
  if (isProblem(here)) return here;
  const widest = Math.min(0.95, Math.max(0.4, Math.ceil(numbers.scatter * 14) / 10));
  const series = Array.from({ length: 81 }, (_, i) => at((widest * i) / 80)).filter(
    (found): found is At => !isProblem(found),
  );
  return { series, here, closesAt: crossing(series, at), torque };
}

const number = (output: unknown): number =>
  typeof output === "object" && output !== null && "si" in output ? Number(output.si) : Number.NaN;

function crossing(series: readonly At[], at: (scatter: number) => At | Problem): number | undefined {
  const after = series.findIndex((found) => found.floor > found.ceiling);
  const [open, closed] = [series[after - 1], series[after]];
  if (!open || !closed) return undefined;
  let [low, high] = [open.scatter, closed.scatter];
  for (let i = 0; i < 24; i += 1) {
    const found = at((low + high) / 2);
    if (isProblem(found)) return undefined;
    if (found.floor > found.ceiling) high = found.scatter;
    else low = found.scatter;
  }
  return low;
}
