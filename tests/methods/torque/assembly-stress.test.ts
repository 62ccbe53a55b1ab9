import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assemblyStress } from "../../../src/methods/torque/assembly-stress.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("assembly-stress");

describe("hand calculation", () => {
  test("300 MPa of tension and 100 MPa of torsion are 346.41 MPa together, 52.5 % of 660 MPa", () => {
    // σ = 30 kN / 100 mm² = 300 MPa. A bar of 20 mm: τ = 16 T/(π d³); T = 50π N.m gives 100 MPa.
    // σ_eq = √(300² + 3·100²) = √120000 = 200√3 MPa; over 660: 10√3/33.
    const found = assemblyStress.solve({
      preload: "30 kN",
      threadTorque: of("torque", 50 * Math.PI),
      stressArea: "100 mm2",
      stressDiameter: "20 mm",
      yieldStress: "660 MPa",
    });
    expectClose(si(found, "axialStress"), 300e6, 1e-14);
    expectClose(si(found, "shearStress"), 100e6, 1e-14);
    expectClose(si(found, "equivalentStress"), 200e6 * Math.sqrt(3), 1e-14);
    expectClose(si(found, "utilisation"), (10 * Math.sqrt(3)) / 33, 1e-14);
  });
});

describe("laws", () => {
  test("without thread torque only the axial stress is left", () => {
    const found = assemblyStress.solveNamed({ ...good, threadTorque: "0 N.m" });
    expectClose(si(found, "equivalentStress"), si(found, "axialStress"), 1e-15);
  });

  test("the equivalent stress lies between the axial stress and the sum of axial and √3 shear", () => {
    fc.assert(
      fc.property(between(1e3, 5e5), between(0, 2000), between(0.004, 0.06), (force, torque, diameter) => {
        const found = assemblyStress.solve({
          preload: of("force", force),
          threadTorque: of("torque", torque),
          stressArea: of("area", (Math.PI / 4) * diameter ** 2),
          stressDiameter: of("length", diameter),
        });
        const [axial, shear] = [si(found, "axialStress"), si(found, "shearStress")];
        const both = si(found, "equivalentStress");
        expect(both).toBeGreaterThanOrEqual(axial * (1 - 1e-15));
        expect(both).toBeLessThanOrEqual((axial + Math.sqrt(3) * shear) * (1 + 1e-15));
        expectClose(both ** 2, axial ** 2 + 3 * shear ** 2);
      }),
    );
  });

  test("scales with force and torque together, and not with the yield stress", () => {
    const twice = assemblyStress.solveNamed({ ...good, preload: "296 kN", threadTorque: "540 N.m" });
    const once = assemblyStress.solveNamed(good);
    expectClose(si(twice, "equivalentStress"), 2 * si(once, "equivalentStress"));
    expectClose(si(twice, "utilisation"), 2 * si(once, "utilisation"));
  });

  test("without a yield stress there is no share of yield and the rest stands", () => {
    const { yieldStress: _, ...rest } = good;
    const found = answer(assemblyStress.solveNamed(rest));
    expect(found.outputs["utilisation"]).toBeUndefined();
    expect(found.outputs["equivalentStress"]).toBeDefined();
  });
});

describe("edges", () => {
  test("a stress of exactly the yield stress carries no warning", () => {
    const found = answer(
      assemblyStress.solve({
        preload: "66 kN",
        threadTorque: "0 N.m",
        stressArea: "100 mm2",
        stressDiameter: "11 mm",
        yieldStress: "660 MPa",
      }),
    );
    expect(si(found, "utilisation")).toBe(1);
    expect(found.warnings).toEqual([]);
  });
});

describe("limits", () => {
  testLimits(assemblyStress, good, {
    "preload >= 0": { preload: "-1 kN" },
    "threadTorque >= 0": { threadTorque: "-1 N.m" },
    "stressArea > 0": { stressArea: "0 mm2" },
    "yieldStress > 0": { yieldStress: "0 MPa" },
    "utilisation <= 1": { yieldStress: "300 MPa" },
  });
});
