// Which bolt goes in which hole? Most proven pairs first, then fewest moved bolts, then closest to
// the target clearance: solved exactly, with the proof checked on every run.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { cellNumber, cellText, numberOf, type Row, rowsOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { assignmentProof, pairEnds, quadrature } from "../sources.ts";
import { type Assignment, assign, proofOf } from "./assignment.ts";
import { type Bolt, exactCosts, type Hole, type Job, pairsOf } from "./bolt-choice.ts";
import {
  openEnds,
  type PairLimits,
  pairLimitFields,
  pairLimitGives,
  pairLimits,
  uncertaintyStep,
} from "./pair-fit.ts";
import { type Sized, sizeSlip } from "./size-slips.ts";

const holesOf = (inputs: Insides): readonly Hole[] =>
  rowsOf(inputs, "holes").map((row) => {
    const tag = cellText(row, "tag") ?? "";
    return {
      tag,
      bolt: cellText(row, "bolt") ?? tag,
      holeSmallest: cellNumber(row, "smallest") ?? Number.NaN,
      holeLargestDepthMean: cellNumber(row, "largestDepthMean") ?? Number.NaN,
    };
  });

const boltsOf = (inputs: Insides): readonly Bolt[] =>
  rowsOf(inputs, "bolts").map((row) => ({
    tag: cellText(row, "tag") ?? "",
    shankLargest: cellNumber(row, "largest") ?? Number.NaN,
    shankMean: cellNumber(row, "mean") ?? Number.NaN,
  }));

const sizesOf = (holes: readonly Hole[], bolts: readonly Bolt[]): readonly Sized[] => [
  ...holes.map(
    ({ tag, holeSmallest: low, holeLargestDepthMean: high }): Sized => ({
      part: `hole ${tag}`,
      low,
      high,
      names: ["smallest reading", "largest mean at one depth"],
    }),
  ),
  ...bolts.map(
    ({ tag, shankMean: low, shankLargest: high }): Sized => ({
      part: `bolt ${tag}`,
      low,
      high,
      names: ["mean", "largest reading"],
    }),
  ),
];

/** Middle of the limits, unless another target is given. */
function targetOf(inputs: Insides, limits: PairLimits): number | Problem {
  const given = numberOf(inputs, "targetClearance");
  const { tightestAllowed, loosestAllowed } = limits;
  if (given !== undefined) return given;
  if (tightestAllowed !== undefined && loosestAllowed !== undefined)
    return (tightestAllowed + loosestAllowed) / 2;
  return problem({
    code: "missing-input",
    what: "target clearance",
    got: "nothing",
    must: "be given as targetClearance",
    why: "the middle of the limits is taken only where both are given",
  });
}

function run(inputs: Insides): Insides | Problem {
  const [holes, bolts] = [holesOf(inputs), boltsOf(inputs)];
  const slip = sizeSlip(sizesOf(holes, bolts));
  if (slip) return slip;
  const limits = pairLimits(inputs);
  if (isProblem(limits)) return limits;
  const doubt = evaluateSteps(uncertaintyStep, { ...limits });
  if (isProblem(doubt)) return doubt;
  const target = targetOf(inputs, limits);
  if (isProblem(target)) return target;
  const pairs = pairsOf(holes, bolts, { limits, uncertainty: doubt["uncertainty"] ?? Number.NaN, target });
  if (isProblem(pairs)) return pairs;
  const job: Job = { holes, bolts, pairs, wishes: textOf(inputs, "wishes") ?? "" };
  const exact = exactCosts(job);
  if (isProblem(exact)) return exact;
  const { costs } = exact;
  const found = assign(costs);
  const proof = found && proofOf(costs, found);
  if (!found || !proof?.holds) throw new Error("select-bolts: the assignment is not proven to be the best");
  return {
    ...limits,
    targetClearance: target,
    ...answer(job, found),
    proof: "no better choice exists (proved)", // proofOf has just held
  };
}

