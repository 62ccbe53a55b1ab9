// How stiff is a bolt made of shank and thread lengths?
import { method } from "../method.ts";
import { allowances, boltSprings, circle } from "../sources.ts";

export const boltStiffness = method({
  id: "bolt-stiffness",
  question: "How stiff is a bolt made of several lengths in line?",
  inputs: {
    segments: {
      kind: "list",
      says: "lengths of the bolt in the grip",
      of: {
        length: { kind: "length", symbol: "l_i", says: "length of the segment" },
        area: { kind: "area", symbol: "A_i", says: "area of the segment", optional: true },
        diameter: {
          kind: "length",
          as: "bolt diameter",
          symbol: "d_i",
          says: "diameter of the segment",
          optional: true,
        },
      },
    },
    modulus: { kind: "stress", as: "modulus", symbol: "E", says: "modulus of elasticity of the bolt" },
    headAllowance: { kind: "compliance", symbol: "δ_h", says: "allowance for the head", default: "0 um/kN" },
    nutAllowance: {
      kind: "compliance",
      symbol: "δ_n",
      says: "allowance for engaged thread and nut",
      default: "0 um/kN",
    },
  },
  each: { segments: { area: "pi / 4 * diameter^2", segmentCompliance: "length / (area * modulus)" } },
  steps: {
    compliance: "sum(segments.segmentCompliance) + headAllowance + nutAllowance",
    stiffness: "1 / compliance",
  },
  between: {
    "segments.area": { kind: "area", symbol: "A_i", says: "area" },
    "segments.segmentCompliance": { kind: "compliance", symbol: "δ_i", says: "compliance of the segment" },
  },
  outputs: {
    stiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness" },
    compliance: { kind: "compliance", symbol: "δ_b", says: "bolt compliance" },
  },
  limits: [
    {
      that: "smallest(segments.length) > 0",
      else: "a segment without length carries no stretch",
      hint: "leave the segment out",
    },
    { that: "smallest(segments.area) > 0", else: "no stiffness is defined" },
    { that: "headAllowance >= 0", else: "an allowance softens the bolt" },
    { that: "nutAllowance >= 0", else: "an allowance softens the bolt" },
  ],
  sources: { "*": boltSprings, area: circle, compliance: allowances },
});
