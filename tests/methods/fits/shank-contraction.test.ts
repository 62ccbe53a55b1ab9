import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { shankContraction } from "../../../src/methods/fits/shank-contraction.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, expectPrinted, of, si, testLimits } from "../helpers.ts";

const good = goodFor("shank-contraction");
const at = (diameter: number, stress: number, modulus: number, poisson: number) =>
  si(
    shankContraction.solve({
      diameter: of("length", diameter),
      axialStress: of("stress", stress),
      modulus: of("stress", modulus),
      poisson: of("ratio", poisson),
    }),
    "contraction",
  );

describe("hand calculation", () => {
  test("300 MPa in a 20 mm steel shank takes 9 µm", () => {
    // ν σ d/E = 0.3 · 300/200000 · 20 mm = 0.009 mm.
    const found = shankContraction.solve({
      diameter: "20 mm",
      axialStress: "300 MPa",
      modulus: "200 GPa",
      poisson: "0.3",
      interference: "5 um",
    });
    expectClose(si(found, "contraction"), 9e-6);
    expectClose(si(found, "interferenceLeft"), -4e-6, 1e-9);
  });

  test("a transverse strain of 0.000379 on 80 mm is 0.0303 mm", () => {
    // Textbook row: δD = ε D = 0.000379 · 80; here as ν σ/E with σ = 379 MPa, E = 300 GPa, ν = 0.3.
    expectPrinted(at(0.08, 379e6, 300e9, 0.3), "0.0303", 1e-3);
  });
});

const d = between(0.005, 0.1);
const sigma = between(0, 1e9);
const E = between(6e10, 2.2e11);
const nu = between(0, 0.5);

describe("laws", () => {
  test("is linear in stress, diameter and Poisson's ratio", () => {
    fc.assert(
      fc.property(d, sigma, E, nu, between(0.2, 1), (diameter, stress, modulus, poisson, f) => {
        const whole = at(diameter, stress, modulus, poisson);
        expectClose(at(diameter * f, stress, modulus, poisson), f * whole);
        expectClose(at(diameter, stress * f, modulus, poisson), f * whole);
        expectClose(at(diameter, stress, modulus, poisson * f), f * whole);
        expectClose(at(diameter, stress, modulus / f, poisson), f * whole);
      }),
    );
  });

  test("two stresses one after the other take what their sum takes", () => {
    fc.assert(
      fc.property(d, sigma, sigma, E, nu, (diameter, one, other, modulus, poisson) => {
        expectClose(
          at(diameter, one, modulus, poisson) + at(diameter, other, modulus, poisson),
          at(diameter, one + other, modulus, poisson),
        );
      }),
    );
  });

  test("without an interference there is a contraction and nothing is said of what is left", () => {
    const { interference: _, ...rest } = good;
    expect(Object.keys(answer(shankContraction.solveNamed(rest)).outputs)).toEqual(["contraction"]);
  });
});

describe("edges", () => {
  test("no stress, no contraction: the whole interference is left", () => {
    const found = shankContraction.solveNamed({ ...good, axialStress: "0 MPa" });
    expect(si(found, "contraction")).toBe(0);
    expectClose(si(found, "interferenceLeft"), 8e-6, 1e-15);
  });

  test("a pressed shank grows: the contraction is negative", () => {
    expect(at(0.025, -100e6, 205e9, 0.29)).toBeLessThan(0);
  });

  test("a clearance stays a clearance and grows when the bolt is tightened", () => {
    expect(
      si(shankContraction.solveNamed({ ...good, interference: "-3 um" }), "interferenceLeft"),
    ).toBeLessThan(-3e-6);
  });
});

describe("limits", () => {
  testLimits(shankContraction, good, {
    "abs(interference) <= 0.03 * diameter": { interference: "10 mm" },
    "abs(interference) <= 0.004 * diameter": { interference: "0.2 mm" },
  });
});
