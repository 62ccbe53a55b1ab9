import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { threadStripping } from "../../../src/methods/threads/thread-stripping.ts";
import { goodFor } from "../good-inputs.ts";
import {
  answer,
  between,
  deepFreeze,
  expectClose,
  expectHouseWording,
  expectPrinted,
  of,
  refusal,
  si,
  testLimits,
} from "../helpers.ts";

const good = goodFor("thread-stripping");
const at = (engaged: number, bolt: number, nut: number, designation = "M24x3") =>
  threadStripping.solve({
    externalDesignation: designation,
    engagedLength: of("length", engaged),
    boltTensile: of("stress", bolt),
    nutTensile: of("stress", nut),
  });
const weakest = (result: ReturnType<typeof at>) => {
  const found = answer(result).outputs["weakest"];
  return found?.kind === "text" ? found.text : undefined;
};

describe("hand calculation", () => {
  test("M24x3 of equal strengths wants 17.4 mm: a 20.2 mm nut is enough, a 12 mm one is not", () => {
    // Le = 2 · 352.50 / (π · 21.252 · (0.5 + 0.57735 · 0.551/3)) = 17.42 mm
    const full = at(0.0202, 830e6, 830e6);
    expectPrinted(si(full, "requiredEngagement"), "17.4", 1e-3);
    expect(weakest(full)).toBe("bolt");
    expect(answer(full).warnings).toEqual([]);
    const thin = at(0.012, 830e6, 830e6);
    expect(weakest(thin)).toBe("external thread");
    expect(
      answer(thin)
        .warnings.map((warning) => warning.why)
        .join(),
    ).toContain("no warning");
  });

  test("1/2-13 by hand, 2A in 2B", () => {
    // Ds 0.4876, Es 0.4435, En 0.4565, Kn 0.434 in, At 0.14187 in², p 1/13 in, Le 0.5 in
    const found = at(0.0127, 827e6, 827e6, "1/2-13");
    const square = 0.0254 ** 2;
    const p = 1 / 13;
    const kn = 434 / 1000;
    const external = ((Math.PI * 0.5) / p) * kn * (p / 2 + 0.57735 * (0.4435 - kn));
    const internal = ((Math.PI * 0.5) / p) * 0.4876 * (p / 2 + 0.57735 * (0.4876 - 0.4565));
    expectClose(si(found, "externalShearArea"), external * square, 1e-9);
    expectClose(si(found, "internalShearArea"), internal * square, 1e-9);
    expectClose(si(found, "strengthRatio"), external / internal, 1e-9);
  });
});

describe("laws", () => {
  const engaged = between(0.002, 0.05);
  const strength = between(2e8, 1.2e9);

  test("at the required engagement bolt and weaker thread give way together", () => {
    fc.assert(
      fc.property(strength, strength, (bolt, nut) => {
        const needed = si(at(0.02, bolt, nut), "requiredEngagement");
        const there = at(needed, bolt, nut);
        const strip = Math.min(si(there, "externalStripLoad"), si(there, "internalStripLoad"));
        expectClose(strip, si(there, "boltLoad"), 1e-9);
      }),
    );
  });

  test("the required engagement does not depend on the engagement there is; areas are in proportion to it", () => {
    fc.assert(
      fc.property(engaged, strength, strength, (length, bolt, nut) => {
        const [one, two] = [at(length, bolt, nut), at(2 * length, bolt, nut)];
        expectClose(si(one, "requiredEngagement"), si(two, "requiredEngagement"), 1e-12);
        expectClose(2 * si(one, "externalShearArea"), si(two, "externalShearArea"), 1e-12);
        expectClose(2 * si(one, "internalShearArea"), si(two, "internalShearArea"), 1e-12);
      }),
    );
  });

  test("the weakest part is the one with the least load", () => {
    fc.assert(
      fc.property(engaged, strength, strength, (length, bolt, nut) => {
        const found = at(length, bolt, nut);
        const loads: Readonly<Record<string, number>> = {
          bolt: si(found, "boltLoad"),
          "external thread": si(found, "externalStripLoad"),
          "internal thread": si(found, "internalStripLoad"),
        };
        expect(loads[weakest(found) ?? ""]).toBe(Math.min(...Object.values(loads)));
      }),
    );
  });

  test("a softer nut wants more engagement, and the bolt thread decides while the nut is harder", () => {
    expect(si(at(0.02, 8e8, 3e8), "requiredEngagement")).toBeGreaterThan(
      si(at(0.02, 8e8, 8e8), "requiredEngagement"),
    );
    expectClose(si(at(0.02, 8e8, 8e8), "requiredEngagement"), si(at(0.02, 8e8, 9e8), "requiredEngagement"));
  });
});

