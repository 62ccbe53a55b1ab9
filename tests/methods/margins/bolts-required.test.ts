import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltsRequired } from "../../../src/methods/margins/bolts-required.ts";
import { goodFor } from "../good-inputs.ts";
import { between, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("bolts-required");
const solve = (change: Inputs) => boltsRequired.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("0.25 · 2 · 620/(150 − 100) = 6.2, so seven bolts", () => {
    expect(si(solve({}), "count")).toBe(7);
  });

  test("exactly six: 600 kN takes six and not seven", () => {
    expect(si(solve({ totalLoad: "600 kN" }), "count")).toBe(6);
  });

  test("6.5 and 6.7 are rounded up like 6.2", () => {
    expect(si(solve({ totalLoad: "650 kN" }), "count")).toBe(7);
    expect(si(solve({ totalLoad: "670 kN" }), "count")).toBe(7);
  });
});

describe("laws", () => {
  test("is a whole number, and proof-factors at its share reaches the factor asked for", () => {
    fc.assert(
      fc.property(between(1e4, 5e6), (total) => {
        const count = si(solve({ totalLoad: of("force", total) }), "count");
        expect(Number.isInteger(count)).toBe(true);
        const at = (bolts: number) => (150e3 - 100e3) / ((0.25 * total) / bolts);
        expect(at(count)).toBeGreaterThanOrEqual(2 * (1 - 1e-12));
        if (count > 1) expect(at(count - 1)).toBeLessThan(2 * (1 + 1e-12));
      }),
    );
  });
});

describe("limits", () => {
  testLimits(boltsRequired, good, {
    "totalLoad > 0": { totalLoad: "0 kN" },
    "loadFactor > 0": { loadFactor: "0" },
    "loadFactorOfSafety > 0": { loadFactorOfSafety: "0" },
    "stressArea > 0": { stressArea: "0 mm2" },
    "preload >= 0": { preload: "-1 kN" },
    'proofStress * stressArea - preload > "0 N"': { preload: "151 kN" },
  });
});
