import { describe, expect, test } from "vitest";
import { turnForPreload } from "../../../src/methods/torque/turn-for-preload.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("turn-for-preload");
const solve = (change: Inputs) => turnForPreload.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("100 kN on 500 and 2000 kN/mm is 0.25 mm, an eighth of a turn at 2 mm pitch", () => {
    // 100/500 + 100/2000 = 0.2 + 0.05 mm; 360° · 0.25/2 = 45°.
    const found = solve({
      preload: "100 kN",
      pitch: "2 mm",
      boltStiffness: "500 kN/mm",
      clampedStiffness: "2000 kN/mm",
    });
    expectClose(si(found, "stretch"), 0.2e-3);
    expectClose(si(found, "compression"), 0.05e-3);
    expectClose(si(found, "angle"), Math.PI / 4);
  });
});

describe("laws", () => {
  test("bolt and clamped parts may change places", () => {
    const swapped = solve({ boltStiffness: "3330 kN/mm", clampedStiffness: "896 kN/mm" });
    expectClose(si(swapped, "angle"), si(solve({}), "angle"));
    expectClose(si(swapped, "stretch"), si(solve({}), "compression"));
  });

  test("a finer pitch takes more turn, a stiffer joint less", () => {
    expectClose(si(solve({ pitch: "1.5 mm" }), "angle"), 2 * si(solve({}), "angle"));
    expect(si(solve({ boltStiffness: "1000 kN/mm" }), "angle")).toBeLessThan(si(solve({}), "angle"));
  });

  test("no preload, no turn", () => {
    expect(si(solve({ preload: "0 kN" }), "angle")).toBe(0);
  });
});

describe("limits", () => {
  testLimits(turnForPreload, good, {
    "preload >= 0": { preload: "-1 kN" },
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "clampedStiffness > 0": { clampedStiffness: "0 kN/mm" },
  });
});
