import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tensionShearInteraction } from "../../../src/methods/margins/tension-shear-interaction.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, type Inputs, of, refusal, si, testLimits } from "../helpers.ts";

/** The shear plane is left open: it belongs to one of the standards, and each test that wants it says so. */
const good = { ...goodFor("tension-shear-interaction"), shearPlane: "" };
const solve = (change: Inputs) => tensionShearInteraction.solveNamed({ ...good, ...change });

const at = (Rt: number, Rs: number, Rb: number, more: Record<string, string>) =>
  si(
    tensionShearInteraction.solveNamed({
      tension: of("force", Rt * 1e5),
      tensionAllowable: "100 kN",
      shear: of("force", Rs * 1e5),
      shearAllowable: "100 kN",
      ...(Rb > 0 && { bendingStress: of("stress", Rb * 1e8), bendingAllowable: "100 MPa" }),
      ...more,
    }),
    "ratio",
  );

describe("hand calculation", () => {
  test("half of each, no bending: the exponents of every form", () => {
    // EN 1993-1-8 Table 3.4: 0.5 + 0.5/1.4 = 6/7. NSTS 08307: 0.5² + 0.5³ = 3/8.
    // NASA-STD-5020: body 0.5^2.5 + 0.5^1.5, threads 0.5^1.2 + 0.5².
    expectClose(at(0.5, 0.5, 0, { standard: "EN 1993-1-8" }), 6 / 7);
    expectClose(at(0.5, 0.5, 0, { standard: "NSTS 08307" }), 3 / 8);
    expectClose(at(0.5, 0.5, 0, { shearPlane: "body" }), Math.SQRT1_2 / 4 + Math.SQRT1_2 / 2);
    expectClose(at(0.5, 0.5, 0, { shearPlane: "threads" }), Math.exp(1.2 * Math.log(0.5)) + 0.25);
  });

  test("bending adds to the tension inside its power", () => {
    expectClose(at(0.25, 0, 0.25, { standard: "NSTS 08307" }), 0.25);
    expectClose(at(0.25, 0, 0.25, { shearPlane: "threads" }), 0.25);
  });
});

describe("laws", () => {
  const standards = fc.constantFrom("NASA-STD-5020", "NSTS 08307");
  test("one load alone is used up exactly at its allowable", () => {
    fc.assert(
      fc.property(standards, fc.constantFrom("body", "threads"), (standard, shearPlane) => {
        const form = standard === "NASA-STD-5020" ? { standard, shearPlane } : { standard };
        expectClose(at(1, 0, 0, form), 1);
        expectClose(at(0, 1, 0, form), 1);
      }),
    );
  });

  test("more of any load uses up more", () => {
    fc.assert(
      fc.property(standards, between(0.1, 0.9), between(0.1, 0.9), between(0, 0.5), (standard, t, s, b) => {
        expect(at(t * 1.05, s, b, { standard })).toBeGreaterThan(at(t, s, b, { standard }));
        expect(at(t, s * 1.05, b, { standard })).toBeGreaterThan(at(t, s, b, { standard }));
        expect(at(t, s, b + 0.05, { standard })).toBeGreaterThan(at(t, s, b, { standard }));
      }),
    );
  });

  test("no bending and a bending of 0 are the same", () => {
    for (const more of [{ standard: "NSTS 08307" }, { shearPlane: "body" }, { shearPlane: "threads" }])
      expect(si(solve({ ...more, bendingStress: "", bendingAllowable: "" }), "ratio")).toBe(
        si(solve({ ...more, bendingStress: "0 MPa" }), "ratio"),
      );
  });

  test("bending is never dropped: EN 1993-1-8 has no place for it and refuses it by name", () => {
    const said = refusal(solve({ standard: "EN 1993-1-8" }));
    expect(said.code).toBe("unused-input");
    expect(said.what).toBe("bendingStress and bendingAllowable");
    const alone = solve({ standard: "EN 1993-1-8", bendingStress: "", bendingAllowable: "" });
    expectClose(si(alone, "ratio"), 20 / 80 + 30 / 140);
  });

  test("bending needs its own allowable: none is invented", () => {
    expect(refusal(solve({ bendingAllowable: "" })).must).toBe(
      "be given as bendingAllowable, beside bendingStress",
    );
    expect(refusal(solve({ bendingStress: "" })).must).toBe(
      "be given as bendingStress, beside bendingAllowable",
    );
  });

  test("a tension above its allowable spoils a sum that stays below 1", () => {
    const plain = { bendingStress: "", bendingAllowable: "" };
    const found = answer(solve({ ...plain, standard: "EN 1993-1-8", tension: "130 kN", shear: "0 kN" }));
    expect(si(found, "ratio")).toBeLessThan(1);
    expect(Object.keys(found.spoilt).toSorted()).toEqual(["margin", "ratio"]);
    expect(answer(solve({ ...plain, shear: "81 kN" })).spoilt).toEqual({}); // alone too high, and the sum says so
  });

  test("the shear plane counts in NASA-STD-5020 alone: taken there by default it is a warning, given elsewhere it is refused", () => {
    const codes = (change: Inputs) => answer(solve(change)).warnings.map(({ what, code }) => [what, code]);
    expect(codes({ standard: "NASA-STD-5020" })).toEqual([["what stands in the shear plane", "assumed"]]);
    expect(codes({ standard: "NASA-STD-5020", shearPlane: "body" })).toEqual([]);
    expect(codes({ standard: "NSTS 08307" })).toEqual([]);
    expect(refusal(solve({ standard: "NSTS 08307", shearPlane: "body" })).code).toBe("not-used");
  });

  test("margin and ratio add to 1", () => {
    expectClose(si(solve({}), "margin") + si(solve({}), "ratio"), 1);
  });
});

describe("limits", () => {
  testLimits(tensionShearInteraction, good, {
    "tension >= 0": { tension: "-1 kN" },
    "shear >= 0": { shear: "-1 kN" },
    "bendingStress >= 0": { bendingStress: "-1 MPa" },
    "tensionAllowable > 0": { tensionAllowable: "0 kN" },
    "shearAllowable > 0": { shearAllowable: "0 kN" },
    "bendingAllowable > 0": { bendingAllowable: "0 MPa" },
    "tension <= tensionAllowable": { tension: "101 kN" },
    "shear <= shearAllowable": { shear: "81 kN" },
    "ratio <= 1": { tension: "99 kN", shear: "79 kN" },
  });
});
