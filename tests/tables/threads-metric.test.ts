import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { metricThread, metricThreads } from "../../src/tables/threads-metric.ts";

const row = (designation: string) => {
  const found = metricThread(designation);
  if (isProblem(found)) throw new Error(sentence(found));
  return found;
};

test("metricThread('M24') is the coarse pitch, and the pitch may be written out", () => {
  for (const text of ["M24", "m24", " M24 ", "M24x3", "M24 x 3", "M24×3", "M24 X 3.0", "M24*3"]) {
    expect(row(text).designation, text).toBe("M24");
    expect(row(text).pitch_mm, text).toBe(3);
  }
  expect(row("M24×2").designation).toBe("M24x2");
});

test("a printed row comes back as printed", () => {
  expect(row("M24")).toMatchObject({
    pitchDiameter_mm: 22.051,
    minorDiameterExternal_mm: 20.319,
    minorDiameterInternal_mm: 20.752,
    stressArea_mm2: 353,
  });
  expect(row("M8")).toMatchObject({
    majorMax6g_mm: 7.972,
    majorMin6g_mm: 7.76,
    pitchMax6g_mm: 7.16,
    pitchMin6g_mm: 7.042,
  });
  expect(row("M16")).toMatchObject({
    deviationG_um: -38,
    crestTolerance6_um: 280,
    pitchTolerance6_um: 160,
    internalPitchTolerance6_um: 212,
    internalMinorTolerance6_um: 375,
  });
});

test("an unknown pitch or size is a Problem that lists what there is, and nothing is made up", () => {
  const pitch = metricThread("M24x2.5");
  expect(isProblem(pitch) && [pitch.code, [...pitch.suggestions]]).toEqual([
    "unknown-pitch",
    ["M24", "M24x2", "M24x1.5", "M24x1"],
  ]);
  const size = metricThread("M23");
  expect(isProblem(size) && [...size.suggestions].sort()).toEqual(["M20", "M22", "M24"]);
  for (const text of [
    "M65",
    "M0",
    "M",
    "",
    "24",
    "3/8-24",
    "M24x",
    "M24x0",
    "M24x-3",
    "M1e1",
    "NaN",
    "MInfinity",
  ]) {
    expect(isProblem(metricThread(text)), text).toBe(true);
  }
});

test("a tolerance class or a decimal comma is named, with the plain designation offered", () => {
  for (const [text, offer] of [
    ["M24x2-6g", "M24x2"],
    ["M24-6H", "M24"],
    ["M1,6", "M1.6"],
  ] as const) {
    const refused = metricThread(text);
    expect(isProblem(refused) && refused.suggestions, text).toEqual([offer]);
  }
});

test("the formula of ISO 898-1 reproduces every printed stress area to three figures", () => {
  for (const { designation, diameter_mm: d, pitch_mm: p, stressArea_mm2 } of metricThreads()) {
    const h = (Math.sqrt(3) / 2) * p;
    const area = (Math.PI / 4) * ((d - 0.75 * h + (d - (17 / 12) * h)) / 2) ** 2;
    expect(Number(area.toPrecision(3)), designation).toBe(stressArea_mm2);
  }
});

test("basic diameters are those of the profile, to three decimals", () => {
  for (const thread of metricThreads()) {
    const h = (Math.sqrt(3) / 2) * thread.pitch_mm;
    expect(
      Math.abs(thread.pitchDiameter_mm - (thread.diameter_mm - 0.75 * h)),
      thread.designation,
    ).toBeLessThan(0.000501);
    expect(
      Math.abs(thread.minorDiameterInternal_mm - (thread.diameter_mm - 1.25 * h)),
      thread.designation,
    ).toBeLessThan(0.000501);
    expect(
      Math.abs(thread.minorDiameterExternal_mm - (thread.diameter_mm - (17 / 12) * h)),
      thread.designation,
    ).toBeLessThan(0.000501);
  }
});

test("limits are the basic sizes with the tolerances of the same row", () => {
  const close = (a: number, b: number, text: string) => expect(Math.abs(a - b), text).toBeLessThan(0.0011);
  for (const t of metricThreads()) {
    const es = t.deviationG_um / 1000;
    close(t.majorMax6g_mm, t.diameter_mm + es, t.designation);
    close(t.majorMin6g_mm, t.majorMax6g_mm - t.crestTolerance6_um / 1000, t.designation);
    close(t.pitchMax6g_mm, t.pitchDiameter_mm + es, t.designation);
    close(t.pitchMin6g_mm, t.pitchMax6g_mm - t.pitchTolerance6_um / 1000, t.designation);
    close(t.pitchMax6H_mm, t.pitchMin6H_mm + t.internalPitchTolerance6_um / 1000, t.designation);
    close(t.minorMax6H_mm, t.minorMin6H_mm + t.internalMinorTolerance6_um / 1000, t.designation);
  }
});

test("areas that one reprint of the fine threads misprints are not in the table", () => {
  const misprinted = { M20x2: 272, M18x2: 216, M12x1: 98 };
  for (const [designation, wrong] of Object.entries(misprinted))
    expect(row(designation).stressArea_mm2).not.toBe(wrong);
  expect([row("M20x2").stressArea_mm2, row("M18x2").stressArea_mm2, row("M12x1").stressArea_mm2]).toEqual([
    258, 204, 96.1,
  ]);
});

test("86 rows, each with its own designation", () => {
  expect(metricThreads()).toHaveLength(86);
  expect(new Set(metricThreads().map((thread) => thread.designation)).size).toBe(86);
});
