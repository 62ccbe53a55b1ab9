// The rows of a torque record that do not add up: missing, off in torque, off in angle, unplanned.
import { median } from "../../median.ts";
import { isProblem } from "../../problem.ts";
import { atMost } from "../../verdict.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import type { Row } from "../inside.ts";
import { applied, keyOf, type Planned, type Recorded } from "./record-rows.ts";
import { adapterSlips, likeliest, passSlips, runOnSlips, unitSlips } from "./slip-causes.ts";

export interface Tolerances {
  /** Share of the net torque. */
  readonly torque: number;
  /** rad either side of the median of the pass. */
  readonly angle: number;
  /** Share by which a ratio may miss a known slip. */
  readonly slip: number;
}

const netAgrees = 1e-3; // share by which a net torque written in the row may miss the plan
const fewestAngles = 3; // below this a median says nothing

/** Net torque that a number on the wrench stands for. */
function netOf(row: Recorded, read: number): number {
  const found = evaluateSteps(applied, { read, runOn: row.runOn, leverRatio: row.lever });
  return isProblem(found) ? Number.NaN : (found["applied"] ?? Number.NaN);
}

/** Every row that counts, with the net torque at the nut that its reading stands for. */
export const countedRows = (rows: readonly Recorded[]): readonly Row[] =>
  rows.map((row) => ({
    pass: row.pass,
    position: row.position,
    ...(row.read === undefined ? {} : { torque: netOf(row, row.read) }),
    ...(row.angle === undefined ? {} : { angle: row.angle }),
  }));

const beyond = (row: Recorded, number: number, tolerance: number): boolean =>
  !atMost(Math.abs(netOf(row, number) - row.net), tolerance * row.net, row.net);

function cause(row: Recorded, ratio: number, all: readonly Recorded[], tolerance: number): string {
  const otherPasses = all.filter((other) => other.position === row.position && other.net !== row.net);
  const slips = [
    ...unitSlips(row.unit),
    ...adapterSlips(
      row.lever,
      all.map((other) => other.lever),
    ),
    ...runOnSlips(row.net, row.runOn),
    ...passSlips(row.net, row.runOn, otherPasses),
  ];
  return likeliest(ratio, slips, tolerance) ?? "no known slip gives this ratio: ask, and read again";
}

function torqueFinding(row: Recorded, all: readonly Recorded[], tolerance: Tolerances): Row[] {
  const { position, pass, read, set, due } = row;
  if (read === undefined)
    return [
      {
        position,
        pass,
        what: "missing reading",
        likelyCause: "the row was begun and not finished: read again",
      },
    ];
  const isOff = beyond(row, read, tolerance.torque);
  const number = isOff ? read : set;
  if (number === undefined || !(isOff || beyond(row, number, tolerance.torque))) return [];
  const ratio = number / due;
  return [
    {
      position,
      pass,
      what: isOff ? "torque" : "set torque",
      ratio,
      net: netOf(row, number),
      likelyCause: cause(row, ratio, all, tolerance.slip),
    },
  ];
}

function netFinding({ position, pass, written, net }: Recorded): Row[] {
  if (written === undefined || Math.abs(written / net - 1) <= netAgrees) return [];
  return [
    {
      position,
      pass,
      what: "net torque",
      ratio: written / net,
      likelyCause: "the row was written for another target than the plan",
    },
  ];
}

/** Angles of one pass against their median: friction holds a nut back, yield lets it run on. */
function angleFindings(rows: readonly Recorded[], tolerance: number): Row[] {
  const read = rows.flatMap((row) => (row.angle === undefined ? [] : [{ ...row, angle: row.angle }]));
  if (read.length < fewestAngles) return [];
  const middle = median(read.map((row) => row.angle)) ?? Number.NaN;
  return read
    .filter(
      (row) =>
        !atMost(Math.abs(row.angle - middle), tolerance, Math.max(Math.abs(row.angle), Math.abs(middle))),
    )
    .map(({ position, pass, angle }) => ({
      position,
      pass,
      what: "angle",
      ratio: angle / middle,
      angle,
      likelyCause:
        angle < middle
          ? "torque went into friction: is the thread dragging?"
          : "the nut ran on: is something yielding or crushing?",
    }));
}

/** Every finding, in the order of the plan, then rows that the plan does not know. */
export function findingsOf(
  plan: readonly Planned[],
  rows: readonly Recorded[],
  tolerance: Tolerances,
): readonly Row[] {
  const byKey = new Map(rows.map((row) => [keyOf(row), row]));
  const passes = [...new Set(plan.map((row) => row.pass))];
  const angles = passes.flatMap((pass) =>
    angleFindings(
      rows.filter((row) => row.pass === pass),
      tolerance.angle,
    ),
  );
  const planned = plan.flatMap((due): Row[] => {
    const row = byKey.get(keyOf(due));
    const { position, pass } = due;
    if (!row)
      return [
        { position, pass, what: "missing row", likelyCause: "passed over, or done and not written down" },
      ];
    const odd = angles.filter((each) => each["pass"] === pass && each["position"] === position);
    return [...netFinding(row), ...torqueFinding(row, rows, tolerance), ...odd];
  });
  const keys = new Set(plan.map(keyOf));
  const unplanned = rows
    .filter((row) => !keys.has(keyOf(row)))
    .map(
      ({ position, pass }): Row => ({
        position,
        pass,
        what: "not in the plan",
        likelyCause: "was another position meant?",
      }),
    );
  return [...planned, ...unplanned];
}
