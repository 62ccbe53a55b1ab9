// What pressure, stress, press force and spin torque does an interference fit give?
// Plane stress, elastic, equal lengths; thick-cylinder theory.
import { interferenceOver } from "../cross-limits.ts";
import { method } from "../method.ts";
import { pressForceSource, thickCylinder } from "../sources.ts";

export const pressFit = method({
  id: "press-fit",
  question: "What pressure, press force and spin torque does an interference fit give?",
  inputs: {
    diameter: { kind: "length", as: "fit diameter", symbol: "d", says: "diameter of the fit" },
    outerDiameter: { kind: "length", symbol: "d_o", says: "outside diameter of the outer part" },
    boreDiameter: {
      kind: "length",
      symbol: "d_i",
      says: "bore of the inner part, 0 for a solid one",
      default: "0 mm",
    },
    interference: { kind: "length", symbol: "δ", says: "interference on the diameter" },
    outerModulus: { kind: "stress", as: "modulus", symbol: "E_o", says: "modulus of the outer part" },
    outerPoisson: { kind: "ratio", as: "poisson", symbol: "ν_o", says: "Poisson's ratio of the outer part" },
    innerModulus: { kind: "stress", as: "modulus", symbol: "E_i", says: "modulus of the inner part" },
    innerPoisson: { kind: "ratio", as: "poisson", symbol: "ν_i", says: "Poisson's ratio of the inner part" },
    length: { kind: "length", symbol: "L", says: "length in contact", optional: true },
    friction: { kind: "ratio", as: "friction", symbol: "μ", says: "friction in the fit", optional: true },
  },
  steps: {
    outerRatio: "(outerDiameter^2 + diameter^2) / (outerDiameter^2 - diameter^2)",
    innerRatio: "(diameter^2 + boreDiameter^2) / (diameter^2 - boreDiameter^2)",
    pressure:
      "interference / (diameter * ((outerRatio + outerPoisson) / outerModulus + (innerRatio - innerPoisson) / innerModulus))",
    outerHoopStress: "pressure * outerRatio",
    innerHoopStress: "-pressure * innerRatio",
    pressForce: "friction * pressure * pi * diameter * length",
    spinTorque: "pressForce * diameter / 2",
  },
  between: {
    outerRatio: { kind: "ratio", symbol: "c_o", says: "shape of the outer part" },
    innerRatio: { kind: "ratio", symbol: "c_i", says: "shape of the inner part" },
  },
  outputs: {
    pressure: { kind: "stress", symbol: "p", says: "contact pressure" },
    outerHoopStress: { kind: "stress", symbol: "σ_o", says: "hoop stress of the outer part at the fit" },
    innerHoopStress: { kind: "stress", symbol: "σ_i", says: "hoop stress of the inner part at the fit" },
    pressForce: { kind: "force", symbol: "F", says: "press force at full length", optional: true },
    spinTorque: { kind: "torque", symbol: "T", says: "torque to spin the shank in its hole", optional: true },
  },
  limits: [
    {
      that: "interference >= 0",
      else: "the pair has clearance, so there is no contact pressure",
      hint: "a negative interference is a clearance",
    },
    { that: "outerDiameter > diameter", else: "nothing surrounds the fit" },
    { that: "boreDiameter >= 0", else: "a bore is not negative" },
    { that: "boreDiameter < diameter", else: "nothing is left of the inner part" },
    { that: "length > 0", else: "no contact is described" },
    ...interferenceOver("interference", "diameter"),
  ],
  sources: { "*": thickCylinder, pressForce: pressForceSource, spinTorque: pressForceSource },
  notes: [
    "rust and galling are not in these formulas: take the press force as a floor",
    "turn the nut, hold the head: a shank that spins in its hole scores both",
  ],
  cautions: ["C3", "C6"],
});
