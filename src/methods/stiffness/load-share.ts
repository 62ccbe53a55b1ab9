// What share of an outside load does the bolt feel?
import { method } from "../method.ts";
import { jointConstant } from "../sources.ts";

export const loadShare = method({
  id: "load-share",
  question: "What share of an outside load reaches the bolt while the joint is closed?",
  inputs: {
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness" },
    clampedStiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
    loadIntroduction: {
      kind: "ratio",
      as: "share",
      symbol: "n",
      says: "load introduction factor: 1 for a load at the outer faces",
      default: "1",
    },
  },
  steps: { loadFactor: "loadIntroduction * boltStiffness / (boltStiffness + clampedStiffness)" },
  outputs: { loadFactor: { kind: "ratio", symbol: "φ", says: "load factor" } },
  limits: [
    { that: "boltStiffness > 0", else: "a joint needs a bolt" },
    { that: "clampedStiffness > 0", else: "the clamped parts cannot be without stiffness" },
  ],
  sources: { loadFactor: jointConstant },
});
