import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { torqueFromPreload } from "../../../src/methods/torque/torque-from-preload.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, expectPrinted, si, testLimits, typedNumber } from "../helpers.ts";

const good = goodFor("torque-from-preload");
const lbfInch = 4.4482216152605 * 0.0254;

describe("hand calculation", () => {
  test.each([
    ["0.3", 72.675, "72.7"], // 0.3 × 0.19 × 1275 = 72.675
    ["0.2", 48.45, "48.5"], // 0.2 × 0.19 × 1275 = 48.45, printed rounded up
    ["0.15", 36.3375, "36.3"], // 0.15 × 0.19 × 1275 = 36.3375
  ])("K = %s on a No. 10 screw at 1275 lbf takes the torque of Speck p. 85", (nutFactor, exact, printed) => {
    const torque = si(
      torqueFromPreload.solve({ preload: "1275 lbf", nutFactor, diameter: "0.190 in" }),
      "torque",
    );
    expectClose(torque, exact * lbfInch, 1e-14);
    expectPrinted(torque, printed, lbfInch);
  });
});

describe("laws", () => {
  test("gives the same torque from lbf and inches as from N and millimetres", () => {
    fc.assert(
      fc.property(typedNumber(0.1, 90), typedNumber(1, 4), (force, size) => {
        const torque = (preload: string, diameter: string) =>
          si(torqueFromPreload.solve({ preload, nutFactor: 0.2, diameter }), "torque");
        expectClose(torque(`${force} kN`, `${size} in`), 25.4 * torque(`${force} kN`, `${size} mm`), 1e-14);
        expectClose(torque(`${force} kN`, `${size} mm`), torque(`${force}e3 N`, `${size}e-1 cm`), 1e-14);
        expectClose(
          torque(`${force} lbf`, `${size} mm`),
          4.4482216152605 * torque(`${force} N`, `${size} mm`),
          1e-14,
        );
      }),
    );
  });

  test("is proportional to preload, nut factor and diameter", () => {
    const torque = (change: Record<string, string>) =>
      si(torqueFromPreload.solveNamed({ ...good, ...change }), "torque");
    expectClose(torque({ preload: "296 kN" }), 2 * torque({}));
    expectClose(torque({ nutFactor: "0.42" }), 3 * torque({}));
    expectClose(torque({ diameter: "12 mm" }), torque({}) / 2);
  });
});

describe("edges", () => {
  test("zero preload takes zero torque", () => {
    expect(si(torqueFromPreload.solveNamed({ ...good, preload: "0 kN" }), "torque")).toBe(0);
  });
});

describe("limits", () => {
  testLimits(torqueFromPreload, good, {
    "preload >= 0": { preload: "-1 kN" },
  });
});
