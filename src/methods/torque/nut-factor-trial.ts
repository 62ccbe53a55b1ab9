// What nut factor and what scatter does a trial on a few bolts support?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { numberOf, type Row, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { gaugeResolution, shortTorque, toleranceFactorSource, trialStatistics } from "../sources.ts";
import { chiSquareQuantile, normalHalfWidth } from "./chi-square.ts";

function run(inputs: Insides): Insides | Problem {
  const trials = trialRows(inputs);
  if (isProblem(trials)) return trials;
  if (trials.length < 2)
    return problem({
      code: "limit",
      what: "trial",
      got: `${trials.length} bolt`,
      must: "have at least two, better six or more",
      why: "one bolt shows no spread",
    });
  const confidence = numberOf(inputs, "confidence") ?? Number.NaN;
  return {
    trials,
    gaugeStep: gaugeStep(inputs),
    halfWidth: normalHalfWidth(numberOf(inputs, "coverage") ?? Number.NaN),
    chiSquare: chiSquareQuantile(1 - confidence, trials.length - 1),
  };
}

/** Finest step of the measurement as a preload, N: nearer together two bolts read alike. */
const gaugeStep = (inputs: Insides): number =>
  numberOf(inputs, "preloadResolution") ??
  (numberOf(inputs, "stretchResolution") ?? 0) * (numberOf(inputs, "boltStiffness") ?? 0);

/** Measured preloads, or stretches that the bolt stiffness turns into preloads further on. */
function trialRows(inputs: Insides): readonly Row[] | Problem {
  const [preloads, stretches] = [rowsOf(inputs, "preloads"), rowsOf(inputs, "stretches")];
  if (preloads.length > 0 && stretches.length > 0)
    return problem({
      code: "both-given",
      what: "trial",
      got: "preloads and stretches",
      must: "be one of them",
      why: "the same bolts would be counted twice",
    });
  if (preloads.length > 0) return preloads;
  if (stretches.length > 0 && numberOf(inputs, "boltStiffness") !== undefined) return stretches;
  return problem({
    code: "missing-input",
    what: "trial",
    got: stretches.length > 0 ? "stretches without a bolt stiffness" : "nothing measured",
    must: "be given as preloads, or as stretches with boltStiffness",
    hint: 'for example preloads=["150 kN", "142 kN"]',
  });
}

