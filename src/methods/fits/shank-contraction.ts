// How much thinner does a shank become when its bolt is tightened, and what is left of the fit?
import { interferenceOver } from "../cross-limits.ts";
import { method } from "../method.ts";
import { hooke } from "../sources.ts";

export const shankContraction = method({
  id: "shank-contraction",
  question: "How much thinner does a tensioned shank become, and what is left of its interference?",
  inputs: {
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "shank diameter" },
    axialStress: { kind: "stress", symbol: "σ", says: "axial stress in the shank: preload over shank area" },
    modulus: { kind: "stress", as: "modulus", symbol: "E", says: "modulus of elasticity of the bolt" },
    poisson: { kind: "ratio", as: "poisson", symbol: "ν", says: "Poisson's ratio of the bolt" },
    interference: {
      kind: "length",
      symbol: "δ",
      says: "interference before tightening, negative for clearance",
      optional: true,
    },
  },
  steps: {
    contraction: "poisson * axialStress * diameter / modulus",
    interferenceLeft: "interference - contraction",
  },
  outputs: {
    contraction: { kind: "length", symbol: "Δd", says: "loss of diameter" },
    interferenceLeft: {
      kind: "length",
      symbol: "δ_left",
      says: "interference left, negative for clearance",
      optional: true,
    },
  },
  limits: [...interferenceOver("interference", "diameter")],
  sources: { "*": hooke },
  notes: ["friction in the bore delays this; it is the unfavourable estimate"],
});
