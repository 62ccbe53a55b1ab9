// What torque loosens a tightened nut?
import { method } from "../method.ts";
import { powerScrew, torqueParts } from "../sources.ts";
import { frictionBetween, frictionInputs, frictionLimits, loosenRatio } from "./friction-fields.ts";

export const looseningTorque = method({
  id: "loosening-torque",
  question: "What torque loosens a nut that holds a preload?",
  inputs: { preload: { kind: "force", symbol: "F", says: "preload" }, ...frictionInputs },
  variants: { by: "form", sets: loosenRatio },
  steps: {
    threadTorque: "preload * pitchDiameter / 2 * loosenRatio",
    bearingTorque: "preload * bearingFriction * bearingMeanDiameter / 2",
    torque: "threadTorque + bearingTorque",
    selfLocking: "threadGrip >= leadTangent",
  },
  between: {
    ...frictionBetween,
    loosenRatio: { kind: "ratio", symbol: "ρ", says: "thread torque over preload and pitch radius" },
  },
  outputs: {
    torque: { kind: "torque", symbol: "T_off", says: "loosening torque" },
    threadTorque: {
      kind: "torque",
      symbol: "T_t",
      says: "part in the thread, negative when the thread drives the nut off",
    },
    bearingTorque: { kind: "torque", symbol: "T_b", says: "part under the nut or head" },
    selfLocking: { kind: "yes/no", says: "does the thread alone hold the nut" },
  },
  limits: [
    ...frictionLimits,
    { that: "preload > 0", else: "nothing is tight" },
    { that: 'torque > "0 N.m"', else: "the nut comes off by itself", warn: "advice" },
  ],
  sources: { "*": powerScrew, selfLocking: torqueParts },
  notes: [
    "rust, galling and old compound are not in this sum: set a stop before you begin and change method there",
    "hold the head, turn the nut: a fitted shank that turns scores its hole",
  ],
  cautions: ["C1", "C3"],
});
