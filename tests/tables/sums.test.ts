// Tables of which no second copy lies here, held still by sums of rows and columns: see holds-still.ts.
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { clearanceHoles } from "../../src/tables/clearance-holes.ts";
import { type InchFit, inchFits } from "../../src/tables/inch-fits.ts";
import { limitingPressures } from "../../src/tables/limiting-pressures.ts";
import { type Material, materials } from "../../src/tables/materials.ts";
import { recommendedTorques } from "../../src/tables/recommended-torques.ts";
import { stiffnessFits } from "../../src/tables/stiffness-fit.ts";
import { tighteningAccuracies } from "../../src/tables/tightening-accuracy.ts";
import {
  inchHexagons,
  inchWashers,
  metricHexagons,
  metricWashers,
} from "../../src/tables/washers-and-hexagons.ts";
import { cellsOf, holdsStill } from "./holds-still.ts";

test("inch fits, by class and by place in the class", () => {
  const placeOf = (row: InchFit) =>
    inchFits()
      .filter(({ fitClass }) => fitClass === row.fitClass)
      .indexOf(row);
  const cells = cellsOf(
    inchFits(),
    (row) => row.fitClass,
    (field, row) => `${field} ${placeOf(row)}`,
  );
  holdsStill(cells, {
    rows: `
      RC 1 = 9.56 | RC 2 = 9.71 | RC 3 = 4.86 | RC 4 = 5.41 | RC 5 = -4.39 | RC 6 = -2.09 | RC 7 = -13.29 |
      RC 8 = -34.49 | RC 9 = -63.69 | LC 1 = 13.31 | LC 2 = 14.46 | LC 3 = 15.01 | LC 4 = 20.11 |
      LC 5 = 10.86 | LC 6 = 7.71 | LC 7 = 0.71 | LC 8 = -10.49 | LC 9 = -31.59 | LC 10 = -76.59 |
      LC 11 = -111.59 | LT 1 = 17.61 | LT 2 = 20.21 | LT 3 = 19.83 | LT 4 = 23.73 | LT 5 = 27.86 |
      LT 6 = 29.91 | LN 1 = 24.61 | LN 2 = 31.56 | LN 3 = 34.96 | FN 1 = 49.71 | FN 2 = 68.56 | FN 3 = 49.6 |
      FN 4 = 81.56 | FN 5 = 105.21`,
    columns: `
      over_in 0 = 1.43 | upto_in 0 = 5.71 | holeUpper_thou 0 = 34.9 | shaftUpper_thou 0 = -12.78 |
      shaftLower_thou 0 = -38.87 | over_in 1 = 5.71 | upto_in 1 = 10.44 | holeUpper_thou 1 = 41.4 |
      shaftUpper_thou 1 = -14.65 | shaftLower_thou 1 = -45.2 | over_in 2 = 10.44 | upto_in 2 = 16.75 |
      holeUpper_thou 2 = 50.35 | shaftUpper_thou 2 = -16.1 | shaftLower_thou 2 = -54.05 | over_in 3 = 16.75 |
      upto_in 3 = 27.91 | holeUpper_thou 3 = 58.7 | shaftUpper_thou 3 = -19.7 | shaftLower_thou 3 = -63.3 |
      over_in 4 = 27.91 | upto_in 4 = 44.42 | holeUpper_thou 4 = 70.1 | shaftUpper_thou 4 = -26.35 |
      shaftLower_thou 4 = -78.4 | over_in 5 = 34.97 | upto_in 5 = 56.99 | holeUpper_thou 5 = 81.4 |
      shaftUpper_thou 5 = -37.6 | shaftLower_thou 5 = -99.4 | over_in 6 = 56.99 | upto_in 6 = 89.81 |
      holeUpper_thou 6 = 93.7 | shaftUpper_thou 6 = -46.5 | shaftLower_thou 6 = -117.7 | over_in 7 = 4.76 |
      upto_in 7 = 6.32 | holeUpper_thou 7 = 4.2 | shaftUpper_thou 7 = 10.8 | shaftLower_thou 7 = 8.2 |
      over_in 8 = 6.32 | upto_in 8 = 7.88 | holeUpper_thou 8 = 4.2 | shaftUpper_thou 8 = 12.2 |
      shaftLower_thou 8 = 9.6 | over_in 9 = 7.88 | upto_in 9 = 10.24 | holeUpper_thou 9 = 4.9 |
      shaftUpper_thou 9 = 14.9 | shaftLower_thou 9 = 11.8 | over_in 10 = 10.24 | upto_in 10 = 12.6 |
      holeUpper_thou 10 = 4.9 | shaftUpper_thou 10 = 16.7 | shaftLower_thou 10 = 13.6`,
  });
});

