import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wrenchSetting } from "../../../src/methods/torque/wrench-setting.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("wrench-setting");
const lbfInch = 4.4482216152605 * 0.0254;

describe("hand calculation", () => {
  test("500 N.m through 60 mm in line on a 650 mm wrench is set as 32500/71 N.m", () => {
    // T L/(L + A) = 500 · 650/710 = 325000/710 = 32500/71 = 457.746…
    const found = wrenchSetting.solve({
      targetTorque: "500 N.m",
      wrenchLength: "650 mm",
      adapterLength: "60 mm",
    });
    expectClose(si(found, "setting"), 32500 / 71, 1e-15);
  });

  test("300 lbf.in through 4 in on a 10 in lever is set as 1500/7 lbf.in", () => {
    // TM 1-1500-204-23-9, fig. 8-16: 300 · 10/14 = 214.2857…
    const found = wrenchSetting.solve({
      targetTorque: "300 lbf.in",
      wrenchLength: "10 in",
      adapterLength: "4 in",
    });
    expectClose(si(found, "setting"), (1500 / 7) * lbfInch, 1e-15);
  });

  test("at 60 deg half the adapter counts: 500 · 650/680 N.m", () => {
    const found = wrenchSetting.solve({
      targetTorque: "500 N.m",
      wrenchLength: "650 mm",
      adapterLength: "60 mm",
      adapterAngle: "60 deg",
    });
    expectClose(si(found, "setting"), (500 * 650) / 680, 1e-14);
  });
});

const set = (torque: number, wrench: number, adapter: number, angle: number) =>
  si(
    wrenchSetting.solve({
      targetTorque: of("torque", torque),
      wrenchLength: of("length", wrench),
      adapterLength: of("length", adapter),
      adapterAngle: of("angle", angle),
    }),
    "setting",
  );
const wrench = [between(1, 1000), between(0.2, 1.5), between(0.001, 0.15)] as const;

describe("laws", () => {
  test("an adapter at 90 deg changes nothing", () => {
    fc.assert(fc.property(...wrench, (t, l, a) => expectClose(set(t, l, a, Math.PI / 2), t)));
  });

  test("an adapter that lengthens the wrench lowers the setting, one that points back raises it", () => {
    fc.assert(
      fc.property(...wrench, between(0, 1.5), (t, l, a, angle) => {
        expect(set(t, l, a, angle)).toBeLessThan(t);
        expect(set(t, l, a, Math.PI - angle)).toBeGreaterThan(t);
      }),
    );
  });

  test("a longer adapter in line lowers the setting further", () => {
    fc.assert(
      fc.property(...wrench, (t, l, a) => {
        expect(set(t, l, 2 * a, 0)).toBeLessThan(set(t, l, a, 0));
      }),
    );
  });

  test("left and right are the same: the angle's sign does not matter", () => {
    fc.assert(
      fc.property(...wrench, between(0, 3), (t, l, a, angle) =>
        expectClose(set(t, l, a, angle), set(t, l, a, -angle)),
      ),
    );
  });

  test("the torque at the fastener is the setting times (L + A cos θ)/L", () => {
    fc.assert(
      fc.property(...wrench, between(0, 3), (t, l, a, angle) =>
        expectClose((set(t, l, a, angle) * (l + a * Math.cos(angle))) / l, t),
      ),
    );
  });
});

describe("edges", () => {
  test("no adapter: the setting is the torque itself", () => {
    expect(set(500, 0.65, 0, 0)).toBe(500);
  });

  test("zero torque is set as zero", () => {
    expect(set(0, 0.65, 0.06, 0)).toBe(0);
  });
});

describe("limits", () => {
  testLimits(wrenchSetting, good, {
    "targetTorque >= 0": { targetTorque: "-1 N.m" },
    "wrenchLength + adapterLength * cos(adapterAngle) > 0": {
      adapterLength: "700 mm",
      adapterAngle: "180 deg",
    },
  });
});
