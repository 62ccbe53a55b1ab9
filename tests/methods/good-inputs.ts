// One good set of inputs for every method, typed as a person would type it. Numbers are invented.
import type { Inputs } from "./helpers.ts";

const friction: Inputs = {
  pitch: "3 mm",
  pitchDiameter: "22.05 mm",
  threadFriction: "0.12",
  bearingFriction: "0.14",
  bearingMeanDiameter: "29.6 mm",
};

export const goodInputs: Readonly<Record<string, Inputs>> = {
  "metric-thread": { designation: "M24x3" },
  "unified-thread": { designation: "3/8-24 UNF" },
  "bolt-strength": { standard: "ISO 898-1", grade: "8.8", designation: "M24" },
  "preload-from-torque": { torque: "500 N.m", nutFactor: "0.14", diameter: "24 mm" },
  "torque-from-preload": { preload: "148 kN", nutFactor: "0.14", diameter: "24 mm" },
  "torque-from-friction": { preload: "148 kN", ...friction, diameter: "24 mm" },
  "preload-from-friction": { torque: "500 N.m", ...friction },
  "assembly-stress": {
    preload: "148 kN",
    threadTorque: "270 N.m",
    stressArea: "352.5 mm2",
    stressDiameter: "21.19 mm",
    yieldStress: "660 MPa",
  },
  "set-torque": { netTorque: "500 N.m", runOnTorque: "26 N.m" },
  "wrench-setting": {
    targetTorque: "500 N.m",
    wrenchLength: "650 mm",
    adapterLength: "60 mm",
    adapterAngle: "30 deg",
  },
  "bolt-stiffness": {
    segments: [
      { length: "97 mm", area: "490 mm2" },
      { length: "11 mm", area: "352.5 mm2" },
    ],
    modulus: "205 GPa",
    headAllowance: "0.1 um/kN",
    nutAllowance: "0.2 um/kN",
  },
  "clamped-stiffness-cone": {
    layers: [
      { thickness: "50 mm", modulus: "170 GPa" },
      { thickness: "30 mm", modulus: "205 GPa" },
    ],
    faceDiameter: "36 mm",
    holeDiameter: "24 mm",
  },
  "load-share": { boltStiffness: "896 kN/mm", clampedStiffness: "3330 kN/mm", loadIntroduction: "0.7" },
  "preload-bounds": {
    nominalPreload: "148 kN",
    scatter: "20 %",
    torqueTolerance: "4 %",
    relaxation: "10 %",
    thermalChangeMin: "-5 kN",
    thermalChangeMax: "12 kN",
  },
  "preload-window": {
    separationLoad: "84.5 kN",
    separationFactor: "1.2",
    tripLoad: "65 kN",
    tripFactor: "1.1",
    tripThermalChange: "-23.8 kN",
    scatter: "20 %",
    relaxation: "10 %",
    proofLoad: "211.5 kN",
    assemblyShare: "0.9",
    warmUpChange: "24.4 kN",
    nutFactor: "0.1405",
    diameter: "24 mm",
  },
  "embedding-loss": { embedding: "12.5 um", boltStiffness: "896 kN/mm", clampedStiffness: "3330 kN/mm" },
  "thermal-preload-change": {
    boltExpansion: "11.5e-6 1/K",
    clampedExpansion: "11e-6 1/K",
    boltTemperatureRise: "20 K",
    clampedTemperatureRise: "50 K",
    grip: "108 mm",
    boltStiffness: "896 kN/mm",
    clampedStiffness: "3330 kN/mm",
  },
  "service-bolt-load": { preload: "106 kN", externalLoad: "65 kN", loadFactor: "0.212" },
  "separation-margin": {
    minimumPreload: "106 kN",
    externalLoad: "65 kN",
    factorOfSafety: "1.2",
    loadFactor: "0.1",
  },
  "proof-factors": {
    preload: "148 kN",
    externalLoad: "65 kN",
    loadFactor: "0.212",
    stressArea: "352.5 mm2",
    proofStress: "600 MPa",
  },
  "bearing-pressure": {
    force: "200 kN",
    outerDiameter: "33.25 mm",
    innerDiameter: "28 mm",
    washerThickness: "4 mm",
    limitPressure: "700 MPa",
  },
  "fit-limits-iso": { size: "25 mm", hole: "H7", shaft: "k6" },
  "size-at-reference": {
    reading: "25.004 mm",
    partTemperature: "27 degC",
    gaugeTemperature: "21 degC",
    partExpansion: "11e-6 1/K",
    gaugeExpansion: "11.5e-6 1/K",
    nominal: "25 mm",
  },
  "press-fit": {
    diameter: "25 mm",
    outerDiameter: "75 mm",
    boreDiameter: "8 mm",
    interference: "10 um",
    outerModulus: "170 GPa",
    outerPoisson: "0.28",
    innerModulus: "205 GPa",
    innerPoisson: "0.29",
    length: "100 mm",
    friction: "0.12",
  },
  "fit-temperature": {
    interference: "15 um",
    handling: "10 um",
    diameter: "25 mm",
    expansion: "11.5e-6 1/K",
  },
  "shank-contraction": {
    diameter: "25 mm",
    axialStress: "300 MPa",
    modulus: "205 GPa",
    poisson: "0.29",
    interference: "8 um",
  },
};

export function goodFor(id: string): Inputs {
  const found = goodInputs[id];
  if (!found) throw new Error(`no good inputs for ${id}: add them to good-inputs.ts`);
  return found;
}
