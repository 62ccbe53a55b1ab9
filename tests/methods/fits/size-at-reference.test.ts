import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sizeAtReference } from "../../../src/methods/fits/size-at-reference.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, refusal, si, testLimits } from "../helpers.ts";

const good = goodFor("size-at-reference");

describe("hand calculation", () => {
  test("an iron bore of 25.004 mm read at 27 °C with a steel ring at 21 °C is 25.0023625 mm at 20 °C", () => {
    // ΔD = D (α_g (21 − 20) − α_p (27 − 20)) = 25 (11.5e-6 − 77e-6) mm = −0.0016375 mm.
    const found = sizeAtReference.solveNamed(good);
    expectClose(si(found, "correction"), -1.6375e-6, 1e-9);
    expectClose(si(found, "size"), 0.0250023625, 1e-14);
  });

  test("a bolt at 5 °C and a micrometer at 21 °C, both steel, corrects by +4.6 µm on 25 mm", () => {
    // 25 · 11.5e-6 · (1 + 15) = 0.0046 mm.
    const found = sizeAtReference.solve({
      reading: "25.006 mm",
      partTemperature: "5 degC",
      gaugeTemperature: "21 degC",
      partExpansion: "11.5e-6 1/K",
      gaugeExpansion: "11.5e-6 1/K",
      nominal: "25 mm",
    });
    expectClose(si(found, "correction"), 4.6e-6, 1e-9);
  });
});

const temperature = between(250, 400);
const expansion = between(1e-6, 3e-5);
const correction = (part: number, gauge: number, alphaPart: number, alphaGauge: number, nominal = 0.025) =>
  si(
    sizeAtReference.solve({
      reading: of("length", nominal),
      partTemperature: of("temperature", part),
      gaugeTemperature: of("temperature", gauge),
      partExpansion: of("expansion", alphaPart),
      gaugeExpansion: of("expansion", alphaGauge),
      nominal: of("length", nominal),
    }),
    "correction",
  );

describe("laws", () => {
  test("at 20 °C nothing is corrected, whatever the metals", () => {
    fc.assert(
      fc.property(expansion, expansion, (a, b) => {
        expect(Math.abs(correction(293.15, 293.15, a, b))).toBe(0);
      }),
    );
  });

  test("same metal and same temperature: nothing is corrected at any temperature", () => {
    fc.assert(
      fc.property(temperature, expansion, (t, a) => {
        expect(correction(t, t, a, a)).toBe(0);
      }),
    );
  });

  test("part and gauge change places: the correction turns its sign", () => {
    fc.assert(
      fc.property(temperature, temperature, expansion, expansion, (tp, tg, ap, ag) => {
        const there = correction(tp, tg, ap, ag);
        const back = correction(tg, tp, ag, ap);
        expect(Math.abs(there + back)).toBeLessThan(1e-18);
      }),
    );
  });

  test("a warmer part is made smaller, a warmer gauge larger", () => {
    fc.assert(
      fc.property(between(250, 380), between(250, 380), expansion, expansion, (tp, tg, ap, ag) => {
        expect(correction(tp + 5, tg, ap, ag)).toBeLessThan(correction(tp, tg, ap, ag));
        expect(correction(tp, tg + 5, ap, ag)).toBeGreaterThan(correction(tp, tg, ap, ag));
      }),
    );
  });

  test("80.6 degF is the reading of 27 degC", () => {
    const fahrenheit = sizeAtReference.solveNamed({ ...good, partTemperature: "80.6 degF" });
    expectClose(si(fahrenheit, "size"), si(sizeAtReference.solveNamed(good), "size"), 1e-15);
  });
});

describe("limits", () => {
  testLimits(sizeAtReference, good, {
    'gaugeTemperature >= "-100 degC"': { gaugeTemperature: "-101 degC" },
    'gaugeTemperature <= "200 degC"': { gaugeTemperature: "3000 degC" },
    'partTemperature >= "-100 degC"': { partTemperature: "-101 degC" },
    'partTemperature <= "200 degC"': { partTemperature: "201 degC" },
    "abs(reading - nominal) <= 0.05 * nominal": { nominal: "30 mm" },
  });

  test("a temperature difference where a reading is asked for is refused", () => {
    const said = refusal(
      sizeAtReference.solveNamed({ ...good, partTemperature: of("temperature difference", 7) }),
    );
    expect(said.code).toBe("wrong-kind");
  });
});
