// What is left of an interference when both parts warm or cool together?
import { interferenceOver } from "../cross-limits.ts";
import { method } from "../method.ts";
import { soak } from "../sources.ts";

export const fitAfterSoak = method({
  id: "fit-after-soak",
  question: "What becomes of an interference when both parts warm or cool together?",
  inputs: {
    diameter: { kind: "length", as: "fit diameter", symbol: "d", says: "diameter of the fit" },
    innerExpansion: { kind: "expansion", symbol: "α_i", says: "expansion of the inner part" },
    outerExpansion: { kind: "expansion", symbol: "α_o", says: "expansion of the outer part" },
    temperatureRise: {
      kind: "temperature difference",
      symbol: "ΔT",
      says: "rise of both parts, negative for cooling",
    },
    interference: { kind: "length", symbol: "δ", says: "interference before, negative for clearance" },
  },
  steps: {
    change: "diameter * (innerExpansion - outerExpansion) * temperatureRise",
    interferenceAfter: "interference + change",
  },
  outputs: {
    interferenceAfter: { kind: "length", symbol: "δ_T", says: "interference afterwards" },
    change: { kind: "length", symbol: "Δδ", says: "gain of interference" },
  },
  limits: [...interferenceOver("interference", "diameter")],
  sources: { "*": soak },
  notes: ["it is the difference between the parts that frees: heat one fast, or cool the other"],
  cautions: ["C4"],
});
