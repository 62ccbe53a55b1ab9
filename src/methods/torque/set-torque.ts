// What does the wrench have to read when the nut needs run-on torque while it turns freely?
import { method } from "../method.ts";
import { runOn } from "../sources.ts";

export const setTorque = method({
  id: "set-torque",
  question:
    "What torque is set when a locking nut needs run-on torque of its own (prevailing torque, ISO 2320)?",
  inputs: {
    netTorque: { kind: "torque", symbol: "T", says: "net torque, the part that stretches the bolt" },
    runOnTorque: {
      kind: "torque",
      symbol: "T_r",
      says: "run-on torque of this nut, measured while it turns freely",
    },
  },
  steps: { setTorque: "netTorque + runOnTorque" },
  outputs: { setTorque: { kind: "torque", symbol: "T_set", says: "torque to set" } },
  limits: [
    { that: "netTorque >= 0", else: "a tightening torque has no direction here" },
    { that: "runOnTorque >= 0", else: "run-on torque is not negative" },
    {
      that: "runOnTorque <= netTorque",
      else: "the run-on torque is above the tightening torque",
      warn: "advice",
      hint: "is the nut galling?",
    },
  ],
  sources: { setTorque: runOn },
  notes: ["measure each nut before its face touches; add it once"],
});
