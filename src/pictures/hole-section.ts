// The readings of one bore by depth and direction, with the places still to be read.

import { depthForms, holeForm } from "../methods/fits/hole-form.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { numberText } from "../report/figure-text.ts";
import { unitLabel } from "../units/unit.ts";
import { type Given, list, maybe, number, word } from "./fields.ts";
import { signed, smallLength } from "./lengths.ts";
import { cannotDraw, picture, siValue } from "./picture.ts";
import { numberIn, only, positionIn, type Row, wordIn } from "./rows.ts";
import { spaced } from "./words.ts";

const of = {
  readings: list(
    { depth: "text", direction: "text" },
    { diameter: "length", value: "length", position: "text", readingState: "text" },
  ),
  nominal: number("length"),
  exaggeration: maybe("ratio"),
  position: word(),
  splitAfter: word(),
};

export interface BoreReading {
  readonly depth: string;
  readonly direction: string;
  /** m; undefined while it is missing. */
  readonly value: number | undefined;
  /** A word where the reading is not simply entered: odd, corrected, set aside. */
  readonly remark: string | undefined;
}

export interface DepthRow {
  readonly depth: string;
  readonly readings: readonly BoreReading[];
  readonly mean: number | undefined;
  readonly ovality: number | undefined;
  readonly wide: string | undefined;
}

export interface Bore {
  readonly position: string | undefined;
  readonly nominal: number;
  readonly directions: readonly string[];
  /** From the top down. */
  readonly depths: readonly DepthRow[];
  /** The depth above the split line. */
  readonly splitAfter: string | undefined;
  readonly exaggeration: number | undefined;
  /** Largest less smallest mean of a depth, where more than one is read. */
  readonly taper: number | undefined;
}

export const holeSection = picture({
  id: "hole-section",
  question: "What was read in this hole and where, what is still to be read, and how oval and tapered is it?",
  of,
  by: [holeForm],
  model,
  says,
  table: (bore, unitOf) => {
    const [shown, small] = [unitOf("length"), smallLength(unitOf)];
    return {
      title: "readings as a table",
      head: ["depth", "direction", `diameter/${unitLabel(shown)}`, `from nominal/${small.label}`, "state"],
      rows: allReadings(bore).map(({ depth, direction, value, remark }) => [
        spaced(depth),
        direction,
        ...(value === undefined
          ? ["", "", "missing"]
          : [
              numberText(value, "length", shown),
              signed(small.number(value - bore.nominal)),
              remark ?? "entered",
            ]),
      ]),
    };
  },
});

function model({
  readings: rows,
  nominal,
  exaggeration,
  splitAfter,
  ...given
}: Given<typeof of>): Bore | Problem {
  const position = positionDrawn(rows, given.position);
  if (isProblem(position)) return position;
  const each = (column: string) => [...new Set(rows.map((row) => wordIn(row, column) ?? ""))];
  const [depths, directions] = [each("depth"), each("direction")];
  const here = position === undefined ? rows : only(rows, "position", position);
  if (depths.length === 0) return cannotDraw("no-rows", "no readings", "have at least one");
  if (splitAfter !== undefined && !depths.includes(splitAfter))
    return cannotDraw("odd-depth", `splitAfter ${splitAfter}`, `be one of ${depths.join(", ")}`);
  const readings = depths.map((depth) => directions.map((direction) => readingAt(here, depth, direction)));
  return {
    position,
    nominal,
    directions,
    depths: depths.map((depth, i) => depthRow(depth, readings[i] ?? [])),
    splitAfter,
    exaggeration,
    taper: taperOf(readings.flat()),
  };
}

function positionDrawn(rows: readonly Row[], asked: string | undefined): string | undefined | Problem {
  const positions = [...new Set(rows.map(positionIn))].filter((position) => position !== "");
  if (asked === undefined)
    return positions.length < 2
      ? positions[0]
      : cannotDraw("odd-position", `${positions.length} positions`, "say which one in position");
  return positions.includes(asked)
    ? asked
    : cannotDraw("odd-position", `position ${asked}`, `be one of ${positions.join(", ")}`);
}

const quietStates = ["entered", "missing"];

/** The last row of a place counts: a later one corrects an earlier one. */
function readingAt(rows: readonly Row[], depth: string, direction: string): BoreReading {
  const row = only(only(rows, "depth", depth), "direction", direction).at(-1);
  const state = row && wordIn(row, "readingState");
  return {
    depth,
    direction,
    value: row && (numberIn(row, "diameter") ?? numberIn(row, "value")),
    remark: state === undefined || quietStates.includes(state) ? undefined : state,
  };
}

function depthRow(depth: string, readings: readonly BoreReading[]): DepthRow {
  const known = readings.flatMap(({ direction, value }) =>
    value === undefined ? [] : [{ depth, direction, value }],
  );
  const form = depthForms(known)[0];
  return { depth, readings, mean: form?.mean, ovality: form?.ovality, wide: form?.direction };
}

function taperOf(readings: readonly BoreReading[]): number | undefined {
  const solved = holeForm.solveNamed({
    readings: readings.flatMap(({ depth, direction, value }) =>
      value === undefined ? [] : [{ depth, direction, value: siValue("length", value) }],
    ),
  });
  const taper = isProblem(solved) ? undefined : solved.outputs["taper"];
  return taper && "si" in taper ? taper.si : undefined;
}

export const allReadings = ({ depths }: Bore): readonly BoreReading[] =>
  depths.flatMap(({ readings }) => readings);

/** The first place that is not read yet, in the order the gauge goes down the hole. */
export const nextReading = (bore: Bore): BoreReading | undefined =>
  allReadings(bore).find(({ value }) => value === undefined);

const placeWords = ({ depth, direction }: BoreReading): string => `${spaced(depth)} ${direction}`;

function says(bore: Bore, unitOf: UnitChoice): string {
  const [shown, small] = [unitOf("length"), smallLength(unitOf)];
  const length = (si: number) => `${numberText(si, "length", shown)} ${unitLabel(shown)}`;
  const all = allReadings(bore);
  const read = all.filter((each) => each.value !== undefined);
  const sorted = read.toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0));
  const [least, most] = [sorted[0], sorted.at(-1)];
  const hole = bore.position === undefined ? "Hole" : `Hole ${bore.position}`;
  const next = nextReading(bore);
  const parts = [`${hole}: ${read.length} of ${all.length} readings`];
  if (least?.value !== undefined && most?.value !== undefined)
    parts.push(
      `, smallest ${length(least.value)} at ${placeWords(least)}, largest ${length(most.value)} at ${placeWords(most)}`,
    );
  const worst = bore.depths.toSorted((a, b) => (b.ovality ?? 0) - (a.ovality ?? 0))[0];
  if (worst?.ovality !== undefined && worst.ovality > 0)
    parts.push(
      `; most oval at ${spaced(worst.depth)}, ${small.text(worst.ovality)}, wide ${worst.wide ?? ""}`,
    );
  if (bore.taper !== undefined) parts.push(`; depth means differ by ${small.text(bore.taper)}`);
  parts.push(".");
  if (next) parts.push(` Next: ${placeWords(next)}.`);
  return parts.join("");
}
