// What preload does a torque give when the friction of thread and bearing face is known?
import { method } from "../method.ts";
import { powerScrew, torqueParts } from "../sources.ts";
import { frictionBetween, frictionInputs, frictionLimits, threadRatio } from "./friction-fields.ts";

export const preloadFromFriction = method({
  id: "preload-from-friction",
  question: "What preload does a torque give when thread and bearing friction are known?",
  inputs: { torque: { kind: "torque", symbol: "T", says: "net torque at the nut" }, ...frictionInputs },
  variants: { by: "form", sets: threadRatio },
  steps: {
    preload: "torque / (pitchDiameter / 2 * threadRatio + bearingFriction * bearingMeanDiameter / 2)",
    threadTorque: "preload * pitchDiameter / 2 * threadRatio",
    pitchTorque: "preload * pitch / (2 * pi)",
    threadFrictionTorque: "threadTorque - pitchTorque",
    bearingTorque: "preload * bearingFriction * bearingMeanDiameter / 2",
  },
  between: frictionBetween,
  outputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    pitchTorque: { kind: "torque", symbol: "T_p", says: "part that stretches the bolt" },
    threadTorque: {
      kind: "torque",
      symbol: "T_t",
      says: "torque that reaches the thread: pitch and thread friction",
    },
    threadFrictionTorque: { kind: "torque", symbol: "T_f", says: "part lost to thread friction" },
    bearingTorque: { kind: "torque", symbol: "T_b", says: "part lost under the nut or head" },
  },
  limits: [
    ...frictionLimits,
    { that: "torque > 0", else: "no preload is defined" },
    { that: "leadTangent * threadGrip < 1", else: "the thread cannot be turned at all" },
  ],
  sources: { "*": powerScrew, pitchTorque: torqueParts },
});
