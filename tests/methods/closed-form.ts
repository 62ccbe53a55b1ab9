// Good inputs and public names of the methods that are one closed form and need no table.
import type { PublicNames } from "./catalogue.ts";
import type { Inputs } from "./helpers.ts";

const friction: Inputs = {
  pitch: "3 mm",
  pitchDiameter: "22.05 mm",
  threadFriction: "0.12",
  bearingFriction: "0.14",
  bearingMeanDiameter: "29.6 mm",
};
const stiffness: Inputs = { boltStiffness: "896 kN/mm" };

export const closedFormInputs: Readonly<Record<string, Inputs>> = {
  "fit-after-soak": {
    diameter: "50 mm",
    innerExpansion: "11.5e-6 1/K",
    outerExpansion: "11e-6 1/K",
    temperatureRise: "80 K",
    interference: "10 um",
  },
  "bolt-fatigue": {
    preload: "100 kN",
    loadMax: "80 kN",
    loadFactor: "0.25",
    stressArea: "250 mm2",
    tensileStress: "800 MPa",
    enduranceStress: "120 MPa",
    proofStress: "600 MPa",
    diameter: "24 mm",
  },
  "bolts-required": {
    totalLoad: "620 kN",
    loadFactor: "0.25",
    loadFactorOfSafety: "2",
    stressArea: "250 mm2",
    proofStress: "600 MPa",
    preload: "100 kN",
  },
  "edge-opening": {
    residualClamp: "180 kN",
    externalLoad: "60 kN",
    stripWidth: "95 mm",
    boltToEdge: "38 mm",
    pressureLine: "0 mm",
  },
  "split-line-load": {
    pressure: "2.5 MPa",
    halfWidth: "260 mm",
    pitch: "100 mm",
    zones: [
      { zonePressure: "0.6 MPa", bolts: "4" },
      { zonePressure: "1.5 MPa", bolts: "6" },
    ],
  },
  "tension-shear-interaction": {
    standard: "NASA-STD-5020",
    shearPlane: "threads",
    tension: "30 kN",
    tensionAllowable: "100 kN",
    shear: "20 kN",
    shearAllowable: "80 kN",
    bendingStress: "50 MPa",
    bendingAllowable: "500 MPa",
  },
  "dowel-jam": { clearance: "0.05 mm", engagedLength: "50 mm", friction: "0.15" },
  "jackscrew-force": { torque: "40 N.m", nutFactor: "0.2", diameter: "20 mm", count: "4" },
  "sling-legs": {
    weight: "100 kN",
    legs: "2",
    angleFromHorizontal: "60 deg",
    centreOffset: "0.5 m",
    span: "4 m",
  },
  "stuck-force": { loadCell: "120 kN", weight: "100 kN", rigging: "5 kN" },
  "assembly-preload-limit": {
    yieldStress: "660 MPa",
    utilisation: "0.9",
    pitch: "3 mm",
    pitchDiameter: "22.05 mm",
    minorDiameterExternal: "20.32 mm",
    threadFriction: "0.12",
    torsionFactor: "1.5",
    bearingFriction: "0.12",
    bearingMeanDiameter: "29.6 mm",
  },
  "loosening-torque": { preload: "148 kN", ...friction },
  "multiplier-input": { targetTorque: "1000 N.m", ratio: "5", efficiency: "80 %" },
  "preload-from-stretch": { stretch: "0.2 mm", ...stiffness },
  "stretch-from-preload": { preload: "148 kN", ...stiffness },
  "torque-at-nut": {
    setting: "460 N.m",
    wrenchLength: "650 mm",
    adapterLength: "60 mm",
    adapterAngle: "30 deg",
  },
  "turn-for-preload": { preload: "148 kN", pitch: "3 mm", clampedStiffness: "3330 kN/mm", ...stiffness },
};

const frictionNames = [...Object.keys(friction), "threadHalfAngle"];

export const closedFormNames: Readonly<Record<string, PublicNames>> = {
  "fit-after-soak": {
    inputs: ["diameter", "innerExpansion", "outerExpansion", "temperatureRise", "interference"],
    outputs: ["interferenceAfter"],
  },
  "bolt-fatigue": {
    inputs: [
      "preload",
      "loadMin",
      "loadMax",
      "loadFactor",
      "stressArea",
      "tensileStress",
      "enduranceStress",
      "criterion",
    ],
    outputs: ["alternatingStress", "meanStress", "factor"],
  },
  "bolts-required": {
    inputs: ["totalLoad", "loadFactor", "loadFactorOfSafety", "stressArea", "proofStress", "preload"],
    outputs: ["count"],
  },
  "edge-opening": {
    inputs: ["residualClamp", "externalLoad", "stripWidth", "boltToEdge", "pressureLine"],
    outputs: ["ratio", "requiredRatio"],
  },
  "split-line-load": { inputs: ["pressure", "halfWidth", "pitch", "zones"], outputs: ["loadPerBolt"] },
  "tension-shear-interaction": {
    inputs: [
      "tension",
      "tensionAllowable",
      "shear",
      "shearAllowable",
      "shearPlane",
      "bendingStress",
      "bendingAllowable",
    ],
    outputs: ["ratio", "margin"],
  },
  "dowel-jam": {
    inputs: ["clearance", "engagedLength", "friction"],
    outputs: ["tiltLimit", "selfLockingOffset"],
  },
  "jackscrew-force": {
    inputs: ["torque", "nutFactor", "diameter", "count"],
    outputs: ["forceEach", "forceTotal"],
  },
  "sling-legs": {
    inputs: ["weight", "legs", "angleFromHorizontal", "centreOffset", "span"],
    outputs: ["legForce", "nearLeg", "farLeg"],
  },
  "stuck-force": { inputs: ["loadCell", "weight", "rigging"], outputs: ["stuckForce", "ratio"] },
  "assembly-preload-limit": {
    inputs: [
      "yieldStress",
      "utilisation",
      "pitch",
      "pitchDiameter",
      "minorDiameterExternal",
      "threadFriction",
      "torsionFactor",
    ],
    outputs: ["preload"],
  },
  "loosening-torque": { inputs: ["preload", ...frictionNames], outputs: ["torque", "selfLocking"] },
  "multiplier-input": { inputs: ["targetTorque", "ratio", "efficiency"], outputs: ["inputTorque"] },
  "preload-from-stretch": { inputs: ["stretch", "boltStiffness"], outputs: ["preload"] },
  "stop-torque": {
    inputs: ["preload", "stressArea", "stressDiameter", "yieldStress"],
    outputs: ["threadTorqueAvailable"],
  },
  "stretch-from-preload": { inputs: ["preload", "boltStiffness"], outputs: ["stretch"] },
  "torque-at-nut": {
    inputs: ["setting", "wrenchLength", "adapterLength", "adapterAngle"],
    outputs: ["torque"],
  },
  "turn-for-preload": {
    inputs: ["preload", "pitch", "boltStiffness", "clampedStiffness"],
    outputs: ["angle", "stretch", "compression"],
  },
};
