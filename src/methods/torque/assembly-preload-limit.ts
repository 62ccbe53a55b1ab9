// Up to which preload may a bolt be tightened when the thread torsion is counted?
import { method } from "../method.ts";
import { assemblyLimit } from "../sources.ts";

export const assemblyPreloadLimit = method({
  id: "assembly-preload-limit",
  question: "Up to which preload may a bolt be tightened for a share of yield, thread torsion counted?",
  inputs: {
    yieldStress: { kind: "stress", symbol: "R_p", says: "yield stress" },
    utilisation: { kind: "ratio", as: "share", symbol: "ν", says: "share of yield", default: "0.9" },
    pitch: { kind: "length", as: "pitch", symbol: "p", says: "pitch" },
    pitchDiameter: { kind: "length", as: "bolt diameter", symbol: "d_2", says: "pitch diameter" },
    minorDiameterExternal: {
      kind: "length",
      as: "bolt diameter",
      symbol: "d_3",
      says: "minor diameter of the external thread",
    },
    threadFriction: { kind: "ratio", as: "friction", symbol: "μ_t", says: "friction in the thread" },
    torsionFactor: {
      kind: "ratio",
      symbol: "c",
      says: "torsion factor: 1.5 plastic (2003 on), 2 elastic (1986)",
      default: "1.5",
      matters: "with 2, the elastic factor of 1986, the bolt may take less",
    },
    bearingFriction: {
      kind: "ratio",
      as: "friction",
      symbol: "μ_b",
      says: "friction under the nut or head",
      optional: true,
    },
    bearingMeanDiameter: {
      kind: "length",
      symbol: "D_b",
      says: "mean diameter of the bearing face",
      optional: true,
    },
  },
  steps: {
    coreDiameter: "(pitchDiameter + minorDiameterExternal) / 2",
    coreArea: "pi / 4 * coreDiameter^2",
    torsionRatio:
      "torsionFactor * pitchDiameter / coreDiameter * (pitch / (pi * pitchDiameter) + 1.155 * threadFriction)",
    preload: "utilisation * yieldStress * coreArea / sqrt(1 + 3 * torsionRatio^2)",
    torque:
      "preload * (0.16 * pitch + 0.58 * pitchDiameter * threadFriction + bearingMeanDiameter / 2 * bearingFriction)",
  },
  between: {
    coreDiameter: { kind: "length", symbol: "d_0", says: "diameter of the least section" },
    coreArea: { kind: "area", symbol: "A_0", says: "least section" },
    torsionRatio: { kind: "ratio", symbol: "k_τ", says: "torsional over axial stress" },
  },
  outputs: {
    preload: { kind: "force", symbol: "F", says: "largest preload at assembly" },
    torque: { kind: "torque", symbol: "T", says: "torque that gives it", optional: true },
  },
  limits: [
    { that: "yieldStress > 0", else: "no limit is defined" },
    { that: "utilisation > 0", else: "no limit is defined" },
    { that: "pitchDiameter > minorDiameterExternal", else: "the pitch diameter lies outside the root" },
    { that: "bearingMeanDiameter >= 0", else: "no bearing face is described" },
    { that: "torsionFactor >= 1.5", else: "published practice uses 1.5 or 2" },
    { that: "torsionFactor <= 2", else: "published practice uses 1.5 or 2" },
  ],
  sources: { "*": assemblyLimit },
  notes: [
    "torsion factor 1.5 takes the torsion as fully plastic (2003 on), 2 as elastic (1986): 2 gives the lower preload",
  ],
});
