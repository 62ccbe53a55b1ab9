// What net torque gives a wanted preload?
import { method } from "../method.ts";
import { shortTorque } from "../sources.ts";

export const torqueFromPreload = method({
  id: "torque-from-preload",
  question: "What net torque at the nut gives a wanted preload?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "wanted preload" },
    nutFactor: { kind: "ratio", as: "nut factor", symbol: "K", says: "nut factor" },
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "nominal diameter of the thread" },
  },
  steps: { torque: "nutFactor * diameter * preload" },
  outputs: { torque: { kind: "torque", symbol: "T", says: "net torque at the nut" } },
  limits: [{ that: "preload >= 0", else: "a bolt is not pushed by its nut" }],
  sources: { torque: shortTorque },
  notes: ["net torque: the run-on torque of a locking nut comes on top"],
});