test("clearance holes", () => {
  const cells = cellsOf(
    clearanceHoles(),
    (row) => `M${row.diameter_mm}`,
    (field, row) => `${row.standard} ${row.series} ${field}`,
  );
  holdsStill(cells, {
    rows: `
      M1.6 = 20.6 | M1.8 = 11.7 | M2 = 26.4 | M2.5 = 32.4 | M3 = 38.4 | M3.5 = 22.3 | M4 = 51.2 |
      M4.5 = 28.6 | M5 = 63.2 | M6 = 76 | M7 = 88 | M8 = 102.8 | M10 = 127 | M12 = 155 | M14 = 179 |
      M16 = 203 | M18 = 228 | M20 = 254 | M22 = 278 | M24 = 302 | M27 = 342 | M30 = 378 | M33 = 414 |
      M36 = 452 | M39 = 488 | M42 = 524 | M45 = 562 | M48 = 604 | M52 = 656 | M56 = 708 | M60 = 756 |
      M64 = 804`,
    columns: `
      ISO 273 fine diameter_mm = 716.9 | ISO 273 fine hole_mm = 744.6 | ISO 273 medium diameter_mm = 716.9 |
      ISO 273 medium hole_mm = 783.2 | ISO 273 coarse diameter_mm = 716.9 | ISO 273 coarse hole_mm = 839.1 |
      BS 4186 close diameter_mm = 707.1 | BS 4186 close hole_mm = 734.1 | BS 4186 medium diameter_mm = 707.1 |
      BS 4186 medium hole_mm = 773.7 | BS 4186 free diameter_mm = 707.1 | BS 4186 free hole_mm = 828.9`,
  });
});

test("metric washers and hexagon heads", () => {
  holdsStill(
    cellsOf(metricWashers(), (row) => row.designation),
    {
      rows: `
      M1.6 = 7.6 | M2 = 9.5 | M2.5 = 11.7 | M3 = 13.7 | M4 = 18.1 | M5 = 21.3 | M6 = 26 | M8 = 34 |
      M10 = 42.5 | M12 = 51.5 | M14 = 59.5 | M16 = 66 | M18 = 74 | M20 = 81 | M22 = 87 | M24 = 97 |
      M27 = 109 | M30 = 121 | M33 = 132 | M36 = 144`,
      columns: `
      size_mm = 294.1 | innerDiameter_mm = 307.7 | outerDiameter_mm = 557 | thickness_mm = 47.6`,
    },
  );
  holdsStill(
    cellsOf(metricHexagons(), (row) => `${row.designation} ${row.grade}`),
    {
      rows: `
      M3 A = 19.08 | M4 A = 24.54 | M5 A = 28.67 | M6 A = 35.93 | M8 A = 47.01 | M10 A = 58.4 |
      M12 A = 66.66 | M16 A = 89.24 | M20 A = 111.72 | M24 A = 133.59 | M24 B = 132.8 | M30 B = 169.6 |
      M36 B = 202.9`,
      columns: `
      size_mm = 198 | acrossFlatsMax_mm = 304.5 | bearingDiameterMin_mm = 280.5 | acrossCornersMin_mm = 337.14`,
    },
  );
});

test("inch hexagon heads and washers", () => {
  holdsStill(
    cellsOf(inchHexagons(), (row) => row.size),
    {
      rows: `
      1 = 3.969 | 1/4 = 1.116 | 5/16 = 1.3015 | 3/8 = 1.488 | 7/16 = 1.6745 | 1/2 = 1.986 | 9/16 = 2.1725 |
      5/8 = 2.485 | 3/4 = 2.975 | 7/8 = 3.472 | 1-1/8 = 4.444 | 1-1/4 = 4.937 | 1-3/8 = 5.431 | 1-1/2 = 5.925`,
      columns: `
      size_in = 10.9375 | acrossFlatsMax_in = 16.437 | acrossFlatsMin_in = 16.002`,
    },
  );
  const washers = cellsOf(
    inchWashers(),
    (row) => row.size,
    (field, row) => `${row.series} ${field}`,
  );
  holdsStill(washers, {
    rows: `
      1 = 8.923 | 1/4 = 2.582 | 5/16 = 3.055 | 3/8 = 3.554 | 1/2 = 4.734 | 5/8 = 5.885 | 3/4 = 6.727`,
    columns: `
      narrow size_in = 3.8125 | narrow innerDiameter_in = 4.092 | narrow outerDiameter_in = 7.968 |
      narrow thickness_in = 0.653 | wide size_in = 3.8125 | wide innerDiameter_in = 4.249 |
      wide outerDiameter_in = 10.234 | wide thickness_in = 0.639`,
  });
});

