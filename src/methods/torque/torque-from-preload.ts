// What net torque gives a wanted preload?
import { method } from "../method.ts";
import { shortTorque } from "../sources.ts";

export const torqueFromPreload = method({
  id: "torque-from-preload",
  question: "What net torque at the nut gives a wanted preload?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "wanted preload" },
    nutFactor: { kind: "ratio", symbol: "K", says: "nut factor" },
    diameter: { kind: "length", symbol: "d", says: "nominal diameter of the thread" },
  },
  steps: { torque: "nutFactor * diameter * preload" },
  outputs: { torque: { kind: "torque", symbol: "T", says: "net torque at the nut" } },
  limits: [
    { that: "preload >= 0", else: "a bolt is not pushed by its nut" },
    { that: "nutFactor > 0", else: "no torque is defined" },
    {
      that: "nutFactor < 1",
      else: "no thread has such a nut factor",
      hint: "was a percentage or a friction torque entered?",
    },
    { that: "diameter > 0", else: "no torque is defined" },
    { that: "nutFactor >= 0.05", else: "lower than any lubricant in the tables", warn: "advice" },
    { that: "nutFactor <= 0.55", else: "higher than any condition in the tables", warn: "advice" },
  ],
  sources: { torque: shortTorque },
  notes: ["net torque: the running torque of a locking nut comes on top"],
});
