// What stress does a bolt carry while the wrench still turns it?
// After the wrench is off, part of the torsion springs back.
import { method } from "../method.ts";
import { combinedStress } from "../sources.ts";

export const assemblyStress = method({
  id: "assembly-stress",
  question: "What stress does a bolt carry while the wrench still turns it?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "bolt preload" },
    threadTorque: { kind: "torque", symbol: "T_t", says: "torque that reaches the thread" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    stressDiameter: {
      kind: "length",
      as: "bolt diameter",
      symbol: "d_s",
      says: "diameter of the stress area",
    },
    yieldStress: { kind: "stress", symbol: "R_p", says: "yield stress", optional: true },
  },
  steps: {
    axialStress: "preload / stressArea",
    shearStress: "16 * threadTorque / (pi * stressDiameter^3)",
    equivalentStress: "sqrt(axialStress^2 + 3 * shearStress^2)",
    utilisation: "equivalentStress / yieldStress",
  },
  outputs: {
    axialStress: { kind: "stress", symbol: "σ", says: "axial stress" },
    shearStress: { kind: "stress", symbol: "τ", says: "torsional stress" },
    equivalentStress: { kind: "stress", symbol: "σ_eq", says: "equivalent stress" },
    utilisation: { kind: "ratio", symbol: "ν", says: "share of yield", optional: true },
  },
  limits: [
    { that: "preload >= 0", else: "a bolt is not pushed" },
    { that: "threadTorque >= 0", else: "give the torque without direction" },
    { that: "stressArea > 0", else: "no stress is defined" },
    { that: "yieldStress > 0", else: "no share of yield is defined" },
    { that: "utilisation <= 1", else: "the bolt yields while it is tightened", warn: "advice" },
  ],
  sources: { "*": combinedStress },
  notes: ["the yield stress of a class is its minimum; a bolt of unknown history has no such minimum"],
});
