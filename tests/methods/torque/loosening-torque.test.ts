import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { looseningTorque } from "../../../src/methods/torque/loosening-torque.ts";
import { torqueFromFriction } from "../../../src/methods/torque/torque-from-friction.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, expectPrinted, type Inputs, of, si, testLimits, yes } from "../helpers.ts";

const good = goodFor("loosening-torque");
const solve = (change: Inputs) => looseningTorque.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("the square power screw of Shigley 8th ed. solutions, Prob. 8-4, is lowered with 6.622 N.m", () => {
    // TL = (F dm/2)(π f dm − l)/(π dm + f l) + F fc dc/2 = 0.6216… + 6 N.m.
    const found = screwOf84();
    const [F, dm, l, f] = [6000, 0.0225, 0.005, 0.08];
    const thread = (((F * dm) / 2) * (Math.PI * f * dm - l)) / (Math.PI * dm + f * l);
    expectClose(si(found, "threadTorque"), thread);
    expectPrinted(si(found, "torque"), "6.622");
    expect(yes(found, "selfLocking")).toBe(true);
  });
});

const screwOf84 = () =>
  looseningTorque.solve({
    preload: "6 kN",
    pitch: "5 mm",
    pitchDiameter: "22.5 mm",
    threadFriction: "0.08",
    bearingFriction: "0.05",
    bearingMeanDiameter: "40 mm",
    threadHalfAngle: "0 deg",
  });

describe("laws", () => {
  test("takes less than tightening, by about preload times pitch over π", () => {
    const tight = torqueFromFriction.solveNamed({ ...good, form: "short" });
    const loose = solve({ form: "short" });
    expectClose(si(tight, "torque") - si(loose, "torque"), (148e3 * 3e-3) / Math.PI);
  });

  test("without thread friction the thread drives the nut off with the pitch torque", () => {
    const found = solve({ threadFriction: "0", bearingFriction: "0.2" });
    expectClose(si(found, "threadTorque"), -(148e3 * 3e-3) / (2 * Math.PI));
    expect(yes(found, "selfLocking")).toBe(false);
  });

  test("is self-locking exactly where the thread part is not negative", () => {
    fc.assert(
      fc.property(between(0, 0.2), (friction) => {
        const found = solve({ threadFriction: of("ratio", friction) });
        expect(yes(found, "selfLocking")).toBe(si(found, "threadTorque") >= 0);
      }),
    );
  });
});

describe("limits", () => {
  testLimits(looseningTorque, good, {
    "bearingMeanDiameter >= 0": { bearingMeanDiameter: "-1 mm" },
    'threadHalfAngle >= "0 deg"': { threadHalfAngle: "-120 deg" },
    'threadHalfAngle < "90 deg"': { threadHalfAngle: "90 deg" },
    "preload > 0": { preload: "0 kN" },
    'torque > "0 N.m"': { threadFriction: "0", bearingFriction: "0" },
  });
});
