import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assemblyStress } from "../../../src/methods/torque/assembly-stress.ts";
import { stopTorque } from "../../../src/methods/torque/stop-torque.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("stop-torque");
const solve = (change: Inputs) => stopTorque.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("300 MPa of 500 MPa used leaves 400/√3 MPa of torsion in a 20 mm bar", () => {
    // τ = √((500² − 300²)/3) = 400/√3; T = τ π d³/16 = 400/√3 · π · 8000/16 N.mm.
    const found = solve({
      preload: "30 kN",
      stressArea: "100 mm2",
      stressDiameter: "20 mm",
      yieldStress: "500 MPa",
    });
    expectClose(si(found, "threadTorqueAvailable"), ((400 / Math.sqrt(3)) * Math.PI * 8000) / 16 / 1000);
  });
});

describe("laws", () => {
  test("with that torque assembly-stress is just at yield", () => {
    fc.assert(
      fc.property(between(1e3, 2e5), (preload) => {
        const bolt = {
          preload: of("force", preload),
          stressArea: "352.5 mm2",
          stressDiameter: "21.19 mm",
          yieldStress: "660 MPa",
        };
        const torque = si(stopTorque.solve(bolt), "threadTorqueAvailable");
        const stress = assemblyStress.solve({ ...bolt, threadTorque: of("torque", torque) });
        expectClose(si(stress, "utilisation"), 1);
      }),
    );
  });

  test("a heavier preload leaves less", () => {
    expect(si(solve({ preload: "150 kN" }), "threadTorqueAvailable")).toBeLessThan(
      si(solve({}), "threadTorqueAvailable"),
    );
  });
});

describe("limits", () => {
  testLimits(stopTorque, good, {
    "preload >= 0": { preload: "-1 kN" },
    "stressArea > 0": { stressArea: "0 mm2" },
    "yieldStress > 0": { yieldStress: "0 MPa" },
    "axialStress < yieldStress": { preload: "233 kN" },
  });
});
