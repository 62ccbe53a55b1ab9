import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { type InchFit, inchFit, inchFitClasses, inchFits } from "../../src/tables/inch-fits.ts";

const near = (a: number, b: number) => Math.abs(a - b) < 1e-9;
const of = (name: string): readonly InchFit[] => inchFits().filter((row) => row.fitClass === name);

/** Standard tolerances in thousandths by range, as the RC rows print them for their holes. */
const grade = (index: number, name: string): number | undefined => of(name)[index]?.holeUpper_thou;

test("the ranges of a class follow one another without a gap or an overlap", () => {
  for (const name of inchFitClasses()) {
    const rows = of(name);
    rows.forEach((row, i) => {
      expect(row.over_in).toBeLessThan(row.upto_in);
      const next = rows[i + 1];
      if (next) expect(next.over_in).toBe(row.upto_in);
    });
    expect(rows.at(-1)?.upto_in).toBe(3.15);
  }
});

test("clearance classes clear, force fits interfere, transition fits do both", () => {
  for (const row of inchFits()) {
    const least = -row.shaftUpper_thou;
    const most = row.holeUpper_thou - row.shaftLower_thou;
    expect(row.shaftUpper_thou).toBeGreaterThan(row.shaftLower_thou);
    if (row.fitClass.startsWith("RC")) expect(least).toBeGreaterThan(0);
    if (row.fitClass.startsWith("LC")) expect(least).toBeGreaterThanOrEqual(0);
    if (row.fitClass.startsWith("LT")) expect(least < 0 && most > 0, row.fitClass).toBe(true);
    if (row.fitClass.startsWith("LN")) expect(most).toBeLessThanOrEqual(1e-9);
    if (row.fitClass.startsWith("FN")) expect(most).toBeLessThan(0);
  }
});

test("holes of every family are the standard grades: H6, H7, H8 of the RC rows", () => {
  for (let i = 0; i < 7; i += 1) {
    for (const [name, rc] of [
      ["LN 1", "RC 2"],
      ["LN 2", "RC 3"],
      ["LN 3", "RC 3"],
      ["LT 1", "RC 3"],
      ["LT 2", "RC 4"],
      ["LC 1", "RC 2"],
      ["LC 2", "RC 3"],
      ["LC 3", "RC 4"],
      ["LC 6", "RC 6"],
    ] as const)
      expect(grade(i, name), `${name} ${i}`).toBe(grade(i, rc));
  }
});

test("LC 1 to LC 5, from memory, are the grades that the RC rows print: h is 0 down to its tolerance, g is that of RC 2", () => {
  const shaftTolerance = (name: string, i: number) => {
    const row = of(name)[i];
    return row ? row.shaftUpper_thou - row.shaftLower_thou : Number.NaN;
  };
  for (let i = 0; i < 7; i += 1) {
    expect(near(shaftTolerance("LC 1", i), shaftTolerance("RC 2", i))).toBe(true); // grade 5
    expect(near(shaftTolerance("LC 2", i), shaftTolerance("RC 3", i)), `${i}`).toBe(true); // grade 6
    expect(near(shaftTolerance("LC 3", i), shaftTolerance("RC 4", i))).toBe(true); // grade 7
    expect(near(shaftTolerance("LC 4", i), grade(i, "RC 6") ?? 0)).toBe(true); // grade 9
    expect(near(shaftTolerance("LC 5", i), shaftTolerance("LC 2", i))).toBe(true); // grade 6
    expect(of("LC 5")[i]?.shaftUpper_thou).toBe(of("RC 2")[i]?.shaftUpper_thou); // position g
  }
});

test("a higher number of a clearance or force class is looser or tighter", () => {
  const mean = (size: number, name: string) => {
    const row = inchFit(size, name);
    if (isProblem(row)) throw new Error(sentence(row));
    return (row.holeUpper_thou - row.shaftUpper_thou - row.shaftLower_thou) / 2;
  };
  for (const size of [1, 1.5, 2, 3]) {
    for (const family of ["RC", "LC"] as const) {
      const numbers = family === "RC" ? [3, 4, 5, 6, 7, 8, 9] : [6, 7, 8, 9, 10, 11];
      const means = numbers.map((n) => mean(size, `${family} ${n}`));
      expect(means.toSorted((a, b) => a - b)).toEqual(means);
    }
    const forces = [1, 2, 3, 4].map((n) => mean(size, `FN ${n}`));
    expect(forces.toSorted((a, b) => b - a)).toEqual(forces);
  }
});

test("a class or size that is not carried lists what is", () => {
  const said = (size: number, name: string): string => {
    const row = inchFit(size, name);
    return isProblem(row) ? sentence(row) : row.fitClass;
  };
  expect(said(1, "ln-2")).toBe("LN 2");
  expect(said(1, "RC 10")).toContain("RC 9");
  expect(said(1, "XX 1")).toContain("FN 5");
  expect(said(20, "LN 2")).toContain("over 1.97 up to 3.15 in");
  expect(said(0, "LN 2")).toContain("over 0 up to 0.12 in");
});
