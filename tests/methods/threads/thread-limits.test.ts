import { describe, expect, test } from "vitest";
import { alongR40 } from "../../../src/methods/threads/metric-limits.ts";
import { threadLimits } from "../../../src/methods/threads/thread-limits.ts";
import { sentence } from "../../../src/problem.ts";
import { metricThreads } from "../../../src/tables/threads-metric.ts";
import { unifiedThreads } from "../../../src/tables/threads-unified.ts";
import {
  answer,
  deepFreeze,
  expectClose,
  expectHouseWording,
  expectPrinted,
  refusal,
  si,
} from "../helpers.ts";
import { type ClassName, classNames, exactLimits } from "./unified-exact.ts";

const inch = 0.0254;
const solve = (designation: string, toleranceClass: string) =>
  threadLimits.solve({ designation, toleranceClass });
const outputs = ["majorMax", "majorMin", "pitchMax", "pitchMin", "minorMax", "minorMin"] as const;

describe("hand calculation", () => {
  test("M24 has 21.252 mm largest minor diameter in 6H and 21.803 mm least pitch diameter in 6g", () => {
    // D1 = 20.752, TD1(6) = 0.500; d2 = 22.051, es = -0.048, Td2(6) = 0.200.
    expectPrinted(si(solve("M24", "6H"), "minorMax"), "21.252", 1e-3);
    expectPrinted(si(solve("M24x3", "6g"), "pitchMin"), "21.803", 1e-3);
  });

  test("M10 5g6g keeps the 6g crest and narrows the pitch tolerance to 106 um", () => {
    // ISO 965-1, from memory: Td2 of M10 is 85, 106, 132, 170, 212 um in grades 4 to 8.
    expectPrinted(si(solve("M10", "5g6g"), "pitchTolerance"), "106", 1e-6);
    expectPrinted(si(solve("M10", "5g6g"), "majorMin"), "9.732", 1e-3);
    for (const [name, printed] of [
      ["4h", "85"],
      ["6h", "132"],
      ["7h6h", "170"],
      ["8h", "212"],
    ] as const)
      expectPrinted(si(solve("M10", name), "pitchTolerance"), printed, 1e-6);
    for (const [name, printed] of [
      ["4H", "112"],
      ["5H", "140"],
      ["6H", "180"],
      ["7H", "224"],
      ["8H", "280"],
    ] as const)
      expectPrinted(si(solve("M10", name), "pitchTolerance"), printed, 1e-6);
  });

  test("the UNC class 2B rows that a sheet of 2016 misprints", () => {
    const of = (d: string, output: string) => si(solve(d, "2B"), output) / inch;
    expectPrinted(of("#3-48 UNC", "pitchMax"), "0.0885");
    expectPrinted(of("1/2-13 UNC", "minorMin"), "0.417");
    expectPrinted(of("9/16-12 UNC", "pitchMax"), "0.5152");
    expectPrinted(of("1-1/2-6 UNC", "pitchMax"), "1.4022");
  });
});

describe("unified limits against whole-number arithmetic", () => {
  const expectExact = (
    designation: string,
    name: ClassName,
    d4: number,
    twice: number,
    byDiameter: boolean,
  ) => {
    const solution = answer(solve(designation, name));
    const exact = exactLimits(d4, twice, name, byDiameter);
    for (const output of outputs) {
      const expected = exact[output];
      // The major diameter of a nut starts at basic size; the second reckoning leaves it out.
      if (expected === undefined) continue;
      const found = (si(solution, output) / inch) * 1e4;
      expect(Math.abs(found - Number(expected)), `${designation} ${name} ${output}`).toBeLessThan(1e-6);
    }
  };

  test("every UNC and UNF row of the thread table, six classes", () => {
    for (const row of unifiedThreads())
      for (const name of classNames)
        expectExact(row.designation, name, Math.round(row.diameter_in * 1e4), 2 * row.threadsPerInch, true);
  });

  test("UNC above 1-1/2 in, constant-pitch and special threads", () => {
    const sizes: readonly (readonly [string, number, number, boolean])[] = [
      ["1-3/4-5 UNC", 17500, 10, true],
      ["2-4.5 UNC", 20000, 9, true],
      ["2-1/4-4-1/2 UNC", 22500, 9, true],
      ["4-4 UNC", 40000, 8, true],
      ["1-1/8-8 UN", 11250, 16, true],
      ["3-6 UN", 30000, 12, true],
      ["3-12 UN", 30000, 24, false],
      ["1-1/16-16 UN", 10625, 32, false],
      ["3/8-32 UNEF", 3750, 64, false],
      ["1-14 UNS", 10000, 28, false],
    ];
    for (const [designation, d4, twice, byDiameter] of sizes)
      for (const name of classNames) expectExact(designation, name, d4, twice, byDiameter);
  });

  test("the limits that the thread table carries are the same", () => {
    for (const row of unifiedThreads())
      for (const name of ["2A", "3A", "2B", "3B"] as const) {
        const solution = answer(solve(row.designation, name));
        for (const output of outputs) {
          const printed = row.limits[name][`${output}_in`];
          if (printed !== undefined)
            expect(
              Math.abs(si(solution, output) / inch - printed),
              `${row.designation} ${name} ${output}`,
            ).toBeLessThan(1e-9);
        }
      }
  });
});

