// How round and how straight is a bore, from readings at several depths and directions?
import { grouped } from "../../grouped.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cellNumber, cellText, type Row, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { diameterForm } from "../sources.ts";

export interface Reading {
  readonly depth: string;
  readonly direction: string;
  /** Which repeat it is, where a place was read more than once; empty otherwise. */
  readonly repeat?: string;
  /** m */
  readonly value: number;
}

export interface DepthForm {
  readonly depth: string;
  /** Mean over the directions, each direction counted once. */
  readonly mean: number;
  /** Largest less smallest direction; absent where one direction only was read. */
  readonly ovality?: number;
  /** The direction of the largest diameter. */
  readonly direction?: string;
}

const average = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;

/** One row for each depth, in the order the depths were read; repeats in a direction are averaged. */
export function depthForms(readings: readonly Reading[]): readonly DepthForm[] {
  return [...grouped(readings, (reading) => reading.depth)].map(([depth, atDepth]) => {
    const directions = [...grouped(atDepth, (reading) => reading.direction)].map(([direction, group]) => ({
      direction,
      mean: average(group.map((reading) => reading.value)),
    }));
    const mean = average(directions.map((each) => each.mean));
    if (directions.length < 2) return { depth, mean };
    const sorted = directions.toSorted((a, b) => b.mean - a.mean);
    const [widest, narrowest] = [sorted[0], sorted.at(-1)];
    return widest && narrowest
      ? { depth, mean, ovality: widest.mean - narrowest.mean, direction: widest.direction }
      : { depth, mean };
  });
}

/** Readings of a list; a place that is read twice without a word is refused, for one of the two is wrong. */
export function readingsOf(inputs: Insides, name: string): readonly Reading[] | Problem {
  const readings = rowsOf(inputs, name).map((row) => ({
    depth: cellText(row, "depth") ?? "",
    direction: cellText(row, "direction") ?? "",
    repeat: cellText(row, "repeat") ?? "",
    value: cellNumber(row, "value") ?? Number.NaN,
  }));
  const placed = readings.filter(({ depth, direction }) => depth !== "" && direction !== "");
  const keyOf = ({ depth, direction, repeat }: Required<Reading>) =>
    [depth, direction, repeat].filter((part) => part !== "").join(" · ");
  const [twice] = [...grouped(placed, keyOf)].find(([, rows]) => rows.length > 1) ?? [];
  if (twice === undefined) return readings;
  return problem({
    code: "reading-twice",
    what: name,
    got: `${twice} twice`,
    must: "stand once",
    why: "a correction replaces the first reading, and an average would hide the difference",
    hint: "number repeats in the column repeat",
  });
}

/** Largest difference of repeats at one place; absent where nothing was repeated. */
function repeatSpread(readings: readonly Reading[]): number | undefined {
  const places = [...grouped(readings, ({ depth, direction }) => `${depth} · ${direction}`).values()];
  const repeated = places.filter((rows) => rows.length > 1).map((rows) => rows.map((row) => row.value));
  if (repeated.length === 0) return undefined;
  return Math.max(...repeated.map((values) => Math.max(...values) - Math.min(...values)));
}

const nanometre = 1e-9; // less than this is rounding, not shape

function run(inputs: Insides): Insides | Problem {
  const readings = readingsOf(inputs, "readings");
  if (isProblem(readings)) return readings;
  const depths = depthForms(readings);
  const spread = repeatSpread(readings);
  const odd = depths.find((depth) => depth.mean <= 0);
  if (odd) return problem({ code: "limit", what: `readings at ${odd.depth}`, must: "be diameters above 0" });
  const worst = depths.toSorted((a, b) => (b.ovality ?? 0) - (a.ovality ?? 0))[0];
  const everyWay = depths.every((depth) => depth.ovality !== undefined);
  const rows: readonly Row[] = depths.map(({ depth, mean, ovality }) =>
    ovality === undefined ? { depth, mean } : { depth, mean, ovality },
  );
  return {
    depths: rows,
    ...(spread !== undefined && { repeatSpread: spread }),
    ...(everyWay &&
      worst && {
        ovalDirection: (worst.ovality ?? 0) < nanometre ? "round" : (worst.direction ?? ""),
        ovalDepth: worst.depth,
      }),
    ...(depths.length > 1 && { levels: rows }),
  };
}

/** What the readings cannot say, so that a missing figure is not taken for a good one. */
function remarks(inputs: Insides): readonly string[] {
  const depths = rowsOf(inputs, "depths");
  const oneWay = depths.filter((depth) => cellNumber(depth, "ovality") === undefined);
  return [
    ...(oneWay.length > 0
      ? [`no ovality: one direction only at ${oneWay.map((depth) => cellText(depth, "depth")).join(", ")}`]
      : []),
    ...(depths.length < 2 ? ["no taper: read at one depth only"] : []),
  ];
}

export const holeForm = method({
  id: "hole-form",
  question: "How round and how straight is a bore or a shank, from its readings?",
  inputs: {
    readings: {
      kind: "list",
      says: "diameters as read, at one temperature",
      of: {
        depth: { kind: "text", says: "where along the bore, such as upper half, outer end" },
        direction: { kind: "text", says: "which way across, such as along or across" },
        repeat: { kind: "text", says: "number of the repeat, where a place is read again", optional: true },
        value: { kind: "length", as: "fit diameter", symbol: "D", says: "diameter" },
      },
    },
  },
  procedure: {
    says: "readings are gathered by depth, and at each depth by direction; oval is the largest difference of directions at one depth, taper the largest less the smallest mean of a depth",
    source: diameterForm,
    givesRows: {
      levels: { mean: { kind: "length", symbol: "D_m" } },
    },
    run,
    remarks,
  },
  steps: {
    mean: "mean(readings.value)",
    smallest: "smallest(readings.value)",
    largest: "largest(readings.value)",
    largestDepthMean: "largest(depths.mean)",
    ovality: "largest(depths.ovality)",
    taper: "largest(levels.mean) - smallest(levels.mean)",
  },
  outputs: {
    mean: { kind: "length", symbol: "D_mean", says: "mean of all readings" },
    smallest: { kind: "length", symbol: "D_min", says: "smallest reading" },
    largest: { kind: "length", symbol: "D_max", says: "largest reading" },
    largestDepthMean: { kind: "length", symbol: "D_m,max", says: "largest mean at one depth" },
    ovality: {
      kind: "length",
      symbol: "o",
      says: "oval",
      optional: true,
    },
    ovalDirection: { kind: "text", says: "direction of the largest diameter there", optional: true },
    ovalDepth: { kind: "text", says: "depth where it is most oval", optional: true },
    taper: { kind: "length", symbol: "t", says: "taper", optional: true },
    repeatSpread: {
      kind: "length",
      symbol: "r",
      says: "largest difference of repeats at one place",
      optional: true,
    },
    depths: {
      kind: "list",
      says: "form depth by depth",
      of: {
        depth: { kind: "text", says: "depth" },
        mean: { kind: "length", symbol: "D_m", says: "mean" },
        ovality: { kind: "length", symbol: "o", says: "oval" },
      },
    },
  },
  limits: [],
  sources: { "*": diameterForm },
  notes: [
    "diameters cannot show a step at the split line: only a through pin, or boring in line, does",
    "the direction of an oval hole is a clue to what wore it: draw it",
  ],
});
