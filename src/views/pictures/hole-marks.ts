// What is known of each hole on the plan: its fit, its form, and the worst of the checks that speak of it.

import { pictureInputs } from "../../engine/picture-inputs.ts";
import { depthForms } from "../../methods/fits/hole-form.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { type State, states } from "../../verdict.ts";
import type { PictureInputs } from "./drawing.ts";
import { numbersOf } from "./inputs.ts";
import { furtherRows, numberIn, positionIn, type Row, rowsOf, stateIn, wordIn } from "./lists.ts";
import { type Place, placeless, placesOf } from "./place.ts";
import { spaced } from "./words.ts";

export interface HoleForm {
  readonly ovality: number | undefined;
  /** The word as given, and the angle from x in degrees where it can be drawn. */
  readonly direction: string | undefined;
  readonly angle: number | undefined;
  readonly taper: number | undefined;
  /** Mean size, m, to draw the form against. */
  readonly size: number | undefined;
  /** Means from the top down, m, where the readings are given. */
  readonly profile: readonly number[];
}

export interface HoleMark {
  readonly place: Place;
  /** Undefined where nothing judges this hole, as at a plain bolt. */
  readonly state: State | undefined;
  /** Checks that bring it to that state; empty where the pair itself does. */
  readonly because: readonly string[];
  readonly tightest: number | undefined;
  readonly loosest: number | undefined;
  readonly form: HoleForm | undefined;
}

export interface FitMap {
  readonly holes: readonly HoleMark[];
  readonly tightestAllowed: number;
  readonly loosestAllowed: number;
  readonly exaggeration: number;
}

const name = "fit-map";
const usualExaggeration = 1000;

export function readFitMap(inputs: PictureInputs): FitMap | Problem {
  const limits = numbersOf(name, inputs);
  if (isProblem(limits)) return limits;
  const places = placesOf(name, inputs);
  if (isProblem(places)) return places;
  const pairs = rowsOf(name, inputs, "pairs");
  if (isProblem(pairs)) return pairs;
  const shapes = formsOf(inputs);
  if (isProblem(shapes)) return shapes;
  const checks = checksOf(inputs);
  if (isProblem(checks)) return checks;
  const lost =
    placeless(name, "pairs", pairs, places) ??
    placeless(name, "forms", shapes.forms, places) ??
    checks.map((check) => placeless(name, check.name, check.rows, places)).find((found) => found);
  if (lost) return lost;
  const holes = places.map((place): HoleMark => {
    const here = (row: Row) => positionIn(row) === place.position;
    const pair = pairs.find(here);
    return {
      place,
      ...judged(pair, checks, here),
      tightest: pair && numberIn(pair, "tightest"),
      loosest: pair && numberIn(pair, "loosest"),
      form: formOf(shapes.forms.find(here), shapes.readings.filter(here)),
    };
  });
  return {
    holes,
    tightestAllowed: limits.tightestAllowed,
    loosestAllowed: limits.loosestAllowed,
    exaggeration: limits.exaggeration ?? usualExaggeration,
  };
}

interface CheckList {
  readonly name: string;
  readonly rows: readonly Row[];
}

/** Any further list is a check by position, called by the name of its input. */
function checksOf(inputs: PictureInputs): readonly CheckList[] | Problem {
  const lists: CheckList[] = [];
  for (const input of Object.keys(inputs).filter((each) => !Object.hasOwn(pictureInputs[name].of, each))) {
    const rows = furtherRows(name, inputs, input);
    if (isProblem(rows)) return rows;
    lists.push({ name: spaced(input), rows });
  }
  return lists;
}

/**
 * The worst state counts; the checks that give it are named. A hole without a pair, such as a plain one,
 * is judged only where a check finds something: a bolt with the right mark is no proven fit.
 */
function judged(
  pair: Row | undefined,
  checks: readonly CheckList[],
  here: (row: Row) => boolean,
): Pick<HoleMark, "state" | "because"> {
  const found = [
    ...(pair ? endsOf(pair) : []),
    ...checks.flatMap((check) =>
      check.rows.filter(here).map((row) => ({ name: check.name, state: stateIn(row) })),
    ),
  ];
  const worst = states.find((state) => found.some((each) => each.state === state));
  if (worst === "proven" && !pair) return { state: undefined, because: [] };
  const because =
    worst === "proven"
      ? []
      : found.filter((each) => each.state === worst && each.name !== "").map((each) => each.name);
  return { state: worst, because: [...new Set(because)] };
}

/** A pair that says which of its ends is at fault is named by it. */
function endsOf(pair: Row): readonly { readonly name: string; readonly state: State }[] {
  const state = stateIn(pair);
  const ends = [
    ["tight", "tightestState"],
    ["loose", "loosestState"],
  ] as const;
  return [
    { name: "", state },
    ...ends.filter(([, column]) => wordIn(pair, column) === state).map(([name]) => ({ name, state })),
  ];
}

function formsOf(
  inputs: PictureInputs,
): { readonly forms: readonly Row[]; readonly readings: readonly Row[] } | Problem {
  const forms = rowsOf(name, inputs, "forms");
  if (isProblem(forms)) return forms;
  const readings = rowsOf(name, inputs, "readings");
  return isProblem(readings) ? readings : { forms, readings };
}

function formOf(form: Row | undefined, readings: readonly Row[]): HoleForm | undefined {
  if (form === undefined) return undefined;
  const profile = depthForms(
    readings.flatMap((row) => {
      const value = numberIn(row, "diameter") ?? numberIn(row, "value");
      return value === undefined
        ? []
        : [{ depth: wordIn(row, "depth") ?? "", direction: wordIn(row, "direction") ?? "", value }];
    }),
  ).map(({ mean }) => mean);
  const direction = wordIn(form, "ovalDirection");
  return {
    ovality: numberIn(form, "ovality"),
    direction,
    angle: angleOf(direction),
    taper: numberIn(form, "taper"),
    size: numberIn(form, "mean"),
    profile,
  };
}

function angleOf(direction: string | undefined): number | undefined {
  if (direction === "along" || direction === "x") return 0;
  if (direction === "across" || direction === "y") return 90;
  const degrees = /^(-?\d+(?:\.\d+)?)\s*(?:°|deg)?$/.exec(direction ?? "")?.[1];
  return degrees === undefined ? undefined : Number(degrees);
}
