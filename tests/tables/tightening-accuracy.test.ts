import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { stiffnessFit, stiffnessFitMaterials } from "../../src/tables/stiffness-fit.ts";
import { tighteningAccuracies, tighteningAccuracy } from "../../src/tables/tightening-accuracy.ts";
import { printedLines } from "./printed.ts";

test("every printed accuracy is in the table, both ends of the range that has two", () => {
  const lines = printedLines("mh-preload-accuracy");
  expect(lines.length).toBe(10);
  for (const line of lines) {
    const [, method = "", end] = /^(.*?)(?: (low|high))?$/.exec(line.quantity) ?? [];
    const row = tighteningAccuracy(method);
    if (isProblem(row)) throw new Error(sentence(row));
    expect(end === "low" ? row.least : row.most, line.id).toBe(line.printed / 100);
    if (end === undefined) expect(row.least).toBe(row.most);
  }
});

test("an unknown way of tightening lists the known ones", () => {
  const said = tighteningAccuracy("torque multiplier");
  expect(isProblem(said) && sentence(said)).toContain("torque wrench");
  expect(tighteningAccuracies().length).toBe(9);
});

test("the choices of the exponential fit are the rows of its table", () => {
  for (const material of stiffnessFitMaterials)
    expect(isProblem(stiffnessFit(material)), material).toBe(false);
  expect(isProblem(stiffnessFit("brass"))).toBe(true);
});
