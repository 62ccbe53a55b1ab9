import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { proofFactors } from "../../../src/methods/margins/proof-factors.ts";
import { separationMargin } from "../../../src/methods/margins/separation-margin.ts";
import { serviceBoltLoad } from "../../../src/methods/margins/service-bolt-load.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("proof-factors");

describe("hand calculation", () => {
  test("150 kN proof, 100 kN preload, 80 kN load, a quarter to the bolt: 1.25, 2.5 and 5/3", () => {
    // Shigley 9th ed. eqs. 8-28 to 8-30: np = 150/(20 + 100), nL = (150 − 100)/20, n0 = 100/(80 · 0.75).
    const found = proofFactors.solve({
      preload: "100 kN",
      externalLoad: "80 kN",
      loadFactor: "0.25",
      stressArea: "250 mm2",
      proofStress: "600 MPa",
    });
    expectClose(si(found, "yieldingFactor"), 1.25);
    expectClose(si(found, "loadFactorOfSafety"), 2.5);
    expectClose(si(found, "separationFactor"), 5 / 3);
  });
});

const random = fc.record({
  F: between(1e4, 2e5),
  P: between(1e3, 2e5),
  C: between(0.05, 0.9),
  A: between(5e-5, 1e-3),
  S: between(2e8, 1e9),
});
type Case = typeof random extends fc.Arbitrary<infer C> ? C : never;
const at = ({ F, P, C, A, S }: Case) =>
  proofFactors.solve({
    preload: of("force", F),
    externalLoad: of("force", P),
    loadFactor: of("ratio", C),
    stressArea: of("area", A),
    proofStress: of("stress", S),
  });

describe("laws", () => {
  test("a load grown by its own factor brings the bolt just to proof", () => {
    fc.assert(
      fc.property(random, (c) => {
        const grown = si(at(c), "loadFactorOfSafety") * c.P;
        if (grown > 0) expectClose(si(at({ ...c, P: grown }), "yieldingFactor"), 1, 1e-9);
      }),
    );
  });

  test("separationFactor is the ratio of separationMargin with the same load factor", () => {
    fc.assert(
      fc.property(random, (c) => {
        const ratio = separationMargin.solve({
          minimumPreload: of("force", c.F),
          externalLoad: of("force", c.P),
          loadFactor: of("ratio", c.C),
        });
        expectClose(si(at(c), "separationFactor"), si(ratio, "ratio"));
      }),
    );
  });

  test("yieldingFactor is proof load over the bolt load while the joint is closed", () => {
    fc.assert(
      fc.property(random, (c) => {
        if (si(at(c), "separationFactor") <= 1) return;
        const service = serviceBoltLoad.solve({
          preload: of("force", c.F),
          externalLoad: of("force", c.P),
          loadFactor: of("ratio", c.C),
        });
        expectClose(si(at(c), "yieldingFactor"), (c.S * c.A) / si(service, "boltLoad"));
      }),
    );
  });

  test("more preload guards against opening and takes from the factor on proof", () => {
    fc.assert(
      fc.property(random, (c) => {
        const more = at({ ...c, F: 1.1 * c.F });
        expect(si(more, "separationFactor")).toBeGreaterThan(si(at(c), "separationFactor"));
        expect(si(more, "yieldingFactor")).toBeLessThan(si(at(c), "yieldingFactor"));
      }),
    );
  });
});

test("what does not hold is spoilt, and only that", () => {
  const spoilt = (change: Record<string, string>) =>
    Object.keys(answer(proofFactors.solveNamed({ ...good, ...change })).spoilt).toSorted();
  expect(spoilt({})).toEqual([]);
  expect(spoilt({ preload: "212 kN" })).toEqual(["loadFactorOfSafety"]);
  expect(spoilt({ externalLoad: "200 kN" })).toEqual(["loadFactorOfSafety", "yieldingFactor"]);
});

describe("limits", () => {
  testLimits(proofFactors, good, {
    "preload > 0": { preload: "0 kN" },
    "externalLoad > 0": { externalLoad: "0 kN" },
    "loadFactor > 0": { loadFactor: "0" },
    "loadFactor < 1": { loadFactor: "1" },
    "stressArea > 0": { stressArea: "0 mm2" },
    "proofStress > 0": { proofStress: "0 MPa" },
    "loadFactorOfSafety > 0": { preload: "212 kN" },
    "separationFactor >= 1": { externalLoad: "200 kN" },
  });
});
