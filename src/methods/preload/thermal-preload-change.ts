// How does preload change when bolt and clamped parts warm by different amounts?
import { method } from "../method.ts";
import { seriesSprings } from "../sources.ts";

export const thermalPreloadChange = method({
  id: "thermal-preload-change",
  question: "How does preload change when bolt and clamped parts warm by different amounts?",
  inputs: {
    boltExpansion: { kind: "expansion", symbol: "α_b", says: "expansion of the bolt" },
    clampedExpansion: { kind: "expansion", symbol: "α_m", says: "expansion of the clamped parts" },
    boltTemperatureRise: {
      kind: "temperature difference",
      symbol: "ΔT_b",
      says: "rise of the bolt above assembly",
    },
    clampedTemperatureRise: {
      kind: "temperature difference",
      symbol: "ΔT_m",
      says: "rise of the clamped parts above assembly",
    },
    grip: { kind: "length", symbol: "l_K", says: "clamped length" },
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness" },
    clampedStiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
  },
  steps: {
    freeDifference:
      "(clampedExpansion * clampedTemperatureRise - boltExpansion * boltTemperatureRise) * grip",
    change: "freeDifference * boltStiffness * clampedStiffness / (boltStiffness + clampedStiffness)",
  },
  between: { freeDifference: { kind: "length", symbol: "Δl", says: "difference of free expansion" } },
  outputs: { change: { kind: "force", symbol: "ΔF", says: "change of preload" } },
  limits: [
    { that: "grip > 0", else: "nothing is clamped" },
    { that: "boltStiffness > 0", else: "a joint needs a bolt" },
    { that: "clampedStiffness > 0", else: "the clamped parts cannot be without stiffness" },
  ],
  sources: { "*": seriesSprings },
  notes: ["elastic parts, constant moduli; a rise is the difference from the temperature at assembly"],
});