function answer({ holes, bolts, pairs }: Job, found: Assignment): Insides {
  const chosen = holes.map((hole, index): Row => {
    const column = found.columns[index] ?? -1;
    const [bolt, pair] = [bolts[column], pairs[index]?.[column]];
    if (!bolt || !pair) return { hole: hole.tag, bolt: "none", state: "no answer", moved: false };
    const { tightest, loosest, state, moved } = pair;
    return { hole: hole.tag, bolt: bolt.tag, tightest, loosest, state, moved };
  });
  const used = new Set(chosen.map((pair) => pair["bolt"]));
  const left = bolts.filter((bolt) => !used.has(bolt.tag)).map((bolt) => bolt.tag);
  const potential = (part: string, tag: string, value: number | undefined): Row => ({
    part,
    tag,
    potential: value ?? 0,
  });
  return {
    pairs: chosen,
    proven: chosen.filter((pair) => pair["state"] === "proven").length,
    unproven: chosen.filter((pair) => pair["state"] !== "proven").length,
    moved: chosen.filter((pair) => pair["moved"] === true).length,
    leftOver: left.length > 0 ? left.join(", ") : "none",
    // Any choice costs at least the sum of the figures of holes and bolts; this one costs exactly that.
    potentials: [
      potential("all", "cost", found.cost),
      ...holes.map((hole, index) => potential("hole", hole.tag, found.rowPotentials[index])),
      ...bolts.map((bolt, index) => potential("bolt", bolt.tag, found.columnPotentials[index])),
    ],
  };
}

const size = (symbol: string, says: string) =>
  ({ kind: "length", as: "fit diameter", symbol, says }) as const;

export const selectBolts = method({
  id: "select-bolts",
  countsDoubt: true,
  question: "Which bolt goes in which hole?",
  inputs: {
    holes: {
      kind: "list",
      says: "holes to fill",
      unique: ["tag"],
      of: {
        tag: { kind: "text", says: "position of the hole" },
        smallest: size("D_min", "smallest reading"),
        largestDepthMean: size("D_m,max", "largest mean at one depth"),
        bolt: { kind: "text", says: "tag of the bolt that is in it now, if not the same", optional: true },
      },
    },
    bolts: {
      kind: "list",
      says: "bolts to choose from",
      unique: ["tag"],
      of: {
        tag: { kind: "text", says: "tag of the bolt" },
        largest: size("d_max", "largest reading of the shank"),
        mean: size("d_m", "mean of the shank"),
      },
    },
    ...pairLimitFields,
    targetClearance: {
      kind: "length",
      symbol: "c_0",
      says: "clearance aimed at, middle between tightest and loosest",
      optional: true,
    },
    wishes: {
      kind: "text",
      says: "wishes, the first one first",
      choices: ["proven, moved, target", "proven, target, moved"],
      default: "proven, moved, target",
    },
  },
  procedure: {
    says: "exact assignment: most proven pairs, then fewest empty holes, then the wishes in order; a pair that fails is never chosen",
    source: assignmentProof,
    gives: {
      ...pairLimitGives,
      targetClearance: { kind: "length", symbol: "c_0" },
      moved: { kind: "count", symbol: "n_moved" },
      proven: { kind: "count", symbol: "n_proven" },
      unproven: { kind: "count", symbol: "n_unproven" },
    },
    givesRows: {
      pairs: {
        tightest: { kind: "length" },
        loosest: { kind: "length" },
      },
    },
    run,
  },
  steps: uncertaintyStep,
  outputs: {
    pairs: {
      kind: "list",
      says: "hole by hole",
      of: {
        hole: { kind: "text", says: "hole" },
        bolt: { kind: "text", says: "bolt" },
        tightest: { kind: "length", symbol: "c_t", says: "tightest clearance" },
        loosest: { kind: "length", symbol: "c_l", says: "loosest clearance" },
        state: { kind: "text", says: "state" },
        moved: { kind: "yes/no", says: "the bolt moves" },
      },
    },
    proven: { kind: "count", says: "holes with a proven pair" },
    moved: { kind: "count", says: "bolts that move" },
    unproven: { kind: "count", says: "holes without a proven pair" },
    leftOver: { kind: "text", says: "bolts left over" },
    proof: { kind: "text", says: "why no better choice exists" },
    potentials: {
      kind: "list",
      says: "figures of the proof",
      recordOnly: true,
      of: {
        part: { kind: "text", says: "hole, bolt or all" },
        tag: { kind: "text", says: "tag" },
        potential: { kind: "count", says: "figure" },
      },
    },
    uncertainty: { kind: "length", symbol: "U_c", says: "expanded uncertainty of a clearance" },
  },
  limits: [
    { that: 'holeUncertainty >= "0 um"', else: "an uncertainty is a width" },
    { that: 'shankUncertainty >= "0 um"', else: "an uncertainty is a width" },
    { that: "tightestAllowed <= loosestAllowed", else: "no clearance lies between the limits" },
    ...openEnds(["pairs", "proven", "unproven"]),
    {
      that: "unproven == 0",
      else: "some holes have no proven pair",
      hint: "the next oversize with a new bolt, or a better measurement",
      warn: "advice",
    },
  ],
  sources: { "*": pairEnds, uncertainty: quadrature },
  notes: [
    "give only bolts that are sound: class, growth, threads and cracks are judged before",
    "re-tag every bolt that moves; nuts stay with their positions",
  ],
});
