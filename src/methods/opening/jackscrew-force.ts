// What force do jackscrews give?
import { method } from "../method.ts";
import { shortTorque } from "../sources.ts";

export const jackscrewForce = method({
  id: "jackscrew-force",
  question: "What force do the jackscrews give?",
  inputs: {
    torque: { kind: "torque", symbol: "T", says: "torque on each screw" },
    nutFactor: { kind: "ratio", as: "nut factor", symbol: "K", says: "nut factor" },
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "nominal diameter of the screw" },
    count: { kind: "count", symbol: "n", says: "number of screws" },
  },
  steps: { forceEach: "torque / (nutFactor * diameter)", forceTotal: "forceEach * count" },
  outputs: {
    forceEach: { kind: "force", symbol: "F_1", says: "force of one screw" },
    forceTotal: { kind: "force", symbol: "F", says: "force of all screws" },
  },
  limits: [
    { that: "torque >= 0", else: "give the torque without direction" },
    { that: "count >= 1", else: "at least one screw pushes" },
  ],
  sources: { "*": shortTorque },
  notes: [
    "equal steps on all screws and a gap reading at every step",
    "pads under the tips: a burr on the face reads later as a high spot",
  ],
  cautions: ["C3"],
});
