import { describe, test } from "vitest";
import { fitAfterSoak } from "../../../src/methods/fits/fit-after-soak.ts";
import { goodFor } from "../good-inputs.ts";
import { expectClose, type Inputs, si, testLimits } from "../helpers.ts";

const good = goodFor("fit-after-soak");
const solve = (change: Inputs) => fitAfterSoak.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("50 mm, 2e-6 1/K more expansion inside, 100 K: 10 µm of interference become 20 µm", () => {
    // d (α_i − α_o) ΔT = 50 · (12e-6 − 10e-6) · 100 = 0.010 mm.
    const found = fitAfterSoak.solve({
      diameter: "50 mm",
      innerExpansion: "12e-6 1/K",
      outerExpansion: "10e-6 1/K",
      temperatureRise: "100 K",
      interference: "10 um",
    });
    expectClose(si(found, "change"), 1e-5, 1e-12);
    expectClose(si(found, "interferenceAfter"), 2e-5, 1e-12);
  });
});

describe("laws", () => {
  test("the same metal inside and outside keeps its fit at any temperature", () => {
    for (const temperatureRise of ["-200 K", "0 K", "500 K"])
      expectClose(
        si(solve({ outerExpansion: "11.5e-6 1/K", temperatureRise }), "interferenceAfter"),
        1e-5,
        1e-15,
      );
  });

  test("warming and cooling by the same steps are opposite", () => {
    expectClose(si(solve({ temperatureRise: "-80 K" }), "change"), -si(solve({}), "change"), 1e-15);
  });
});

describe("limits", () => {
  testLimits(fitAfterSoak, good, {
    "abs(interference) <= 0.03 * diameter": { interference: "10 mm" },
    "abs(interference) <= 0.004 * diameter": { interference: "-0.5 mm" },
  });
});
