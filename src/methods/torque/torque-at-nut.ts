// What torque reached the fastener when an adapter was on the wrench?
import { method } from "../method.ts";
import { adapter } from "../sources.ts";

export const torqueAtNut = method({
  id: "torque-at-nut",
  question: "What torque reached the fastener when an adapter was on the wrench?",
  inputs: {
    setting: { kind: "torque", symbol: "T_w", says: "torque set or read on the wrench" },
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
  steps: { torque: "setting * (wrenchLength + adapterLength * cos(adapterAngle)) / wrenchLength" },
  outputs: { torque: { kind: "torque", symbol: "T", says: "torque at the fastener" } },
  limits: [
    { that: "setting >= 0", else: "a tightening torque has no direction here" },
    {
      that: "wrenchLength + adapterLength * cos(adapterAngle) > 0",
      else: "the hand would be on the wrong side of the fastener",
    },
  ],
  sources: { torque: adapter },
  notes: ["the length is measured to the middle of the hand, so the hand stays there"],
});
