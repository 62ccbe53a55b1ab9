// How far is a nut turned from snug for a preload, as long as everything is elastic?
import { method } from "../method.ts";
import { nutTurn } from "../sources.ts";

export const turnForPreload = method({
  id: "turn-for-preload",
  question: "How far is a nut turned from snug for a preload?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload to add" },
    pitch: { kind: "length", as: "pitch", symbol: "p", says: "pitch" },
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness" },
    clampedStiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
  },
  steps: {
    stretch: "preload / boltStiffness",
    compression: "preload / clampedStiffness",
    angle: "2 * pi * (stretch + compression) / pitch",
  },
  outputs: {
    angle: { kind: "angle", symbol: "θ", says: "turn of the nut" },
    stretch: { kind: "length", symbol: "ΔL", says: "stretch of the bolt" },
    compression: { kind: "length", symbol: "ΔC", says: "compression of the clamped parts" },
  },
  limits: [
    { that: "preload >= 0", else: "a bolt is not pushed" },
    { that: "boltStiffness > 0", else: "a joint needs a bolt" },
    { that: "clampedStiffness > 0", else: "the clamped parts cannot be without stiffness" },
  ],
  sources: { "*": nutTurn },
  notes: [
    "elastic parts from snug: faces that still close, paint and burrs take more turn",
    "a low angle at full torque is a dragging thread, a high one yielding or crushing: both stop the job",
  ],
});
