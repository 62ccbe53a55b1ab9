// One good set of inputs for every method, typed as a person would type it. Numbers are invented.
import { closedFormInputs } from "./closed-form.ts";
import type { Inputs } from "./helpers.ts";

const friction: Inputs = {
  pitch: "3 mm",
  pitchDiameter: "22.05 mm",
  threadFriction: "0.12",
  bearingFriction: "0.14",
  bearingMeanDiameter: "29.6 mm",
};

export const goodInputs: Readonly<Record<string, Inputs>> = {
  ...closedFormInputs,
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
  "bolt-group-shear": {
    bolts: [
      { x: "-75 mm", y: "-60 mm" },
      { x: "75 mm", y: "-60 mm" },
      { x: "75 mm", y: "60 mm" },
      { x: "-75 mm", y: "60 mm" },
    ],
    force: [{ x: "0 kN", y: "-16 kN" }],
    at: [{ x: "300 mm", y: "0 mm" }],
  },
  "bolt-circle-tension": { moment: "12 kN.m", circleRadius: "200 mm", count: "12" },
  "shear-bearing-tear-out": {
    shear: "150 kN",
    count: "12",
    shankDiameter: "25 mm",
    plateThickness: "50 mm",
    edgeDistance: "38 mm",
    netWidth: "700 mm",
    strengths: [{ shear: "380 MPa", bearing: "400 MPa", tearOut: "230 MPa", net: "400 MPa" }],
  },
  "side-load-share": {
    sideLoad: "150 kN",
    clamp: "1288 kN",
    friction: "0.10",
    bolts: [
      { clearance: "4 um", shankDiameter: "25 mm", stiffness: "900 kN/mm" },
      { clearance: "12 um", shankDiameter: "25 mm", stiffness: "900 kN/mm" },
    ],
  },
  "hole-form": {
    readings: [
      { depth: "outer", direction: "along", value: "25.012 mm" },
      { depth: "outer", direction: "across", value: "25.011 mm" },
      { depth: "split", direction: "along", value: "25.013 mm" },
      { depth: "split", direction: "across", value: "25.012 mm" },
    ],
  },
  "fit-of-pair": {
    holeSmallest: "25.0084 mm",
    holeLargestDepthMean: "25.0109 mm",
    shankLargest: "25.008 mm",
    shankMean: "25.0072 mm",
    tightestAllowed: "-10 um",
    loosestAllowed: "15 um",
    holeUncertainty: "3 um",
    shankUncertainty: "2 um",
  },
  "oversize-step": {
    largestReading: "25.0334 mm",
    allowancePerSide: "5 um",
    steps: ["25.05 mm", "25.10 mm"],
    edgeDistance: "38 mm",
  },
  "select-bolts": {
    holes: [
      { tag: "1", smallest: "25.010 mm", largestDepthMean: "25.012 mm" },
      { tag: "3", smallest: "25.020 mm", largestDepthMean: "25.022 mm" },
    ],
    bolts: [
      { tag: "1", largest: "25.016 mm", mean: "25.015 mm" },
      { tag: "3", largest: "25.006 mm", mean: "25.005 mm" },
    ],
    tightestAllowed: "-10 um",
    loosestAllowed: "15 um",
    holeUncertainty: "3 um",
    shankUncertainty: "2 um",
  },
  "gap-plane": {
    stations: [
      { x: "-0.5 m", y: "-0.3 m", gap: "1.75 mm" },
      { x: "-0.5 m", y: "0.3 m", gap: "1.25 mm" },
      { x: "0.5 m", y: "-0.3 m", gap: "2.01 mm" },
      { x: "0.5 m", y: "0.3 m", gap: "2.05 mm" },
    ],
  },
  "hold-count": { expected: "20", countedOnce: "18", countedTwice: "18", kept: "2" },
  "tightening-order": { arrangement: "circle", count: "8" },
  "pass-torques": {
    finalTorque: "500 N.m",
    fractions: ["30 %", "60 %", "100 %"],
    runOn: [
      { position: "5", torque: "26 N.m" },
      { position: "12", torque: "31 N.m" },
    ],
    adapters: [{ position: "12", length: "60 mm" }],
    wrenchLength: "650 mm",
  },
  "record-findings": {
    plan: [
      { pass: "pass 1", position: "5", net: "500 N.m" },
      { pass: "pass 1", position: "7", net: "500 N.m" },
    ],
    rows: [
      { pass: "pass 1", position: "5", runOn: "26 N.m", read: "526 N.m", angle: "14 deg" },
      { pass: "pass 1", position: "7", runOn: "31 N.m", read: "392 N.m", angle: "12 deg" },
    ],
  },
  "change-since": {
    before: "25.0100 mm",
    after: "25.0152 mm",
    uncertaintyBefore: "3.61 um",
    uncertaintyAfter: "3.61 um",
  },
  "elastic-interaction": {
    order: ["1", "3", "2", "4"],
    neighbours: [{ apart: "1", change: "-0.1" }],
    passLoads: ["50 kN", "100 kN"],
  },
  "thread-limits": { designation: "M24", toleranceClass: "6g" },
  "nut-strength": { standard: "ISO 898-2", grade: "8", designation: "M24" },
  "thread-stripping": {
    externalDesignation: "M24x3",
    engagedLength: "20.2 mm",
    boltTensile: "830 MPa",
    nutTensile: "830 MPa",
  },
  "clearance-hole": { designation: "M24", series: "medium" },
  "fit-limits-inch": { size: "1 in", fit: "LN 2" },
  "recommended-torque": { standard: "AC 43.13-1B", designation: "3/8-24", column: "tension nut" },
  "clamped-stiffness-fit": {
    diameter: "24 mm",
    grip: "80 mm",
    modulus: "170 GPa",
    fitA: "0.77871",
    fitB: "0.61616",
  },
  "nut-factor-trial": {
    torque: "480 N.m",
    diameter: "24 mm",
    stretches: ["0.230 mm", "0.217 mm", "0.210 mm", "0.222 mm", "0.205 mm", "0.223 mm"],
    boltStiffness: "653.6 kN/mm",
  },
};

export function goodFor(id: string): Inputs {
  const found = goodInputs[id];
  if (!found) throw new Error(`no good inputs for ${id}: add them to good-inputs.ts`);
  return found;
}
