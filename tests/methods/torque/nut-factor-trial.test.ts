import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nutFactorTrial } from "../../../src/methods/torque/nut-factor-trial.ts";
import { sentence } from "../../../src/problem.ts";
import { goodFor } from "../good-inputs.ts";
import {
  answer,
  between,
  deepFreeze,
  expectClose,
  expectHouseWording,
  expectPrinted,
  type Inputs,
  of,
  refusal,
  rows,
  si,
  testLimits,
} from "../helpers.ts";

const good = goodFor("nut-factor-trial");
const trial = (preloads: readonly number[], change: Readonly<Record<string, string>> = {}) =>
  nutFactorTrial.solve({
    torque: "480 N.m",
    diameter: "24 mm",
    preloads: preloads.map((preload) => of("force", preload)),
    ...change,
  });

describe("hand calculation", () => {
  test("six bolts at 480 N.m: mean 142.4 kN, s 5.98, K 0.1405, factor 4.42, spread 18.6 %", () => {
    const found = nutFactorTrial.solveNamed({ ...good, boltStiffness: of("stiffness", 1 / 1.53e-9) });
    expectPrinted(si(found, "meanPreload"), "142.4", 1e3);
    expectPrinted(si(found, "standardDeviation"), "5.98", 1e3);
    expectPrinted(si(found, "toleranceFactor"), "4.42");
    expectPrinted(si(found, "spread"), "18.6", 1e-2);
    expectPrinted(si(found, "nutFactor"), "0.1405");
    expectClose(rows(found, "trials")[0]?.["preload"] ?? 0, 0.23e-3 / 1.53e-9);
  });

  test("three bolts of 90, 100 and 110 kN: mean 100, s 10", () => {
    const found = trial([90e3, 100e3, 110e3]);
    expectClose(si(found, "meanPreload"), 100e3);
    expectClose(si(found, "standardDeviation"), 10e3);
    expectClose(si(found, "nutFactor"), 480 / (0.024 * 100e3));
    // chi-square point for 5 % and two degrees of freedom: -2 ln 0.95
    const k = 1.959963984540054 * Math.sqrt((2 * (4 / 3)) / (-2 * Math.log(0.95)));
    expectClose(si(found, "toleranceFactor"), k, 1e-9);
    expectClose(si(found, "maximumPreload"), 100e3 + k * 10e3, 1e-9);
  });

  // Exact two-sided factors for 95 % of a normal population with 95 % confidence, from memory of the usual tables.
  test.each([
    [5, 5.079],
    [6, 4.414],
    [8, 3.732],
    [10, 3.379],
    [20, 2.752],
    [30, 2.549],
  ])("for %i bolts the factor is within half a per cent of the exact %f", (n, exact) => {
    const found = si(trial(Array.from({ length: n }, (_, i) => 1e5 + i)), "toleranceFactor");
    expect(Math.abs(found / exact - 1)).toBeLessThan(0.005);
  });
});

describe("laws", () => {
  const load = between(5e4, 2e5);
  const loads = fc.array(load, { minLength: 5, maxLength: 12 });

  test("the order of the bolts does not matter", () => {
    fc.assert(
      fc.property(loads, (forces) => {
        const [one, two] = [trial(forces), trial(forces.toReversed())];
        for (const output of ["meanPreload", "nutFactor", "toleranceFactor"])
          expectClose(si(one, output), si(two, output), 1e-12);
        expectClose(si(one, "standardDeviation"), si(two, "standardDeviation"), 1e-9);
      }),
    );
  });

  test("all preloads doubled: the nut factor is half, the spread the same", () => {
    fc.assert(
      fc.property(loads, (forces) => {
        const [one, two] = [trial(forces), trial(forces.map((force) => 2 * force))];
        expectClose(si(one, "nutFactor"), 2 * si(two, "nutFactor"), 1e-12);
        expectClose(si(one, "spread"), si(two, "spread"), 1e-12);
      }),
    );
  });

  test("stretches over a stiffness are the same trial as their preloads", () => {
    fc.assert(
      fc.property(loads, between(1e8, 2e9), (forces, stiffness) => {
        const stretched = nutFactorTrial.solve({
          torque: "480 N.m",
          diameter: "24 mm",
          stretches: forces.map((force) => ({ stretch: of("length", force / stiffness) })),
          boltStiffness: of("stiffness", stiffness),
        });
        for (const output of ["meanPreload", "nutFactor", "toleranceFactor"])
          expectClose(si(stretched, output), si(trial(forces), output), 1e-12);
      }),
    );
  });

  test("more bolts, less coverage or less confidence shrink the factor", () => {
    const k = (n: number, change: Readonly<Record<string, string>> = {}) =>
      si(
        trial(
          Array.from({ length: n }, (_, i) => 1e5 + i),
          change,
        ),
        "toleranceFactor",
      );
    for (const n of [5, 6, 10, 30]) {
      expect(k(n + 1)).toBeLessThan(k(n));
      expect(k(n, { coverage: "90 %" })).toBeLessThan(k(n));
      expect(k(n, { confidence: "90 %" })).toBeLessThan(k(n));
      expect(k(n)).toBeGreaterThan(1.96);
    }
  });

  test("equal preloads have no spread", () => {
    expect(si(trial([1e5, 1e5, 1e5, 1e5, 1e5]), "spread")).toBe(0);
  });

  test("the lower end is never below zero", () => {
    const wild = trial([5e4, 2e5, 1e5, 4e4, 3e5]);
    expect(si(wild, "minimumPreload")).toBe(0);
    expect(answer(wild).warnings.map(sentence).join()).toContain("no least preload above zero");
  });
});

