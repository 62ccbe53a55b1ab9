// The public names of the methods: ids, inputs and outputs as other pages and programs use them.
// A name may be added to a method, never renamed or dropped.

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
    outputs: ["stiffness", "frusta"],
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
    inputs: [
      "reading",
      "partTemperature",
      "gaugeTemperature",
      "partExpansion",
      "gaugeExpansion",
      "nominal",
    ],
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
};

/** frusta[] {stiffness, thickness, smallDiameter}, layers[] {thickness, modulus}, segments[]. */
export const catalogueRows: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  "bolt-stiffness": { segments: ["area", "diameter", "length"] },
  "clamped-stiffness-cone": {
    layers: ["thickness", "modulus"],
    frusta: ["stiffness", "thickness", "smallDiameter"],
  },
};
