// How far does a bolt stretch under a preload?
import { method } from "../method.ts";
import { elongation } from "../sources.ts";

export const stretchFromPreload = method({
  id: "stretch-from-preload",
  question: "How far does a bolt stretch under a preload?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness between the measuring points" },
  },
  steps: { stretch: "preload / boltStiffness" },
  outputs: { stretch: { kind: "length", symbol: "ΔL", says: "stretch of the bolt" } },
  limits: [
    { that: "boltStiffness > 0", else: "no stretch is defined" },
    { that: "preload >= 0", else: "a bolt is not pushed" },
  ],
  sources: { stretch: elongation },
  notes: ["stiffness over the whole measured length: head, engaged thread and nut stretch too"],
});
