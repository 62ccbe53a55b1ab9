// Places on a plan, as a list gives them.
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { PictureInputs } from "./drawing.ts";
import { maybeWord, numberIn, positionIn, type Row, rowsOf, wordIn } from "./lists.ts";

export interface Place {
  readonly position: string;
  /** m along the machine, m across it. */
  readonly x: number;
  readonly y: number;
  readonly kind: string | undefined;
}

export function placesOf(
  picture: "fit-map" | "tightening-map",
  inputs: PictureInputs,
): readonly Place[] | Problem {
  const rows = rowsOf(picture, inputs, "positions");
  if (isProblem(rows)) return rows;
  const places = rows.map((row) => ({
    position: positionIn(row),
    x: numberIn(row, "x") ?? 0,
    y: numberIn(row, "y") ?? 0,
    kind: wordIn(row, "kind"),
  }));
  if (places.length === 0)
    return problem({
      code: "no-rows",
      what: `picture ${picture}`,
      got: "no positions",
      must: "have at least one",
    });
  const twice = places.find((place, i) => places.findIndex((p) => p.position === place.position) !== i);
  return twice === undefined
    ? places
    : problem({
        code: "tag-twice",
        what: `picture ${picture}`,
        got: `position ${twice.position} twice`,
        must: "stand once each",
      });
}

/** A row that speaks of a position without a place would be left out of the drawing, so it is named. */
export function placeless(
  picture: string,
  name: string,
  rows: readonly Row[],
  places: readonly Place[],
): Problem | undefined {
  const known = new Set(places.map(({ position }) => position));
  const lost = rows.map(positionIn).find((position) => !known.has(position));
  return lost === undefined
    ? undefined
    : problem({
        code: "odd-position",
        what: `picture ${picture}`,
        got: `position ${lost} in ${name}`,
        must: "be one of the positions drawn",
      });
}

/** y runs down the plan, to the right hand when looking along x, unless the page says up. */
export function yUpOf(
  picture: "fit-map" | "gap-map" | "tightening-map",
  inputs: PictureInputs,
): boolean | Problem {
  const word = maybeWord(picture, inputs, "yRuns");
  return isProblem(word) ? word : word === "up";
}
