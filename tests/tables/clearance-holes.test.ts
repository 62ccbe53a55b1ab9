import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { clearanceHole, clearanceHoles } from "../../src/tables/clearance-holes.ts";

const hole = (standard: string, size: number, series: string): number => {
  const row = clearanceHole(standard, size, series);
  if (isProblem(row)) throw new Error(sentence(row));
  return row.hole_mm;
};

test("ISO 273 and BS 4186 differ at M12, M14 and M16 only", () => {
  for (const size of [
    1.6, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 18, 20, 22, 24, 27, 30, 33, 36, 39, 42, 45, 48, 52, 56, 60, 64,
  ])
    for (const [iso, bs] of [
      ["fine", "close"],
      ["medium", "medium"],
      ["coarse", "free"],
    ] as const)
      expect(hole("ISO 273", size, iso), `M${size}`).toBe(hole("BS 4186", size, bs));
  for (const size of [12, 14, 16])
    expect(hole("BS 4186", size, "medium")).toBe(hole("ISO 273", size, "medium") + 0.5);
});

test("medium holes as another copy prints them", () => {
  const printed = {
    3: 3.4,
    4: 4.5,
    5: 5.5,
    6: 6.6,
    8: 9,
    10: 11,
    12: 13.5,
    16: 17.5,
    20: 22,
    24: 26,
    30: 33,
    36: 39,
  };
  for (const [size, diameter] of Object.entries(printed))
    expect(hole("ISO 273", Number(size), "medium")).toBe(diameter);
});

test("holes grow with size and with the series, and clear the bolt", () => {
  const rows = clearanceHoles();
  for (const row of rows) {
    expect(row.hole_mm).toBeGreaterThan(row.diameter_mm);
    const larger = rows.filter(
      (other) =>
        other.standard === row.standard && other.series === row.series && other.diameter_mm > row.diameter_mm,
    );
    for (const other of larger) expect(other.hole_mm).toBeGreaterThan(row.hole_mm);
  }
  for (const size of [2, 12, 24, 64])
    expect(hole("ISO 273", size, "fine")).toBeLessThan(hole("ISO 273", size, "medium"));
});

test("unknown standard, series and size are refused with the choices", () => {
  const said = (standard: string, size: number, series: string): string => {
    const row = clearanceHole(standard, size, series);
    return isProblem(row) ? sentence(row) : "found";
  };
  expect(said("DIN 69", 12, "medium")).toContain("ISO 273");
  expect(said("ISO 273", 12, "free")).toContain("coarse");
  expect(said("BS 4186", 4.5, "medium")).toContain("M4");
  expect(said("iso273", 12, "Medium")).toBe("found");
});
