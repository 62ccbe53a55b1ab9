import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { serviceBoltLoad } from "../../../src/methods/margins/service-bolt-load.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, si, testLimits, yes } from "../helpers.ts";

const good = goodFor("service-bolt-load");
const at = (preload: number, load: number, factor: number) =>
  serviceBoltLoad.solve({
    preload: of("force", preload),
    externalLoad: of("force", load),
    loadFactor: of("ratio", factor),
  });

describe("hand calculation", () => {
  test("100 kN of preload, 60 kN of pull and a quarter to the bolt: 115 kN in the bolt, 55 kN of clamp", () => {
    // Shigley 9th ed. p. 439: Fb = F + C P = 100 + 15; Fm = F − (1 − C) P = 100 − 45.
    const found = at(100e3, 60e3, 0.25);
    expectClose(si(found, "boltLoad"), 115e3);
    expectClose(si(found, "clampLoad"), 55e3);
    expect(yes(found, "separated")).toBe(false);
  });
});

const force = between(0, 1e6);
const share = between(0, 0.99);

describe("laws", () => {
  test("bolt and clamp differ by the outside load, open or closed", () => {
    fc.assert(
      fc.property(force, force, share, (F, P, C) => {
        const found = at(F, P, C);
        expect(Math.abs(si(found, "boltLoad") - si(found, "clampLoad") - P)).toBeLessThanOrEqual(
          1e-9 * (F + P),
        );
      }),
    );
  });

  test("the clamp is never negative", () => {
    fc.assert(
      fc.property(force, force, share, (F, P, C) => {
        expect(si(at(F, P, C), "clampLoad")).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("the bolt load has no step where the joint opens", () => {
    fc.assert(
      fc.property(between(1e3, 1e6), share, (F, C) => {
        const opens = F / (1 - C);
        const below = si(at(F, opens * (1 - 1e-9), C), "boltLoad");
        const above = si(at(F, opens * (1 + 1e-9), C), "boltLoad");
        expectClose(below, above, 1e-8);
      }),
    );
  });

  test("the bolt load never falls as the pull grows", () => {
    fc.assert(
      fc.property(force, force, between(0, 1e5), share, (F, P, more, C) => {
        expect(si(at(F, P + more, C), "boltLoad")).toBeGreaterThanOrEqual(si(at(F, P, C), "boltLoad") - 1e-6);
      }),
    );
  });
});

describe("edges", () => {
  test("zero preload: the joint is open under any pull and the bolt carries it all", () => {
    const found = at(0, 10e3, 0.25);
    expect(yes(found, "separated")).toBe(true);
    expect(si(found, "boltLoad")).toBe(10e3);
    expect(si(found, "clampLoad")).toBe(0);
  });

  test("a pull that just takes the whole clamp counts as opened", () => {
    const found = at(75e3, 100e3, 0.25);
    expect(yes(found, "separated")).toBe(true);
    expect(si(found, "boltLoad")).toBe(100e3);
  });

  test("no pull: the bolt carries its preload and so do the faces", () => {
    const found = at(100e3, 0, 0.25);
    expect([si(found, "boltLoad"), si(found, "clampLoad")]).toEqual([100e3, 100e3]);
  });
});

describe("limits", () => {
  testLimits(serviceBoltLoad, good, {
    "preload >= 0": { preload: "-1 kN" },
  });
});
