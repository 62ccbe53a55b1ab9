import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressFit } from "../../../src/methods/fits/press-fit.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, expectPrinted, of, si, testLimits } from "../helpers.ts";
import { pressureByCompatibility } from "./two-cylinders.ts";

const good = goodFor("press-fit");
const MPa = 1e6;

describe("hand calculation", () => {
  test("a 25/50 mm tube in a 75 mm ring with 0.02 mm interference has 621/32 MPa", () => {
    // Shigley 8th ed. solutions, Prob. 5-35: c_o = (75² + 50²)/(75² − 50²) = 13/5, c_i = 5/3, ν drops out:
    // p = 0.02 · 207000 / (50 (13/5 + 5/3)) = 82.8/(64/15) = 621/32 = 19.40625 MPa.
    // Hoop: 621/32 · 13/5 = 50.45625 and −621/32 · 5/3 = −32.34375 MPa; the print has 19.41, 50.47 and −32.35.
    const ring = {
      diameter: "50 mm",
      outerDiameter: "75 mm",
      boreDiameter: "25 mm",
      interference: "0.02 mm",
      outerModulus: "207 GPa",
      outerPoisson: "0.292",
      innerModulus: "207 GPa",
      innerPoisson: "0.292",
    };
    const found = pressFit.solve(ring);
    expectClose(si(found, "pressure"), (621 / 32) * MPa);
    expectClose(si(found, "outerHoopStress"), 50.45625 * MPa);
    expectClose(si(found, "innerHoopStress"), -32.34375 * MPa);
    expectPrinted(si(found, "pressure"), "19.41", MPa);
  });

  test("a solid 40 mm shaft in an 80 mm collar with 59 µm has 114.5 MPa", () => {
    // Prob. 3-64: p = E δ/(2 d³) · d² (do² − d²)/do² = 207000 · 0.059/80 · 0.75 = 114.496875 MPa.
    const found = pressFit.solve({
      diameter: "40 mm",
      outerDiameter: "80 mm",
      interference: "0.059 mm",
      outerModulus: "207 GPa",
      outerPoisson: "0.3",
      innerModulus: "207 GPa",
      innerPoisson: "0.3",
      length: "100 mm",
      friction: "0.1",
    });
    expectClose(si(found, "pressure"), 114.496875 * MPa);
    expectPrinted(si(found, "pressure"), "114.5", MPa);
    // F = μ p π d L, T = F d/2.
    expectClose(si(found, "pressForce"), 0.1 * 114.496875 * MPa * Math.PI * 0.04 * 0.1);
    expectClose(si(found, "spinTorque"), si(found, "pressForce") * 0.02);
  });
});

const random = fc.record({
  diameter: between(0.01, 0.1),
  wall: between(1.05, 5),
  bore: fc.oneof(fc.constant(0), between(0.05, 0.95)),
  interference: between(1e-6, 1e-4),
  outerModulus: between(6e10, 2.2e11),
  innerModulus: between(6e10, 2.2e11),
  outerPoisson: between(0.2, 0.4),
  innerPoisson: between(0.2, 0.4),
});
type Case = typeof random extends fc.Arbitrary<infer C> ? C : never;

const solve = (c: Case) =>
  pressFit.solve({
    diameter: of("length", c.diameter),
    outerDiameter: of("length", c.diameter * c.wall),
    boreDiameter: of("length", c.diameter * c.bore),
    interference: of("length", c.interference),
    outerModulus: of("stress", c.outerModulus),
    innerModulus: of("stress", c.innerModulus),
    outerPoisson: of("ratio", c.outerPoisson),
    innerPoisson: of("ratio", c.innerPoisson),
  });

describe("second implementation", () => {
  test("equals the pressure at which two thick cylinders meet, found by solving for their displacements", () => {
    fc.assert(
      fc.property(random, (c) => {
        const other = pressureByCompatibility({
          fit: c.diameter / 2,
          outside: (c.diameter * c.wall) / 2,
          bore: (c.diameter * c.bore) / 2,
          gap: c.interference / 2,
          outer: { E: c.outerModulus, nu: c.outerPoisson },
          inner: { E: c.innerModulus, nu: c.innerPoisson },
        });
        const found = solve(c);
        expectClose(si(found, "pressure"), other.pressure, 1e-9);
        expectClose(si(found, "outerHoopStress"), other.outerHoop, 1e-9);
        expectClose(si(found, "innerHoopStress"), other.innerHoop, 1e-9);
      }),
    );
  });
});

