// Laws of order that the printed tables keep: a slip that a sum or a copy carried along would break one of these.
import { expect, test } from "vitest";
import { frictionRows } from "../../src/tables/friction.ts";
import { inchFitClasses, inchFits } from "../../src/tables/inch-fits.ts";
import { limitingPressures } from "../../src/tables/limiting-pressures.ts";
import { materials } from "../../src/tables/materials.ts";
import { nutFactors } from "../../src/tables/nut-factors.ts";
import { type RecommendedTorque, recommendedTorques } from "../../src/tables/recommended-torques.ts";
import { stiffnessFits } from "../../src/tables/stiffness-fit.ts";
import { strengthGrades } from "../../src/tables/strength-grades.ts";
import { metricThreads } from "../../src/tables/threads-metric.ts";
import { unifiedThreads } from "../../src/tables/threads-unified.ts";
import { tighteningAccuracies } from "../../src/tables/tightening-accuracy.ts";
import {
  inchHexagons,
  inchWashers,
  metricHexagons,
  metricWashers,
} from "../../src/tables/washers-and-hexagons.ts";
import { climbs, rises } from "./order.ts";

test("metric threads: minor, pitch and major diameter in order, limits within them, areas growing", () => {
  for (const t of metricThreads()) {
    climbs(
      [t.minorDiameterExternal_mm, t.minorDiameterInternal_mm, t.pitchDiameter_mm, t.diameter_mm],
      t.designation,
    );
    climbs([t.pitchMin6g_mm, t.pitchMax6g_mm, t.pitchMin6H_mm, t.pitchMax6H_mm], t.designation);
    climbs([t.majorMin6g_mm, t.majorMax6g_mm, t.diameter_mm], t.designation);
    climbs([t.minorMin6H_mm, t.minorMax6H_mm, t.pitchMin6H_mm], t.designation);
    expect(t.pitchMin6H_mm).toBe(t.pitchDiameter_mm);
    expect(t.minorMin6H_mm).toBe(t.minorDiameterInternal_mm);
  }
  const coarse = metricThreads().filter(({ series }) => series === "coarse");
  climbs(
    coarse.map(({ stressArea_mm2 }) => stressArea_mm2),
    "stress area",
  );
  for (const field of [
    "pitch_mm",
    "crestTolerance6_um",
    "pitchTolerance6_um",
    "internalMinorTolerance6_um",
  ] as const)
    rises(
      coarse.map((t) => t[field]),
      field,
    );
});

test("unified threads: minor, pitch and major diameter in order, limits within them, areas growing", () => {
  for (const t of unifiedThreads()) {
    const { "2A": a2, "3A": a3, "2B": b2, "3B": b3 } = t.limits;
    climbs(
      [
        t.minorDiameterUn_in,
        t.minorDiameterUnr_in,
        t.minorDiameterInternal_in,
        t.pitchDiameter_in,
        t.diameter_in,
      ],
      t.designation,
    );
    climbs([a2.pitchMin_in, a2.pitchMax_in, b2.pitchMin_in, b2.pitchMax_in], t.designation);
    climbs([a2.pitchMin_in, a3.pitchMin_in, a3.pitchMax_in, b3.pitchMax_in, b2.pitchMax_in], t.designation);
    climbs([a2.majorMin_in, a2.majorMax_in, a3.majorMax_in], t.designation);
    climbs([a3.majorMin_in, a3.majorMax_in], t.designation);
    for (const limits of [b2, b3]) climbs([limits.minorMin_in, limits.minorMax_in], t.designation);
    // Both are rounded to four places, so the difference may be one in the last.
    const allowance = t.diameter_in - (a2.majorMax_in ?? Number.NaN);
    expect(Math.abs(allowance - t.allowance2A_in), t.designation).toBeLessThan(0.00011);
    expect([a3.majorMax_in, a3.pitchMax_in, b2.pitchMin_in, b3.pitchMin_in]).toEqual([
      t.diameter_in,
      t.pitchDiameter_in,
      t.pitchDiameter_in,
      t.pitchDiameter_in,
    ]);
  }
  for (const series of ["UNC", "UNF"])
    climbs(
      unifiedThreads()
        .filter((t) => t.series === series)
        .map((t) => t.stressArea_in2),
      series,
    );
});

