// What preload does a measured stretch mean?
import { method } from "../method.ts";
import { elongation } from "../sources.ts";

export const preloadFromStretch = method({
  id: "preload-from-stretch",
  question: "What preload does a measured stretch mean?",
  inputs: {
    stretch: { kind: "length", symbol: "ΔL", says: "stretch of the bolt between the measuring points" },
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness between the same points" },
  },
  steps: { preload: "stretch * boltStiffness" },
  outputs: { preload: { kind: "force", symbol: "F", says: "preload" } },
  limits: [
    { that: "boltStiffness > 0", else: "no preload is defined" },
    { that: "stretch >= 0", else: "a tightened bolt grows", hint: "were the two lengths swapped?" },
  ],
  sources: { preload: elongation },
  notes: ["stiffness over the whole measured length: head, engaged thread and nut stretch too"],
});
