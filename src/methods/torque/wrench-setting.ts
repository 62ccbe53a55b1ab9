// What is a torque wrench set to when an adapter moves the square away from the fastener?
import { method } from "../method.ts";
import { adapter } from "../sources.ts";

export const wrenchSetting = method({
  id: "wrench-setting",
  question: "What is a torque wrench set to when an adapter lengthens or shortens it?",
  inputs: {
    targetTorque: { kind: "torque", symbol: "T", says: "torque wanted at the fastener" },
    wrenchLength: {
      kind: "length",
      as: "wrench length",
      symbol: "L",
      says: "length from the square to the middle of the hand",
    },
    adapterLength: {
      kind: "length",
      as: "adapter length",
      symbol: "A",
      says: "length from the square to the fastener",
    },
    adapterAngle: {
      kind: "angle",
      symbol: "θ",
      says: "angle of the adapter to the line of the wrench",
      default: "0 deg",
    },
  },
  steps: { setting: "targetTorque * wrenchLength / (wrenchLength + adapterLength * cos(adapterAngle))" },
  outputs: { setting: { kind: "torque", symbol: "T_w", says: "torque to set on the wrench" } },
  limits: [
    { that: "targetTorque >= 0", else: "a tightening torque has no direction here" },
    {
      that: "wrenchLength + adapterLength * cos(adapterAngle) > 0",
      else: "the hand would be on the wrong side of the fastener",
    },
  ],
  sources: { setting: adapter },
  notes: [
    "the hand stays on the marked point: the length is measured to it",
    "an adapter that lengthens the wrench needs a lower setting, never a higher one",
  ],
});
