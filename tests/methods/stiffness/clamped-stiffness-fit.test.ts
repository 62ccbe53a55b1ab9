import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clampedStiffnessCone } from "../../../src/methods/stiffness/clamped-stiffness-cone.ts";
import { clampedStiffnessFit } from "../../../src/methods/stiffness/clamped-stiffness-fit.ts";
import { sentence } from "../../../src/problem.ts";
import { goodFor } from "../good-inputs.ts";
import {
  answer,
  between,
  deepFreeze,
  expectClose,
  expectHouseWording,
  expectPrinted,
  of,
  refusal,
  si,
  testLimits,
} from "../helpers.ts";

const good = goodFor("clamped-stiffness-fit");
const byFit = (d: number, l: number, e: number, a: number, b: number) =>
  clampedStiffnessFit.solve({
    diameter: of("length", d),
    grip: of("length", l),
    modulus: of("stress", e),
    fitA: of("ratio", a),
    fitB: of("ratio", b),
  });

describe("hand calculation", () => {
  test("5/8 in bolt, 1.5 in of cast iron: 8.81 Mlbf/in", () => {
    // 14 · 0.625 · 0.77871 · exp(0.61616 · 0.41667) = 8.75 · 0.77871 · 1.29270 = 8.808
    const found = clampedStiffnessFit.solve({
      diameter: "0.625 in",
      grip: "1.5 in",
      modulus: "14 Mpsi",
      material: "gray cast iron",
    });
    expectPrinted(si(found, "stiffness"), "8.81", 1e6 * (4.4482216152605 / 0.0254));
  });
});

describe("laws", () => {
  const inputs = [
    between(0.005, 0.05),
    between(0.025, 0.05),
    between(7e10, 2.2e11),
    between(0.7, 0.9),
    between(0.5, 0.7),
  ] as const;

  test("in proportion to the modulus; the same shape at twice the size is twice as stiff", () => {
    fc.assert(
      fc.property(...inputs, (d, l, e, a, b) => {
        expectClose(
          si(byFit(d, l, 2 * e, a, b), "stiffness"),
          2 * si(byFit(d, l, e, a, b), "stiffness"),
          1e-12,
        );
        expectClose(
          si(byFit(2 * d, 2 * l, e, a, b), "stiffness"),
          2 * si(byFit(d, l, e, a, b), "stiffness"),
          1e-12,
        );
      }),
    );
  });

  test("a longer grip is softer; two halves in series are the whole", () => {
    fc.assert(
      fc.property(...inputs, (d, l, e, a, b) => {
        const found = byFit(d, l, e, a, b);
        expect(si(byFit(d, 1.1 * l, e, a, b), "stiffness")).toBeLessThan(si(found, "stiffness"));
        expectClose(1 / (2 / si(found, "halfStiffness")), si(found, "stiffness"), 1e-12);
      }),
    );
  });

  test("within 15 % of the cone with a face of 1.5 d, in the middle of the fit", () => {
    for (const slenderness of [0.3, 0.5, 0.8, 1]) {
      const grip = 0.024 / slenderness;
      const cone = clampedStiffnessCone.solve({
        layers: [{ thickness: of("length", grip), modulus: "205 GPa" }],
        faceDiameter: "36 mm",
        holeDiameter: "24 mm",
      });
      const fitted = clampedStiffnessFit.solve({
        diameter: "24 mm",
        grip: of("length", grip),
        modulus: "205 GPa",
        material: "steel",
      });
      expect(Math.abs(si(fitted, "stiffness") / si(cone, "stiffness") - 1)).toBeLessThan(0.15);
    }
  });
});

test("a material beside given parameters is refused: one of the two would be ignored", () => {
  for (const change of [{}, { fitB: undefined }]) {
    const said = refusal(clampedStiffnessFit.solveNamed({ ...good, ...change, material: "steel" }));
    expect(said).toMatchObject({ code: "not-used", got: "material, steel, beside fitA" });
    expectHouseWording(said);
  }
});

test.each([
  [{ fitA: undefined, fitB: undefined }, "material"],
  [{ fitB: undefined }, "only one of them"],
  [{ fitA: undefined, fitB: undefined, material: "brass" }, "copper"],
])("%o is refused in words that help", (change, words) => {
  const said = refusal(clampedStiffnessFit.solveNamed({ ...good, ...change }));
  expectHouseWording(said);
  expect(sentence(said)).toContain(words);
});

test("inputs are left as they were", () => {
  answer(clampedStiffnessFit.solveNamed(deepFreeze({ ...good })));
});

testLimits(clampedStiffnessFit, good, {
  "grip > 0": { grip: "0 mm" },
  "fitA > 0": { fitA: "0" },
  "fitB >= 0": { fitB: "-0.1" },
  "slenderness >= 0.1": { grip: "250 mm" },
  "slenderness <= 2": { grip: "11 mm" },
});
