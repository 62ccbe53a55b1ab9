// What torque does a preload take, and where does it go?
import { method } from "../method.ts";
import { powerScrew, torqueParts } from "../sources.ts";
import { frictionBetween, frictionInputs, frictionLimits, threadRatio } from "./friction-fields.ts";

export const torqueFromFriction = method({
  id: "torque-from-friction",
  question: "What torque does a preload take, and how much of it goes into pitch, thread and bearing face?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    ...frictionInputs,
    diameter: {
      kind: "length",
      as: "bolt diameter",
      symbol: "d",
      says: "nominal diameter, for the nut factor",
      optional: true,
    },
  },
  variants: { by: "form", sets: threadRatio },
  steps: {
    threadTorque: "preload * pitchDiameter / 2 * threadRatio",
    pitchTorque: "preload * pitch / (2 * pi)",
    threadFrictionTorque: "threadTorque - pitchTorque",
    bearingTorque: "preload * bearingFriction * bearingMeanDiameter / 2",
    torque: "threadTorque + bearingTorque",
    nutFactor: "torque / (preload * diameter)",
  },
  between: frictionBetween,
  outputs: {
    torque: { kind: "torque", symbol: "T", says: "net torque at the nut" },
    pitchTorque: { kind: "torque", symbol: "T_p", says: "part that stretches the bolt" },
    threadTorque: {
      kind: "torque",
      symbol: "T_t",
      says: "torque that reaches the thread: pitch and thread friction",
    },
    threadFrictionTorque: { kind: "torque", symbol: "T_f", says: "part lost to thread friction" },
    bearingTorque: { kind: "torque", symbol: "T_b", says: "part lost under the nut or head" },
    nutFactor: { kind: "ratio", symbol: "K", says: "nut factor that follows", optional: true },
  },
  limits: [
    ...frictionLimits,
    { that: "preload > 0", else: "no torque is defined" },
    { that: "leadTangent * threadGrip < 1", else: "the thread cannot be turned at all" },
  ],
  sources: { "*": powerScrew, pitchTorque: torqueParts, nutFactor: torqueParts },
});
