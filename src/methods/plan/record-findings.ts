// What in a torque record does not add up, and which mistake would explain it?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { numberOf, type Row, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { recordRatios } from "../sources.ts";
import { applied, keyOf, type Planned, plannedRows, type Recorded, recordedRows } from "./record-rows.ts";
import { adapterSlips, likeliest, passSlips, runOnSlips, unitSlips } from "./slip-causes.ts";

export interface Tolerances {
  /** Share of the net torque. */
  readonly torque: number;
  /** rad either side of the median of the pass. */
  readonly angle: number;
  /** Share by which a ratio may miss a known slip. */
  readonly slip: number;
}

const rounding = 1e-9; // a reading on the tolerance is inside it
const netAgrees = 1e-3; // share by which a net torque written in the row may miss the plan
const fewestAngles = 3; // below this a median says nothing

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  return sorted.length % 2 === 1
    ? (sorted[Math.floor(middle)] ?? Number.NaN)
    : ((sorted[middle - 1] ?? Number.NaN) + (sorted[middle] ?? Number.NaN)) / 2;
}

/** Net torque that a number on the wrench stands for. */
function netOf(row: Recorded, read: number): number {
  const found = evaluateSteps(applied, { read, runOn: row.runOn, leverRatio: row.lever });
  return isProblem(found) ? Number.NaN : (found["applied"] ?? Number.NaN);
}

const beyond = (row: Recorded, number: number, tolerance: number): boolean =>
  !(Math.abs(netOf(row, number) / row.net - 1) <= tolerance + rounding);

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
  const middle = median(read.map((row) => row.angle));
  return read
    .filter((row) => Math.abs(row.angle - middle) > tolerance + rounding)
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

function run(inputs: Insides): Insides | Problem {
  const plan = plannedRows(inputs);
  const twice = plan.find((row, index) => plan.findIndex((other) => keyOf(other) === keyOf(row)) !== index);
  if (twice)
    return problem({
      code: "tag-twice",
      what: "plan",
      got: `${keyOf(twice)} twice`,
      must: "hold each row once",
    });
  const record = recordedRows(inputs, plan);
  if (isProblem(record)) return record;
  const findings = findingsOf(plan, record.rows, {
    torque: numberOf(inputs, "torqueTolerance") ?? Number.NaN,
    angle: numberOf(inputs, "angleTolerance") ?? Number.NaN,
    slip: numberOf(inputs, "slipTolerance") ?? Number.NaN,
  });
  const { replaced, otherPasses, blank } = record;
  return { findings, found: findings.length, planned: plan.length, replaced, otherPasses, blank };
}

function remarks(inputs: Insides): readonly string[] {
  const say = (name: string, words: string): string[] => {
    const count = numberOf(inputs, name) ?? 0;
    return count > 0 ? [`${count} ${count === 1 ? "row" : "rows"} ${words}`] : [];
  };
  return [
    `${numberOf(inputs, "planned") ?? 0} rows planned, ${rowsOf(inputs, "rows").length} rows written`,
    ...say("replaced", "replaced by a later row of the same pass and position"),
    ...say("otherPasses", "of passes outside the plan, not judged"),
    ...say("blank", "blank"),
  ];
}

const text = (says: string, optional = false) => ({ kind: "text", says, optional }) as const;
const torque = (symbol: string, says: string) => ({ kind: "torque", symbol, says, optional: true }) as const;

export const recordFindings = method({
  id: "record-findings",
  question: "What in a torque record does not add up, and which mistake would explain it?",
  inputs: {
    plan: {
      kind: "list",
      says: "rows the record has to hold",
      of: {
        pass: text("pass"),
        position: text("position"),
        net: torque("T_n", "net torque"),
        set: torque("T_s", "setting, not used: worked out again from the row"),
      },
    },
    rows: {
      kind: "list",
      says: "rows as written",
      of: {
        pass: text("pass", true),
        position: text("position", true),
        net: torque("T_n", "net torque, where the plan gives none"),
        runOn: torque("T_r", "run-on torque of the nut"),
        adapter: text("adapter, such as 60 mm in line, or none", true),
        set: torque("T_s", "what the wrench was set to"),
        read: torque("T", "what was read, with the unit it was written in"),
        unit: text("unit it was written in", true),
        angle: { kind: "angle", symbol: "φ", says: "angle turned", optional: true },
      },
    },
    wrenchLength: {
      kind: "length",
      symbol: "L",
      says: "length of the wrench to the hand, for rows with an adapter",
      optional: true,
    },
    torqueTolerance: { kind: "ratio", says: "share of the net torque a row may miss it by", default: "5 %" },
    angleTolerance: {
      kind: "angle",
      says: "angle a row may miss the median of its pass by",
      default: "4 deg",
    },
    slipTolerance: { kind: "ratio", says: "share a ratio may miss a known slip by", default: "1 %" },
  },
  procedure: {
    says: "each row against plan, run-on and adapter; a ratio that is off is looked up among those that mistakes give",
    source: recordRatios,
    gives: {
      found: { kind: "count" },
      planned: { kind: "count" },
      replaced: { kind: "count" },
      otherPasses: { kind: "count" },
      blank: { kind: "count" },
    },
    givesRows: {
      findings: {
        position: { kind: "text" },
        pass: { kind: "text" },
        what: { kind: "text" },
        ratio: { kind: "ratio" },
        net: { kind: "torque" },
        angle: { kind: "angle" },
        likelyCause: { kind: "text" },
      },
    },
    run,
    remarks,
  },
  outputs: {
    findings: {
      kind: "list",
      says: "rows to ask about",
      of: {
        position: { kind: "text", says: "position" },
        pass: { kind: "text", says: "pass" },
        what: { kind: "text", says: "what is odd" },
        ratio: { kind: "ratio", says: "found over expected" },
        net: { kind: "torque", says: "net torque it stands for" },
        angle: { kind: "angle", says: "angle turned" },
        likelyCause: { kind: "text", says: "what would explain it" },
      },
    },
    found: { kind: "count", says: "number of findings" },
  },
  limits: [
    { that: "torqueTolerance > 0", else: "no reading is exact" },
    { that: "torqueTolerance < 0.25", else: "the slips themselves would pass", hint: "5 % is usual" },
    { that: "angleTolerance > 0", else: "no angle is exact" },
    { that: "slipTolerance > 0", else: "no ratio is exact" },
    { that: "slipTolerance < 0.1", else: "every ratio would be called a known slip" },
    { that: 'smallest(rows.runOn) >= "0 N.m"', else: "a nut does not turn by itself" },
    { that: 'wrenchLength > "0 mm"', else: "a wrench has a length" },
  ],
  sources: { "*": recordRatios },
  notes: [
    "a row is put right by a later row with a reason, never by overwriting: the later one counts",
    "a cause is a question to the person who held the wrench, not an answer",
    "tolerances of 5 % and 4 deg are common practice, no source",
  ],
});
