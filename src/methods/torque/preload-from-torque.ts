// What preload does a torque give?
import { method } from "../method.ts";
import { shortTorque } from "../sources.ts";

export const preloadFromTorque = method({
  id: "preload-from-torque",
  question: "What preload does a net torque at the nut give?",
  inputs: {
    torque: { kind: "torque", symbol: "T", says: "net torque at the nut" },
    nutFactor: { kind: "ratio", as: "nut factor", symbol: "K", says: "nut factor" },
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "nominal diameter of the thread" },
  },
  steps: { preload: "torque / (nutFactor * diameter)" },
  outputs: { preload: { kind: "force", symbol: "F", says: "preload" } },
  limits: [{ that: "torque >= 0", else: "a tightening torque has no direction here" }],
  sources: { preload: shortTorque },
  notes: [
    "net torque: take the run-on torque of a locking nut off first",
    "the nut factor belongs to this lubricant, washer, nut and speed; change one and it is unknown again",
  ],
});
