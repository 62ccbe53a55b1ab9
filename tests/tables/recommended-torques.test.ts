import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { recommendedTorque, recommendedTorques } from "../../src/tables/recommended-torques.ts";
import { printedLines } from "./printed.ts";

const of = (standard: string, column: string) =>
  recommendedTorques().filter((row) => row.standard === standard && row.column === column);

test("the tables are whole: 25 threads of the circular, 21 of PCC-1, 9 of the Navy table", () => {
  expect(of("AC 43.13-1B", "tension nut").length).toBe(25);
  expect(of("ASME PCC-1-2013", "coated").length).toBe(21);
  expect(of("NAVEDTRA 14119", "25 ksi").length).toBe(9);
});

test("the Navy slip is kept as printed and refused as an answer", () => {
  const [line] = printedLines("navedtra-16-4-1-3_8");
  const row = of("NAVEDTRA 14119", "25 ksi").find((found) => found.thread === "1-3/8");
  expect(row?.maximum).toBe(line?.printed);
  expect(row?.refused).toContain("537");
  expect(isProblem(recommendedTorque("NAVEDTRA 14119", "1-3/8", "25 ksi"))).toBe(true);
});

test("every other 25 ksi figure is 25/30 of the 30 ksi one within 1.5 %", () => {
  for (const row of of("NAVEDTRA 14119", "25 ksi")) {
    const at30 = of("NAVEDTRA 14119", "30 ksi").find((other) => other.thread === row.thread)?.maximum ?? 0;
    const off = Math.abs(row.maximum / ((at30 * 25) / 30) - 1);
    if (row.refused === undefined) expect(off, row.thread).toBeLessThan(0.015);
    else expect(off).toBeGreaterThan(0.05);
  }
});

test("a shear nut takes about 0.6 of the tension nut, as 24 and 54 ksi to 40 and 90", () => {
  const shear = of("AC 43.13-1B", "max shear nut");
  of("AC 43.13-1B", "max tension nut").forEach((row, i) => {
    const ratio = (shear[i]?.maximum ?? 0) / row.maximum;
    expect(ratio, row.thread).toBeGreaterThan(0.57);
    expect(ratio, row.thread).toBeLessThan(0.63);
  });
});

test("a range runs upwards and stays below the upper limit; coated bolts take less than noncoated ones", () => {
  const most = of("AC 43.13-1B", "max tension nut");
  of("AC 43.13-1B", "tension nut").forEach((row, i) => {
    expect(row.minimum).toBeLessThan(row.maximum);
    expect(row.maximum).toBeLessThan(most[i]?.maximum ?? 0);
  });
  const coated = of("ASME PCC-1-2013", "coated");
  of("ASME PCC-1-2013", "noncoated").forEach((row, i) => {
    expect(coated[i]?.maximum).toBeLessThan(row.maximum);
    expect(row.minimum).toBe(row.maximum);
  });
});

test("documents answer to their short names", () => {
  for (const name of ["FAA AC 43.13-1B", "ac43.13-1b", "PCC-1-2013", "NAVEDTRA14119"]) {
    const row = recommendedTorque(name, "1/2-20", "tension nut");
    if (isProblem(row)) expect(sentence(row)).not.toContain("torque table");
  }
  const said = recommendedTorque("ISO 898-1", "1/2-20", "tension nut");
  expect(isProblem(said) && sentence(said)).toContain("NAVEDTRA 14119");
});
