// Does the crane pull more than the weight?
import { method } from "../method.ts";
import { balance } from "../sources.ts";

export const stuckForce = method({
  id: "stuck-force",
  question: "How much more than the weight does the crane pull?",
  inputs: {
    loadCell: { kind: "force", symbol: "R", says: "load cell" },
    weight: { kind: "force", symbol: "W", says: "weight of the half" },
    rigging: { kind: "force", symbol: "W_r", says: "weight of the rigging below the cell", default: "0 kN" },
  },
  steps: { stuckForce: "loadCell - weight - rigging", ratio: "loadCell / (weight + rigging)" },
  outputs: {
    stuckForce: { kind: "force", symbol: "F_s", says: "pull beyond the weight" },
    ratio: { kind: "ratio", symbol: "q", says: "load cell over weight and rigging" },
  },
  limits: [
    { that: "loadCell >= 0", else: "a load cell under a hook is pulled" },
    { that: "weight > 0", else: "nothing is lifted" },
    { that: "rigging >= 0", else: "rigging has weight" },
  ],
  sources: { "*": balance },
  notes: [
    "never break the joint with the crane: jackscrews break it, the crane lifts",
    "a creeping reading at level gaps is the early sign",
  ],
  cautions: ["C2", "C3"],
});
