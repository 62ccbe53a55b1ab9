import { describe, expect, test } from "vitest";
import { multiplierInput } from "../../../src/methods/torque/multiplier-input.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("multiplier-input");
const solve = (change: Inputs) => multiplierInput.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("1000 N.m through 5 : 1 at 80 % takes 250 N.m", () => {
    expectClose(si(solve({}), "inputTorque"), 250);
  });
});

describe("laws", () => {
  test("a multiplier without loss and without ratio passes the torque on", () => {
    expect(si(solve({ ratio: "1", efficiency: "100 %" }), "inputTorque")).toBe(1000);
  });

  test("a poorer multiplier takes more, a higher ratio less", () => {
    expect(si(solve({ efficiency: "70 %" }), "inputTorque")).toBeGreaterThan(250);
    expect(si(solve({ ratio: "6" }), "inputTorque")).toBeLessThan(250);
  });
});

describe("limits", () => {
  testLimits(multiplierInput, good, {
    "targetTorque >= 0": { targetTorque: "-1 N.m" },
    "ratio >= 1": { ratio: "0.2" },
    "efficiency > 0": { efficiency: "0" },
  });
});