export const nutFactorTrial = method({
  id: "nut-factor-trial",
  question: "What nut factor and what scatter of preload does a trial support?",
  inputs: {
    torque: { kind: "torque", symbol: "T", says: "net torque of the trial" },
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "nominal diameter" },
    preloads: {
      kind: "list",
      says: "measured preloads",
      optional: true,
      of: { preload: { kind: "force", symbol: "F", says: "preload of one bolt" } },
    },
    stretches: {
      kind: "list",
      says: "measured stretches",
      optional: true,
      of: { stretch: { kind: "length", symbol: "ΔL", says: "stretch of one bolt" } },
    },
    boltStiffness: {
      kind: "stiffness",
      symbol: "k_b",
      says: "bolt stiffness between the measuring points, for stretches",
      optional: true,
    },
    preloadResolution: {
      kind: "force",
      symbol: "r_F",
      says: "finest step of the measured preloads",
      optional: true,
    },
    stretchResolution: {
      kind: "length",
      symbol: "r_L",
      says: "finest step of the measured stretches",
      optional: true,
    },
    coverage: {
      kind: "ratio",
      as: "share",
      symbol: "p",
      says: "share of bolts the spread is to hold",
      default: "95 %",
      matters: "the spread is held by this share of bolts, and no more",
    },
    confidence: {
      kind: "ratio",
      as: "share",
      symbol: "γ",
      says: "confidence of the spread",
      default: "95 %",
      matters: "the spread is right with this confidence, and no more",
    },
  },
  procedure: {
    says: "the bolts of the trial and the quantiles of the normal and chi-square distributions",
    source: toleranceFactorSource,
    reads: (inputs) => [
      "preloads",
      "stretches",
      "coverage",
      "confidence",
      ...(rowsOf(inputs, "preloads").length > 0
        ? ["preloadResolution"]
        : ["stretchResolution", "boltStiffness"]),
    ],
    gives: {
      gaugeStep: { kind: "force", symbol: "r", says: "finest step of the measurement, as a preload" },
      halfWidth: {
        kind: "ratio",
        symbol: "z",
        says: "half width of the normal distribution for the coverage",
      },
      chiSquare: { kind: "ratio", symbol: "χ²", says: "lower chi-square point for the confidence" },
    },
    givesRows: {
      trials: { stretch: { kind: "length", symbol: "ΔL", says: "stretch of one bolt" } },
    },
    run,
  },
  each: { trials: { preload: "stretch * boltStiffness" } },
  steps: {
    trialCount: "count(trials.preload)",
    meanPreload: "mean(trials.preload)",
    standardDeviation: "max(deviation(trials.preload), gaugeStep / sqrt(12))",
    relativeDeviation: "standardDeviation / meanPreload",
    toleranceFactor: "halfWidth * sqrt((trialCount - 1) * (1 + 1 / trialCount) / chiSquare)",
    spread: "toleranceFactor * relativeDeviation",
    minimumPreload: "meanPreload * max(0, 1 - spread)",
    maximumPreload: "meanPreload * (1 + spread)",
    nutFactor: "torque / (diameter * meanPreload)",
  },
  between: {
    trialCount: { kind: "count", symbol: "n", says: "number of bolts tried" },
    relativeDeviation: { kind: "ratio", symbol: "s/F", says: "standard deviation over mean" },
  },
  outputs: {
    meanPreload: { kind: "force", symbol: "F_m", says: "mean preload" },
    standardDeviation: { kind: "force", symbol: "s", says: "standard deviation of preload" },
    toleranceFactor: { kind: "ratio", symbol: "k", says: "two-sided tolerance factor" },
    spread: { kind: "ratio", symbol: "u", says: "spread of preload, plus or minus, that the trial supports" },
    nutFactor: { kind: "ratio", symbol: "K", says: "nut factor at the mean preload" },
    minimumPreload: { kind: "force", symbol: "F_lo", says: "lower end of the spread" },
    maximumPreload: { kind: "force", symbol: "F_hi", says: "upper end of the spread" },
    trials: {
      kind: "list",
      says: "preload of each bolt",
      of: { preload: { kind: "force", symbol: "F", says: "preload of one bolt" } },
    },
  },
  limits: [
    { that: "torque > 0", else: "no trial is described" },
    { that: "preloadResolution >= 0", else: "a step of a gauge is not negative" },
    { that: "stretchResolution >= 0", else: "a step of a gauge is not negative" },
    { that: "boltStiffness > 0", else: "no preload follows from a stretch" },
    { that: "coverage > 0", else: "a share of bolts lies between 0 and 1" },
    { that: "coverage < 1", else: "no finite spread holds every bolt" },
    { that: "confidence > 0", else: "a confidence lies between 0 and 1" },
    { that: "confidence < 1", else: "a few bolts never make it certain" },
    { that: "smallest(trials.preload) > 0", else: "every bolt of a trial is tightened" },
    {
      that: "trialCount >= 5",
      else: "so few bolts that the tolerance factor mostly shows what is not known",
      hint: "try six or more",
      warn: "advice",
    },
    {
      that: "spread < 1",
      else: "the trial shows no least preload above zero",
      hint: "try more bolts, or find what differs between them",
      warn: "spoils",
      spoils: ["minimumPreload"],
    },
    {
      that: "standardDeviation > 1e-9 * meanPreload",
      else: "equal readings show that the gauge cannot tell these bolts apart, not that they do not differ",
      hint: "give the finest step of the gauge as stretchResolution or preloadResolution",
      warn: "spoils",
      spoils: ["standardDeviation", "spread", "minimumPreload", "maximumPreload"],
    },
  ],
  sources: {
    "*": trialStatistics,
    standardDeviation: gaugeResolution,
    toleranceFactor: toleranceFactorSource,
    spread: toleranceFactorSource,
    minimumPreload: toleranceFactorSource,
    maximumPreload: toleranceFactorSource,
    nutFactor: shortTorque,
  },
  notes: [
    "the statistics are on preload: plus or minus 25 % on a nut factor is plus 33, minus 20 % on preload",
    "the wrench's and the measurement's own errors come on top of this spread",
    "the deviation is never less than the finest step of the gauge over the root of 12",
    "holds for this bolt, paste, washer, nut and speed; change one and the nut factor is unknown again",
    "assumes preloads spread normally; a bolt that stands apart is looked into before it is left out",
  ],
});
