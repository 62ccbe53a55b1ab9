import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { torqueAtNut } from "../../../src/methods/torque/torque-at-nut.ts";
import { wrenchSetting } from "../../../src/methods/torque/wrench-setting.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("torque-at-nut");
const solve = (change: Inputs) => torqueAtNut.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("60 lbf.in on a 12 in wrench with 2 in straight on delivers 70 lbf.in", () => {
    // TM 9-254, straight extension: 60 · 14/12.
    const found = torqueAtNut.solve({ setting: "60 lbf.in", wrenchLength: "12 in", adapterLength: "2 in" });
    expectClose(si(found, "torque"), 70 * 4.4482216152605 * 0.0254);
  });
});

describe("laws", () => {
  test("wrenchSetting undoes it at any angle", () => {
    fc.assert(
      fc.property(
        between(1, 1000),
        between(0.3, 1),
        between(0, 0.2),
        between(0, 3),
        (setting, l, a, angle) => {
          const lever = {
            wrenchLength: of("length", l),
            adapterLength: of("length", a),
            adapterAngle: of("angle", angle),
          };
          const torque = si(torqueAtNut.solve({ setting: of("torque", setting), ...lever }), "torque");
          expectClose(
            si(wrenchSetting.solve({ targetTorque: of("torque", torque), ...lever }), "setting"),
            setting,
          );
        },
      ),
    );
  });

  test("an adapter in line delivers more than the wrench reads, at 90 deg the same", () => {
    expect(si(solve({ adapterAngle: "0 deg" }), "torque")).toBeGreaterThan(460);
    expectClose(si(solve({ adapterAngle: "90 deg" }), "torque"), 460);
  });
});

describe("limits", () => {
  testLimits(torqueAtNut, good, {
    "setting >= 0": { setting: "-1 N.m" },
    "wrenchLength + adapterLength * cos(adapterAngle) > 0": {
      adapterLength: "700 mm",
      adapterAngle: "180 deg",
    },
  });
});
