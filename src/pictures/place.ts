// Places on a plan, as a list gives them.
import type { Problem } from "../problem.ts";
import { list, word } from "./fields.ts";
import { cannotDraw } from "./picture.ts";
import { numberIn, positionIn, type Row, wordIn } from "./rows.ts";

/** What every plan of positions takes. */
export const plan = {
  positions: list({ position: "text", x: "length", y: "length" }, { kind: "text" }),
  /** y runs down the plan, to the right hand when looking along x, unless the page says up. */
  yRuns: word("down", "up"),
};

export interface Place {
  readonly position: string;
  /** m along the machine, m across it. */
  readonly x: number;
  readonly y: number;
  readonly kind: string | undefined;
}

/** A row of another list that speaks of a position without a place would be left out of the drawing, so it is named. */
export function placesOf(
  positions: readonly Row[],
  lists: Readonly<Record<string, readonly Row[]>>,
): readonly Place[] | Problem {
  const places = positions.map((row) => ({
    position: positionIn(row),
    x: numberIn(row, "x") ?? 0,
    y: numberIn(row, "y") ?? 0,
    kind: wordIn(row, "kind"),
  }));
  if (places.length === 0) return cannotDraw("no-rows", "no positions", "have at least one");
  const known = new Set<string>();
  for (const { position } of places) {
    if (known.has(position)) return cannotDraw("tag-twice", `position ${position} twice`, "stand once each");
    known.add(position);
  }
  for (const [name, rows] of Object.entries(lists)) {
    const lost = rows.map(positionIn).find((position) => !known.has(position));
    if (lost !== undefined)
      return cannotDraw("odd-position", `position ${lost} in ${name}`, "be one of the positions drawn");
  }
  return places;
}
