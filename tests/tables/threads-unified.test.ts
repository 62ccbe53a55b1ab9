import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { unifiedThread, unifiedThreads } from "../../src/tables/threads-unified.ts";

const row = (designation: string) => {
  const found = unifiedThread(designation);
  if (isProblem(found)) throw new Error(sentence(found));
  return found;
};

test("a designation is understood as the trade writes it", () => {
  const spellings = {
    "3/8-24 UNF": ["3/8-24 UNF", "3/8-24", "3/8 - 24 unf", "3/8-24UNF", "3/8 UNF", ".375-24", "0.375-24"],
    "1/2-13 UNC": ["1/2-13", "1/2-13 UNC"],
    "#10-32 UNF": ["#10-32", "10-32", "No. 10-32", "# 10-32 UNF", ".190-32"],
    "#1-64 UNC": ["1-64", "#1-64"],
    "1-8 UNC": ["1-8", "1-8 UNC"],
    "1-1/4-7 UNC": ["1-1/4-7", "1 1/4-7", "1 1/4 - 7 UNC", "1.25-7"],
  };
  for (const [designation, texts] of Object.entries(spellings))
    for (const text of texts) expect(row(text).designation, text).toBe(designation);
});

test("printed rows come back as printed", () => {
  expect(row("#4-40")).toMatchObject({
    pitchDiameter_in: 0.0958,
    minorDiameterUnr_in: 0.0822,
    minorDiameterInternal_in: 0.0849,
    stressAreaPrinted_in2: 0.00604,
  });
  expect(row("3/8-24")).toMatchObject({
    pitchDiameter_in: 0.3479,
    stressAreaPrinted_in2: 0.0878,
  });
  expect(row("1/2-13").limits["2A"]).toMatchObject({
    majorMax_in: 0.4985,
    majorMin_in: 0.4876,
    pitchMax_in: 0.4485,
    pitchMin_in: 0.4435,
  });
  expect(row("1-8").limits["3B"]).toMatchObject({
    pitchMin_in: 0.9188,
    pitchMax_in: 0.9254,
    minorMin_in: 0.865,
    minorMax_in: 0.8797,
  });
});

test("the constant-pitch series, UNEF and UNS are not made up", () => {
  const eight = unifiedThread("1-1/2-8 UN");
  expect(isProblem(eight) && [...eight.suggestions]).toEqual(["1-1/2-6 UNC", "1-1/2-12 UNF"]);
  for (const text of ["1-14 UNS", "1/2-28 UNEF", "2-1/2-4 UNC", "1-1/2-8", "3/8-24 UNC", "3/8-20"])
    expect(isProblem(unifiedThread(text)), text).toBe(true);
});

test("a size without a pitch asks which", () => {
  const asked = unifiedThread("3/8");
  expect(isProblem(asked) && [...asked.suggestions]).toEqual(["3/8-16 UNC", "3/8-24 UNF"]);
  expect(isProblem(unifiedThread("1-1/4"))).toBe(true);
});

test("text that is no thread, or carries a class, is refused with an offer", () => {
  for (const text of ["", "M24", "3/8-24-2A", "3/8-24 UNF-2A", "1/0-4", "-24", "3/8-0"])
    expect(isProblem(unifiedThread(text)), text).toBe(true);
  const classed = unifiedThread("3/8-24 UNF-2A");
  expect(isProblem(classed) && classed.suggestions).toEqual(["3/8-24 UNF"]);
});

test("basic diameters follow the profile and the printed area follows its formula", () => {
  for (const t of unifiedThreads()) {
    expect(
      Math.abs(t.pitchDiameter_in - (t.diameter_in - 0.649519 / t.threadsPerInch)),
      t.designation,
    ).toBeLessThan(0.0000501);
    expect(
      Math.abs(t.minorDiameterInternal_in - (t.diameter_in - 1.082532 / t.threadsPerInch)),
      t.designation,
    ).toBeLessThan(0.0000501);
    const area = Math.PI * (t.pitchDiameter_in / 2 - 0.16238 / t.threadsPerInch) ** 2;
    expect(Math.abs(area - t.stressArea_in2), t.designation).toBeLessThan(0.0000051);
    // #6-32 prints 0.00909 where the formula gives 0.00908(5).
    expect(Math.abs(area / t.stressAreaPrinted_in2 - 1), t.designation).toBeLessThan(0.0052);
  }
});

test("values that copies of the tables misprint are not in the table", () => {
  expect(row("#3-48").limits["2B"].pitchMax_in).toBe(0.0885);
  expect(row("1/2-13").limits["2B"].minorMin_in).toBe(0.417);
  expect(row("9/16-12").limits["2B"].pitchMax_in).toBe(0.5152);
  expect(row("1-1/2-6").limits["2B"].pitchMax_in).toBe(1.4022);
  expect(row("3/4-16").minorDiameterUnr_in).toBe(0.6755);
  expect(row("1-12").minorDiameterUnr_in).toBe(0.9008);
});

test("23 coarse and 24 fine rows", () => {
  expect(unifiedThreads().filter((thread) => thread.series === "UNC")).toHaveLength(23);
  expect(unifiedThreads().filter((thread) => thread.series === "UNF")).toHaveLength(24);
});