test("strengths: yield below tensile, and no bolt weaker in a higher class of its standard", () => {
  for (const row of strengthGrades()) {
    climbs([row.yield, row.tensile], `${row.standard} ${row.grade}`);
    rises([row.proof, row.yield], `${row.standard} ${row.grade}`);
  }
  const classes = strengthGrades().filter(({ standard }) => standard === "ISO 898-1");
  for (const field of ["proof", "yield", "tensile"] as const) {
    const upto16 = classes.filter(({ over }) => over === undefined && field !== "proof");
    rises(
      upto16.filter(({ grade }) => Number(grade) >= 8).map((row) => row[field]),
      field,
    );
  }
  // "8.8" is 800 MPa and 0.8 of it; a class printed with its true least strength lies up to 4 % above.
  for (const { grade, tensile = 0, yield: least = 0 } of classes) {
    const [hundreds = 0, tenths = 0] = grade.split(".").map(Number);
    expect(tensile / (hundreds * 100), grade).toBeGreaterThanOrEqual(1);
    expect(tensile / (hundreds * 100), grade).toBeLessThanOrEqual(1.051);
    expect(least / tensile, grade).toBeCloseTo(tenths / 10, 1);
  }
});

test("inch fits: hole tolerance and distance from it grow with size within a class", () => {
  for (const name of inchFitClasses()) {
    const rows = inchFits().filter(({ fitClass }) => fitClass === name);
    rises(
      rows.map((row) => row.holeUpper_thou),
      name,
    );
    // RC 9 over 0.12 up to 0.24 in is printed -6.0, a tolerance of 1.5 where its grade has 1.8.
    const asGraded = rows.filter((row) => !(name === "RC 9" && row.upto_in === 0.24));
    rises(
      asGraded.map((row) => Number((row.shaftUpper_thou - row.shaftLower_thou).toFixed(6))),
      name,
    );
    rises(
      rows.map((row) => Math.abs(row.shaftUpper_thou)),
      name,
    );
  }
});

test("torques: a range runs upwards, and a larger thread of the same column takes more", () => {
  const nameOf = (row: RecommendedTorque) => `${row.standard} ${row.column}`;
  for (const name of new Set(recommendedTorques().map(nameOf))) {
    const rows = recommendedTorques().filter((row) => nameOf(row) === name);
    for (const row of rows) rises([row.minimum, row.maximum], `${name} ${row.thread}`);
    // The circular lists its fine threads first, then the coarse ones.
    const starts = rows.findIndex((row, i) => i > 0 && row.thread.startsWith("8-"));
    const series = starts < 0 ? [rows] : [rows.slice(0, starts), rows.slice(starts)];
    for (const one of series) {
      climbs(
        one.map((row) => row.maximum),
        name,
      );
      climbs(
        one.map((row) => row.minimum),
        name,
      );
    }
  }
});

test("ranges run from low over typical to high, and friction classes follow one another", () => {
  for (const row of [...frictionRows(), ...nutFactors()])
    climbs([row.low, row.typical, row.high], row.condition);
  const classes = frictionRows().filter((row) => row.where === "thread and bearing face");
  climbs(
    classes.map((row) => row.low),
    "low",
  );
  climbs(
    classes.map((row) => row.high),
    "high",
  );
  for (const { least, most, method } of tighteningAccuracies()) rises([least, most], method);
});

test("washers and heads grow with the bolt, and a bore is smaller than what surrounds it", () => {
  const inch = (series: string) => inchWashers().filter((row) => row.series === series);
  for (const row of metricWashers())
    climbs([row.size_mm, row.innerDiameter_mm, row.outerDiameter_mm], row.designation);
  for (const row of inchWashers())
    climbs([row.thickness_in, row.size_in, row.innerDiameter_in, row.outerDiameter_in], row.size);
  for (const row of metricHexagons())
    climbs([row.bearingDiameterMin_mm, row.acrossFlatsMax_mm, row.acrossCornersMin_mm], row.designation);
  climbs(
    metricWashers().map((row) => row.outerDiameter_mm),
    "outer",
  );
  rises(
    metricWashers().map((row) => row.thickness_mm),
    "thickness",
  );
  for (const series of ["narrow", "wide"])
    climbs(
      inch(series).map((row) => row.outerDiameter_in),
      series,
    );
  climbs(
    metricHexagons()
      .filter((row) => !(row.size_mm === 24 && row.grade === "B"))
      .map((row) => row.bearingDiameterMin_mm),
    "bearing face",
  );
  for (const field of ["acrossFlatsMin_in", "acrossFlatsMax_in"] as const)
    climbs(
      inchHexagons().map((row) => row[field]),
      field,
    );
});

test("a stronger ductile iron bears more, and constants are those of metals", () => {
  climbs(
    limitingPressures.filter(({ material }) => material.startsWith("GJS")).map((row) => row.pressure_MPa),
    "GJS",
  );
  for (const { fitA, fitB, material } of stiffnessFits()) {
    expect(fitA, material).toBeCloseTo(0.79, 1);
    expect(fitB, material).toBeCloseTo(0.63, 1);
  }
  for (const row of materials()) {
    if (row.poisson !== undefined) expect(row.poisson, row.name).toBeGreaterThan(0.2);
    if (row.poisson !== undefined) expect(row.poisson, row.name).toBeLessThan(0.35);
    climbs([row.yield_MPa, row.tensile_MPa], row.name);
  }
});