describe("limit diameters", () => {
  const four = {
    externalMajorMin: "23.577 mm",
    externalPitchMin: "21.803 mm",
    internalPitchMax: "22.316 mm",
    internalMinorMax: "21.252 mm",
  };

  test("the four of 6g and 6H given by hand change nothing", () => {
    const given = answer(threadStripping.solveNamed({ ...good, limits: [four] }));
    const tabulated = answer(threadStripping.solveNamed(good));
    for (const output of ["externalShearArea", "internalShearArea", "requiredEngagement"])
      expectClose(si(given, output), si(tabulated, output), 1e-12);
    expect(given.notes).toContain("limit diameters as given");
  });

  test("one given diameter keeps the others", () => {
    const worn = threadStripping.solveNamed({ ...good, limits: [{ internalMinorMax: "21.5 mm" }] });
    expect(si(worn, "externalShearArea")).toBeLessThan(
      si(threadStripping.solveNamed(good), "externalShearArea"),
    );
    expect(answer(worn).notes[0]).toContain("given: internalMinorMax");
  });

  test("other classes are taken when named", () => {
    const fine = threadStripping.solveNamed({ ...good, externalClass: "6h", internalClass: "6H" });
    expect(si(fine, "externalShearArea")).toBeGreaterThan(
      si(threadStripping.solveNamed(good), "externalShearArea"),
    );
  });

  test("two rows, and two classes of the same part, are refused", () => {
    for (const change of [{ limits: [four, four] }, { internalClass: "6g" }, { externalClass: "6H" }]) {
      const said = refusal(threadStripping.solveNamed({ ...good, ...change }));
      expectHouseWording(said);
      expect(said.where).toMatch(/^thread-stripping( · limits)?$/);
    }
  });

  test("a class beside all four diameters is refused: nothing would be read from it", () => {
    const said = refusal(threadStripping.solveNamed({ ...good, limits: [four], externalClass: "6g" }));
    expect(said).toMatchObject({ code: "not-used", got: "externalClass, beside all four limit diameters" });
  });

  test("an unknown thread is refused", () => {
    expect(refusal(at(0.02, 8e8, 8e8, "M23")).where).toBe("thread-stripping");
    expect(refusal(at(0.02, 8e8, 8e8, "2-1/2-8 UN")).where).toBe("thread-stripping");
  });
});

test("inputs are left as they were", () => {
  const frozen = deepFreeze({ ...good, limits: [{ internalMinorMax: "21.252 mm" }] });
  answer(threadStripping.solveNamed(frozen));
});

testLimits(threadStripping, good, {
  "engagedLength > 0": { engagedLength: "0 mm" },
  "boltTensile > 0": { boltTensile: "0 MPa" },
  "nutTensile > 0": { nutTensile: "-1 MPa" },
  "externalMajorMin > internalPitchMax": { limits: [{ externalMajorMin: "22 mm" }] },
  "externalPitchMin > internalMinorMax": { limits: [{ internalMinorMax: "21.9 mm" }] },
  "requiredEngagement <= engagedLength": { engagedLength: "12 mm" },
});
