import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitTemperature } from "../../../src/methods/fits/fit-temperature.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("fit-temperature");
const at = (interference: number, handling: number, diameter: number, expansion: number) =>
  si(
    fitTemperature.solve({
      interference: of("length", interference),
      handling: of("length", handling),
      diameter: of("length", diameter),
      expansion: of("expansion", expansion),
    }),
    "temperatureDifference",
  );

describe("hand calculation", () => {
  test("15 µm of interference and 8 µm of slip on 25 mm of steel take 80 K", () => {
    // 0.023 mm / (25 mm · 11.5e-6 1/K) = 0.023/0.0002875 = 80 K.
    expectClose(at(15e-6, 8e-6, 0.025, 11.5e-6), 80);
  });
});

const size = between(0.005, 0.2);
const metal = between(5e-6, 3e-5);

describe("laws", () => {
  test("that difference frees exactly interference and slip: d α ΔT", () => {
    fc.assert(
      fc.property(between(0, 1e-4), between(1e-6, 5e-5), size, metal, (i, s, d, a) => {
        expectClose(d * a * at(i, s, d, a), i + s);
      }),
    );
  });

  test("a larger fit needs less, more interference needs more", () => {
    fc.assert(
      fc.property(between(1e-6, 6e-5), size, metal, (i, d, a) => {
        expect(at(i, 0, 2 * d, a)).toBeLessThan(at(i, 0, d, a));
        expect(at(2 * i, 0, d, a)).toBeGreaterThan(at(i, 0, d, a));
      }),
    );
  });

  test("an expansion per degF gives the same as per K", () => {
    const perKelvin = si(fitTemperature.solveNamed(good), "temperatureDifference");
    const perFahrenheit = si(
      fitTemperature.solveNamed({ ...good, expansion: "6.388888888888889e-6 1/degF" }),
      "temperatureDifference",
    );
    expectClose(perFahrenheit, perKelvin, 1e-14);
  });
});

describe("edges", () => {
  test("no interference and no slip: no difference is needed", () => {
    expect(at(0, 0, 0.025, 11.5e-6)).toBe(0);
  });

  test("a clearance as large as the slip wanted needs no difference", () => {
    expect(Math.abs(at(-10e-6, 10e-6, 0.025, 11.5e-6))).toBe(0);
  });

  test("350 K carries no warning, a little more does", () => {
    const warnings = (interference: number) =>
      answer(
        fitTemperature.solve({
          interference: of("length", interference),
          handling: "0 um",
          diameter: "100 mm",
          expansion: "1e-5 1/K",
        }),
      ).warnings.length;
    expect(warnings(349.9e-6)).toBe(0);
    expect(warnings(351e-6)).toBe(1);
  });
});

describe("limits", () => {
  testLimits(fitTemperature, good, {
    "handling >= 0": { handling: "-1 um" },
    "interference + handling >= 0": { interference: "-20 um" },
    'temperatureDifference <= "350 K"': { interference: "200 um" },
    "abs(interference) <= 0.03 * diameter": { interference: "10 mm" },
    "abs(interference) <= 0.004 * diameter": { interference: "0.2 mm" },
  });
});
