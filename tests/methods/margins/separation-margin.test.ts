import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { separationMargin } from "../../../src/methods/margins/separation-margin.ts";
import { serviceBoltLoad } from "../../../src/methods/margins/service-bolt-load.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits, yes } from "../helpers.ts";

const good = goodFor("separation-margin");
const at = (minimum: number, load: number, factor = 1, share = 0) =>
  separationMargin.solve({
    minimumPreload: of("force", minimum),
    externalLoad: of("force", load),
    factorOfSafety: of("ratio", factor),
    loadFactor: of("ratio", share),
  });

describe("hand calculation", () => {
  test("90 kN of least preload against 60 kN with a factor of 1.2: ratio 1.5, margin 0.25", () => {
    // NASA-STD-5020 eq. 19: MS = 90/(1.2 · 60) − 1 = 1/4.
    const found = at(90e3, 60e3, 1.2);
    expectClose(si(found, "ratio"), 1.5);
    expectClose(si(found, "margin"), 0.25);
    expectClose(si(found, "residualClamp"), 30e3);
    expectClose(si(found, "separationLoad"), 90e3);
  });

  test("with a quarter of the load credited to the bolt the joint opens at 120 kN", () => {
    // NASA TM-106943: Psep = (1 − nφ) P: 90/0.75 = 120 kN; ratio 2; clamp 90 − 45 = 45 kN.
    const found = at(90e3, 60e3, 1, 0.25);
    expectClose(si(found, "separationLoad"), 120e3);
    expectClose(si(found, "ratio"), 2);
    expectClose(si(found, "residualClamp"), 45e3);
  });
});

const force = between(1e3, 1e6);
const share = between(0, 0.9);

describe("laws", () => {
  test("no clamp is left exactly at the separation load, and serviceBoltLoad calls it opened", () => {
    fc.assert(
      fc.property(force, share, (F, C) => {
        const opens = si(at(F, 1e3, 1, C), "separationLoad");
        expect(Math.abs(si(at(F, opens, 1, C), "residualClamp"))).toBeLessThan(1e-9 * F);
        const beyond = serviceBoltLoad.solve({
          preload: of("force", F),
          externalLoad: of("force", opens * (1 + 1e-9)),
          loadFactor: of("ratio", C),
        });
        expect(yes(beyond, "separated")).toBe(true);
      }),
    );
  });

  test("a margin of 0 is a load of the separation load over the factor", () => {
    fc.assert(
      fc.property(force, between(1, 3), share, (F, n, C) => {
        const opens = si(at(F, 1e3, 1, C), "separationLoad");
        expect(Math.abs(si(at(F, opens / n, n, C), "margin"))).toBeLessThan(1e-12);
      }),
    );
  });

  test("credit for the load share never lowers the margin", () => {
    fc.assert(
      fc.property(force, force, share, (F, P, C) => {
        expect(si(at(F, P, 1, C), "margin")).toBeGreaterThanOrEqual(si(at(F, P), "margin") - 1e-12);
      }),
    );
  });

  test("depends on the ratio of preload to load only", () => {
    fc.assert(
      fc.property(force, force, between(0.1, 10), (F, P, f) =>
        expectClose(si(at(F, P), "ratio"), si(at(f * F, f * P), "ratio")),
      ),
    );
  });
});

describe("edges", () => {
  test("zero preload: ratio 0, margin −1, and a warning", () => {
    const found = answer(at(0, 60e3));
    expect(si(found, "ratio")).toBe(0);
    expect(si(found, "margin")).toBe(-1);
    expect(found.warnings).toHaveLength(2);
    expect(Object.keys(found.spoilt)).toEqual(["residualClamp"]);
  });

  test("a joint that stays shut with too little margin keeps its figures", () => {
    expect(answer(at(60e3, 55e3, 1.2)).warnings).toHaveLength(1);
    expect(answer(at(60e3, 55e3, 1.2)).spoilt).toEqual({});
  });

  test("a margin of exactly 0 carries no warning", () => {
    expect(answer(at(60e3, 60e3)).warnings).toEqual([]);
  });
});

describe("limits", () => {
  testLimits(separationMargin, good, {
    "externalLoad > 0": { externalLoad: "0 kN" },
    "minimumPreload >= 0": { minimumPreload: "-1 kN" },
    "factorOfSafety > 0": { factorOfSafety: "0" },
    "loadFactor < 1": { loadFactor: "1" },
    'residualClamp >= "0 N"': { minimumPreload: "50 kN" },
    "margin >= 0": { minimumPreload: "60 kN" },
  });
});
