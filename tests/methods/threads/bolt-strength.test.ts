import { describe, expect, test } from "vitest";
import { boltStrength } from "../../../src/methods/threads/bolt-strength.ts";
import { answer, expectClose, expectPrinted, refusal, si } from "../helpers.ts";

const MPa = 1e6;
const ksi = 4448.2216152605 / 0.0254 ** 2;
const lbf = 4.4482216152605;

describe("hand calculation", () => {
  test("M24 of class 8.8 has 600, 660 and 830 MPa, so 211.8 kN proof and 293.0 kN breaking load", () => {
    // ISO 898-1, class 8.8 over M16: Sp 600, Rp0.2 660, Rm 830 MPa.
    // Its load tables take As to three figures, 353 mm²: 353 · 600 = 211 800 N (printed 212 000),
    // 353 · 830 = 292 990 N (printed 293 000).
    const strength = boltStrength.solve({ standard: "ISO 898-1", grade: "8.8", designation: "M24" });
    expectClose(si(strength, "proofStress"), 600 * MPa);
    expectClose(si(strength, "yieldStress"), 660 * MPa);
    expectClose(si(strength, "tensileStress"), 830 * MPa);
    expectClose(si(strength, "proofLoad"), 211_800);
    expectClose(si(strength, "breakingLoad"), 292_990);
  });

  test("class 8.8 changes at M16: 580 and 640 MPa up to it, 600 and 660 MPa above", () => {
    const at = (designation: string) => boltStrength.solve({ grade: "8.8", designation });
    expectClose(si(at("M16"), "proofStress"), 580 * MPa);
    expectClose(si(at("M16"), "yieldStress"), 640 * MPa);
    expectClose(si(at("M18"), "proofStress"), 600 * MPa);
  });

  test("1/2-13 of SAE J429 grade 8 has 120 ksi proof stress and 17.0 kip proof load", () => {
    // At = 0.141874868 in² × 120 ksi = 17.0249842 kip.
    const strength = boltStrength.solve({ standard: "SAE J429", grade: "8", designation: "1/2-13" });
    expectClose(si(strength, "proofStress"), 120 * ksi);
    expectClose(si(strength, "proofLoad"), 17024.984188918934 * lbf, 1e-13);
    expectPrinted(si(strength, "proofLoad"), "17.0", 1000 * lbf);
  });
});

describe("laws", () => {
  test.each(["4.6", "5.8", "8.8", "10.9", "12.9"])(
    "class %s: proof stress < tensile stress, loads are area times stress",
    (grade) => {
      const strength = boltStrength.solve({ grade, designation: "M12" });
      expect(si(strength, "proofStress")).toBeLessThan(si(strength, "tensileStress"));
      expectClose(si(strength, "proofLoad"), si(strength, "proofStress") * si(strength, "stressArea"));
      expectClose(si(strength, "breakingLoad"), si(strength, "tensileStress") * si(strength, "stressArea"));
    },
  );

  test("the standard is ISO 898-1 when none is given, and the solution says so", () => {
    const assumed = answer(boltStrength.solve({ grade: "8.8", designation: "M24" }));
    const stated = answer(boltStrength.solve({ standard: "ISO 898-1", grade: "8.8", designation: "M24" }));
    expect(assumed.outputs).toEqual(stated.outputs);
    expect(assumed.notes.some((note) => note.includes("ISO 898-1") && note.includes("not given"))).toBe(true);
  });

  test("the row that was read is named with its document", () => {
    const notes = answer(boltStrength.solve({ grade: "8.8", designation: "M24" })).notes;
    expect(notes.some((note) => note.startsWith("strength row: ISO"))).toBe(true);
  });
});

describe("refusals", () => {
  test("a class that does not exist is refused and names those that do", () => {
    const said = refusal(boltStrength.solve({ grade: "8.9", designation: "M24" }));
    expect([...said.suggestions, said.must ?? "", said.hint ?? ""].join(" ")).toContain("8.8");
  });

  test("an unknown thread is refused before any strength is looked up", () => {
    expect(refusal(boltStrength.solve({ grade: "8.8", designation: "M23" })).code).toBeTruthy();
  });

  test("a metric thread in an inch standard is refused, not converted", () => {
    expect(
      refusal(boltStrength.solve({ standard: "SAE J429", grade: "8", designation: "M12" })).code,
    ).toBeTruthy();
  });

  test("the refusal is placed at bolt-strength", () => {
    expect(refusal(boltStrength.solve({ grade: "8.9", designation: "M24" })).where).toBe("bolt-strength");
    expect(refusal(boltStrength.solve({ grade: "8.8", designation: "M23" })).where).toBe("bolt-strength");
  });

  test.each(["24 mm", "24", "1 in", "bolt"])("%s is no thread, and both forms are offered", (designation) => {
    const refused = refusal(boltStrength.solve({ grade: "8.8", designation }));
    expect(refused.what).toBe("thread designation");
    expect(refused.must).toBe("be a thread such as M24x3 or 3/8-24 UNF");
    expect(refused.suggestions).toContain("M24");
    expect(refused.suggestions).toContain("3/8-24 UNF");
  });
});
