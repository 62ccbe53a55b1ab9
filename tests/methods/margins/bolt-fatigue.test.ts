import { describe, expect, test } from "vitest";
import { boltFatigue } from "../../../src/methods/margins/bolt-fatigue.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, expectClose, type Inputs, refusal, si, testLimits } from "../helpers.ts";

const good = goodFor("bolt-fatigue");
const solve = (change: Inputs) => boltFatigue.solveNamed({ ...good, ...change });

const MPa = 1e6;
// F = 100 kN on 250 mm²: σ_i = 400 MPa. C = 0.25, 0 to 80 kN: σ_a = 0.25 · 80/(2 · 250) = 40 MPa, σ_m = 440 MPa.
const [amplitude, held, Se, Sut, Sp] = [40, 400, 120, 800, 600];

/** Amplitude at which the load line of slope 1 from the preload meets the criterion, by halving. */
function meets(criterion: (a: number, m: number) => number): number {
  let [low, high] = [0, 1000];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (criterion(middle, held + middle) < 1) low = middle;
    else high = middle;
  }
  return low;
}

describe("hand calculation", () => {
  test("40 MPa about 440 MPa; goodman 30/23", () => {
    // Se (Sut − σi)/(Sut σa + Se (σm − σi)) = 120 · 400/(800 · 40 + 120 · 40) = 48000/36800.
    expectClose(si(solve({}), "alternatingStress"), 40 * MPa);
    expectClose(si(solve({}), "meanStress"), 440 * MPa);
    expectClose(si(solve({}), "factor"), 30 / 23);
  });

  test("from 20 to 80 kN: 30 MPa about 450 MPa by every criterion, goodman 1.6", () => {
    // σ_a = 0.25 · 60/500 = 30, σ_m = 0.25 · 100/500 + 400 = 450 MPa; 48000/(800 · 30 + 120 · 50).
    for (const criterion of ["goodman", "gerber", "asme-elliptic", "rolled-thread"]) {
      expectClose(si(solve({ criterion, loadMin: "20 kN" }), "alternatingStress"), 30 * MPa);
      expectClose(si(solve({ criterion, loadMin: "20 kN" }), "meanStress"), 450 * MPa);
    }
    expectClose(si(solve({ loadMin: "20 kN" }), "factor"), 1.6);
  });

  test("rolled-thread: 0.85 (150/24 + 45) = 43.5625 MPa", () => {
    expectClose(si(solve({ criterion: "rolled-thread" }), "factor"), 43.5625 / 40);
  });
});

describe("second implementation", () => {
  test.each<[string, (a: number, m: number) => number]>([
    ["goodman", (a, m) => a / Se + m / Sut],
    ["gerber", (a, m) => a / Se + (m / Sut) ** 2],
    ["asme-elliptic", (a, m) => (a / Se) ** 2 + (m / Sp) ** 2],
  ])("%s: the factor is where the load line meets the criterion", (criterion, curve) => {
    expectClose(si(solve({ criterion }), "factor"), meets(curve) / amplitude, 1e-12);
  });
});

describe("laws", () => {
  test("more swing or more preload lowers the factor", () => {
    for (const criterion of ["goodman", "gerber", "asme-elliptic"]) {
      expect(si(solve({ criterion, loadMax: "90 kN" }), "factor")).toBeLessThan(
        si(solve({ criterion }), "factor"),
      );
      expect(si(solve({ criterion, preload: "110 kN" }), "factor")).toBeLessThan(
        si(solve({ criterion }), "factor"),
      );
    }
  });

  test("goodman holds for any least load, so it carries no warning there", () => {
    expect(answer(solve({ loadMin: "10 kN" })).warnings).toEqual([]);
  });

  test("a preload beyond the proof stress has no asme-elliptic factor, and the sentence names preload or proof stress", () => {
    const said = refusal(solve({ criterion: "asme-elliptic", preload: "200 kN" }));
    expect(said.code).toBe("limit");
    expect(`${said.what} ${said.must}`).toMatch(/preload|proof/);
  });
});

describe("limits", () => {
  testLimits(boltFatigue, good, {
    "stressArea > 0": { stressArea: "0 mm2" },
    "preload > 0": { preload: "0 kN" },
    "loadMax > loadMin": { loadMax: "0 kN" },
    "loadMin >= 0": { loadMin: "-1 kN" },
    "loadFactor > 0": { loadFactor: "0" },
    "loadFactor <= 1": { loadFactor: "25" },
    "enduranceStress > 0": { enduranceStress: "0 MPa" },
    "tensileStress > 0": { tensileStress: "0 MPa" },
    "proofStress > 0": { proofStress: "0 MPa" },
    "preloadStress < proofStress": { preload: "150 kN" },
    "preloadStress < tensileStress": { preload: "200 kN", proofStress: "" },
    "diameter > 0": { diameter: "0 mm" },
    "(1 - loadFactor) * loadMax < preload": { loadMax: "140 kN" },
    'leastLoad == "0 kN"': { loadMin: "10 kN", criterion: "gerber" },
  });
});
