import { describe, expect, test } from "vitest";
import { dowelJam } from "../../../src/methods/opening/dowel-jam.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("dowel-jam");
const solve = (change: Inputs) => dowelJam.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("0.05 mm of clearance over 50 mm lets the half tilt by 1 in 1000, and it locks beyond 500/3 mm off centre", () => {
    // tan = c/L; self-locking offset L/(2 μ) = 50/0.3 mm.
    expectClose(si(solve({}), "tiltLimit"), 1e-3);
    expectClose(si(solve({}), "selfLockingOffset"), 0.5 / 3);
  });
});

describe("laws", () => {
  test("less engagement lets it tilt further, less friction moves the lock farther out", () => {
    expect(si(solve({ engagedLength: "25 mm" }), "tiltLimit")).toBeGreaterThan(si(solve({}), "tiltLimit"));
    expect(si(solve({ friction: "0.1" }), "selfLockingOffset")).toBeGreaterThan(
      si(solve({}), "selfLockingOffset"),
    );
  });

  test("without friction given nothing is said of locking", () => {
    const { friction: _, ...rest } = good;
    expect(answer(dowelJam.solveNamed(rest)).outputs["selfLockingOffset"]).toBeUndefined();
  });
});

describe("limits", () => {
  testLimits(dowelJam, good, {
    "clearance > 0": { clearance: "0 mm" },
    "engagedLength > 0": { engagedLength: "0 mm" },
    "friction > 0": { friction: "0" },
  });
});
