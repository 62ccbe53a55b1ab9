import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { stiffnessFit, stiffnessFitMaterials } from "../../src/tables/stiffness-fit.ts";
import { tighteningAccuracies, tighteningAccuracy } from "../../src/tables/tightening-accuracy.ts";

// The 10 printed accuracies run as reference rows of tightening-accuracy.
test("only bolt elongation has a range", () => {
  const wide = tighteningAccuracies().filter(({ least, most }) => least !== most);
  expect(wide.map(({ method }) => method)).toEqual(["bolt elongation"]);
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
