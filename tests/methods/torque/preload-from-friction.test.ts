import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preloadFromFriction } from "../../../src/methods/torque/preload-from-friction.ts";
import { torqueFromFriction } from "../../../src/methods/torque/torque-from-friction.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("preload-from-friction");

describe("hand calculation", () => {
  test("16.232552696 N.m on the square screw of Shigley 8th ed. solutions, Prob. 8-4, gives 6 kN", () => {
    // T/F = (dm/2)(l + π f dm)/(π dm − f l) + fc dc/2, so F = 16.2325526960287 / 0.00270542544933812 = 6000 N.
    const found = preloadFromFriction.solve({
      torque: "16.232552696028727533 N.m",
      pitch: "5 mm",
      pitchDiameter: "22.5 mm",
      threadFriction: "0.08",
      bearingFriction: "0.05",
      bearingMeanDiameter: "40 mm",
      threadHalfAngle: "0 deg",
    });
    expectClose(si(found, "preload"), 6000, 1e-13);
    expectClose(si(found, "bearingTorque"), 6, 1e-13);
    expectClose(si(found, "pitchTorque"), 15 / Math.PI, 1e-13); // 6000 × 0.005 / 2π
  });
});

const screw = fc.record({
  pitch: between(0.0005, 0.006).map((v) => of("length", v)),
  pitchDiameter: between(0.006, 0.06).map((v) => of("length", v)),
  threadFriction: between(0, 0.6).map((v) => of("ratio", v)),
  bearingFriction: between(0, 0.6).map((v) => of("ratio", v)),
  bearingMeanDiameter: between(0, 0.1).map((v) => of("length", v)),
  threadHalfAngle: between(0, 0.7).map((v) => of("angle", v)),
  form: fc.constantFrom("exact", "short"),
});

describe("laws", () => {
  test("torqueFromFriction undoes it in both forms, with the same parts", () => {
    fc.assert(
      fc.property(between(1, 3000), screw, (torque, s) => {
        const found = preloadFromFriction.solve({ torque: of("torque", torque), ...s });
        const back = torqueFromFriction.solve({ preload: of("force", si(found, "preload")), ...s });
        expectClose(si(back, "torque"), torque);
        for (const part of ["pitchTorque", "threadTorque", "bearingTorque"])
          expectClose(si(back, part), si(found, part));
      }),
    );
  });

  test("preload is proportional to torque", () => {
    fc.assert(
      fc.property(between(1, 1000), screw, (torque, s) => {
        const at = (t: number) => si(preloadFromFriction.solve({ torque: of("torque", t), ...s }), "preload");
        expectClose(at(3 * torque), 3 * at(torque));
      }),
    );
  });

  test("more friction leaves less preload, and the exact form never gives more than the short one", () => {
    const preload = (change: Record<string, string>) =>
      si(preloadFromFriction.solveNamed({ ...good, ...change }), "preload");
    expect(preload({ threadFriction: "0.13" })).toBeLessThan(preload({}));
    expect(preload({ bearingFriction: "0.15" })).toBeLessThan(preload({}));
    expect(preload({ form: "exact" })).toBeLessThan(preload({ form: "short" }));
  });
});

describe("limits", () => {
  testLimits(preloadFromFriction, good, {
    "bearingMeanDiameter >= 0": { bearingMeanDiameter: "-1 mm" },
    'threadHalfAngle >= "0 deg"': { threadHalfAngle: "-120 deg" },
    'threadHalfAngle < "90 deg"': { threadHalfAngle: "100 deg" },
    "torque > 0": { torque: "0 N.m" },
    "leadTangent * threadGrip < 1": { threadFriction: "0.95", pitch: "50 mm", pitchDiameter: "5 mm" },
  });
});
