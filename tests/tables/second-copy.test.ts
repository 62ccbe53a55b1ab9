// Every line of the large tables against a second copy of it: see second-copy.ts.
import { describe, expect, test } from "vitest";
import { frictionRows } from "../../src/tables/friction.ts";
import { iso286Ranges, type SizeRange } from "../../src/tables/iso-286.ts";
import { nutFactors } from "../../src/tables/nut-factors.ts";
import { type StrengthGrade, strengthGrades } from "../../src/tables/strength-grades.ts";
import { metricThreads } from "../../src/tables/threads-metric.ts";
import { type UnifiedThread, unifiedThreads } from "../../src/tables/threads-unified.ts";
import { type Copied, copiedNumber, secondCopy } from "./second-copy.ts";

const numbersOf = (copy: Copied, columns: readonly string[]): Record<string, number | undefined> =>
  Object.fromEntries(columns.map((column) => [column, copiedNumber(copy, column)]));

describe("ISO 286", () => {
  test.each([
    ["iso286-it-grades", iso286Ranges.tolerances],
    ["iso286-hole-deviations", iso286Ranges.holes],
    ["iso286-shaft-deviations", iso286Ranges.shafts],
  ])("%s", (name, ranges) => {
    const copy = secondCopy(name);
    const columns = Object.keys(copy[0] ?? {});
    const lines = (range: SizeRange) =>
      Object.fromEntries(columns.map((column) => [column, range.line(column)]));
    expect(ranges().map(lines)).toEqual(copy.map((row) => numbersOf(row, columns)));
    expect(ranges().map(({ over, upto }) => [over, upto])).toEqual(
      copy.map((row) => [copiedNumber(row, "over_mm"), copiedNumber(row, "upto_mm")]),
    );
  });
});

test("metric threads", () => {
  // Field of a row, and what its column is called in the copy.
  const columns = {
    diameter_mm: "d",
    pitch_mm: "P",
    pitchDiameter_mm: "d2",
    minorDiameterExternal_mm: "d3",
    minorDiameterInternal_mm: "d1",
    stressArea_mm2: "As_mm2",
    deviationG_um: "es_g_um",
    crestTolerance6_um: "Td_6_um",
    pitchTolerance6_um: "Td2_6_um",
    internalPitchTolerance6_um: "TD2_6_um",
    internalMinorTolerance6_um: "TD1_6_um",
    majorMax6g_mm: "d_max_6g",
    majorMin6g_mm: "d_min_6g",
    pitchMax6g_mm: "d2_max_6g",
    pitchMin6g_mm: "d2_min_6g",
    pitchMin6H_mm: "D2_min_6H",
    pitchMax6H_mm: "D2_max_6H",
    minorMin6H_mm: "D1_min_6H",
    minorMax6H_mm: "D1_max_6H",
  } as const;
  const copy = secondCopy("metric-threads").map((row) => ({
    designation: row["designation"],
    series: row["series"],
    ...Object.fromEntries(Object.entries(columns).map(([field, name]) => [field, copiedNumber(row, name)])),
  }));
  expect(metricThreads()).toEqual(copy);
});

test("unified threads", () => {
  const limits = (row: Copied, name: string) => ({
    pitchMax_in: copiedNumber(row, `pd_max_${name}`),
    pitchMin_in: copiedNumber(row, `pd_min_${name}`),
  });
  const external = (row: Copied, name: string) => ({
    ...limits(row, name),
    majorMax_in: copiedNumber(row, `maj_max_${name}`),
    majorMin_in: copiedNumber(row, `maj_min_${name}`),
  });
  const internal = (row: Copied, name: string) => ({
    ...limits(row, name),
    minorMax_in: copiedNumber(row, `minor_max_${name}`),
    minorMin_in: copiedNumber(row, `minor_min_${name}`),
  });
  const copy = secondCopy("unified-threads").map(
    (row): Record<keyof UnifiedThread, unknown> => ({
      designation: `${row["size"]}-${row["n"]} ${row["series"]}`,
      series: row["series"],
      size: row["size"],
      diameter_in: copiedNumber(row, "d"),
      threadsPerInch: copiedNumber(row, "n"),
      pitchDiameter_in: copiedNumber(row, "d2"),
      minorDiameterUnr_in: copiedNumber(row, "d3_UNR"),
      minorDiameterUn_in: copiedNumber(row, "d3_UN_min_root"),
      minorDiameterInternal_in: copiedNumber(row, "D1"),
      stressArea_in2: copiedNumber(row, "At_calc"),
      stressAreaPrinted_in2: copiedNumber(row, "At_printed"),
      allowance2A_in: copiedNumber(row, "allow_2A"),
      limits: {
        "2A": external(row, "2A"),
        "3A": external(row, "3A"),
        "2B": internal(row, "2B"),
        "3B": internal(row, "3B"),
      },
    }),
  );
  expect(unifiedThreads()).toEqual(copy);
});

test("strength grades", () => {
  const held = strengthGrades().map((row: StrengthGrade) => [
    row.standard,
    row.grade,
    row.product,
    [row.over, row.upto, row.sizeUnit],
    [row.proof, row.yield, row.tensile, row.stressUnit],
  ]);
  const copy = secondCopy("strength-grades").map((row) => [
    row["standard"],
    row["class"],
    row["product"] === "nut" ? "nut" : "bolt",
    [copiedNumber(row, "size_over"), copiedNumber(row, "size_upto"), row["size_unit"]],
    [
      copiedNumber(row, "proof"),
      copiedNumber(row, "yield"),
      copiedNumber(row, "tensile"),
      row["stress_unit"],
    ],
  ]);
  expect(held).toEqual(copy);
});

test.each([
  ["friction", "mu", frictionRows],
  ["nut factors", "K", nutFactors],
] as const)("%s, in the order of the copy", (_, kind, rows) => {
  const held = rows().map(({ low, typical, high }) => [low, typical, high]);
  const copy = secondCopy("friction-factors").filter((row) => row["kind"] === kind);
  expect(held).toEqual(
    copy.map((row) => [copiedNumber(row, "min"), copiedNumber(row, "typical"), copiedNumber(row, "max")]),
  );
});
