import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import {
  boltStrength,
  nutStrength,
  strengthChoices,
  strengthGrades,
  type ThreadSize,
} from "../../src/tables/strength-grades.ts";

const mm = (value: number): ThreadSize => ({ value, unit: "mm" });
const inch = (value: number): ThreadSize => ({ value, unit: "in" });

const bolt = (standard: string, grade: string, size: ThreadSize) => {
  const found = boltStrength(standard, grade, size);
  if (isProblem(found)) throw new Error(sentence(found));
  return [found.proof, found.yield, found.tensile];
};

const nut = (standard: string, grade: string, size: ThreadSize) => {
  const found = nutStrength(standard, grade, size);
  if (isProblem(found)) throw new Error(sentence(found));
  return found.proof;
};

test("class 8.8 changes over M16: 580 and 640 up to M16, 600 and 660 above, never the swapped reprint", () => {
  expect(bolt("ISO 898-1", "8.8", mm(12))).toEqual([580, 640, 800]);
  expect(bolt("ISO 898-1", "8.8", mm(16))).toEqual([580, 640, 800]);
  expect(bolt("ISO 898-1", "8.8", mm(18))).toEqual([600, 660, 830]);
  expect(bolt("ISO 898-1", "8.8", mm(24))).toEqual([600, 660, 830]);
});

test("ranges are over one size and up to another; the first range of an inch grade includes its start", () => {
  expect(bolt("SAE J429", "2", inch(0.25))).toEqual([55, 57, 74]);
  expect(bolt("SAE J429", "2", inch(0.75))).toEqual([55, 57, 74]);
  expect(bolt("SAE J429", "2", inch(0.875))).toEqual([33, 36, 60]);
  expect(bolt("SAE J429", "5", inch(1))).toEqual([85, 92, 120]);
  expect(bolt("SAE J429", "5", inch(1.125))).toEqual([74, 81, 105]);
  expect(isProblem(boltStrength("SAE J429", "5", inch(0.2)))).toBe(true);
  expect(isProblem(boltStrength("SAE J429", "5", inch(1.75)))).toBe(true);
  expect(bolt("ASTM A193", "B7", inch(2.5))).toEqual([undefined, 105, 125]);
  expect(bolt("ASTM A193", "B7", inch(2.75))).toEqual([undefined, 95, 115]);
  expect(bolt("ASTM A193", "B7", inch(7))).toEqual([undefined, 75, 100]);
  expect(isProblem(boltStrength("ASTM A193", "B7", inch(7.25)))).toBe(true);
  expect(nut("ISO 898-2", "8", mm(16))).toBe(880);
  expect(nut("ISO 898-2", "8", mm(18))).toBe(920);
  expect(isProblem(nutStrength("ISO 898-2", "4", mm(16)))).toBe(true);
});

test("standards and grades are understood as written in the trade", () => {
  for (const standard of ["ISO 898-1", "EN ISO 898-1", "DIN EN ISO 898-1", "iso898-1"])
    expect(bolt(standard, "class 10.9", mm(24))).toEqual([830, 940, 1040]);
  expect(bolt("ISO 3506-1", "A2-70", mm(12))).toEqual([undefined, 450, 700]);
  expect(bolt("ISO 3506-1", "A4-80", mm(12))).toEqual([undefined, 600, 800]);
  expect(bolt("ASTM", "A325 type 1", inch(1.25))).toEqual([74, 81, 105]);
  expect(bolt("ASTM A325", "type 1", inch(1.25))).toEqual([74, 81, 105]);
  expect(bolt("SAE J429", "Grade 8", inch(0.5))).toEqual([120, 130, 150]);
});

test("an unknown standard or grade, the wrong kind of thread and a size outside are Problems with choices", () => {
  const grade = boltStrength("ISO 898-1", "8.9", mm(12));
  expect(isProblem(grade) && grade.suggestions).toContain("8.8");
  const standard = boltStrength("ISO 9999", "8.8", mm(12));
  expect(isProblem(standard) && standard.suggestions).toContain("ISO 898-1");
  const system = boltStrength("SAE J429", "8", mm(24));
  expect(isProblem(system) && system.code).toBe("wrong-thread-system");
  const outside = boltStrength("ISO 898-1", "9.8", mm(20));
  expect(isProblem(outside) && outside.code).toBe("size-outside-grade");
  const style = nutStrength("ISO 898-2", "12", mm(10));
  expect(isProblem(style) && [...style.suggestions]).toEqual([
    "ISO 898-2 12 style 1",
    "ISO 898-2 12 style 2",
  ]);
  expect(isProblem(boltStrength("ISO 898-1", "", mm(12)))).toBe(true);
  expect(isProblem(boltStrength("ISO 898-1", "8.8", mm(Number.NaN)))).toBe(true);
});

test("a proof load printed for nuts is stress times area within one unit of the third figure", () => {
  const printed: readonly (readonly [string, number, number, number])[] = [
    ["5", 10, 58, 34200],
    ["8", 10, 58, 50500],
    ["10", 12, 84.3, 88500],
    ["12 style 1", 12, 84.3, 98600],
    ["4", 20, 245, 125000],
    ["8 style 2", 20, 245, 218100],
  ];
  for (const [grade, size, area, load] of printed)
    expect(Math.abs((nut("ISO 898-2", grade, mm(size)) ?? 0) * area - load)).toBeLessThanOrEqual(100);
});

test("every row names a source, and strengths rise from proof to yield to tensile", () => {
  expect(strengthGrades()).toHaveLength(90);
  for (const row of strengthGrades()) {
    expect(row.source.title).not.toBe("");
    const [proof = 0, least = Number.POSITIVE_INFINITY, tensile = Number.POSITIVE_INFINITY] = [
      row.proof,
      row.yield,
      row.tensile,
    ];
    expect(proof <= least && Math.min(least, 1e9) <= tensile, `${row.standard} ${row.grade}`).toBe(true);
  }
  expect(strengthChoices("bolt").map((choice) => choice.standard)).toEqual([
    "ISO 898-1",
    "SAE J429",
    "ASTM",
    "ASTM A193",
    "ISO 3506-1",
  ]);
});