describe("refusals", () => {
  test.each([
    ["nothing measured", {}, "preloads"],
    ["one bolt", { preloads: ["150 kN"] }, "no spread"],
    ["both", { preloads: ["150 kN", "142 kN"], stretches: ["0.2 mm", "0.21 mm"] }, "counted twice"],
    ["stretches without a stiffness", { stretches: ["0.2 mm", "0.21 mm"] }, "boltStiffness"],
    ["a stretch that is a force", { stretches: ["0.2 kN", "0.21 mm"], boltStiffness: "650 kN/mm" }, "length"],
  ])("%s", (_, change, words) => {
    const said = refusal(nutFactorTrial.solveNamed({ torque: "480 N.m", diameter: "24 mm", ...change }));
    expectHouseWording(said);
    expect(sentence(said)).toContain(words);
  });
});

test("inputs are left as they were, and a list of plain values is a list of rows", () => {
  const frozen = deepFreeze({ ...good });
  const plain = answer(nutFactorTrial.solveNamed(frozen));
  const asRows = answer(
    nutFactorTrial.solveNamed({
      ...good,
      stretches: ["0.230 mm", "0.217 mm", "0.210 mm", "0.222 mm", "0.205 mm", "0.223 mm"].map((stretch) => ({
        stretch,
      })),
    }),
  );
  expect(plain.outputs).toEqual(asRows.outputs);
});

testLimits(nutFactorTrial, good, {
  "torque > 0": { torque: "0 N.m" },
  "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
  "coverage > 0": { coverage: "0 %" },
  "coverage < 1": { coverage: "100 %" },
  "confidence > 0": { confidence: "0 %" },
  "confidence < 1": { confidence: "100 %" },
  "smallest(trials.preload) > 0": { stretches: ["0.2 mm", "-0.1 mm", "0.21 mm"] },
  "trialCount >= 5": { stretches: ["0.21 mm", "0.212 mm", "0.211 mm", "0.213 mm"] },
  "preloadResolution >= 0": {
    stretches: "",
    boltStiffness: "",
    preloads: ["150 kN", "142 kN", "145 kN", "147 kN", "149 kN"],
    preloadResolution: "-1 kN",
  },
  "stretchResolution >= 0": { stretchResolution: "-1 um" },
  "standardDeviation > 1e-9 * meanPreload": {
    stretches: ["0.21 mm", "0.21 mm", "0.21 mm", "0.21 mm", "0.21 mm"],
  },
  "spread < 1": { stretches: ["0.21 mm", "0.1 mm", "0.05 mm", "0.3 mm", "0.25 mm"] },
});

describe("equal readings", () => {
  const equal = { stretches: Array.from({ length: 6 }, () => "0.22 mm") };
  const steps: Readonly<Record<string, Inputs>> = {
    stretches: { ...equal, stretchResolution: "10 um" },
    preloads: {
      stretches: "",
      boltStiffness: "",
      preloads: Array.from({ length: 6 }, () => "143.792 kN"),
      preloadResolution: "6.536 kN",
    },
  };

  test("without a resolution the spread is not proven, and the gauge's step is asked for", () => {
    const found = answer(nutFactorTrial.solveNamed({ ...good, ...equal }));
    expect(Object.keys(found.spoilt).toSorted()).toEqual([
      "maximumPreload",
      "minimumPreload",
      "spread",
      "standardDeviation",
    ]);
    expect(found.warnings.map(({ hint }) => hint).join()).toContain("stretchResolution or preloadResolution");
  });

  test.each(Object.entries(steps))(
    "with the step of the %s the deviation is step over root 12",
    (_, change) => {
      const found = nutFactorTrial.solveNamed({ ...good, ...change });
      // 10 um times 653.6 kN/mm is 6.536 kN; over the root of 12, 1.8868 kN
      expectClose(si(found, "standardDeviation"), 6536 / Math.sqrt(12), 1e-9);
      expect(si(found, "spread")).toBeGreaterThan(0.03);
      expect(answer(found).spoilt).toEqual({});
    },
  );

  test("a step finer than the spread of the bolts changes nothing", () => {
    const plain = nutFactorTrial.solveNamed(good);
    const stepped = nutFactorTrial.solveNamed({ ...good, stretchResolution: "1 um" });
    expect(si(stepped, "spread")).toBe(si(plain, "spread"));
  });

  test("a step, or a stiffness, of what was not measured is refused by name", () => {
    const preloads = steps["preloads"] ?? {};
    for (const change of [{ stretchResolution: "1 um" }, { boltStiffness: "653.6 kN/mm" }])
      expect(refusal(nutFactorTrial.solveNamed({ ...good, ...preloads, ...change })).code).toBe("not-used");
    expect(refusal(nutFactorTrial.solveNamed({ ...good, preloadResolution: "1 kN" })).code).toBe("not-used");
  });
});
