// What is the wrench set to, position by position and pass by pass?
import { type Problem, problem } from "../../problem.ts";
import { roundDecimal } from "../../units/format.ts";
import { cellNumber, cellText, columnNumbers, numberOf, type Row, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { adapter, passFractions, runOn } from "../sources.ts";
import { leverRatio, setFromNet } from "./lever-ratio.ts";

const byPosition = (rows: readonly Row[]): ReadonlyMap<string, Row> =>
  new Map(rows.map((row) => [cellText(row, "position") ?? "", row]));

/** The order given, else the positions of the run-on list, else one row that stands for all. */
function positionsOf(inputs: Insides): readonly string[] {
  const from = ["order", "runOn"].map((list) => rowsOf(inputs, list)).find((rows) => rows.length > 0);
  return from ? from.map((row) => cellText(row, "position") ?? "") : ["all"];
}

function oddPosition(inputs: Insides, positions: readonly string[]): Problem | undefined {
  for (const list of ["runOn", "adapters"])
    for (const row of rowsOf(inputs, list)) {
      const position = cellText(row, "position") ?? "";
      if (!positions.includes(position))
        return problem({
          code: "odd-position",
          what: list === "runOn" ? "run-on" : "adapter",
          got: `position ${position}`,
          must: "be one of the positions in the order",
        });
    }
  return undefined;
}

/** A wrench set lower than before turns no nut. */
function fallingPass(inputs: Insides): Problem | undefined {
  const shares = columnNumbers(rowsOf(inputs, "fractions"), "fraction");
  const at = shares.findIndex((share, index) => index > 0 && share < (shares[index - 1] ?? 0));
  if (at < 0) return undefined;
  const percent = (share: number | undefined) =>
    `${roundDecimal((share ?? Number.NaN) * 100, { significant: 4 })} %`;
  return problem({
    code: "falling-pass",
    what: "share of the final torque",
    got: `${percent(shares[at])} in pass ${at + 1} after ${percent(shares[at - 1])}`,
    must: "rise or stay from pass to pass",
    why: "a wrench set lower than before turns no nut",
  });
}

function run(inputs: Insides): Insides | Problem {
  const positions = positionsOf(inputs);
  const odd = oddPosition(inputs, positions) ?? fallingPass(inputs);
  if (odd) return odd;
  const [runOns, adapters] = [byPosition(rowsOf(inputs, "runOn")), byPosition(rowsOf(inputs, "adapters"))];
  const without = runOns.size > 0 ? positions.find((position) => !runOns.has(position)) : undefined;
  if (without !== undefined)
    return problem({
      code: "missing-input",
      what: "run-on",
      got: `none for position ${without}`,
      must: "be given for every position, or for none",
      hint: "one average for all nuts hides a nut of high run-on torque",
    });
  const wrenchLength = numberOf(inputs, "wrenchLength");
  if (adapters.size > 0 && wrenchLength === undefined)
    return problem({
      code: "missing-input",
      what: "length of the wrench to the hand",
      got: "nothing",
      must: "be given as wrenchLength",
      why: "an adapter is worked out from it",
    });
  const lever = (position: string): Row => {
    const fitted = adapters.get(position);
    return fitted
      ? {
          wrenchLength: wrenchLength ?? Number.NaN,
          adapterLength: cellNumber(fitted, "length") ?? Number.NaN,
          adapterAngle: cellNumber(fitted, "angle") ?? 0,
        }
      : { leverRatio: 1 };
  };
  const passes = rowsOf(inputs, "fractions").flatMap((row, index) =>
    positions.map(
      (position): Row => ({
        pass: `pass ${index + 1}`,
        position,
        fraction: cellNumber(row, "fraction") ?? Number.NaN,
        runOn: cellNumber(runOns.get(position) ?? {}, "torque") ?? 0,
        ...lever(position),
      }),
    ),
  );
  return { passes };
}

export const passTorques = method({
  id: "pass-torques",
  question: "What is the wrench set to, position by position and pass by pass?",
  inputs: {
    finalTorque: { kind: "torque", symbol: "T", says: "net torque of the last pass" },
    fractions: {
      kind: "list",
      says: "share of the final torque in each pass",
      of: { fraction: { kind: "ratio", symbol: "f", says: "share" } },
    },
    order: {
      kind: "list",
      says: "positions in the order of tightening",
      optional: true,
      unique: ["position"],
      of: { position: { kind: "text", says: "position" } },
    },
    runOn: {
      kind: "list",
      says: "run-on torque of each nut",
      optional: true,
      unique: ["position"],
      of: {
        position: { kind: "text", says: "position" },
        torque: { kind: "torque", symbol: "T_r", says: "run-on torque" },
      },
    },
    adapters: {
      kind: "list",
      says: "positions that need an adapter",
      optional: true,
      unique: ["position"],
      of: {
        position: { kind: "text", says: "position" },
        length: { kind: "length", as: "adapter length", symbol: "E", says: "length of the adapter" },
        angle: { kind: "angle", symbol: "θ", says: "angle out of line", optional: true },
      },
    },
    wrenchLength: {
      kind: "length",
      as: "wrench length",
      symbol: "L",
      says: "length of the wrench to the hand, for positions with an adapter",
      optional: true,
    },
  },
  procedure: {
    says: "every pass goes through every position, in the order given",
    source: passFractions,
    givesRows: {
      passes: {
        fraction: { kind: "ratio", symbol: "f" },
        runOn: { kind: "torque", symbol: "T_r" },
        wrenchLength: { kind: "length", symbol: "L" },
        adapterLength: { kind: "length", symbol: "E" },
        adapterAngle: { kind: "angle", symbol: "θ" },
      },
    },
    run,
  },
  each: { passes: { leverRatio, net: "fraction * finalTorque", set: setFromNet } },
  steps: { largestSet: "largest(passes.set)" },
  between: { "passes.leverRatio": { kind: "ratio", symbol: "q", says: "setting over torque at the nut" } },
  outputs: {
    passes: {
      kind: "list",
      says: "settings",
      of: {
        position: { kind: "text", says: "position" },
        pass: { kind: "text", says: "pass" },
        net: { kind: "torque", symbol: "T_n", says: "net torque" },
        set: { kind: "torque", symbol: "T_s", says: "what the wrench is set to" },
      },
    },
    largestSet: { kind: "torque", symbol: "T_s,max", says: "largest setting: choose the wrench by it" },
  },
  limits: [
    { that: 'finalTorque > "0 N.m"', else: "nothing is tightened" },
    { that: "smallest(fractions.fraction) > 0", else: "a pass at nothing is no pass" },
    {
      that: "largest(fractions.fraction) <= 1",
      else: "a pass above the final torque overloads",
      hint: "was a percentage meant?",
    },
    {
      that: "largest(fractions.fraction) >= 1",
      else: "no pass reaches the final torque",
      hint: "end with 100 %",
      warn: "advice",
    },
    { that: 'smallest(runOn.torque) >= "0 N.m"', else: "a nut does not turn by itself" },
    {
      that: 'smallest(passes.set) > "0 N.m"',
      else: "the adapter reaches back past the hand",
    },
  ],
  sources: { "*": passFractions, leverRatio: adapter, set: runOn },
  notes: [
    "fractions such as 30, 60, 100 % are common practice; repeat the last pass until no nut moves",
    "the set torque is not rounded here: round to the scale of the wrench when it is set",
  ],
});
