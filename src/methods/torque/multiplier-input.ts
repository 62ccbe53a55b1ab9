// What goes into a torque multiplier for a wanted torque at its output?
import { method } from "../method.ts";
import { multiplierRule } from "../sources.ts";

export const multiplierInput = method({
  id: "multiplier-input",
  question: "What torque goes into a multiplier for a wanted torque at the nut?",
  inputs: {
    targetTorque: { kind: "torque", symbol: "T", says: "torque wanted at the nut" },
    ratio: { kind: "ratio", symbol: "i", says: "gear ratio of the multiplier" },
    efficiency: { kind: "ratio", as: "share", symbol: "η", says: "efficiency of the multiplier" },
  },
  steps: { inputTorque: "targetTorque / (ratio * efficiency)" },
  outputs: { inputTorque: { kind: "torque", symbol: "T_in", says: "torque to put in" } },
  limits: [
    { that: "targetTorque >= 0", else: "a tightening torque has no direction here" },
    { that: "ratio >= 1", else: "a multiplier does not divide", hint: "give output over input, such as 5" },
    { that: "efficiency > 0", else: "nothing would come out" },
  ],
  sources: { inputTorque: multiplierRule },
  notes: [
    "take the maker's own ratio and efficiency, or the factor on its certificate",
    "the reaction arm carries the difference: keep hands clear of it",
  ],
  cautions: ["C3"],
});