describe("metric limits", () => {
  test("6g and 6H of every row are basic size, position and tolerance, and the limits the table prints", () => {
    for (const row of metricThreads()) {
      const bolt = solve(row.designation, "6g");
      const nut = solve(row.designation, "6H");
      const same = (found: number, printed_mm: number) => expectClose(found, printed_mm / 1000, 1e-12);
      same(si(bolt, "majorMax"), row.majorMax6g_mm);
      same(si(bolt, "majorMin"), row.majorMin6g_mm);
      same(si(bolt, "pitchMax"), row.pitchMax6g_mm);
      same(si(bolt, "pitchMin"), row.pitchMin6g_mm);
      same(si(nut, "pitchMin"), row.pitchMin6H_mm);
      same(si(nut, "pitchMax"), row.pitchMax6H_mm);
      same(si(nut, "minorMin"), row.minorMin6H_mm);
      same(si(nut, "minorMax"), row.minorMax6H_mm);
    }
  });

  test("every tabulated tolerance stands on the series that other grades move along", () => {
    for (const row of metricThreads())
      for (const tolerance of [
        row.crestTolerance6_um,
        row.pitchTolerance6_um,
        row.internalPitchTolerance6_um,
        row.internalMinorTolerance6_um,
      ])
        expectClose(alongR40(tolerance, 0), tolerance);
    expectClose(alongR40(132, 40), 1320);
    expectClose(alongR40(alongR40(71, 8), -8), 71);
    expectClose(alongR40(95, 4), 118);
  });

  test("a coarser grade widens, position h sits at basic size, e lies furthest away", () => {
    for (const designation of ["M3", "M8", "M24x2", "M64"]) {
      const tolerances = ["4h", "6h", "8h"].map((name) => si(solve(designation, name), "pitchTolerance"));
      expect(tolerances.toSorted((a, b) => a - b)).toEqual(tolerances);
      const tops = ["h", "g", "f", "e"].map((letter) => si(solve(designation, `6${letter}`), "majorMax"));
      expect(tops.toSorted((a, b) => b - a)).toEqual(tops);
      expect(si(solve(designation, "6G"), "pitchMin")).toBeGreaterThan(
        si(solve(designation, "6H"), "pitchMin"),
      );
    }
  });

  test("a 6g bolt enters a 6H nut with clearance at every diameter", () => {
    for (const row of metricThreads()) {
      const [bolt, nut] = [solve(row.designation, "6g"), solve(row.designation, "6H")];
      expect(si(bolt, "pitchMax")).toBeLessThan(si(nut, "pitchMin"));
      expect(si(bolt, "majorMax")).toBeLessThan(si(nut, "majorMin"));
      expect(si(bolt, "majorMin")).toBeGreaterThan(si(nut, "minorMax"));
    }
  });

  test("tabulated classes carry no warning; worked ones say that they are from memory", () => {
    for (const name of ["6g", "6h", "6H", "6G"]) expect(answer(solve("M12", name)).warnings).toEqual([]);
    for (const name of ["5g6g", "8g", "6e", "6f", "5H"]) {
      const [warning] = answer(solve("M12", name)).warnings;
      expect(warning && sentence(warning), name).toContain("from memory, formula before hand-smoothing");
    }
  });

  test("an external thread has no minor limits, an internal one no upper major limit", () => {
    expect(Object.keys(answer(solve("M12", "6g")).outputs)).not.toContain("minorMax");
    expect(Object.keys(answer(solve("M12", "6H")).outputs)).not.toContain("majorMax");
    expect(Object.keys(answer(solve("1/2-13", "2B")).outputs)).not.toContain("majorMax");
  });
});

test("inputs are left as they were", () => {
  const inputs = deepFreeze({ designation: "M24", toleranceClass: "6g" });
  expect(answer(threadLimits.solve(inputs)).outputs).toEqual(answer(solve("M24", "6g")).outputs);
});

test.each([
  ["M24", "2A", "6g"],
  ["M24", "7g", "7g6g"],
  ["M24", "6g6h", "share one position"],
  ["M1.6", "6e", "0.5 mm"],
  ["M23", "6g", "M2"],
  ["1/2-13", "6g", "2A"],
  ["1/2-13", "", "toleranceClass"],
  ["2-1/2-8", "2A", "series"],
  ["2-1/2-5 UNC", "2A", "2-1/2-4 UNC"],
  ["2-1/2-10 UN", "2A", "UNS"],
  ["1-3/4-12 UNF", "2A", "1-1/2"],
  ["7-8 UN", "2A", "6 in"],
  ["thread", "2A", "size"],
])("%s in class %s is refused in words that help", (designation, toleranceClass, words) => {
  const said = refusal(solve(designation, toleranceClass));
  expectHouseWording(said);
  expect(sentence(said)).toContain(words);
});
