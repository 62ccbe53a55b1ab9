// The flange from above: each hole at its place, its fit and form, and the worst of the checks that speak of it.

import { depthForms, holeForm } from "../methods/fits/hole-form.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { type State, states } from "../verdict.ts";
import { capital, listed } from "../words.ts";
import { type Given, list, maybe, maybeList, number } from "./fields.ts";
import { type Small, smallLength } from "./lengths.ts";
import { type Further, picture } from "./picture.ts";
import { type Place, placesOf, plan } from "./place.ts";
import { numberIn, positionIn, type Row, stateIn, wordIn } from "./rows.ts";
import { spaced } from "./words.ts";

const of = {
  positions: plan.positions,
  pairs: list(
    { position: "text" },
    { tightest: "length", loosest: "length", state: "text", tightestState: "text", loosestState: "text" },
  ),
  forms: maybeList(
    { position: "text" },
    { ovality: "length", ovalDirection: "text", taper: "length", mean: "length" },
  ),
  readings: maybeList(
    { position: "text", depth: "text", direction: "text" },
    { diameter: "length", value: "length" },
  ),
  tightestAllowed: number("length"),
  loosestAllowed: number("length"),
  exaggeration: maybe("ratio"),
  yRuns: plan.yRuns,
};

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
  readonly yUp: boolean;
}

export const fitMap = picture({
  id: "fit-map",
  question: "Which holes have a proven fit, where are the others, and what is wrong with them?",
  of,
  needs: { readings: "forms" },
  further: { must: { position: "text", state: "text" }, may: {} },
  by: [holeForm],
  model,
  says: (map, unitOf) => [verdict(map), ends(map, smallLength(unitOf))].join(" "),
  table,
});

const usualExaggeration = 1000;

/** Any further list is a check by position, called by the name of its input. */
function model(given: Given<typeof of>, further: Further): FitMap | Problem {
  const { pairs, forms, readings, tightestAllowed, loosestAllowed } = given;
  const checks = Object.entries(further).map(([name, rows]) => ({ name: spaced(name), rows }));
  const named = Object.fromEntries(checks.map(({ name, rows }) => [name, rows]));
  const places = placesOf(given.positions, { pairs, forms, ...named });
  if (isProblem(places)) return places;
  const holes = places.map((place): HoleMark => {
    const here = (row: Row) => positionIn(row) === place.position;
    const pair = pairs.find(here);
    return {
      place,
      ...judged(pair, checks, here),
      tightest: pair && numberIn(pair, "tightest"),
      loosest: pair && numberIn(pair, "loosest"),
      form: formOf(forms.find(here), readings.filter(here)),
    };
  });
  const exaggeration = given.exaggeration ?? usualExaggeration;
  return { holes, tightestAllowed, loosestAllowed, exaggeration, yUp: given.yRuns === "up" };
}

interface CheckList {
  readonly name: string;
  readonly rows: readonly Row[];
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

function table({ holes }: FitMap, unitOf: UnitChoice) {
  const small = smallLength(unitOf);
  const withForms = holes.some(({ form }) => form);
  const cell = (si: number | undefined) => (si === undefined ? "" : small.number(si));
  return {
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
    rows: holes.map(({ place, state, because, tightest, loosest, form }) => [
      place.position,
      place.kind ?? "",
      state ?? "not judged",
      because.join(", "),
      cell(tightest),
      cell(loosest),
      ...(withForms ? [cell(form?.ovality), form?.direction ?? "", cell(form?.taper)] : []),
    ]),
  };
}

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
