import { describe, expect, test } from "vitest";
import { fitLimitsInch } from "../../../src/methods/fits/fit-limits-inch.ts";
import { sentence } from "../../../src/problem.ts";
import { inchFits } from "../../../src/tables/inch-fits.ts";
import { goodFor } from "../good-inputs.ts";
import {
  answer,
  deepFreeze,
  expectClose,
  expectHouseWording,
  of,
  refusal,
  si,
  testLimits,
} from "../helpers.ts";

const inch = 0.0254;
const limits = (size: number, name: string) =>
  fitLimitsInch.solve({ size: of("length", size * inch), fit: name });

describe("hand calculation", () => {
  test("LN 2 on a 1 in bolt: hole 1.0000 to 1.0008, bolt 1.0008 to 1.0013 in, 0 to 1.3 thou tight", () => {
    const found = limits(1, "LN 2");
    expectClose(si(found, "holeMax") / inch, 1.0008, 1e-12);
    expectClose(si(found, "holeMin") / inch, 1);
    expectClose(si(found, "shaftMax") / inch, 1.0013, 1e-12);
    expectClose(si(found, "shaftMin") / inch, 1.0008, 1e-12);
    expect(Math.abs(si(found, "clearanceMax"))).toBeLessThan(1e-15);
    expectClose(si(found, "clearanceMin") / inch, -0.0013, 1e-12);
  });

  test("RC 4 at 1 in: 0.8 to 2.8 thou clearance", () => {
    expectClose(si(limits(1, "rc4"), "clearanceMin") / inch, 0.0008, 1e-12);
    expectClose(si(limits(1, "RC-4"), "clearanceMax") / inch, 0.0028, 1e-12);
  });
});

test("extreme clearances are those of the limits of size, for every class and range", () => {
  for (const row of inchFits()) {
    const found = limits(row.upto_in, row.fitClass);
    const close = (a: number, b: number) => expect(Math.abs(a - b), row.fitClass).toBeLessThan(1e-15);
    close(si(found, "clearanceMax"), si(found, "holeMax") - si(found, "shaftMin"));
    close(si(found, "clearanceMin"), si(found, "holeMin") - si(found, "shaftMax"));
    expect(si(found, "clearanceMax")).toBeGreaterThan(si(found, "clearanceMin"));
  }
});

test("ranges are over and up to and including", () => {
  expectClose(si(limits(1.19, "LN 2"), "holeUpper") / inch, 0.0008, 1e-12);
  expectClose(si(limits(1.1901, "LN 2"), "holeUpper") / inch, 0.001, 1e-12);
  expectClose(si(fitLimitsInch.solve({ size: "30.226 mm", fit: "LN 2" }), "holeUpper") / inch, 0.0008, 1e-12);
});

test("the row and how it is known are told", () => {
  expect(answer(limits(1, "LC 2")).notes[0]).toContain("from memory");
  expect(answer(limits(1, "LN 2")).notes[0]).toContain("over 0.71 up to 1.19 in");
});

test.each([
  [4, "LN 2", "up to 3.15 in"],
  [0.8, "FN 3", "over 0.95"],
  [0.2, "LT 3", "over 0.24"],
  [1, "LN 4", "LN 3"],
  [1, "H7", "RC 1"],
])("%f in of %s is refused and lists what is carried", (size, name, words) => {
  const said = refusal(limits(size, name));
  expectHouseWording(said);
  expect(said.where).toBe("fit-limits-inch");
  expect(sentence(said)).toContain(words);
});

test("inputs are left as they were", () => {
  answer(fitLimitsInch.solve(deepFreeze({ size: "1 in", fit: "LN 2" })));
});

testLimits(fitLimitsInch, goodFor("fit-limits-inch"), { "size > 0": { size: "0 in" } });
