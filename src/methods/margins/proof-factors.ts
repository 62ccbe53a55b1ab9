// How far are yielding, overload and separation for one preloaded bolt?
import { method } from "../method.ts";
import { proofFactors as relations } from "../sources.ts";

export const proofFactors = method({
  id: "proof-factors",
  question: "How far is a preloaded bolt from proof, and the joint from opening?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    externalLoad: { kind: "force", symbol: "P", says: "outside load per bolt" },
    loadFactor: { kind: "ratio", as: "share", symbol: "C", says: "load factor" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    proofStress: { kind: "stress", symbol: "S_p", says: "proof stress" },
  },
  steps: {
    yieldingFactor: "proofStress * stressArea / (loadFactor * externalLoad + preload)",
    loadFactorOfSafety: "(proofStress * stressArea - preload) / (loadFactor * externalLoad)",
    separationFactor: "preload / (externalLoad * (1 - loadFactor))",
  },
  outputs: {
    yieldingFactor: { kind: "ratio", symbol: "n_p", says: "factor on bolt load to proof" },
    loadFactorOfSafety: { kind: "ratio", symbol: "n_L", says: "factor on outside load to proof" },
    separationFactor: { kind: "ratio", symbol: "n_0", says: "factor on outside load to separation" },
  },
  limits: [
    { that: "preload > 0", else: "nothing is tightened" },
    { that: "externalLoad > 0", else: "without a load no factor is defined" },
    { that: "loadFactor > 0", else: "the bolt would feel nothing" },
    { that: "loadFactor < 1", else: "the clamped parts would carry nothing" },
    { that: "stressArea > 0", else: "no stress is defined" },
    { that: "proofStress > 0", else: "no factor is defined" },
    {
      that: "loadFactorOfSafety > 0",
      else: "the preload alone reaches proof, so no outside load is left to have a factor on",
      warn: "spoils",
      spoils: ["loadFactorOfSafety"],
    },
    {
      that: "separationFactor >= 1",
      else: "the joint is open, so the bolt carries the whole load and the first two factors do not hold",
      warn: "spoils",
      spoils: ["yieldingFactor", "loadFactorOfSafety"],
    },
  ],
  sources: { "*": relations },
});
