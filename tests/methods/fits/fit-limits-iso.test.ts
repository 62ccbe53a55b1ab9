import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitLimitsIso } from "../../../src/methods/fits/fit-limits-iso.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, expectClose, refusal, si, testLimits } from "../helpers.ts";

const good = goodFor("fit-limits-iso");
const um = 1e-6;

describe("hand calculation", () => {
  test("25 H7/k6 lies between 19 µm of clearance and 15 µm of interference", () => {
    // ISO 286-2: 25 H7 is 0/+21, 25 k6 is +2/+15 µm. Clearance: 21 − 2 = 19 and 0 − 15 = −15 µm.
    const fit = fitLimitsIso.solve({ size: "25 mm", hole: "H7", shaft: "k6" });
    expectClose(si(fit, "holeMax"), 0.025021);
    expectClose(si(fit, "holeMin"), 0.025);
    expectClose(si(fit, "shaftMax"), 0.025015);
    expectClose(si(fit, "shaftMin"), 0.025002);
    expectClose(si(fit, "clearanceMax"), 19 * um, 1e-9);
    expectClose(si(fit, "clearanceMin"), -15 * um, 1e-9);
  });

  test("50 H7/s6 is an interference fit of 18 to 59 µm", () => {
    // 50 H7 0/+25, 50 s6 +43/+59 µm: 25 − 43 = −18 and 0 − 59.
    const fit = fitLimitsIso.solve({ size: "50 mm", hole: "H7", shaft: "s6" });
    expectClose(si(fit, "clearanceMax"), -18 * um, 1e-9);
    expectClose(si(fit, "clearanceMin"), -59 * um, 1e-9);
  });
});

const size = fc.integer({ min: 1, max: 499 }).map((mm) => `${mm} mm`);
const pair = fc.constantFrom("k6", "g6", "h6", "m6", "n6", "p6", "s6", "f7", "js6");

describe("laws", () => {
  test("clearances are hole less shaft at their extremes, and span both tolerances", () => {
    fc.assert(
      fc.property(size, fc.constantFrom("H7", "H8", "K7", "P7"), pair, (nominal, hole, shaft) => {
        const fit = fitLimitsIso.solve({ size: nominal, hole, shaft });
        const [D, d] = [si(fit, "holeMax") - si(fit, "holeMin"), si(fit, "shaftMax") - si(fit, "shaftMin")];
        const close = (found: number, expected: number) =>
          expect(Math.abs(found - expected)).toBeLessThan(1e-15);
        close(si(fit, "clearanceMax"), si(fit, "holeMax") - si(fit, "shaftMin"));
        close(si(fit, "clearanceMin"), si(fit, "holeMin") - si(fit, "shaftMax"));
        close(si(fit, "clearanceMax") - si(fit, "clearanceMin"), D + d);
        expect(D).toBeGreaterThan(0);
        expect(d).toBeGreaterThan(0);
      }),
    );
  });

  test("hole and shaft basis mirror each other: H7/g6 and G7/h6 have opposite deviations and the same fit", () => {
    fc.assert(
      fc.property(size, (nominal) => {
        const onHole = fitLimitsIso.solve({ size: nominal, hole: "H7", shaft: "g6" });
        const onShaft = fitLimitsIso.solve({ size: nominal, hole: "G7", shaft: "h6" });
        expectClose(si(onHole, "shaftUpper"), -si(onShaft, "holeLower"));
        expectClose(si(onHole, "clearanceMax"), si(onShaft, "clearanceMax"), 1e-9);
        expectClose(si(onHole, "clearanceMin"), si(onShaft, "clearanceMin"), 1e-9);
      }),
    );
  });

  test("the delta rule makes P7/h6 the fit of H7/p6 above 3 mm", () => {
    const least = (mm: number, hole: string, shaft: string) =>
      si(fitLimitsIso.solve({ size: `${mm} mm`, hole, shaft }), "clearanceMin");
    for (const mm of [4, 8, 15, 25, 45, 75, 110, 170, 240])
      expectClose(least(mm, "P7", "h6"), least(mm, "H7", "p6"), 1e-9);
  });

  test("the size may be given in inches", () => {
    const inch = fitLimitsIso.solve({ size: "1 in", hole: "H7" });
    const metric = fitLimitsIso.solve({ size: "25.4 mm", hole: "H7" });
    expect(answer(inch).outputs).toEqual(answer(metric).outputs);
  });

  test("a hole alone or a shaft alone is answered, without clearances", () => {
    const hole = answer(fitLimitsIso.solve({ size: "25 mm", hole: "H7" }));
    expect(hole.outputs["holeMax"]).toBeDefined();
    expect(hole.outputs["shaftMax"]).toBeUndefined();
    expect(hole.outputs["clearanceMax"]).toBeUndefined();
    expect(answer(fitLimitsIso.solve({ size: "25 mm", shaft: "k6" })).outputs["holeMax"]).toBeUndefined();
  });
});

describe("limits", () => {
  testLimits(fitLimitsIso, good, { "size > 0": { size: "0 mm" } });

  test("neither hole nor shaft: asks for one with an example", () => {
    const said = refusal(fitLimitsIso.solve({ size: "25 mm" }));
    expect(said.code).toBe("missing-input");
    expect(said.hint).toContain("hole=H7");
  });

  test("small letters for a hole and capitals for a shaft are refused, each saying why", () => {
    expect(refusal(fitLimitsIso.solve({ size: "25 mm", hole: "k6" })).must).toContain("capitals");
    expect(refusal(fitLimitsIso.solve({ size: "25 mm", shaft: "H7" })).must).toContain("small letters");
  });

  test("a size beyond the tables is refused and not extrapolated", () => {
    expect(refusal(fitLimitsIso.solve({ size: "501 mm", hole: "H7" })).where).toBe("fit-limits-iso");
    expect(refusal(fitLimitsIso.solve({ size: "3151 mm", hole: "H7" })).got).toContain("3151");
  });

  test.each(["H", "7", "HH7", "H99", "I7", ""])("the class %j is refused", (hole) => {
    expect(refusal(fitLimitsIso.solve({ size: "25 mm", hole })).code).toBeTruthy();
  });
});
