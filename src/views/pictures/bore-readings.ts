// The readings of one bore laid out by depth and direction, with the places still to be read.
import { depthForms, holeForm } from "../../methods/fits/hole-form.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { PictureInputs } from "./drawing.ts";
import { numbersOf, siValue } from "./inputs.ts";
import { maybeWord, numberIn, only, positionIn, type Row, rowsOf, wordIn } from "./lists.ts";

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

const name = "hole-section";
const quietStates = ["entered", "missing"];

export function readBore(inputs: PictureInputs): Bore | Problem {
  const numbers = numbersOf(name, inputs);
  if (isProblem(numbers)) return numbers;
  const rows = rowsOf(name, inputs, "readings");
  if (isProblem(rows)) return rows;
  const asked = maybeWord(name, inputs, "position");
  if (isProblem(asked)) return asked;
  const splitAfter = maybeWord(name, inputs, "splitAfter");
  if (isProblem(splitAfter)) return splitAfter;
  const position = positionDrawn(rows, asked);
  if (isProblem(position)) return position;
  const each = (column: string) => [...new Set(rows.map((row) => wordIn(row, column) ?? ""))];
  const [depths, directions] = [each("depth"), each("direction")];
  const here = position === undefined ? rows : only(rows, "position", position);
  if (depths.length === 0)
    return problem({
      code: "no-rows",
      what: `picture ${name}`,
      got: "no readings",
      must: "have at least one",
    });
  if (splitAfter !== undefined && !depths.includes(splitAfter))
    return problem({
      code: "odd-choice",
      what: `picture ${name}`,
      got: `splitAfter ${splitAfter}`,
      must: `be one of ${depths.join(", ")}`,
    });
  const readings = depths.map((depth) => directions.map((direction) => readingAt(here, depth, direction)));
  return {
    position,
    nominal: numbers.nominal,
    directions,
    depths: depths.map((depth, i) => depthRow(depth, readings[i] ?? [])),
    splitAfter,
    exaggeration: numbers.exaggeration,
    taper: taperOf(readings.flat()),
  };
}

function positionDrawn(rows: readonly Row[], asked: string | undefined): string | undefined | Problem {
  const positions = [...new Set(rows.map(positionIn))].filter((position) => position !== "");
  if (asked !== undefined && positions.includes(asked)) return asked;
  if (asked === undefined && positions.length < 2) return positions[0];
  return problem({
    code: "odd-position",
    what: `picture ${name}`,
    got: asked === undefined ? `${positions.length} positions` : `position ${asked}`,
    must: asked === undefined ? "say which one in position" : `be one of ${positions.join(", ")}`,
  });
}

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
