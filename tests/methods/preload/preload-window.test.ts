import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preloadWindow } from "../../../src/methods/preload/preload-window.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, step, testLimits, yes } from "../helpers.ts";

const good = goodFor("preload-window");

describe("hand calculation", () => {
  test("36 to 72 kN and 144 to 288 N.m from round numbers", () => {
    // Floor at the load: 1.2 · 21.6 / ((1 − 0.2)(1 − 0.1)) = 25.92/0.72 = 36 kN.
    // Floor in a trip: (1.1 · 20 − (−2)) / 0.72 = 24/0.72 = 33.33 kN, below the first.
    // Ceiling at assembly: 0.9 · 96 / 1.2 = 72 kN; in the warm-up: (96 − 6)/1.2 = 75 kN, above the first.
    // Torques: K d F = 0.2 · 0.02 · F = 0.004 m · F: 144 and 288 N.m.
    const window = preloadWindow.solve({
      separationLoad: "21.6 kN",
      separationFactor: "1.2",
      tripLoad: "20 kN",
      tripFactor: "1.1",
      tripThermalChange: "-2 kN",
      scatter: "20 %",
      relaxation: "10 %",
      proofLoad: "96 kN",
      assemblyShare: "0.9",
      warmUpChange: "6 kN",
      nutFactor: "0.2",
      diameter: "20 mm",
    });
    expectClose(si(window, "floorPreload"), 36_000);
    expectClose(step(window, "floorAtTrip"), 24_000 / 0.72);
    expectClose(si(window, "ceilingPreload"), 72_000);
    expectClose(step(window, "ceilingAtWarmUp"), 75_000);
    expectClose(si(window, "floorTorque"), 144);
    expectClose(si(window, "ceilingTorque"), 288);
    expect(yes(window, "open")).toBe(true);
  });
});

const random = fc.record({
  separationLoad: between(1e3, 2e5).map((v) => of("force", v)),
  separationFactor: between(1, 2).map((v) => of("ratio", v)),
  tripLoad: between(0, 2e5).map((v) => of("force", v)),
  tripThermalChange: between(-5e4, 5e4).map((v) => of("force", v)),
  relaxation: between(0, 0.3).map((v) => of("ratio", v)),
  proofLoad: between(1e5, 1e6).map((v) => of("force", v)),
  assemblyShare: between(0.5, 1).map((v) => of("ratio", v)),
  warmUpChange: between(0, 5e4).map((v) => of("force", v)),
  nutFactor: between(0.08, 0.3).map((v) => of("ratio", v)),
  diameter: between(0.006, 0.05).map((v) => of("length", v)),
});
type Case = typeof random extends fc.Arbitrary<infer C> ? C : never;
const at = (c: Case, scatter: number) => preloadWindow.solve({ ...c, scatter: of("ratio", scatter) });
const width = (c: Case, scatter: number) => {
  const window = at(c, scatter);
  return si(window, "ceilingPreload") - si(window, "floorPreload");
};

describe("laws", () => {
  test("closes as scatter grows: the floor rises and the ceiling falls", () => {
    fc.assert(
      fc.property(random, between(0, 0.5), between(0.01, 0.4), (c, scatter, more) => {
        expect(si(at(c, scatter + more), "floorPreload")).toBeGreaterThan(si(at(c, scatter), "floorPreload"));
        expect(si(at(c, scatter + more), "ceilingPreload")).toBeLessThan(
          si(at(c, scatter), "ceilingPreload"),
        );
        expect(width(c, scatter + more)).toBeLessThan(width(c, scatter));
      }),
    );
  });

  test("once closed it stays closed at any larger scatter", () => {
    fc.assert(
      fc.property(random, between(0, 0.5), between(0, 0.4), (c, scatter, more) => {
        if (!yes(at(c, scatter), "open")) expect(yes(at(c, scatter + more), "open")).toBe(false);
      }),
    );
  });

  test("a closed window offers no torque in between: floor above ceiling, open no, one warning", () => {
    const window = answer(preloadWindow.solveNamed({ ...good, scatter: "35 %" }));
    expect(yes(window, "open")).toBe(false);
    expect(Object.keys(window.outputs).toSorted()).toEqual(
      ["ceilingPreload", "ceilingTorque", "floorPreload", "floorTorque", "open"].toSorted(),
    );
    expect(si(window, "floorTorque")).toBeGreaterThan(si(window, "ceilingTorque"));
    expect(window.warnings.map((w) => w.why)).toEqual(["no torque passes"]);
  });

  test("says open exactly where floor torque does not pass ceiling torque", () => {
    fc.assert(
      fc.property(random, between(0, 0.6), (c, scatter) => {
        const window = at(c, scatter);
        expect(yes(window, "open")).toBe(
          !answer(window).warnings.some(({ why }) => why === "no torque passes"),
        );
      }),
    );
  });

  test("at floor and ceiling the limits are just met", () => {
    const window = preloadWindow.solveNamed(good);
    const least = si(window, "floorPreload") * 0.8 * 0.9;
    expectClose(least, Math.max(1.2 * 84.5e3, 1.1 * 65e3 + 23.8e3));
    const most = si(window, "ceilingPreload") * 1.2;
    expectClose(most, Math.min(0.9 * 211.5e3, 211.5e3 - 24.4e3));
  });

  test("torques are preloads times nut factor and diameter, at both ends", () => {
    fc.assert(
      fc.property(random, between(0, 0.6), (c, scatter) => {
        const window = at(c, scatter);
        for (const end of ["floor", "ceiling"])
          expectClose(
            si(window, `${end}Torque`),
            c.nutFactor.si * c.diameter.si * si(window, `${end}Preload`),
          );
      }),
    );
  });
});

describe("edges", () => {
  test("no load at all: the floor is 0 and not below", () => {
    const window = preloadWindow.solveNamed({
      ...good,
      separationLoad: "0 kN",
      tripLoad: "0 kN",
      tripThermalChange: "20 kN",
    });
    expect(si(window, "floorPreload")).toBe(0);
  });

  test("floor and ceiling equal: one torque passes and the window is open", () => {
    const window = answer(
      preloadWindow.solve({
        separationLoad: "50 kN",
        scatter: "0 %",
        proofLoad: "100 kN",
        assemblyShare: "0.5",
        nutFactor: "0.2",
        diameter: "20 mm",
      }),
    );
    expect(si(window, "floorTorque")).toBe(si(window, "ceilingTorque"));
    expect(yes(window, "open")).toBe(true);
    expect(window.warnings.filter(({ code }) => code !== "assumed")).toEqual([]);
  });
});

describe("limits", () => {
  testLimits(preloadWindow, good, {
    "separationLoad >= 0": { separationLoad: "-1 kN" },
    "separationFactor > 0": { separationFactor: "0" },
    "tripFactor > 0": { tripFactor: "0" },
    "tripLoad >= 0": { tripLoad: "-1 kN" },
    "proofLoad > 0": { proofLoad: "0 kN" },
    "assemblyShare > 0": { assemblyShare: "0" },
    "ceilingPreload > 0": { warmUpChange: "212 kN" },
    "floorTorque <= ceilingTorque": { scatter: "35 %" },
  });
});
