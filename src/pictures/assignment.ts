// Which bolt goes in which hole: what stays, what moves, what is left over.

import type { Problem } from "../problem.ts";
import type { State } from "../verdict.ts";
import { listed } from "../words.ts";
import { type Given, list, maybeList } from "./fields.ts";
import { smallLength } from "./lengths.ts";
import { cannotDraw, picture } from "./picture.ts";
import { byName, numberIn, positionIn, stateIn, wordIn, yesIn } from "./rows.ts";

const of = {
  pairs: list(
    { position: "text", bolt: "text" },
    { state: "text", moved: "text", tightest: "length", loosest: "length" },
  ),
  bolts: maybeList({}, { tag: "text", bolt: "text" }),
};

export interface Pair {
  readonly hole: string;
  /** Undefined where the hole stays empty. */
  readonly bolt: string | undefined;
  readonly moved: boolean;
  readonly state: State | undefined;
  readonly tightest: number | undefined;
  readonly loosest: number | undefined;
}

export interface Assigned {
  readonly pairs: readonly Pair[];
  readonly leftOver: readonly string[];
}

export const assignment = picture({
  id: "assignment",
  question: "Which bolt goes in which hole, which bolts move, and what is left over?",
  of,
  model,
  says,
  table: ({ pairs, leftOver }, unitOf) => {
    const small = smallLength(unitOf);
    const cell = (si: number | undefined) => (si === undefined ? "" : small.number(si));
    return {
      title: "holes and bolts as a table",
      head: ["hole", "bolt", "moves", "state", `tightest/${small.label}`, `loosest/${small.label}`],
      rows: [
        ...pairs.map(({ hole, bolt, moved, state, tightest, loosest }) => [
          hole,
          bolt ?? "none",
          moved ? "moves here" : "stays",
          state ?? "",
          cell(tightest),
          cell(loosest),
        ]),
        ...leftOver.map((bolt) => ["left over", bolt, "", "", "", ""]),
      ],
    };
  },
});

function model({ pairs: rows, bolts }: Given<typeof of>): Assigned | Problem {
  const pairs = rows.map((row): Pair => {
    const bolt = wordIn(row, "bolt");
    return {
      hole: positionIn(row),
      bolt: bolt === "none" ? undefined : bolt,
      moved: yesIn(row, "moved"),
      state: row["state"] === undefined ? undefined : stateIn(row),
      tightest: numberIn(row, "tightest"),
      loosest: numberIn(row, "loosest"),
    };
  });
  if (pairs.length === 0) return cannotDraw("no-rows", "no pairs", "have at least one");
  const used = new Set(pairs.map(({ bolt }) => bolt));
  const leftOver = bolts
    .flatMap((row) => wordIn(row, "tag") ?? wordIn(row, "bolt") ?? [])
    .filter((tag) => !used.has(tag));
  return { pairs, leftOver: leftOver.toSorted(byName) };
}

function says({ pairs, leftOver }: Assigned): string {
  const judged = pairs.filter(({ state }) => state !== undefined);
  const proven = judged.filter(({ state }) => state === "proven").length;
  const moved = pairs.filter((pair) => pair.moved);
  const empty = pairs.filter(({ bolt }) => bolt === undefined).map(({ hole }) => hole);
  const moves = moved.map(({ hole, bolt }) => `hole ${hole} takes ${bolt ?? "none"}`);
  return [
    judged.length > 0 ? `${proven} of ${pairs.length} holes have a proven pair.` : `${pairs.length} holes.`,
    moved.length === 0
      ? "No bolt moves."
      : `${moved.length} ${moved.length === 1 ? "bolt moves" : "bolts move"}: ${listed(moves)}.`,
    ...(empty.length > 0 ? [`Empty: ${listed(empty)}.`] : []),
    ...(leftOver.length > 0 ? [`Left over: ${listed(leftOver)}.`] : []),
  ].join(" ");
}
