// Between which bounds does the preload lie?
import { problem } from "../../problem.ts";
import { method } from "../method.ts";
import { boundsNasa, boundsTm, boundsVdi, scatterBothWays } from "../sources.ts";

const oneSided = {
  maximum: "nominalPreload * (1 + torqueTolerance) * (1 + variation) + thermalChangeMax",
  minimum: "nominalPreload * (1 - torqueTolerance) * (1 - variation) * (1 - relaxation) + thermalChangeMin",
};

const eitherScatter = ["scatter", "nutFactorSpread"];

export const preloadBounds = method({
  id: "preload-bounds",
  question: "Between which bounds does the preload of a tightened bolt lie?",
  inputs: {
    nominalPreload: { kind: "force", symbol: "F", says: "nominal preload" },
    scatter: {
      kind: "ratio",
      as: "scatter",
      symbol: "u",
      says: "scatter of preload, plus or minus",
      optional: true,
    },
    torqueTolerance: {
      kind: "ratio",
      as: "tolerance",
      symbol: "c",
      says: "tolerance of the torque, plus or minus",
      default: "0 %",
    },
    nutFactorSpread: {
      kind: "ratio",
      as: "scatter",
      symbol: "Γ",
      says: "variation of preload from the nut factor, plus or minus",
      optional: true,
    },
    relaxation: {
      kind: "ratio",
      as: "loss",
      symbol: "r",
      says: "share of preload lost by relaxation",
      default: "0 %",
      matters:
        "every joint loses some preload; NASA-STD-5020 asks for at least 5 % in all-metal joints (from memory)",
    },
    thermalChangeMin: {
      kind: "force",
      symbol: "ΔF_min",
      says: "most negative thermal change, with its sign",
      default: "0 kN",
    },
    thermalChangeMax: {
      kind: "force",
      symbol: "ΔF_max",
      says: "most positive thermal change",
      default: "0 kN",
    },
    fastenerCount: {
      kind: "count",
      symbol: "n_f",
      says: "number of fasteners, where the minimum may be averaged over them",
      default: "1",
    },
    tighteningFactor: {
      kind: "ratio",
      symbol: "α_A",
      says: "tightening factor, largest over smallest preload",
      optional: true,
    },
    standard: {
      kind: "text",
      says: "form of the bounds",
      choices: ["plain", "NASA-STD-5020", "NASA TM-106943", "VDI 2230"],
      default: "plain",
    },
  },
  procedure: {
    says: "the scatter is the one given for preload, or else that of the nut factor",
    source: scatterBothWays,
    reads: {
      plain: eitherScatter,
      "NASA-STD-5020": eitherScatter,
      "NASA TM-106943": eitherScatter,
      "VDI 2230": ["tighteningFactor"],
    },
    gives: { variation: { kind: "ratio", symbol: "Γ", says: "variation of preload" } },
    run: ({ scatter, nutFactorSpread, standard, tighteningFactor }) => {
      if (standard === "VDI 2230")
        return tighteningFactor === undefined
          ? problem({
              code: "missing-input",
              what: "tightening factor",
              got: "nothing",
              must: "be given as tighteningFactor for VDI 2230",
              hint: "1.6 to 2.0 for a torque wrench with estimated friction (VDI 2230, quoted in another document)",
            })
          : {};
      if (scatter !== undefined && nutFactorSpread !== undefined)
        return problem({
          code: "two-scatters",
          what: "scatter of preload",
          got: "scatter and nutFactorSpread",
          must: "be given once",
          why: "both say how far preload varies",
        });
      const variation = scatter ?? nutFactorSpread;
      if (variation === undefined)
        return problem({
          code: "missing-input",
          what: "scatter of preload",
          got: "nothing",
          must: "be given as scatter or nutFactorSpread",
          hint: "for example scatter=25 %",
        });
      return { variation };
    },
  },
  variants: {
    by: "standard",
    sources: {
      plain: scatterBothWays,
      "NASA-STD-5020": boundsNasa,
      "NASA TM-106943": boundsTm,
      "VDI 2230": boundsVdi,
    },
    sets: {
      plain: oneSided,
      "NASA-STD-5020": {
        maximum: oneSided.maximum,
        minimum:
          "nominalPreload * (1 - torqueTolerance) * (1 - variation / sqrt(fastenerCount)) * (1 - relaxation) + thermalChangeMin",
      },
      "NASA TM-106943": oneSided,
      "VDI 2230": {
        maximum: "nominalPreload + thermalChangeMax",
        minimum: "nominalPreload / tighteningFactor * (1 - relaxation) + thermalChangeMin",
      },
    },
  },
  outputs: {
    minimum: { kind: "force", symbol: "F_min", says: "least preload" },
    maximum: { kind: "force", symbol: "F_max", says: "largest preload" },
  },
  limits: [
    { that: "nominalPreload > 0", else: "nothing is tightened" },
    { that: "thermalChangeMin <= thermalChangeMax", else: "the two changes are swapped" },
    { that: "fastenerCount >= 1", else: "at least one fastener is tightened" },
    { that: "tighteningFactor >= 1", else: "the largest preload is not below the smallest" },
    {
      that: 'minimum > "0 kN"',
      else: "nothing is left of the least preload",
      warn: "spoils",
      spoils: ["minimum"],
    },
  ],
  sources: { "*": scatterBothWays },
  notes: [
    "scatter is that of preload: plus or minus 25 % on a nut factor is plus 33, minus 20 % on preload",
    "NASA-STD-5020 averages the least preload over the fasteners where separation is not critical, and asks for at least 5 % relaxation in all-metal joints (from memory)",
    "VDI 2230 takes the nominal preload as the largest one and divides by the tightening factor",
  ],
});
