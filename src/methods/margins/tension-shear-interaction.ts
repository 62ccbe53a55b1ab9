// Does a bolt carry tension and shear together?
import { textOf } from "../inside.ts";
import { method } from "../method.ts";
import { interactionEurocode, interactionNasa, interactionNsts } from "../sources.ts";

export const tensionShearInteraction = method({
  id: "tension-shear-interaction",
  question: "Does a bolt carry its tension and its shear together?",
  inputs: {
    tension: { kind: "force", symbol: "P_t", says: "factored tension" },
    tensionAllowable: { kind: "force", symbol: "P_ta", says: "allowable tension" },
    shear: { kind: "force", symbol: "P_s", says: "factored shear" },
    shearAllowable: { kind: "force", symbol: "P_sa", says: "allowable shear" },
    shearPlane: {
      kind: "text",
      says: "what stands in the shear plane",
      choices: ["body", "threads"],
      default: "threads",
    },
    bendingStress: { kind: "stress", symbol: "f_b", says: "factored bending stress", default: "0 MPa" },
    bendingAllowable: { kind: "stress", symbol: "F_b", says: "allowable bending stress", default: "1 MPa" },
    standard: {
      kind: "text",
      says: "form of the interaction",
      choices: ["NASA-STD-5020", "NSTS 08307", "EN 1993-1-8"],
      default: "NASA-STD-5020",
    },
  },
  procedure: {
    says: "NASA-STD-5020 has one pair of exponents for a body and one for threads in the shear plane",
    source: interactionNasa,
    gives: { formUsed: { kind: "text", says: "form that ran" } },
    run: (inputs) => {
      const standard = textOf(inputs, "standard") ?? "";
      const plane = textOf(inputs, "shearPlane") ?? "";
      return { formUsed: standard === "NASA-STD-5020" ? `${standard} ${plane}` : standard };
    },
  },
  variants: {
    by: "formUsed",
    sources: {
      "NASA-STD-5020 body": interactionNasa,
      "NASA-STD-5020 threads": interactionNasa,
      "NSTS 08307": interactionNsts,
      "EN 1993-1-8": interactionEurocode,
    },
    sets: {
      "NASA-STD-5020 body": {
        ratio:
          "(shear / shearAllowable)^2.5 + (tension / tensionAllowable + bendingStress / bendingAllowable)^1.5",
      },
      "NASA-STD-5020 threads": {
        ratio:
          "(shear / shearAllowable)^1.2 + (tension / tensionAllowable + bendingStress / bendingAllowable)^2",
      },
      "NSTS 08307": {
        ratio:
          "(tension / tensionAllowable + bendingStress / bendingAllowable)^2 + (shear / shearAllowable)^3",
      },
      "EN 1993-1-8": { ratio: "shear / shearAllowable + tension / (1.4 * tensionAllowable)" },
    },
  },
  steps: { margin: "1 - ratio" },
  outputs: {
    ratio: { kind: "ratio", symbol: "R", says: "sum of the load ratios, at most 1" },
    margin: { kind: "ratio", symbol: "M", says: "what is left of 1" },
  },
  limits: [
    { that: "tension >= 0", else: "give the tension as a pull" },
    { that: "shear >= 0", else: "give the shear without direction" },
    { that: "bendingStress >= 0", else: "give the bending stress without direction" },
    { that: "tensionAllowable > 0", else: "no ratio is defined" },
    { that: "shearAllowable > 0", else: "no ratio is defined" },
    { that: "bendingAllowable > 0", else: "no ratio is defined" },
    { that: "tension <= tensionAllowable", else: "the tension alone is too high", warn: "advice" },
    { that: "shear <= shearAllowable", else: "the shear alone is too high", warn: "advice" },
    { that: "ratio <= 1", else: "tension and shear together are too high", warn: "advice" },
  ],
  sources: { "*": interactionNasa },
  notes: [
    "the exponents of NASA-STD-5020 are from memory and unconfirmed: confirm them in the standard before relying on them",
    "the margin is what is left of 1; the load may not be raised by that share, since the powers differ",
    "in EN 1993-1-8 the tension alone must stay below its allowable too",
  ],
  cautions: ["C8"],
});
