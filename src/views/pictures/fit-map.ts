// The flange from above: each hole at its place, its state, and its clearance from tightest to loosest.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { type State, states } from "../../verdict.ts";
import { capital } from "../words.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { drawFitMap } from "./fit-map-drawing.ts";
import { type FitMap, type HoleMark, readFitMap } from "./hole-marks.ts";
import { type Small, smallLength } from "./lengths.ts";
import { yUpOf } from "./place.ts";
import { listed } from "./words.ts";

export function fitMap(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const map = readFitMap(inputs);
  if (isProblem(map)) return map;
  const yUp = yUpOf("fit-map", inputs);
  if (isProblem(yUp)) return yUp;
  const small = smallLength(unitOf);
  const withForms = map.holes.some(({ form }) => form);
  return {
    draw: (width) => drawFitMap(map, width, small, yUp),
    sentence: [verdict(map), ends(map, small)].join(" "),
    table: {
      title: "fit map as a table",
      head: [
        "position",
        "hole",
        "state",
        "because of",
        `tightest/${small.label}`,
        `loosest/${small.label}`,
        ...(withForms ? [`oval/${small.label}`, "direction", `taper/${small.label}`] : []),
      ],
      rows: map.holes.map((hole) => [
        hole.place.position,
        hole.place.kind ?? "",
        hole.state ?? "not judged",
        hole.because.join(", "),
        cell(hole.tightest, small),
        cell(hole.loosest, small),
        ...(withForms
          ? [cell(hole.form?.ovality, small), hole.form?.direction ?? "", cell(hole.form?.taper, small)]
          : []),
      ]),
    },
  };
}

const cell = (si: number | undefined, small: Small): string => (si === undefined ? "" : small.number(si));

/** "4 of 12 holes proven: 1, 5, 6 and 10. Fails: 3, 8 (oval) …", the worst after the count. */
function verdict({ holes }: FitMap): string {
  const judged = holes.filter((hole) => hole.state);
  const by = (state: State) => judged.filter((hole) => hole.state === state);
  const parts = states
    .filter((state) => state !== "proven" && by(state).length > 0)
    .map((state) => `${capital(state)}: ${listed(by(state).map(named))}.`);
  return [`${by("proven").length} of ${judged.length} holes proven.`, ...parts].join(" ");
}

const named = ({ place, because }: HoleMark): string =>
  because.length > 0 ? `${place.position} (${because.join(", ")})` : place.position;

function ends({ holes, tightestAllowed, loosestAllowed }: FitMap, small: Small): string {
  const allowed = `Allowed: ${small.set(tightestAllowed)} to ${small.set(loosestAllowed)} ${small.label}.`;
  const tight = holes
    .filter((h) => h.tightest !== undefined)
    .toSorted((a, b) => (a.tightest ?? 0) - (b.tightest ?? 0))[0];
  const loose = holes
    .filter((h) => h.loosest !== undefined)
    .toSorted((a, b) => (b.loosest ?? 0) - (a.loosest ?? 0))[0];
  if (!tight || !loose) return allowed;
  return `Tightest ${small.text(tight.tightest ?? 0)} at ${tight.place.position}, loosest ${small.text(loose.loosest ?? 0)} at ${loose.place.position}. ${allowed}`;
}
