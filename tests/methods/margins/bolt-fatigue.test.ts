import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltFatigue } from "../../../src/methods/margins/bolt-fatigue.ts";
import { goodFor } from "../good-inputs.ts";
import {
  answer,
  between,
  expectClose,
  type Inputs,
  of,
  refusal,
  si,
  solveAccepted,
  testLimits,
} from "../helpers.ts";

const good = goodFor("bolt-fatigue");
const solve = (change: Inputs) => solveAccepted(boltFatigue, { ...good, ...change });

const MPa = 1e6;
// F = 100 kN on 250 mm²: σ_i = 400 MPa. C = 0.25, 0 to 80 kN: σ_a = 0.25 · 80/(2 · 250) = 40 MPa, σ_m = 440 MPa.
const [amplitude, held, Se, Sut, Sp] = [40, 400, 120, 800, 600];

/** Amplitude at which a load line from the preload meets the criterion, by halving; slope is mean over amplitude. */
function meets(criterion: (a: number, m: number) => number, slope = 1): number {
  let [low, high] = [0, 1000];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (criterion(middle, held + slope * middle) < 1) low = middle;
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
    // 60 to 80 kN: σ_a = 0.25 · 20/500 = 10 MPa on a load line of slope 7.
    expectClose(si(solve({ criterion, loadMin: "60 kN" }), "factor"), meets(curve, 7) / 10, 1e-12);
  });

  test("any least load: both loads times the factor stand on the criterion", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("goodman", "gerber", "asme-elliptic"),
        between(0, 79),
        between(20, 140),
        (criterion, least, preload) => {
          const inputs = {
            criterion,
            loadMin: of("force", least * 1e3),
            preload: of("force", preload * 1e3),
          };
          const found = solve({ ...inputs });
          const [n, a, m] = ["factor", "alternatingStress", "meanStress"].map((name) => si(found, name));
          if (n === undefined || a === undefined || m === undefined) throw new Error("no figures");
          const still = (preload * 1e3) / 250e-6;
          const [A, M] = [(n * a) / MPa, (still + n * (m - still)) / MPa];
          const used =
            criterion === "goodman"
              ? A / Se + M / Sut
              : criterion === "gerber"
                ? A / Se + (M / Sut) ** 2
                : (A / Se) ** 2 + (M / Sp) ** 2;
          expectClose(used, 1, 1e-10);
        },
      ),
    );
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

  test("every criterion holds for any least load, so none carries a warning there", () => {
    for (const criterion of ["goodman", "gerber", "asme-elliptic", "rolled-thread"])
      expect(answer(solve({ criterion, loadMin: "10 kN" })).warnings).toEqual([]);
  });

  test("an open joint spoils every figure: the bolt feels the whole swing", () => {
    expect(Object.keys(answer(solve({ loadMax: "140 kN" })).spoilt).toSorted()).toEqual(
      Object.keys(boltFatigue.outputs).toSorted(),
    );
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
    "enduranceStress > 0": { enduranceStress: "0 MPa" },
    "tensileStress > 0": { tensileStress: "0 MPa" },
    "proofStress > 0": { proofStress: "0 MPa" },
    "preloadStress < proofStress": { preload: "150 kN" },
    "preloadStress < tensileStress": { preload: "200 kN", proofStress: "" },
    "(1 - loadFactor) * loadMax < preload": { loadMax: "140 kN" },
  });
});