describe("laws", () => {
  test("a bore that shrinks to nothing approaches the solid part", () => {
    fc.assert(
      fc.property(random, (c) => {
        const solid = solve({ ...c, bore: 0 });
        expectClose(si(solve({ ...c, bore: 1e-6 }), "pressure"), si(solid, "pressure"), 1e-11);
        expectClose(si(solid, "innerHoopStress"), -si(solid, "pressure"));
      }),
    );
  });

  test("without a bore given the inner part is solid, and the solution says that was assumed", () => {
    const { boreDiameter: _, ...rest } = good;
    const found = answer(pressFit.solveNamed(rest));
    expect(found.outputs).toEqual(answer(pressFit.solveNamed({ ...good, boreDiameter: "0 mm" })).outputs);
    expect(found.notes.some((note) => note.includes("0 mm") && note.includes("not given"))).toBe(true);
  });

  test("pressure is proportional to interference", () => {
    fc.assert(
      fc.property(random, (c) =>
        expectClose(
          si(solve({ ...c, interference: 2 * c.interference }), "pressure"),
          2 * si(solve(c), "pressure"),
        ),
      ),
    );
  });

  test("the same material throughout: Poisson's ratio drops out", () => {
    fc.assert(
      fc.property(random, (c) => {
        const alike = { ...c, innerModulus: c.outerModulus, innerPoisson: c.outerPoisson };
        const other = { ...alike, innerPoisson: 0.1, outerPoisson: 0.1 };
        expectClose(si(solve(alike), "pressure"), si(solve(other), "pressure"), 1e-11);
      }),
    );
  });

  test("a thicker ring or a smaller bore raises the pressure", () => {
    fc.assert(
      fc.property(random, (c) => {
        expect(si(solve({ ...c, wall: c.wall * 1.1 }), "pressure")).toBeGreaterThan(si(solve(c), "pressure"));
        expect(si(solve({ ...c, bore: 0.96 }), "pressure")).toBeLessThan(si(solve(c), "pressure"));
      }),
    );
  });

  test("scaling every length by the same factor keeps the stresses", () => {
    fc.assert(
      fc.property(random, between(1.1, 10), (c, f) => {
        const larger = solve({ ...c, diameter: c.diameter * f, interference: c.interference * f });
        expectClose(si(larger, "pressure"), si(solve(c), "pressure"));
      }),
    );
  });

  test("without length and friction there is no press force and the pressure stands", () => {
    const { friction: _, length: __, ...rest } = good;
    const found = answer(pressFit.solveNamed(rest));
    expect(found.outputs["pressForce"]).toBeUndefined();
    expect(found.outputs["spinTorque"]).toBeUndefined();
    expect(found.outputs["pressure"]).toBeDefined();
  });
});

describe("edges", () => {
  test("zero interference: everything is zero", () => {
    const found = answer(pressFit.solveNamed({ ...good, interference: "0 um" }));
    for (const name of Object.keys(found.outputs)) expect(Math.abs(si(found, name))).toBe(0);
  });

  test("a negative interference is a clearance and gives no pressure, and the sentence says so", () => {
    expect(pressFit.solveNamed({ ...good, interference: "-1 um" })).toMatchObject({
      code: "limit",
      got: "-1 um",
      hint: "a negative interference is a clearance",
    });
  });
});

describe("limits", () => {
  testLimits(pressFit, good, {
    "interference >= 0": { interference: "-1 um" },
    "outerDiameter > diameter": { outerDiameter: "25 mm" },
    "boreDiameter >= 0": { boreDiameter: "-1 mm" },
    "boreDiameter < diameter": { boreDiameter: "25 mm" },
    "length > 0": { length: "0 mm" },
    "abs(interference) <= 0.03 * diameter": { interference: "10 mm" },
    "abs(interference) <= 0.004 * diameter": { interference: "0.2 mm" },
  });
});
