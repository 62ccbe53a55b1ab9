// At what torque in the thread does a loaded bolt begin to yield? Beyond it, change the method of freeing.
import { method } from "../method.ts";
import { combinedStress } from "../sources.ts";

export const stopTorque = method({
  id: "stop-torque",
  question: "What torque may still go through the thread of a loaded bolt before it yields?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload still in the bolt" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    stressDiameter: {
      kind: "length",
      as: "bolt diameter",
      symbol: "d_s",
      says: "diameter of the stress area",
    },
    yieldStress: { kind: "stress", symbol: "R_p", says: "yield stress" },
  },
  steps: {
    axialStress: "preload / stressArea",
    shearRoom: "sqrt((yieldStress^2 - axialStress^2) / 3)",
    threadTorqueAvailable: "shearRoom * pi * stressDiameter^3 / 16",
  },
  between: {
    axialStress: { kind: "stress", symbol: "σ", says: "axial stress" },
    shearRoom: { kind: "stress", symbol: "τ", says: "shear stress left before combined yield" },
  },
  outputs: {
    threadTorqueAvailable: {
      kind: "torque",
      symbol: "T_stop",
      says: "torque that the thread can still take",
    },
  },
  limits: [
    { that: "preload >= 0", else: "a bolt is not pushed" },
    { that: "stressArea > 0", else: "no stress is defined" },
    { that: "yieldStress > 0", else: "no stop is defined" },
    { that: "axialStress < yieldStress", else: "the preload alone is at yield, so no torque is left" },
  ],
  sources: { "*": combinedStress },
  notes: ["the yield stress of a class is its minimum; a bolt of unknown history has no such minimum"],
  cautions: ["C3"],
});
