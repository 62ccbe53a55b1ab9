// The short tables: nut factors, friction, materials, limiting pressures, and the shared helpers.
import { expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import { clearanceHoleTable } from "../../src/tables/clearance-holes.ts";
import { friction, frictionRows, frictionTable } from "../../src/tables/friction.ts";
import { inchFitTable } from "../../src/tables/inch-fits.ts";
import { iso286Table } from "../../src/tables/iso-286.ts";
import { limitingPressure, limitingPressureTable } from "../../src/tables/limiting-pressures.ts";
import { material, materials, materialTable } from "../../src/tables/materials.ts";
import { nutFactors, nutFactorsOf, nutFactorTable } from "../../src/tables/nut-factors.ts";
import { recommendedTorqueTable } from "../../src/tables/recommended-torques.ts";
import { stiffnessFitTable } from "../../src/tables/stiffness-fit.ts";
import { strengthGradeTable } from "../../src/tables/strength-grades.ts";
import { nearestTo, readRows, splitLine } from "../../src/tables/table.ts";
import { metricThreadTable } from "../../src/tables/threads-metric.ts";
import { unifiedThreadTable } from "../../src/tables/threads-unified.ts";
import { tighteningAccuracyTable } from "../../src/tables/tightening-accuracy.ts";
import { washerAndHexagonTable } from "../../src/tables/washers-and-hexagons.ts";

test("a nut factor look-up gives every published row, because they disagree", () => {
  const zinc = nutFactorsOf("zinc plated");
  expect(!isProblem(zinc) && zinc.map((row) => row.typical)).toEqual([0.2, 0.17]);
  const unknown = nutFactorsOf("zinc");
  expect(isProblem(unknown) && [...unknown.suggestions]).toEqual(["zinc plated on steel", "zinc plated"]);
  expect(nutFactors()).toHaveLength(20);
  expect(nutFactors().find((row) => row.condition === "survey of lubricants")).toMatchObject({
    low: 0.086,
    high: 0.52,
  });
});

test("friction classes are ranges; class E has no upper end", () => {
  expect(friction("class B")).toMatchObject({
    name: "B",
    low: 0.08,
    high: 0.16,
  });
  expect(friction("E")).not.toHaveProperty("high");
  expect(isProblem(friction("F"))).toBe(true);
  expect(frictionRows()).toHaveLength(7);
});

test("materials keep the printed unit and two gray irons stand side by side", () => {
  expect(material("Steel")).toMatchObject({
    modulus: 207,
    modulusUnit: "GPa",
    poisson: 0.292,
  });
  expect(material("ductile iron EN-GJS-400-18")).toMatchObject({
    modulus: 170,
    poisson: 0.28,
    expansion: 11,
    expansionUnit: "1e-6/K",
  });
  const gray = materials().filter(
    (row) => row.name.startsWith("gray cast iron") && row.modulusUnit === "Mpsi",
  );
  expect(gray.map((row) => row.modulus)).toEqual([14.5, 10]);
  const unknown = material("gray iron");
  expect(isProblem(unknown) && unknown.suggestions).toContain("gray cast iron");
});

test("a limiting pressure belongs to its own grade, never to a neighbour", () => {
  expect(limitingPressure("EN-GJS-400-15")).toMatchObject({
    pressure_MPa: 700,
  });
  expect(limitingPressure("GJL-250")).toMatchObject({ pressure_MPa: 900 });
  const other = limitingPressure("EN-GJS-400-18");
  expect(isProblem(other) && other.suggestions).toContain("GJS-400-15");
});

test("every table names its sources and a unit for each column", () => {
  const tables = [
    metricThreadTable,
    unifiedThreadTable,
    strengthGradeTable,
    iso286Table,
    nutFactorTable,
    frictionTable,
    materialTable,
    limitingPressureTable,
    clearanceHoleTable,
    inchFitTable,
    recommendedTorqueTable,
    stiffnessFitTable,
    tighteningAccuracyTable,
    washerAndHexagonTable,
  ];
  for (const table of tables) {
    expect(table.sources.length, table.title).toBeGreaterThan(0);
    expect(Object.keys(table.units).length, table.title).toBeGreaterThan(1);
  }
});

test("a wrong column name or a short row is a programmer's mistake and throws", () => {
  expect(() => readRows("a,b\n1,2", (cell) => cell.number("c"))).toThrow("no column");
  expect(() => readRows("a,b\n1", (cell) => cell.number("a"))).toThrow("cells");
  expect(() => readRows("a,b\nx,2", (cell) => cell.number("a"))).toThrow("not a number");
  expect(splitLine('a,"b, c",')).toEqual(["a", "b, c", ""]);
  expect(nearestTo([1, 5, 9], 6, (row) => row, 2)).toEqual([5, 9]);
});

test("the textbook column of nut factors is Table 8-15", () => {
  const printed = nutFactors().filter((row) => "at" in row.source && row.source.at === "Table 8-15, p. 439");
  expect(printed.map((row) => row.typical)).toEqual([0.3, 0.2, 0.18, 0.16, 0.12, 0.09]);
});

test("elastic constants of the textbook tables come back as printed", () => {
  expect(material("gray cast iron ASTM 20")).toMatchObject({
    modulus: 10,
    modulusUnit: "Mpsi",
    poisson: 0.28,
    expansion: 6.7,
    expansionUnit: "1e-6/degF",
  });
  expect(material("malleable cast iron")).toMatchObject({
    modulus: 24,
    modulusUnit: "Mpsi",
    poisson: 0.28,
    expansion: 6.7,
  });
  expect(material("gray cast iron")).toMatchObject({ modulus: 14.5, poisson: 0.211 });
  expect(
    [
      "steel, stiffness fit",
      "aluminium, stiffness fit",
      "copper, stiffness fit",
      "gray cast iron, stiffness fit",
    ].map((name) => material(name)),
  ).toMatchObject([
    { modulus: 207, poisson: 0.291 },
    { modulus: 71, poisson: 0.334 },
    { modulus: 119, poisson: 0.326 },
    { modulus: 100, poisson: 0.211 },
  ]);
});
