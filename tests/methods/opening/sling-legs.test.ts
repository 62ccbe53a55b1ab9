import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slingLegs } from "../../../src/methods/opening/sling-legs.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("sling-legs");
const solve = (change: Inputs) => slingLegs.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("100 kN on two legs at 30 deg is 100 kN in each", () => {
    // W/(n sin β) = 100/(2 · 1/2).
    expectClose(si(solve({ angleFromHorizontal: "30 deg" }), "legForce"), 100_000);
  });

  test("0.5 m off the middle of 4 m: 62.5 and 37.5 kN on the lugs", () => {
    // Moments about the far lug: W (s/2 + e)/s = 100 · 2.5/4.
    expectClose(si(solve({}), "nearLeg"), 62_500);
    expectClose(si(solve({}), "farLeg"), 37_500);
  });
});

describe("laws", () => {
  test("straight up, two legs carry half each", () => {
    expectClose(si(solve({ angleFromHorizontal: "90 deg" }), "legForce"), 50_000);
  });

  test("near and far lug carry the weight together, and equally in the middle", () => {
    fc.assert(
      fc.property(between(0, 1.9), (offset) => {
        const found = solve({ centreOffset: of("length", offset) });
        expectClose(si(found, "nearLeg") + si(found, "farLeg"), 100_000);
        expect(si(found, "nearLeg")).toBeGreaterThanOrEqual(si(found, "farLeg") - 1e-9);
      }),
    );
  });

  test("a flatter sling pulls harder", () => {
    fc.assert(
      fc.property(between(0.1, 1.5), (angle) => {
        expect(si(solve({ angleFromHorizontal: of("angle", angle) }), "legForce")).toBeGreaterThan(
          si(solve({ angleFromHorizontal: of("angle", angle + 0.05) }), "legForce"),
        );
      }),
    );
  });
});

test("four legs of a stiff load spoil the force in a leg; a flat sling is advice", () => {
  expect(Object.keys(answer(solve({ legs: "4" })).spoilt)).toEqual(["legForce"]);
  expect(answer(solve({ angleFromHorizontal: "29 deg" })).spoilt).toEqual({});
});

describe("limits", () => {
  testLimits(slingLegs, good, {
    "weight > 0": { weight: "0 kN" },
    "legs >= 1": { legs: "0" },
    'angleFromHorizontal > "0 deg"': { angleFromHorizontal: "0 deg" },
    'angleFromHorizontal <= "90 deg"': { angleFromHorizontal: "91 deg" },
    'angleFromHorizontal >= "30 deg"': { angleFromHorizontal: "29 deg" },
    "span > 0": { span: "0 m" },
    "centreOffset >= 0": { centreOffset: "-0.1 m" },
    "centreOffset < span / 2": { centreOffset: "2 m" },
    "legs <= 2": { legs: "4" },
  });
});
