import { describe, expect, test } from "vitest";
import { stretchFromPreload } from "../../../src/methods/torque/stretch-from-preload.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("stretch-from-preload");
const solve = (change: Inputs) => stretchFromPreload.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("1275 lbf on a No. 10 screw of 1.25 in grip: F L/(A E)", () => {
    // Speck p. 88: A = 0.0200 in², E = 29e6 psi: k = 0.02 · 29e6/1.25 = 464 000 lbf/in; 1275/464000 = 2.7478 thou.
    const found = si(solve({ preload: "1275 lbf", boltStiffness: "464000 lbf/in" }), "stretch");
    expectClose(found, (1275 / 464_000) * 0.0254);
  });
});

describe("laws", () => {
  test("is proportional to preload and falls with stiffness", () => {
    expectClose(si(solve({ preload: "296 kN" }), "stretch"), 2 * si(solve({}), "stretch"));
    expect(si(solve({ boltStiffness: "1000 kN/mm" }), "stretch")).toBeLessThan(si(solve({}), "stretch"));
  });

  test("no preload, no stretch", () => {
    expect(si(solve({ preload: "0 kN" }), "stretch")).toBe(0);
  });
});

describe("limits", () => {
  testLimits(stretchFromPreload, good, {
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "preload >= 0": { preload: "-1 kN" },
  });
});
