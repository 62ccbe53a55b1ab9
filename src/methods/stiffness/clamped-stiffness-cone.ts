// How stiff are the clamped parts? Cones of 30 degrees spread from both faces and meet in mid-grip.

import { type Problem, problem } from "../../problem.ts";
import { cellNumber, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { frustum } from "../sources.ts";

interface Layer {
  readonly thickness: number;
  readonly modulus: number;
}

/** One piece of a cone inside one material; depth is measured from the cone's own face. All in m and Pa. */
export interface Piece extends Layer {
  readonly depth: number;
}

/** Cuts the layers at mid-grip, and each half at its changes of material, counted from its own face inwards. */
export function conePieces(layers: readonly Layer[]): Piece[] {
  const half = layers.reduce((sum, layer) => sum + layer.thickness, 0) / 2;
  const fromFace = (stack: readonly Layer[]): Piece[] => {
    const pieces: Piece[] = [];
    let depth = 0;
    for (const { thickness, modulus } of stack) {
      const inside = Math.min(thickness, half - depth);
      if (inside <= half * 1e-12) break; // rounding leaves no sliver at mid-grip
      pieces.push({ thickness: inside, modulus, depth });
      depth += inside;
    }
    return pieces;
  };
  return [...fromFace(layers), ...fromFace(layers.toReversed()).toReversed()];
}

const thirtyDegrees = Math.PI / 6;

function run(inputs: Insides): Insides | Problem {
  const angle = inputs["coneHalfAngle"];
  const pieces = conePieces(
    rowsOf(inputs, "layers").map((row) => ({
      thickness: cellNumber(row, "thickness") ?? Number.NaN,
      modulus: cellNumber(row, "modulus") ?? Number.NaN,
    })),
  );
  if (pieces.length === 0)
    return problem({ code: "limit", what: "layers", got: "no thickness", must: "have a thickness above 0" });
  const printed =
    inputs["coefficients"] === "printed" &&
    typeof angle === "number" &&
    Math.abs(angle - thirtyDegrees) < 1e-9;
  return { frusta: pieces.map((piece) => ({ ...piece })), coefficients: printed ? "printed" : "exact" };
}

export const clampedStiffnessCone = method({
  id: "clamped-stiffness-cone",
  question: "How stiff are the clamped parts between head and nut?",
  inputs: {
    layers: {
      kind: "list",
      says: "clamped layers from head to nut",
      of: {
        thickness: { kind: "length", symbol: "t", says: "thickness of the layer" },
        modulus: { kind: "stress", as: "modulus", symbol: "E", says: "modulus of elasticity of the layer" },
      },
    },
    faceDiameter: { kind: "length", symbol: "D_0", says: "diameter of the pressed face under head and nut" },
    holeDiameter: { kind: "length", symbol: "d", says: "diameter of the hole" },
    coneHalfAngle: { kind: "angle", symbol: "α", says: "half angle of the cone", default: "30 deg" },
    coefficients: {
      kind: "text",
      says: "coefficients at 30 degrees",
      choices: ["printed", "exact"],
      default: "printed",
    },
  },
  procedure: {
    says: "cones start at both faces, meet at mid-grip and are cut at each change of material",
    source: frustum,
    gives: { coefficients: { kind: "text", says: "coefficients that ran" } },
    givesRows: {
      frusta: {
        thickness: { kind: "length", symbol: "t", says: "thickness of the frustum" },
        modulus: { kind: "stress", symbol: "E", says: "modulus of elasticity" },
        depth: { kind: "length", symbol: "x", says: "depth of its small end below the face" },
      },
    },
    run,
  },
  variants: {
    by: "coefficients",
    sets: {
      printed: { slope: "0.5774", spread: "1.155" }, // as the book prints tan 30 and twice tan 30
      exact: { slope: "tan(coneHalfAngle)", spread: "2 * slope" },
    },
  },
  each: {
    frusta: {
      smallDiameter: "faceDiameter + spread * depth",
      largeDiameter: "smallDiameter + spread * thickness",
      stiffness:
        "slope * pi * modulus * holeDiameter / ln((largeDiameter - holeDiameter) * (smallDiameter + holeDiameter) / ((largeDiameter + holeDiameter) * (smallDiameter - holeDiameter)))",
    },
  },
  steps: {
    compliance: "sum(1 / frusta.stiffness)",
    stiffness: "1 / compliance",
    coneDiameter: "faceDiameter + tan(coneHalfAngle) * sum(layers.thickness)",
  },
  between: {
    slope: { kind: "ratio", symbol: "tan_α" },
    spread: { kind: "ratio", symbol: "c" },
    compliance: { kind: "compliance", symbol: "δ_m", says: "compliance of the clamped parts" },
    "frusta.largeDiameter": { kind: "length", symbol: "D_2", says: "large end" },
  },
  outputs: {
    stiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
    coneDiameter: { kind: "length", symbol: "D_m", says: "diameter of the cone at mid-grip" },
    frusta: {
      kind: "list",
      says: "frusta from head to nut",
      of: {
        stiffness: { kind: "stiffness", symbol: "k", says: "stiffness" },
        thickness: { kind: "length", symbol: "t", says: "thickness" },
        smallDiameter: { kind: "length", symbol: "D", says: "small end" },
      },
    },
  },
  limits: [
    {
      that: "holeDiameter > 0",
      else: "the cone relation divides by the hole; for a solid stack use the whole face",
    },
    {
      that: "faceDiameter > holeDiameter",
      else: "nothing is left to press on",
      hint: "the hole is larger than the washer or nut face",
    },
    {
      that: "smallest(layers.thickness) > 0",
      else: "a layer without thickness is not clamped",
      hint: "leave the layer out",
    },
    { that: "coneHalfAngle > 0", else: "a cone has to widen", hint: "common values are 25 to 33 deg" },
    { that: 'coneHalfAngle < "60 deg"', else: "no clamped stack spreads so far" },
  ],
  sources: { "*": frustum },
  notes: [
    "holds where the part is as wide as the cone at mid-grip; a narrower flange is softer",
    "printed coefficients 0.5774 and 1.155; the exact tangent gives 0.01 to 0.02 % more",
  ],
});
