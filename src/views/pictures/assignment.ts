// Which bolt goes in which hole: what stays in fine lines, what moves in bold ones, what is left over.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { State } from "../../verdict.ts";
import { drawAssignment } from "./assignment-drawing.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { smallLength } from "./lengths.ts";
import { byName, numberIn, positionIn, rowsOf, stateIn, wordIn, yesIn } from "./lists.ts";
import { listed } from "./words.ts";

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

const name = "assignment";

export function assignmentPicture(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const assigned = read(inputs);
  if (isProblem(assigned)) return assigned;
  const small = smallLength(unitOf);
  const cell = (si: number | undefined) => (si === undefined ? "" : small.number(si));
  return {
    draw: (width) => drawAssignment(assigned, width, small),
    sentence: sentenceOf(assigned),
    table: {
      title: "holes and bolts as a table",
      head: ["hole", "bolt", "moves", "state", `tightest/${small.label}`, `loosest/${small.label}`],
      rows: [
        ...assigned.pairs.map((pair) => [
          pair.hole,
          pair.bolt ?? "none",
          pair.moved ? "moves here" : "stays",
          pair.state ?? "",
          cell(pair.tightest),
          cell(pair.loosest),
        ]),
        ...assigned.leftOver.map((bolt) => ["left over", bolt, "", "", "", ""]),
      ],
    },
  };
}

function read(inputs: PictureInputs): Assigned | Problem {
  const rows = rowsOf(name, inputs, "pairs");
  if (isProblem(rows)) return rows;
  const bolts = rowsOf(name, inputs, "bolts");
  if (isProblem(bolts)) return bolts;
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
  if (pairs.length === 0)
    return problem({ code: "no-rows", what: `picture ${name}`, got: "no pairs", must: "have at least one" });
  const used = new Set(pairs.map(({ bolt }) => bolt));
  const leftOver = bolts
    .flatMap((row) => wordIn(row, "tag") ?? wordIn(row, "bolt") ?? [])
    .filter((tag) => !used.has(tag));
  return { pairs, leftOver: leftOver.toSorted(byName) };
}

function sentenceOf({ pairs, leftOver }: Assigned): string {
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
