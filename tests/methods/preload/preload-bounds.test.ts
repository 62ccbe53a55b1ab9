import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preloadBounds } from "../../../src/methods/preload/preload-bounds.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, refusal, si, testLimits } from "../helpers.ts";

const good = goodFor("preload-bounds");
const force = (result: ReturnType<typeof preloadBounds.solve>) =>
  [si(result, "minimum"), si(result, "maximum")] as const;

describe("hand calculation", () => {
  test("100 kN ± 25 % with 4 % torque tolerance, 10 % relaxation and −5/+12 kN thermal", () => {
    // max = 100 · 26/25 · 5/4 + 12 = 142 kN; min = 100 · 24/25 · 3/4 · 9/10 − 5 = 59.8 kN.
    const [minimum, maximum] = force(
      preloadBounds.solve({
        nominalPreload: "100 kN",
        scatter: "25 %",
        torqueTolerance: "4 %",
        relaxation: "10 %",
        thermalChangeMin: "-5 kN",
        thermalChangeMax: "12 kN",
      }),
    );
    expectClose(maximum, 142_000);
    expectClose(minimum, 59_800);
  });

  test("NASA-STD-5020 averages the least preload over four fasteners", () => {
    // eq. 5: (1 − Γ/√n): 100 · (1 − 0.25/2) = 87.5 kN; eq. 3: 100 · 1.25 = 125 kN.
    const [minimum, maximum] = force(
      preloadBounds.solve({
        nominalPreload: "100 kN",
        scatter: "25 %",
        fastenerCount: "4",
        standard: "NASA-STD-5020",
      }),
    );
    expectClose(minimum, 87_500);
    expectClose(maximum, 125_000);
  });

  test("VDI 2230 takes the nominal preload as the largest and divides by the tightening factor", () => {
    // FM,min = FM,max/αA = 160/1.6 = 100 kN.
    const [minimum, maximum] = force(
      preloadBounds.solve({ nominalPreload: "160 kN", tighteningFactor: "1.6", standard: "VDI 2230" }),
    );
    expectClose(minimum, 100_000);
    expectClose(maximum, 160_000);
  });

  test("VDI 2230 with 10 % loss and −5/+12 kN thermal: 160/1.6 · 0.9 − 5 = 85 kN and 172 kN", () => {
    const [minimum, maximum] = force(
      preloadBounds.solve({
        nominalPreload: "160 kN",
        tighteningFactor: "1.6",
        relaxation: "10 %",
        thermalChangeMin: "-5 kN",
        thermalChangeMax: "12 kN",
        standard: "VDI 2230",
      }),
    );
    expectClose(minimum, 85_000);
    expectClose(maximum, 172_000);
  });
});

const share = between(0, 0.9);
const random = fc.record({ nominal: between(1e3, 1e6), scatter: share, tolerance: share, relaxation: share });
type Case = typeof random extends fc.Arbitrary<infer C> ? C : never;

const solve = (c: Case, more: Record<string, string> = {}) =>
  preloadBounds.solveNamed({
    nominalPreload: of("force", c.nominal),
    scatter: of("ratio", c.scatter),
    torqueTolerance: of("ratio", c.tolerance),
    relaxation: of("ratio", c.relaxation),
    ...more,
  });

describe("laws", () => {
  test("the nominal preload lies between the bounds", () => {
    fc.assert(
      fc.property(random, (c) => {
        const [minimum, maximum] = force(solve(c));
        expect(minimum).toBeLessThanOrEqual(c.nominal);
        expect(maximum).toBeGreaterThanOrEqual(c.nominal);
      }),
    );
  });

  test("more scatter moves the bounds apart", () => {
    fc.assert(
      fc.property(random, between(0.001, 0.09), (c, more) => {
        const [low, high] = force(solve(c));
        const [lower, higher] = force(solve({ ...c, scatter: c.scatter + more }));
        expect(lower).toBeLessThan(low);
        expect(higher).toBeGreaterThan(high);
      }),
    );
  });

  test("relaxation lowers the least preload and leaves the largest alone", () => {
    fc.assert(
      fc.property(random, (c) => {
        const [kept, most] = force(solve({ ...c, relaxation: 0 }));
        const [left, same] = force(solve(c));
        expectClose(left, kept * (1 - c.relaxation));
        expect(same).toBe(most);
      }),
    );
  });

  test("with one fastener NASA-STD-5020, NASA TM-106943 and the plain form agree", () => {
    fc.assert(
      fc.property(random, (c) => {
        const plain = force(solve(c));
        for (const standard of ["NASA-STD-5020", "NASA TM-106943"])
          for (const [i, bound] of force(solve(c, { standard })).entries())
            expectClose(bound, plain[i] ?? Number.NaN);
      }),
    );
  });

  test("a scatter given for the nut factor stands in where none is given for preload", () => {
    const { scatter: _, ...rest } = good;
    expect(force(preloadBounds.solveNamed({ ...rest, nutFactorSpread: "20 %" }))).toEqual(
      force(preloadBounds.solveNamed(good)),
    );
  });

  test("says which form ran", () => {
    expect(answer(preloadBounds.solveNamed({ ...good, standard: "NASA-STD-5020" })).notes).toContain(
      "standard: NASA-STD-5020",
    );
  });
});

describe("edges", () => {
  test("no scatter, no tolerance, no loss: both bounds are the nominal preload", () => {
    expect(force(preloadBounds.solve({ nominalPreload: "100 kN", scatter: "0 %" }))).toEqual([
      100_000, 100_000,
    ]);
  });

  test("a thermal drop that takes the whole least preload leaves it negative and warns", () => {
    const found = answer(preloadBounds.solveNamed({ ...good, thermalChangeMin: "-110 kN" }));
    expect(si(found, "minimum")).toBeLessThan(0);
    expect(found.warnings).toHaveLength(1);
  });
});

describe("limits", () => {
  testLimits(preloadBounds, good, {
    "nominalPreload > 0": { nominalPreload: "0 kN" },
    "thermalChangeMin <= thermalChangeMax": { thermalChangeMin: "13 kN" },
    "fastenerCount >= 1": { fastenerCount: "0" },
    "tighteningFactor >= 1": { tighteningFactor: "0.9" },
    'minimum > "0 kN"': { thermalChangeMin: "-200 kN" },
  });

  test("without any scatter there is no answer and the sentence shows how to give one", () => {
    const said = refusal(preloadBounds.solve({ nominalPreload: "100 kN" }));
    expect(said.code).toBe("missing-input");
    expect(said.hint).toContain("scatter=25 %");
  });

  test("VDI 2230 without a tightening factor has no answer", () => {
    expect(
      refusal(preloadBounds.solve({ nominalPreload: "1 kN", scatter: "1 %", standard: "VDI 2230" })).must,
    ).toContain("tighteningFactor");
  });

  test("thermal changes that are swapped give no answer: the most negative is not above the most positive", () => {
    const swapped = preloadBounds.solveNamed({
      ...good,
      scatter: "0 %",
      thermalChangeMin: "60 kN",
      thermalChangeMax: "-60 kN",
    });
    expect(refusal(swapped).code).toBe("limit");
  });
});
