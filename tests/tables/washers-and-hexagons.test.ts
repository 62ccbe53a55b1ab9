import { expect, test } from "vitest";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import {
  inchHexagon,
  inchHexagons,
  inchWasher,
  inchWashers,
  metricHexagon,
  metricHexagons,
  metricWasher,
  metricWashers,
} from "../../src/tables/washers-and-hexagons.ts";

function found<T extends object>(row: T | Problem): T {
  if (isProblem(row)) throw new Error(sentence(row));
  return row;
}

// The 60 printed sizes run as reference rows of plain-washer and hexagon-head.

test("rows that were seen and rows from memory are told apart", () => {
  expect(found(metricWasher("M24")).source.known).toBe("second-hand");
  expect(found(metricWasher("M20")).source.known).toBe("memory");
  expect(found(metricHexagon("M20")).source.known).toBe("memory");
});

test("across corners is 1.13 times the least width across flats", () => {
  // ISO 4759-1: s least = s - IT13 or so; the check runs the other way, from e to a plausible s.
  for (const row of metricHexagons()) {
    const least = row.acrossCornersMin_mm / 1.13;
    expect(least).toBeLessThan(row.acrossFlatsMax_mm);
    expect(least).toBeGreaterThan(0.95 * row.acrossFlatsMax_mm);
    expect(row.bearingDiameterMin_mm).toBeLessThan(least);
  }
});

test("sizes grow, a washer reaches beyond its bolt's head, a wide one wider than a narrow one", () => {
  for (const row of metricWashers()) {
    expect(row.innerDiameter_mm).toBeGreaterThan(row.size_mm);
    const head = metricHexagon(row.designation);
    if (!isProblem(head)) expect(row.outerDiameter_mm).toBeGreaterThan(head.acrossFlatsMax_mm);
  }
  for (const row of inchHexagons()) {
    expect(row.acrossFlatsMin_in).toBeLessThan(row.acrossFlatsMax_in);
    // Nominal widths are whole sixteenths of an inch, printed to three places.
    const sixteenths = Math.round(row.acrossFlatsMax_in * 16) / 16;
    expect(Math.abs(sixteenths - row.acrossFlatsMax_in)).toBeLessThanOrEqual(0.000_501);
    expect(row.acrossFlatsMin_in).toBeGreaterThan(row.size_in);
  }
  for (const row of inchWashers().filter((washer) => washer.series === "wide"))
    expect(row.outerDiameter_in).toBeGreaterThan(found(inchWasher(row.size, "narrow")).outerDiameter_in);
});

test("the bearing face of a product grade B head at M24 is 33.25 mm", () => {
  expect(found(metricHexagon("M24", "B")).bearingDiameterMin_mm).toBe(33.25);
  expect(found(metricHexagon("M30")).grade).toBe("B");
});

test.each<[string, unknown, string]>([
  ["a washer that is not carried", metricWasher("M23"), "M22"],
  ["a head that is not carried", metricHexagon("M24.5"), "M24"],
  ["a grade that the size does not have", metricHexagon("M30", "A"), "M24"],
  ["an inch size", inchHexagon("1-1/16"), "1-1/8"],
  ["an inch washer", inchWasher("2", "wide"), "1"],
  ["no size", metricWasher(""), "nothing"],
])("%s is refused and names what is near", (_, result, words) => {
  expect(isProblem(result) && sentence(result)).toContain(words);
});
