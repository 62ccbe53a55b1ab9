import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { thermalPreloadChange } from "../../../src/methods/preload/thermal-preload-change.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("thermal-preload-change");

describe("hand calculation", () => {
  test("casing +50 K, bolt +20 K on 100 mm of grip gains 25.6 kN", () => {
    // Free difference: (11e-6 · 50 − 11.5e-6 · 20) · 100 mm = (550 − 230)e-6 · 100 mm = 0.032 mm.
    // Springs 1000 and 4000 kN/mm in series: 800 kN/mm; 0.032 · 800 = 25.6 kN.
    const found = thermalPreloadChange.solve({
      boltExpansion: "11.5e-6 1/K",
      clampedExpansion: "11e-6 1/K",
      boltTemperatureRise: "20 K",
      clampedTemperatureRise: "50 K",
      grip: "100 mm",
      boltStiffness: "1000 kN/mm",
      clampedStiffness: "4000 kN/mm",
    });
    expectClose(si(found, "change"), 25_600);
  });
});

const random = fc.record({
  alphaBolt: between(5e-6, 3e-5),
  alphaClamped: between(5e-6, 3e-5),
  riseBolt: between(-100, 200),
  riseClamped: between(-100, 200),
  grip: between(0.01, 0.5),
  kb: between(1e8, 5e9),
  km: between(1e8, 5e9),
});
type Case = typeof random extends fc.Arbitrary<infer C> ? C : never;
const change = (c: Case) =>
  si(
    thermalPreloadChange.solve({
      boltExpansion: of("expansion", c.alphaBolt),
      clampedExpansion: of("expansion", c.alphaClamped),
      boltTemperatureRise: of("temperature difference", c.riseBolt),
      clampedTemperatureRise: of("temperature difference", c.riseClamped),
      grip: of("length", c.grip),
      boltStiffness: of("stiffness", c.kb),
      clampedStiffness: of("stiffness", c.km),
    }),
    "change",
  );

describe("laws", () => {
  test("the same metal at the same temperature changes nothing", () => {
    fc.assert(
      fc.property(random, (c) => {
        expect(change({ ...c, alphaBolt: c.alphaClamped, riseBolt: c.riseClamped })).toBe(0);
      }),
    );
  });

  test("turns its sign when bolt and parts change places", () => {
    fc.assert(
      fc.property(random, (c) => {
        const swapped = {
          ...c,
          alphaBolt: c.alphaClamped,
          alphaClamped: c.alphaBolt,
          riseBolt: c.riseClamped,
          riseClamped: c.riseBolt,
          kb: c.km,
          km: c.kb,
        };
        expectClose(change(swapped), -change(c));
      }),
    );
  });

  test("a warmer casing tightens, a warmer bolt slackens", () => {
    fc.assert(
      fc.property(random, (c) => {
        expect(change({ ...c, riseClamped: c.riseClamped + 10 })).toBeGreaterThan(change(c));
        expect(change({ ...c, riseBolt: c.riseBolt + 10 })).toBeLessThan(change(c));
      }),
    );
  });

  test("heating and cooling by the same steps are opposite", () => {
    fc.assert(
      fc.property(random, (c) => {
        expectClose(change({ ...c, riseBolt: -c.riseBolt, riseClamped: -c.riseClamped }), -change(c));
      }),
    );
  });

  test("36 degF of rise is 20 K of rise", () => {
    const inKelvin = si(thermalPreloadChange.solveNamed(good), "change");
    expectClose(
      si(thermalPreloadChange.solveNamed({ ...good, boltTemperatureRise: "36 degF" }), "change"),
      inKelvin,
    );
  });
});

describe("limits", () => {
  testLimits(thermalPreloadChange, good, {
    "grip > 0": { grip: "0 mm" },
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "clampedStiffness > 0": { clampedStiffness: "0 kN/mm" },
  });
});
