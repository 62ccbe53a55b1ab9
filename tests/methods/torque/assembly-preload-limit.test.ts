import { describe, expect, test } from "vitest";
import { assemblyPreloadLimit } from "../../../src/methods/torque/assembly-preload-limit.ts";
import { assemblyStress } from "../../../src/methods/torque/assembly-stress.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, expectPrinted, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("assembly-preload-limit");
const solve = (change: Inputs) => assemblyPreloadLimit.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("without friction and at a small pitch the bolt may take its share of yield in pure tension", () => {
    // A0 = π/4 ((21 + 19)/2)² = 100π mm²; 0.9 · 660 · 100π = 186.6 kN less a trace for the pitch.
    const found = si(
      solve({
        pitch: "0.000001 mm",
        pitchDiameter: "21 mm",
        minorDiameterExternal: "19 mm",
        threadFriction: "0",
      }),
      "preload",
    );
    expectClose(found, 0.9 * 660e6 * 100e-6 * Math.PI, 1e-12);
  });

  test("M16 of class 8.8 at friction 0.14 has the 78.8 kN and 230 N.m of the table within 0.2 %", () => {
    // VDI 2230 Part 1, Table A1 (from memory): 78.8 kN, rounded down there from 78.92, and 230 N.m.
    // μ = 0.14 in thread and face, ν = 0.9, DKm = (22.5 + 17.5)/2.
    const found = solve({
      yieldStress: "640 MPa",
      pitch: "2 mm",
      pitchDiameter: "14.701 mm",
      minorDiameterExternal: "13.546 mm",
      threadFriction: "0.14",
      bearingFriction: "0.14",
      bearingMeanDiameter: "20 mm",
    });
    expectClose(si(found, "preload"), 78_800, 2e-3);
    expectPrinted(si(found, "torque"), "230");
  });
});

describe("laws", () => {
  test("assembly-stress at that preload comes to the share of yield, where torsion is taken as elastic", () => {
    // τ of a round bar is 16 T/(π d³) = 4 (d2/d0)(tan) · F/(2 A0) · …: factor 2 is the elastic one.
    const found = solve({ torsionFactor: "2" });
    const F = si(found, "preload");
    const [d2, d3, p] = [22.05e-3, 20.32e-3, 3e-3];
    const d0 = (d2 + d3) / 2;
    const stress = assemblyStress.solve({
      preload: of("force", F),
      threadTorque: of("torque", F * (d2 / 2) * (p / (Math.PI * d2) + 1.155 * 0.12)),
      stressArea: of("area", (Math.PI / 4) * d0 ** 2),
      stressDiameter: of("length", d0),
      yieldStress: "660 MPa",
    });
    expectClose(si(stress, "utilisation"), 0.9);
  });

  test("friction takes from the preload, and fully plastic torsion leaves more than elastic", () => {
    expect(si(solve({ threadFriction: "0.14" }), "preload")).toBeLessThan(si(solve({}), "preload"));
    expect(si(solve({ torsionFactor: "2" }), "preload")).toBeLessThan(si(solve({}), "preload"));
  });
});

describe("limits", () => {
  testLimits(assemblyPreloadLimit, good, {
    "yieldStress > 0": { yieldStress: "0 MPa" },
    "utilisation > 0": { utilisation: "0" },
    "pitchDiameter > minorDiameterExternal": { minorDiameterExternal: "23 mm" },
    "bearingMeanDiameter >= 0": { bearingMeanDiameter: "-1 mm" },
    "torsionFactor >= 1.5": { torsionFactor: "1.4" },
    "torsionFactor <= 2": { torsionFactor: "2.1" },
  });
});
