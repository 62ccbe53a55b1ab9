import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitOfPair } from "../../../src/methods/fits/fit-of-pair.ts";
import { solve } from "../../../src/methods/index.ts";
import { text } from "../cells.ts";
import { boltReadings, fitted, holeReadings, pairLimits, readingRows } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const id = "fit-of-pair";
const good = goodFor(id);
const um = 1e-6;

describe("limits", () => {
  testLimits(fitOfPair, good, {
    'holeUncertainty >= "0 um"': { holeUncertainty: "-3 um" },
    'shankUncertainty >= "0 um"': { shankUncertainty: "-2 um" },
    "holeSmallest <= holeLargestDepthMean": { holeSmallest: "25.02 mm" },
    "shankMean <= shankLargest": { shankMean: "25.0081 mm" },
    "tightestAllowed <= loosestAllowed": { loosestAllowed: "-11 um" },
    "abs(holeSmallest - holeLargestDepthMean) <= 0.05 * holeLargestDepthMean": { holeSmallest: "23 mm" },
    "abs(shankMean - shankLargest) <= 0.05 * shankLargest": { shankMean: "23 mm" },
    "abs(shankMean - holeLargestDepthMean) <= 0.05 * holeLargestDepthMean": {
      shankLargest: "23 mm",
      shankMean: "23 mm",
    },
    "tightestOpen == 0": { tightestAllowed: "" },
    "loosestOpen == 0": { loosestAllowed: "" },
  });
});

describe("demo (invented readings), as tagged", () => {
  // product table of the job: position, tightest, loosest, state by size
  const table: readonly (readonly [string, string, string, string])[] = [
    ["1", "0.4", "3.7", "proven"],
    ["3", "24.4", "26.7", "fails"],
    ["5", "2.8", "5.6", "proven"],
    ["6", "3.8", "6.6", "proven"],
    ["8", "-3.6", "8.4", "proven"], // oval, which is for hole-form to say
    ["10", "4.4", "6.9", "proven"],
    ["11", "11.4", "13.9", "unproven"],
    ["13", "3.4", "20.4", "fails"],
    ["15", "4.4", "5.5", "proven"],
    ["16", "-12.6", "-10.6", "unproven"],
    ["18", "9.4", "11.7", "unproven"],
    ["20", "4.4", "5.7", "proven"],
  ];

  test.each(table)("position %s: %s to %s um, %s", (no, tightest, loosest, state) => {
    const pair = solve(id, {
      hole: readingRows(holeReadings(no)),
      shank: readingRows(boltReadings(no)),
      ...pairLimits,
    });
    expectPrinted(si(pair, "tightest"), tightest, um);
    expectPrinted(si(pair, "loosest"), loosest, um);
    expect(text(pair, "state")).toBe(state);
    expectPrinted(si(pair, "uncertainty"), "3.61", um);
  });

  test("the table holds every fitted position", () => expect(table.map(([no]) => no)).toEqual(fitted));
});

/** Hole and shank that give these clearances in um. */
const pair = (tightest: number, loosest: number) => ({
  ...good,
  holeSmallest: of("length", 0.025),
  holeLargestDepthMean: of("length", 0.0251),
  shankLargest: of("length", 0.025 - tightest * um),
  shankMean: of("length", Math.min(0.0251 - loosest * um, 0.025 - tightest * um)),
});

describe("the guarded rule", () => {
  test.each([
    [10.9, "proven"],
    [11.39, "proven"],
    [11.4, "unproven"],
    [11.7, "unproven"],
    [18.6, "unproven"],
    [18.62, "fails"],
    [20.4, "fails"],
  ])("loosest %s um is %s", (loosest, state) => {
    const said = solve(id, { ...pair(0, 0), holeLargestDepthMean: of("length", 0.025 + loosest * um) });
    expect(text(said, "loosestState")).toBe(state);
    expect(text(said, "state")).toBe(state);
  });

  test.each([
    [-6.39, "proven"],
    [-6.4, "unproven"],
    [-12.6, "unproven"],
    [-13.6, "unproven"],
    [-14.0, "fails"],
  ])("tightest %s um is %s", (tightest, state) => {
    const said = solve(id, { ...pair(tightest, 0), holeLargestDepthMean: of("length", 0.025) });
    expect(text(said, "tightestState")).toBe(state);
  });

  test.each([
    ["25.0153 mm", "25.0003 mm"],
    ["25.0250 mm", "25.0100 mm"],
    ["325.0153 mm", "325.0003 mm"],
  ])("%s less %s lies on a limit of 15 um, and so inside it", (hole, shank) => {
    const on = (limits: Record<string, string>) =>
      text(
        solve(id, {
          holeSmallest: hole,
          holeLargestDepthMean: hole,
          shankLargest: shank,
          shankMean: shank,
          holeUncertainty: "0 um",
          shankUncertainty: "0 um",
          ...limits,
        }),
        "state",
      );
    expect(on({ tightestAllowed: "15 um", loosestAllowed: "15 um" })).toBe("proven");
    expect(on({ tightestAllowed: "-5 um", loosestAllowed: "14.99 um" })).toBe("fails");
  });

  test("the worse end decides", () => {
    const order = ["proven", "unproven", "fails"];
    const end = fc.integer({ min: -300, max: 300 }).map((tenth) => tenth / 10);
    fc.assert(
      fc.property(end, end, (tightest, above) => {
        const loosest = tightest + Math.abs(above);
        const said = solve(id, {
          ...pair(tightest, 0),
          holeLargestDepthMean: of("length", 0.025 + Math.abs(above) * um),
          shankMean: of("length", 0.025 - tightest * um),
        });
        expect(si(said, "loosest")).toBeCloseTo(loosest * um, 14);
        const worst = Math.max(
          order.indexOf(text(said, "tightestState")),
          order.indexOf(text(said, "loosestState")),
        );
        expect(order.indexOf(text(said, "state"))).toBe(worst);
      }),
    );
  });

  test("a better gauge never makes a proven pair unproven", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 30 }), fc.integer({ min: 0, max: 9 }), (loosest, better) => {
        const inputs = { ...pair(-5, 0), holeLargestDepthMean: of("length", 0.02503 + loosest * um) };
        const coarse = text(solve(id, inputs), "state");
        const fine = text(
          solve(id, { ...inputs, holeUncertainty: of("length", (3 * better * um) / 10) }),
          "state",
        );
        if (coarse !== "unproven") expect(fine).toBe(coarse);
      }),
    );
  });
});

