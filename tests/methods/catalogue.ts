// The public names of the methods: ids, inputs and outputs as other pages and programs use them.
// A name may be added to a method, never renamed or dropped.

import { closedFormNames } from "./closed-form.ts";

export interface PublicNames {
  readonly inputs: readonly string[];
  readonly outputs: readonly string[];
}

const threadOutputs = [
  "majorDiameter",
  "pitch",
  "pitchDiameter",
  "minorDiameterInternal",
  "minorDiameterExternal",
  "stressDiameter",
  "stressArea",
  "shankArea",
];
const frictionInputs = [
  "pitch",
  "pitchDiameter",
  "threadFriction",
  "bearingFriction",
  "bearingMeanDiameter",
  "threadHalfAngle",
];
const stiffnesses = ["boltStiffness", "clampedStiffness"];

export const catalogue: Readonly<Record<string, PublicNames>> = {
  ...closedFormNames,
  "metric-thread": { inputs: ["designation"], outputs: threadOutputs },
  "unified-thread": { inputs: ["designation"], outputs: threadOutputs },
  "bolt-strength": {
    inputs: ["standard", "grade", "designation"],
    outputs: ["proofStress", "yieldStress", "tensileStress", "proofLoad", "breakingLoad"],
  },
  "preload-from-torque": { inputs: ["torque", "nutFactor", "diameter"], outputs: ["preload"] },
  "torque-from-preload": { inputs: ["preload", "nutFactor", "diameter"], outputs: ["torque"] },
  "torque-from-friction": {
    inputs: ["preload", ...frictionInputs, "diameter"],
    outputs: ["torque", "pitchTorque", "threadTorque", "bearingTorque", "nutFactor"],
  },
  "preload-from-friction": {
    inputs: ["torque", ...frictionInputs],
    outputs: ["preload", "pitchTorque", "threadTorque", "bearingTorque"],
  },
  "assembly-stress": {
    inputs: ["preload", "threadTorque", "stressArea", "stressDiameter", "yieldStress"],
    outputs: ["axialStress", "shearStress", "equivalentStress", "utilisation"],
  },
  "bolt-stiffness": {
    inputs: ["segments", "modulus", "headAllowance", "nutAllowance"],
    outputs: ["stiffness", "compliance"],
  },
  "clamped-stiffness-cone": {
    inputs: ["layers", "faceDiameter", "holeDiameter", "coneHalfAngle"],
    outputs: ["stiffness", "coneDiameter", "frusta"],
  },
  "load-share": { inputs: [...stiffnesses, "loadIntroduction"], outputs: ["loadFactor"] },
  "preload-bounds": {
    inputs: [
      "nominalPreload",
      "scatter",
      "torqueTolerance",
      "nutFactorSpread",
      "relaxation",
      "thermalChangeMin",
      "thermalChangeMax",
      "fastenerCount",
    ],
    outputs: ["minimum", "maximum"],
  },
  "preload-window": {
    inputs: [
      "separationLoad",
      "tripLoad",
      "scatter",
      "relaxation",
      "proofLoad",
      "assemblyShare",
      "warmUpChange",
      "nutFactor",
      "diameter",
    ],
    outputs: ["floorPreload", "ceilingPreload", "floorTorque", "ceilingTorque", "open"],
  },
  "service-bolt-load": {
    inputs: ["preload", "externalLoad", "loadFactor"],
    outputs: ["boltLoad", "clampLoad", "separated"],
  },
  "separation-margin": {
    inputs: ["minimumPreload", "externalLoad", "factorOfSafety", "loadFactor"],
    outputs: ["residualClamp", "separationLoad", "ratio", "margin"],
  },
  "proof-factors": {
    inputs: ["preload", "externalLoad", "loadFactor", "stressArea", "proofStress"],
    outputs: ["yieldingFactor", "loadFactorOfSafety", "separationFactor"],
  },
  "bearing-pressure": {
    inputs: ["force", "outerDiameter", "innerDiameter", "washerThickness", "spreadAngle", "limitPressure"],
    outputs: ["area", "pressure", "utilisation"],
  },
  "thermal-preload-change": {
    inputs: [
      "boltExpansion",
      "clampedExpansion",
      "boltTemperatureRise",
      "clampedTemperatureRise",
      "grip",
      ...stiffnesses,
    ],
    outputs: ["change"],
  },
  "embedding-loss": { inputs: ["embedding", ...stiffnesses], outputs: ["loss"] },
  "wrench-setting": {
    inputs: ["targetTorque", "wrenchLength", "adapterLength", "adapterAngle"],
    outputs: ["setting"],
  },
  "set-torque": { inputs: ["netTorque", "runOnTorque"], outputs: ["setTorque"] },
  "fit-limits-iso": {
    inputs: ["size", "hole", "shaft"],
    outputs: ["holeMax", "holeMin", "shaftMax", "shaftMin", "clearanceMax", "clearanceMin"],
  },
  "size-at-reference": {
    inputs: ["reading", "partTemperature", "gaugeTemperature", "partExpansion", "gaugeExpansion", "nominal"],
    outputs: ["size", "correction"],
  },
  "press-fit": {
    inputs: [
      "diameter",
      "outerDiameter",
      "boreDiameter",
      "interference",
      "outerModulus",
      "outerPoisson",
      "innerModulus",
      "innerPoisson",
      "length",
      "friction",
    ],
    outputs: ["pressure", "outerHoopStress", "innerHoopStress", "pressForce", "spinTorque"],
  },
  "fit-temperature": {
    inputs: ["interference", "handling", "diameter", "expansion"],
    outputs: ["temperatureDifference"],
  },
  "shank-contraction": {
    inputs: ["diameter", "axialStress", "modulus", "poisson", "interference"],
    outputs: ["contraction", "interferenceLeft"],
  },
  "bolt-group-shear": { inputs: ["bolts", "force", "at"], outputs: ["centroid", "bolts", "largest"] },
  "bolt-circle-tension": { inputs: ["moment", "circleRadius", "count"], outputs: ["largest"] },
  "shear-bearing-tear-out": {
    inputs: ["shear", "shankDiameter", "plateThickness", "edgeDistance", "strengths", "netWidth"],
    outputs: ["shearStress", "bearingStress", "tearOutStress", "factors"],
  },
  "side-load-share": {
    inputs: ["sideLoad", "clamp", "friction", "bolts"],
    outputs: ["slipCapacity", "slip", "bolts"],
  },
  "hole-form": {
    inputs: ["readings"],
    outputs: ["mean", "smallest", "largestDepthMean", "ovality", "ovalDirection", "taper"],
  },
  "fit-of-pair": {
    inputs: ["hole", "shank", "limits", "uncertainties"],
    outputs: ["tightest", "loosest", "uncertainty", "state"],
  },
  "oversize-step": {
    inputs: ["largestReading", "allowancePerSide", "steps"],
    outputs: ["cleanUpSize", "step"],
  },
  "select-bolts": {
    inputs: ["holes", "bolts", "limits", "uncertainties", "wishes"],
    outputs: ["pairs", "moved", "unproven", "proof"],
  },
  "gap-plane": {
    inputs: ["stations"],
    outputs: ["mean", "tiltX", "tiltY", "tilt", "twist", "residuals"],
  },
  "hold-count": {
    inputs: ["expected", "countedOnce", "countedTwice", "kept"],
    outputs: ["open", "missing"],
  },
  "tightening-order": {
    inputs: ["arrangement", "count", "positions", "fittedFirst"],
    outputs: ["order"],
  },
  "pass-torques": {
    inputs: ["finalTorque", "fractions", "runOn", "adapters"],
    outputs: ["passes"],
  },
  "record-findings": { inputs: ["plan", "rows"], outputs: ["findings", "counted"] },
  "change-since": {
    inputs: ["before", "after", "uncertaintyBefore", "uncertaintyAfter"],
    outputs: ["difference", "threshold", "real"],
  },
  "elastic-interaction": {
    inputs: ["order", "coefficients", "passLoads"],
    outputs: ["residual", "spread", "compensated"],
  },
  "thread-limits": {
    inputs: ["designation", "toleranceClass"],
    outputs: ["majorMax", "majorMin", "pitchMax", "pitchMin", "minorMax", "minorMin"],
  },
  "nut-strength": {
    inputs: ["standard", "grade", "designation"],
    outputs: ["proofStress", "proofLoad"],
  },
  "thread-stripping": {
    inputs: ["externalDesignation", "engagedLength", "boltTensile", "nutTensile", "limits"],
    outputs: ["externalShearArea", "internalShearArea", "strengthRatio", "requiredEngagement", "weakest"],
  },
  "clearance-hole": { inputs: ["designation", "series"], outputs: ["holeDiameter"] },
  "fit-limits-inch": {
    inputs: ["size", "fit"],
    outputs: ["holeMax", "holeMin", "shaftMax", "shaftMin", "clearanceMax", "clearanceMin"],
  },
  "recommended-torque": {
    inputs: ["standard", "designation", "column"],
    outputs: ["minimum", "maximum"],
  },
  "clamped-stiffness-fit": {
    inputs: ["diameter", "grip", "modulus", "fitA", "fitB"],
    outputs: ["stiffness"],
  },
  "nut-factor-trial": {
    inputs: ["torque", "diameter", "preloads", "stretches", "boltStiffness", "coverage", "confidence"],
    outputs: ["meanPreload", "standardDeviation", "toleranceFactor", "spread", "nutFactor"],
  },
};

/** frusta[] {stiffness, thickness, smallDiameter}, layers[] {thickness, modulus}, segments[]. */
export const catalogueRows: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  "bolt-stiffness": { segments: ["area", "diameter", "length"] },
  "clamped-stiffness-cone": {
    layers: ["thickness", "modulus"],
    frusta: ["stiffness", "thickness", "smallDiameter"],
  },
  "bolt-group-shear": { force: ["x", "y"], at: ["x", "y"], centroid: ["x", "y"] },
  "side-load-share": { bolts: ["clearance", "shankDiameter", "stiffness"] },
  "hole-form": { readings: ["depth", "direction", "value"] },
  "gap-plane": { stations: ["x", "y", "gap"] },
  "pass-torques": { passes: ["position", "net", "set"] },
  "record-findings": {
    findings: ["position", "pass", "what", "ratio", "likelyCause"],
    counted: ["position", "pass", "torque", "angle"],
  },
};
