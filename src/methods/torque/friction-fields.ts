// Inputs and limits shared by the methods that split a torque into pitch, thread and bearing parts.
import type { Limit } from "../method.ts";

export const frictionInputs = {
  pitch: { kind: "length", as: "pitch", symbol: "p", says: "pitch, or lead of a multi-start thread" },
  pitchDiameter: { kind: "length", as: "bolt diameter", symbol: "d_2", says: "pitch diameter" },
  threadFriction: { kind: "ratio", as: "friction", symbol: "μ_t", says: "friction in the thread" },
  bearingFriction: { kind: "ratio", as: "friction", symbol: "μ_b", says: "friction under the nut or head" },
  bearingMeanDiameter: { kind: "length", symbol: "D_b", says: "mean diameter of the bearing face" },
  threadHalfAngle: {
    kind: "angle",
    symbol: "α",
    says: "half angle of the thread profile",
    default: "30 deg",
  },
  form: {
    kind: "text",
    says: "form of the relation",
    choices: ["exact", "short", "VDI 2230"],
    default: "exact",
  },
} as const;

export const frictionLimits: readonly Limit[] = [
  { that: "bearingMeanDiameter >= 0", else: "no bearing face is described" },
  { that: 'threadHalfAngle >= "0 deg"', else: "no thread is described" },
  { that: 'threadHalfAngle < "90 deg"', else: "no thread is described" },
];

/** Ratio of thread torque to preload times half the pitch diameter: the screw as an inclined plane, and its usual short form. */
export const threadRatio = {
  exact: {
    leadTangent: "pitch / (pi * pitchDiameter)",
    threadGrip: "threadFriction / cos(threadHalfAngle)",
    threadRatio: "(leadTangent + threadGrip) / (1 - leadTangent * threadGrip)",
  },
  short: {
    leadTangent: "pitch / (pi * pitchDiameter)",
    threadGrip: "threadFriction / cos(threadHalfAngle)",
    threadRatio: "leadTangent + threadGrip",
  },
  // the guideline prints 1/(2 pi) as 0.16 and 1/(2 cos 30) as 0.58: threads of 60 degrees only
  "VDI 2230": {
    leadTangent: "2 * 0.16 * pitch / pitchDiameter",
    threadGrip: "2 * 0.58 * threadFriction",
    threadRatio: "leadTangent + threadGrip",
  },
} as const;

/** The same when the nut is turned off: the lead helps. */
export const loosenRatio = {
  exact: {
    leadTangent: "pitch / (pi * pitchDiameter)",
    threadGrip: "threadFriction / cos(threadHalfAngle)",
    loosenRatio: "(threadGrip - leadTangent) / (1 + leadTangent * threadGrip)",
  },
  short: {
    leadTangent: "pitch / (pi * pitchDiameter)",
    threadGrip: "threadFriction / cos(threadHalfAngle)",
    loosenRatio: "threadGrip - leadTangent",
  },
  "VDI 2230": {
    leadTangent: "2 * 0.16 * pitch / pitchDiameter",
    threadGrip: "2 * 0.58 * threadFriction",
    loosenRatio: "threadGrip - leadTangent",
  },
} as const;

export const frictionBetween = {
  leadTangent: { kind: "ratio", symbol: "tan_λ", says: "tangent of the lead angle" },
  threadGrip: { kind: "ratio", symbol: "μ_α", says: "thread friction over the cosine of the half angle" },
  threadRatio: { kind: "ratio", symbol: "ρ", says: "thread torque over preload and pitch radius" },
} as const;
