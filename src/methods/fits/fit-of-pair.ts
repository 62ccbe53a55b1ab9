// Will this shank go into this hole, and will it locate? Two clearances, each judged with its doubt.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { nearNominal } from "../cross-limits.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { numberOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { guardedRule, pairEnds, quadrature } from "../sources.ts";
import { depthForms, type Reading, readingsOf } from "./hole-form.ts";
import {
  clearances,
  type HoleSize,
  openEnds,
  pairLimitFields,
  pairLimitGives,
  pairLimits,
  pairState,
  type ShankSize,
  uncertaintyStep,
} from "./pair-fit.ts";

/** The two figures of a part, from its own fields or from its readings. */
function sizesOf(
  inputs: Insides,
  list: "hole" | "shank",
  names: readonly [string, string],
  fromReadings: (readings: readonly Reading[]) => readonly [number, number],
): readonly [number, number] | Problem {
  const typed = names.map((name) => numberOf(inputs, name));
  const readings = readingsOf(inputs, list);
  if (isProblem(readings)) return readings;
  const given = names.filter((_, index) => typed[index] !== undefined);
  if (readings.length > 0)
    return given.length === 0
      ? fromReadings(readings)
      : problem({
          code: "given-twice",
          what: list,
          got: `readings and ${given.join(" and ")}`,
          must: "be given once",
        });
  const [first, second] = typed;
  if (first !== undefined && second !== undefined) return [first, second];
  const lacking = names.filter((_, index) => typed[index] === undefined);
  return problem({
    code: "missing-input",
    what: list,
    got: given.length === 0 ? "nothing" : `no ${lacking.join(" or ")}`,
    must: `be given as ${names.join(" and ")}, or as readings in ${list}`,
  });
}

const holeSizes = (readings: readonly Reading[]): readonly [number, number] => [
  Math.min(...readings.map((reading) => reading.value)),
  Math.max(...depthForms(readings).map((depth) => depth.mean)),
];

const shankSizes = (readings: readonly Reading[]): readonly [number, number] => [
  Math.max(...readings.map((reading) => reading.value)),
  readings.reduce((sum, reading) => sum + reading.value, 0) / readings.length,
];

function run(inputs: Insides): Insides | Problem {
  const hole = sizesOf(inputs, "hole", ["holeSmallest", "holeLargestDepthMean"], holeSizes);
  if (isProblem(hole)) return hole;
  const shank = sizesOf(inputs, "shank", ["shankLargest", "shankMean"], shankSizes);
  if (isProblem(shank)) return shank;
  const limits = pairLimits(inputs);
  if (isProblem(limits)) return limits;
  const sizes: HoleSize & ShankSize = {
    holeSmallest: hole[0],
    holeLargestDepthMean: hole[1],
    shankLargest: shank[0],
    shankMean: shank[1],
  };
  const doubt = evaluateSteps(uncertaintyStep, { ...limits });
  if (isProblem(doubt)) return doubt;
  const judged = pairState(sizes, limits, doubt["uncertainty"] ?? Number.NaN);
  if (isProblem(judged)) return judged;
  const { tightest: _, loosest: __, ...states } = judged; // worked out again, and shown, by the steps
  return { ...sizes, ...limits, ...states };
}

const size = (symbol: string, says: string) =>
  ({ kind: "length", as: "fit diameter", symbol, says, optional: true }) as const;
const value = { kind: "length", as: "fit diameter", symbol: "D", says: "diameter" } as const;
const where = { kind: "text", says: "where along the part" } as const;
const way = { kind: "text", says: "which way across", optional: true } as const;
const repeat = {
  kind: "text",
  says: "number of the repeat, where a place is read again",
  optional: true,
} as const;

export const fitOfPair = method({
  id: "fit-of-pair",
  countsDoubt: true,
  question: "Will this shank go into this hole, and will it locate?",
  inputs: {
    holeSmallest: size("D_min", "smallest reading of the hole"),
    holeLargestDepthMean: size("D_m,max", "largest mean of the hole at one depth"),
    shankLargest: size("d_max", "largest reading of the shank"),
    shankMean: size("d_m", "mean of the shank"),
    hole: {
      kind: "list",
      says: "readings of the hole, in place of its two figures",
      optional: true,
      of: { depth: where, direction: way, repeat, value }, // without depths a bell-mouth would be averaged away
    },
    shank: {
      kind: "list",
      says: "readings of the shank, in place of its two figures",
      optional: true,
      of: { depth: { ...where, optional: true }, direction: way, repeat, value },
    },
    ...pairLimitFields,
  },
  procedure: {
    says: "each end is proven inside its limit by the uncertainty, fails outside by it, else unproven; the worse of the two counts",
    source: guardedRule,
    gives: {
      holeSmallest: { kind: "length", symbol: "D_min" },
      holeLargestDepthMean: { kind: "length", symbol: "D_m,max" },
      shankLargest: { kind: "length", symbol: "d_max" },
      shankMean: { kind: "length", symbol: "d_m" },
      ...pairLimitGives,
    },
    run,
  },
  steps: { ...clearances, ...uncertaintyStep },
  outputs: {
    tightest: { kind: "length", symbol: "c_t", says: "tightest clearance, negative for interference" },
    loosest: { kind: "length", symbol: "c_l", says: "loosest clearance" },
    uncertainty: { kind: "length", symbol: "U_c", says: "expanded uncertainty of a clearance" },
    state: { kind: "text", says: "state of the pair" },
    tightestState: { kind: "text", says: "tightest against its limit", optional: true },
    loosestState: { kind: "text", says: "loosest against its limit", optional: true },
  },
  limits: [
    { that: 'holeUncertainty >= "0 um"', else: "an uncertainty is a width" },
    { that: 'shankUncertainty >= "0 um"', else: "an uncertainty is a width" },
    {
      that: "holeSmallest <= holeLargestDepthMean",
      else: "no mean is below the smallest reading",
      hint: "were the two figures of the hole swapped?",
    },
    {
      that: "shankMean <= shankLargest",
      else: "no mean is above the largest reading",
      hint: "were the two figures of the shank swapped?",
    },
    { that: "tightestAllowed <= loosestAllowed", else: "no clearance lies between the limits" },
    ...nearNominal("holeSmallest", "holeLargestDepthMean"),
    ...nearNominal("shankMean", "shankLargest"),
    ...nearNominal("shankMean", "holeLargestDepthMean"),
    ...openEnds(["state"]),
  ],
  sources: { "*": pairEnds, uncertainty: quadrature },
  notes: [
    "sizes at one temperature: bring readings to 20 degC first (size-at-reference)",
    "a pair that is proven by size may still have a step at the split line or a bolt of the wrong class",
  ],
});
