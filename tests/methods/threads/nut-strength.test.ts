import { describe, expect, test } from "vitest";
import { boltStrength } from "../../../src/methods/threads/bolt-strength.ts";
import { nutStrength } from "../../../src/methods/threads/nut-strength.ts";
import { sentence } from "../../../src/problem.ts";
import { answer, deepFreeze, expectClose, expectHouseWording, refusal, si } from "../helpers.ts";

const nut = (grade: string, designation: string, standard = "ISO 898-2") =>
  nutStrength.solve({ standard, grade, designation });

describe("hand calculation", () => {
  test("an M24 nut of class 8 bears 920 MPa on 353 mm²: 324.8 kN", () => {
    expectClose(si(nut("8", "M24"), "proofStress"), 920e6);
    expectClose(si(nut("8", "M24"), "proofLoad"), 353 * 920);
  });

  test("class 8 changes at M16: 880 MPa up to it, 920 MPa above", () => {
    expectClose(si(nut("8", "M16"), "proofStress"), 880e6);
    expectClose(si(nut("8", "M18"), "proofStress"), 920e6);
  });
});

describe("laws", () => {
  test("a nut of the bolt's first number outlasts the bolt's proof load, and its breaking load too", () => {
    for (const designation of ["M6", "M10", "M16", "M20", "M24", "M36"])
      for (const [bolt, grade] of [
        ["8.8", "8"],
        ["10.9", "10"],
        ["5.8", "5"],
      ] as const) {
        const strength = boltStrength.solve({ grade: bolt, designation });
        expect(si(nut(grade, designation), "proofLoad")).toBeGreaterThan(si(strength, "proofLoad"));
        expect(si(nut(grade, designation), "proofLoad")).toBeGreaterThanOrEqual(si(strength, "breakingLoad"));
      }
  });

  test("a higher class bears more", () => {
    const loads = ["5", "6", "8", "10"].map((grade) => si(nut(grade, "M12"), "proofLoad"));
    expect(loads.toSorted((a, b) => a - b)).toEqual(loads);
  });

  test("rows from memory say so", () => {
    const notes = answer(nut("A194 2H heavy hex", "3/4-10", "ASTM")).notes.join(" ");
    expect(notes).toContain("from memory");
  });

  test("inputs are left as they were", () => {
    const inputs = deepFreeze({ grade: "8", designation: "M24" });
    expect(answer(nutStrength.solve(inputs)).outputs).toEqual(answer(nut("8", "M24")).outputs);
  });
});

test.each([
  ["8", "M24x2", "ISO 898-2", "coarse"],
  ["5", "1/2-20 UNF", "SAE J995", "coarse"],
  ["12", "M10", "ISO 898-2", "style"],
  ["8", "1/2-13", "ISO 898-2", "metric"],
  ["8", "M42", "ISO 898-2", "39"],
  ["8.8", "M24", "ISO 898-2", "8"],
])("class %s on %s of %s is refused in words that help", (grade, designation, standard, words) => {
  const said = refusal(nut(grade, designation, standard));
  expectHouseWording(said);
  expect(said.where).toBe("nut-strength");
  expect(sentence(said)).toContain(words);
});