describe("edges", () => {
  test("an end without a limit is named and leaves the pair unproven, unless the other alone matters", () => {
    const { tightestAllowed: _, ...loose } = good;
    const open = answer(solve(id, loose));
    expect(open.outputs["tightestState"]).toBeUndefined();
    expect([text(open, "loosestState"), text(open, "state")]).toEqual(["proven", "unproven"]);
    expect(open.warnings.map((warning) => warning.why)).toEqual(["tightest not judged: no limit given"]);
    expect(Object.keys(open.spoilt)).toEqual(["state"]);
    const alone = answer(solve(id, { ...loose, ends: "loosest" }));
    expect(text(alone, "state")).toBe("proven");
    expect(alone.warnings).toEqual([]);
    expect(text(solve(id, { ...loose, loosestAllowed: "-20 um" }), "state")).toBe("fails");
  });

  test("the end that alone matters is the one with a limit; beside two limits it is refused", () => {
    expect(refusal(solve(id, { ...good, ends: "loosest" })).code).toBe("odd-end");
    expect(refusal(solve(id, { ...good, tightestAllowed: "", ends: "tightest" })).code).toBe("odd-end");
  });

  test("a second row of limits or uncertainties is refused", () => {
    const { tightestAllowed: _, loosestAllowed: __, ...rest } = good;
    const row = { tightest: "-10 um", loosest: "15 um" };
    expect(refusal(solve(id, { ...rest, limits: [row, row] })).code).toBe("too-many-rows");
  });

  test("no limit at all is refused", () => {
    const { tightestAllowed: _, ...loose } = good;
    const { loosestAllowed: __, ...none } = loose;
    expect(refusal(solve(id, none)).must).toContain("tightestAllowed or loosestAllowed");
  });

  test("an uncertainty that is not given is asked for, never taken as 0", () => {
    const { holeUncertainty: _, ...rest } = good;
    expect(refusal(solve(id, rest)).must).toContain("holeUncertainty");
  });

  test("limits and uncertainties may stand in one row each; twice is refused", () => {
    const {
      tightestAllowed: _,
      loosestAllowed: __,
      holeUncertainty: ___,
      shankUncertainty: ____,
      ...sizes
    } = good;
    const rows = {
      limits: '{"tightest": "-10 um", "loosest": "15 um"}',
      uncertainties: '{"hole": "3 um", "shank": "2 um"}',
    };
    expect(answer(solve(id, { ...sizes, ...rows })).outputs).toEqual(answer(solve(id, good)).outputs);
    expect(refusal(solve(id, { ...good, ...rows })).code).toBe("given-twice");
  });

  test("a part is given by figures or by readings: half of the figures, or both ways, is refused", () => {
    const { holeSmallest: _, ...half } = good;
    expect(refusal(solve(id, half)).got).toBe("no holeSmallest");
    expect(refusal(solve(id, { ...good, hole: [{ depth: "outer", value: "25.01 mm" }] })).code).toBe(
      "given-twice",
    );
  });

  test("readings of a hole say their depth: without, a bell-mouth would be averaged away", () => {
    const { holeSmallest: _, holeLargestDepthMean: __, ...rest } = good;
    expect(refusal(solve(id, { ...rest, hole: [{ value: "25.01 mm" }] })).must).toBe("be given as depth");
  });

  test("a place of hole or shank that is read twice is refused, as in the form of a hole", () => {
    const twice = ["25.010 mm", "25.020 mm"].map((value) => ({ depth: "outer", direction: "along", value }));
    const { holeSmallest: _, holeLargestDepthMean: __, ...noHole } = good;
    expect(refusal(solve(id, { ...noHole, hole: twice })).code).toBe("reading-twice");
    const { shankLargest: ___, shankMean: ____, ...noShank } = good;
    expect(refusal(solve(id, { ...noShank, shank: twice })).code).toBe("reading-twice");
  });

  test("no clearance and no uncertainty: on the limit is inside", () => {
    const exact = { ...pair(0, 0), holeLargestDepthMean: of("length", 0.025), tightestAllowed: "0 um" };
    expect(text(solve(id, { ...exact, holeUncertainty: "0 um", shankUncertainty: "0 um" }), "state")).toBe(
      "proven",
    );
  });

  test("inputs are not changed", () => {
    answer(
      solve(
        id,
        deepFreeze({
          ...pairLimits,
          hole: readingRows(holeReadings("1")),
          shank: readingRows(boltReadings("1")),
        }),
      ),
    );
  });
});
