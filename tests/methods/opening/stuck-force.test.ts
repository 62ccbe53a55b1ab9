import { describe, expect, test } from "vitest";
import { stuckForce } from "../../../src/methods/opening/stuck-force.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("stuck-force");
const solve = (change: Inputs) => stuckForce.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("120 kN on the cell, 100 kN of casing and 5 kN of rigging: 15 kN holds, ratio 8/7", () => {
    expectClose(si(solve({}), "stuckForce"), 15_000);
    expectClose(si(solve({}), "ratio"), 8 / 7);
  });
});

describe("laws", () => {
  test("a free half pulls its weight and rigging: force 0, ratio 1", () => {
    expect(si(solve({ loadCell: "105 kN" }), "stuckForce")).toBe(0);
    expect(si(solve({ loadCell: "105 kN" }), "ratio")).toBe(1);
  });

  test("a half that still rests has a negative force and a ratio below 1", () => {
    expect(si(solve({ loadCell: "50 kN" }), "stuckForce")).toBeLessThan(0);
    expect(si(solve({ loadCell: "50 kN" }), "ratio")).toBeLessThan(1);
  });

  test("tonnes of force and kilonewtons may stand side by side", () => {
    expectClose(
      si(solve({ loadCell: "12 tf", weight: "10 tf", rigging: "0.5 tf" }), "stuckForce"),
      1.5 * 9806.65,
    );
  });
});

describe("limits", () => {
  testLimits(stuckForce, good, {
    "loadCell >= 0": { loadCell: "-1 kN" },
    "weight > 0": { weight: "0 kN" },
    "rigging >= 0": { rigging: "-1 kN" },
  });
});