test("printed torques, the pitch that names a row among the numbers", () => {
  const rows = recommendedTorques().map((row) => ({ ...row, pitch: row.pitch && Number(row.pitch) }));
  const cells = cellsOf(
    rows,
    (row) => row.thread,
    (field, row) => `${row.standard} ${row.column} ${field}`,
  );
  holdsStill(cells, {
    rows: `
      1 = 2732 | 2 = 15816 | 3 = 55216 | 4 = 133616 | 8-36 = 75 | 10-32 = 137 | 1/4-28 = 350 | 5/16-24 = 750 |
      3/8-24 = 1185 | 7/16-20 = 2860 | 1/2-20 = 3630 | 9/16-18 = 5440 | 5/8-18 = 7580 | 3/4-16 = 15600 |
      7/8-14 = 20000 | 1-14 = 30700 | 1-1/8-12 = 43200 | 1-1/4-12 = 72000 | 8-32 = 75 | 10-24 = 128 |
      1/4-20 = 265 | 5/16-18 = 533 | 3/8-16 = 985 | 7/16-14 = 1540 | 1/2-13 = 2810 | 9/16-12 = 3670 |
      5/8-11 = 4960 | 3/4-10 = 8400 | 7/8-9 = 15600 | 1/2 = 372 | 5/8 = 684 | 3/4 = 1146 | 7/8 = 1822 |
      1-1/8 = 3930 | 1-1/4 = 5562 | 1-3/8 = 7352 | 1-1/2 = 9362 | 1-5/8 = 8316 | 1-3/4 = 10516 |
      1-7/8 = 12916 | 2-1/4 = 22816 | 2-1/2 = 31616 | 2-3/4 = 42216 | 3-1/4 = 70816 | 3-1/2 = 88816 |
      3-3/4 = 109616`,
    columns: `
      AC 43.13-1B tension nut maximum = 40230 | AC 43.13-1B tension nut minimum = 31169 |
      AC 43.13-1B shear nut maximum = 24113 | AC 43.13-1B shear nut minimum = 18531 |
      AC 43.13-1B max tension nut maximum = 80335 | AC 43.13-1B max shear nut maximum = 48095 |
      ASME PCC-1-2013 noncoated maximum = 177490 | ASME PCC-1-2013 noncoated minimum = 177490 |
      ASME PCC-1-2013 noncoated pitch = 179 | ASME PCC-1-2013 coated maximum = 134545 |
      ASME PCC-1-2013 coated minimum = 134545 | ASME PCC-1-2013 coated pitch = 179 |
      NAVEDTRA 14119 30 ksi maximum = 2895 | NAVEDTRA 14119 30 ksi minimum = 2895 |
      NAVEDTRA 14119 30 ksi pitch = 77 | NAVEDTRA 14119 25 ksi maximum = 2441 |
      NAVEDTRA 14119 25 ksi minimum = 2441 | NAVEDTRA 14119 25 ksi pitch = 77`,
  });
});

test("limiting pressures, stiffness fit and accuracy of tightening", () => {
  holdsStill(
    cellsOf(limitingPressures, (row) => row.material),
    {
      rows: `
      GJL-250 = 900 | GJS-400-15 = 700 | GJS-500 = 900 | GJS-600 = 1000`,
      columns: `
      pressure_MPa = 3500`,
    },
  );
  holdsStill(
    cellsOf(stiffnessFits(), (row) => row.material),
    {
      rows: `
      steel = 1.41588 | aluminum = 1.43486 | copper = 1.43121 | gray cast iron = 1.39487 | general = 1.41866`,
      columns: `
      fitA = 3.94776 | fitB = 3.14772`,
    },
  );
  holdsStill(
    cellsOf(tighteningAccuracies(), (row) => row.method),
    {
      rows: `
      by feel = 0.7 | torque wrench = 0.5 | turn-of-nut = 0.3 | preload indicating washer = 0.2 |
      strain gages = 0.02 | computer-controlled wrench below yield = 0.3 | yield-point sensing = 0.16 |
      bolt elongation = 0.08 | ultrasonic sensing = 0.02`,
      columns: `
      least = 1.13 | most = 1.15`,
    },
  );
});

test("materials, each column with its unit", () => {
  const unitOf = (field: string, row: Material) =>
    ({ modulus: row.modulusUnit, expansion: row.expansionUnit })[field] ?? "";
  const cells = cellsOf(
    materials(),
    (row) => row.name,
    (field, row) => `${field} ${unitOf(field, row)}`.trim(),
  );
  holdsStill(cells, {
    rows: `
      steel = 207.292 | steel, stiffness fit = 207.291 | aluminium, stiffness fit = 71.334 |
      copper, stiffness fit = 119.326 | gray cast iron, stiffness fit = 100.211 | gray cast iron = 14.711 |
      gray cast iron ASTM 20 = 16.98 | malleable cast iron = 30.98 | ductile iron EN-GJS-400-18 = 831.28 |
      steel, expansion = 11.5 | aluminium, expansion = 23.1 | steel, cooled to liquid nitrogen = 8.5`,
    columns: `
      modulus GPa = 874 | poisson = 2.505 | modulus Mpsi = 48.5 | expansion 1e-6/degF = 13.4 |
      expansion 1e-6/K = 54.1 | tensile_MPa = 400 | yield_MPa = 250`,
  });
});

test("every table is held here or against a second copy", () => {
  const held = ["sums.test.ts", "second-copy.test.ts"]
    .map((name) => readFileSync(new URL(name, import.meta.url), "utf8"))
    .join("\n");
  const tables = readdirSync(new URL("../../src/tables/", import.meta.url)).filter(
    (name) => name !== "table.ts",
  );
  expect(tables.length).toBeGreaterThan(13);
  expect(tables.filter((name) => !held.includes(`src/tables/${name}"`))).toEqual([]);
});
