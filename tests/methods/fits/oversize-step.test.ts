import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nextStep, oversizeStep } from "../../../src/methods/fits/oversize-step.ts";
import { solve } from "../../../src/methods/index.ts";
import { sentence } from "../../../src/problem.ts";
import { holeReadings } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const id = "oversize-step";
const good = goodFor(id);

describe("limits", () => {
  testLimits(oversizeStep, good, {
    'allowancePerSide >= "0 um"': { allowancePerSide: "-5 um" },
    'edgeLeft > "0 mm"': { edgeDistance: "12 mm" },
  });
});

test.each([
  ["3", "25.0434"],
  ["8", "25.0354"],
  ["13", "25.0364"],
])("demo (invented readings): hole %s cleans up at %s mm and goes to 25.05", (no, cleanUp) => {
  const largest = Math.max(...holeReadings(no).map((reading) => reading.value));
  const step = solve(id, { ...good, largestReading: of("length", largest) });
  expectPrinted(si(step, "cleanUpSize"), cleanUp, 1e-3);
  expectClose(si(step, "step"), 0.02505);
});

describe("laws", () => {
  const size = fc.integer({ min: 25_000, max: 25_500 }).map((um) => um * 1e-6);
  test("the step is stocked, is not below the clean-up size, and no smaller one would do", () => {
    fc.assert(
      fc.property(size, fc.array(size, { minLength: 1, maxLength: 12 }), (largestReading, steps) => {
        const step = nextStep(largestReading, steps);
        if (step === undefined) expect(Math.max(...steps)).toBeLessThan(largestReading);
        else {
          expect(steps).toContain(step);
          expect(step).toBeGreaterThanOrEqual(largestReading);
          expect(steps.filter((other) => other >= largestReading && other < step)).toEqual([]);
        }
      }),
    );
  });
});

describe("edges", () => {
  test("a step that equals the clean-up size is taken", () => {
    const step = solve(id, { ...good, largestReading: "25.04 mm", steps: ["25.05 mm", "25.10 mm"] });
    expectClose(si(step, "step"), 0.02505);
  });

  test("no step is large enough: said with both sizes", () => {
    expect(sentence(refusal(solve(id, { ...good, largestReading: "25.2 mm" })))).toBe(
      "oversize-step · oversize steps: got 25.1000 mm at most, must reach 25.2100 mm; the largest step does not clean the hole up; add a larger step, or sleeve the hole",
    );
  });

  test("steps need not be in order, and are not changed", () => {
    const steps = deepFreeze(["25.5 mm", "25.05 mm", "25.1 mm"]);
    expectClose(si(solve(id, { ...good, steps }), "step"), 0.02505);
  });

  test("without an edge distance nothing is said of the edge", () => {
    const { edgeDistance: _, ...rest } = good;
    expect(answer(solve(id, rest)).outputs["edgeLeft"]).toBeUndefined();
  });
});
