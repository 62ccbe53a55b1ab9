// Further sets of inputs, typed as a person would, so that every optional input is given at least once.
// Numbers are invented.
import type { Inputs } from "./helpers.ts";

const stripping: Inputs = {
  externalDesignation: "M24x3",
  engagedLength: "24 mm",
  boltTensile: "800 MPa",
  nutTensile: "400 MPa",
};
const bores: Inputs = {
  hole: [
    { depth: "outer", direction: "along", value: "25.012 mm", repeat: "1" },
    { depth: "outer", direction: "along", value: "25.016 mm", repeat: "2" },
    { depth: "outer", direction: "across", value: "25.011 mm" },
    { depth: "split", direction: "across", value: "25.013 mm" },
  ],
  shank: [
    { depth: "head", direction: "a", value: "25.003 mm" },
    { depth: "head", direction: "b", value: "25.002 mm" },
    { depth: "tip", direction: "b", value: "25.002 mm" },
    { depth: "tip", direction: "a", value: "25.003 mm", repeat: "1" },
    { depth: "tip", direction: "a", value: "25.004 mm", repeat: "2" },
  ],
  limits: [{ tightest: "-10 um", loosest: "15 um" }],
  uncertainties: [{ hole: "3 um", shank: "2 um" }],
};

export const moreInputs: Readonly<Record<string, readonly Inputs[]>> = {
  "thread-stripping": [
    { ...stripping, externalClass: "6g", internalClass: "6H" },
    {
      ...stripping,
      limits: [
        {
          externalMajorMin: "23.577 mm",
          externalPitchMin: "21.803 mm",
          internalPitchMax: "22.316 mm",
          internalMinorMax: "21.252 mm",
        },
      ],
    },
  ],
  "elastic-interaction": [
    {
      order: ["1", "2", "3", "4"],
      neighbours: [{ apart: "1", change: "-0.15" }],
      arrangement: "circle",
      passLoads: ["60 kN", "120 kN"],
      loadLimit: "140 kN",
    },
  ],
  "nut-factor-trial": [
    {
      torque: "480 N.m",
      diameter: "24 mm",
      stretches: ["0.22 mm", "0.22 mm", "0.22 mm", "0.22 mm", "0.22 mm"],
      boltStiffness: "653.6 kN/mm",
      stretchResolution: "10 um",
    },
    {
      torque: "480 N.m",
      diameter: "24 mm",
      preloads: ["144 kN", "144 kN", "144 kN", "144 kN", "144 kN"],
      preloadResolution: "5 kN",
    },
  ],
  "bolt-group-shear": [
    {
      bolts: [
        { x: "-75 mm", y: "-60 mm" },
        { x: "75 mm", y: "-60 mm" },
        { x: "75 mm", y: "60 mm" },
      ],
      force: [{ x: "5 kN", y: "-16 kN" }],
      at: [{ x: "300 mm", y: "20 mm" }],
    },
  ],
  "split-line-load": [
    {
      halfWidth: "260 mm",
      pitch: "100 mm",
      zones: [{ zone: "inlet", zonePressure: "0.6 MPa", bolts: "4" }],
    },
  ],
  "fit-of-pair": [bores],
  "hole-form": [
    {
      readings: [
        { depth: "outer", direction: "along", value: "25.012 mm", repeat: "1" },
        { depth: "outer", direction: "along", value: "25.013 mm", repeat: "2" },
        { depth: "outer", direction: "across", value: "25.011 mm" },
      ],
    },
  ],
  "hold-count": [
    {
      expected: "3",
      countedOnce: "2",
      countedTwice: "2",
      positions: ["1", "2", "3"],
      found: ["1", "2"],
    },
  ],
  "select-bolts": [
    {
      holes: [
        { tag: "1", smallest: "25.010 mm", largestDepthMean: "25.012 mm", bolt: "3" },
        { tag: "3", smallest: "25.020 mm", largestDepthMean: "25.022 mm", bolt: "1" },
      ],
      bolts: [
        { tag: "1", largest: "25.016 mm", mean: "25.015 mm" },
        { tag: "3", largest: "25.006 mm", mean: "25.005 mm" },
      ],
      limits: [{ tightest: "-10 um", loosest: "15 um" }],
      uncertainties: [{ hole: "3 um", shank: "2 um" }],
    },
  ],
  "tightening-order": [
    {
      arrangement: "split line",
      positions: [
        { position: "1", side: "left", x: "0 mm", kind: "fitted" },
        { position: "2", side: "left", x: "100 mm", kind: "plain" },
        { position: "11", side: "right", x: "0 mm", kind: "plain" },
        { position: "12", side: "right", x: "100 mm", kind: "fitted" },
      ],
      fittedFirst: "yes",
    },
    {
      arrangement: "split line",
      positions: [
        { position: "1", x: "0 mm", y: "-50 mm" },
        { position: "2", x: "100 mm", y: "-50 mm" },
        { position: "11", x: "0 mm", y: "50 mm" },
        { position: "12", x: "100 mm", y: "50 mm" },
      ],
    },
  ],
  "pass-torques": [
    {
      finalTorque: "500 N.m",
      fractions: ["30 %", "100 %"],
      order: ["5", "12"],
      runOn: [
        { position: "5", torque: "26 N.m" },
        { position: "12", torque: "31 N.m" },
      ],
      adapters: [{ position: "12", length: "60 mm", angle: "30 deg" }],
      wrenchLength: "650 mm",
    },
  ],
  "record-findings": [
    {
      plan: ["1", "2", "3", "4", "5"].map((position) => ({ pass: "pass 1", position, net: "500 N.m" })),
      rows: [
        { pass: "pass 1", position: "1", runOn: "30 N.m", read: "530 N.m", angle: "14 deg" },
        { pass: "pass 1", position: "2", runOn: "30 N.m", read: "560 N.m", angle: "14 deg" },
        { pass: "pass 1", position: "3", runOn: "30 N.m", read: "530 N.m", angle: "19 deg" },
        { pass: "pass 1", position: "4", runOn: "30 N.m", read: "394 N.m", angle: "14 deg" },
        { pass: "pass 1", position: "5", runOn: "30 N.m", read: "530 N.m", angle: "14 deg" },
      ],
      torqueTolerance: "5 %",
      angleTolerance: "4 deg",
      slipTolerance: "1 %",
    },
    {
      plan: [
        { pass: "pass 1", position: "5", set: "526 N.m" },
        { pass: "pass 1", position: "7", net: "500 N.m" },
      ],
      rows: [
        {
          pass: "pass 1",
          position: "5",
          net: "500 N.m",
          runOn: "26 N.m",
          set: "526 N.m",
          read: "460 N.m",
          unit: "N.m",
          angle: "14 deg",
        },
        { pass: "pass 1", position: "7", runOn: "31 N.m", read: "531 N.m", angle: "25 deg" },
      ],
    },
  ],
};
