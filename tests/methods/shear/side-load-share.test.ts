import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { sideLoadShare, slipUnder } from "../../../src/methods/shear/side-load-share.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, expectPrinted, of, rows, si, testLimits, yes } from "../helpers.ts";

const id = "side-load-share";
const good = goodFor(id);
const bolt = { clearance: "4 um", shankDiameter: "25 mm", stiffness: "900 kN/mm" };

describe("limits", () => {
  testLimits(sideLoadShare, good, {
    'sideLoad >= "0 kN"': { sideLoad: "-1 kN" },
    'clamp >= "0 kN"': { clamp: "-1 kN" },
    "smallest(bolts.stiffness) > 0": { bolts: [{ ...bolt, stiffness: "0 kN/mm" }] },
    "travelShare > 0": { travelShare: "0" },
  });
});

const shank = fc.record({
  play: fc.integer({ min: 0, max: 60 }).map((um) => um * 1e-6),
  stiffness: fc.double({ min: 1e7, max: 5e9, noNaN: true }),
});
const shanks = fc.array(shank, { minLength: 1, maxLength: 20 });
const load = fc.double({ min: 0, max: 5e5, noNaN: true });

const carried = (slip: number, all: readonly { play: number; stiffness: number }[]) =>
  all.reduce((sum, s) => sum + s.stiffness * Math.max(0, slip - s.play), 0);

/** By halving, knowing nothing of the corners. */
function slipByHalving(wanted: number, all: readonly { play: number; stiffness: number }[]): number {
  let [low, high] = [0, 1];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (carried(middle, all) < wanted) low = middle;
    else high = middle;
  }
  return high;
}

describe("slipUnder", () => {
  test("carries exactly the load at the slip it gives", () => {
    fc.assert(
      fc.property(load, shanks, (wanted, all) => {
        expect(Math.abs(carried(slipUnder(wanted, all), all) - wanted)).toBeLessThanOrEqual(
          1e-9 * wanted + 1e-6,
        );
      }),
    );
  });

  test("agrees with a search by halving", () => {
    fc.assert(
      fc.property(load, shanks, (wanted, all) => {
        if (wanted > 1e-3) expectClose(slipUnder(wanted, all), slipByHalving(wanted, all), 1e-9);
      }),
    );
  });

  test("never falls as the load grows, and knows no order of the shanks", () => {
    fc.assert(
      fc.property(load, load, shanks, (a, b, all) => {
        expect(slipUnder(Math.min(a, b), all)).toBeLessThanOrEqual(
          slipUnder(Math.max(a, b), all) * (1 + 1e-12),
        );
        expectClose(slipUnder(a, all), slipUnder(a, all.toReversed()), 1e-12);
      }),
    );
  });

  test("no load, no slip", () => expect(slipUnder(0, [{ play: 0, stiffness: 1 }])).toBe(0));
});

describe("demo (invented figures)", () => {
  test("friction holds 129 of 150 kN; twelve equal shanks take the rest in equal parts", () => {
    const solution = solve(id, { ...good, bolts: Array.from({ length: 12 }, () => bolt) });
    expectPrinted(si(solution, "slipCapacity"), "129", 1000);
    expect(yes(solution, "held")).toBe(false);
    for (const row of rows(solution, "bolts")) expectClose(row["force"] ?? 0, 21200 / 12, 1e-9);
  });

  test("without friction twelve equal shanks carry 12.5 kN at 25 MPa each", () => {
    const solution = solve(id, { ...good, friction: "0", bolts: Array.from({ length: 12 }, () => bolt) });
    const [first] = rows(solution, "bolts");
    expectClose(first?.["force"] ?? 0, 12500, 1e-9);
    expectPrinted(first?.["shearStress"] ?? 0, "25", 1e6);
  });
});

describe("edges", () => {
  test("friction holds: no slip, no force, and it is said", () => {
    const solution = answer(solve(id, { ...good, sideLoad: "120 kN" }));
    expect(si(solution, "slip")).toBe(0);
    expect(rows(solution, "bolts").map((row) => row["force"])).toEqual([0, 0]);
    expect(yes(solution, "held")).toBe(true);
    expect(solution.notes).toContain("0 of 2 shanks bear");
  });

  test("a load of just what friction holds is held", () => {
    const solution = solve(id, { ...good, sideLoad: "100 kN", clamp: "200 kN", friction: "0.5" });
    expect(yes(solution, "held")).toBe(true);
    expect(si(solution, "slip")).toBe(0);
  });

  test("interference bears as soon as the parts slip, with no force before", () => {
    const tight = {
      ...good,
      bolts: [
        { ...bolt, clearance: "-8 um" },
        { ...bolt, clearance: "0 um" },
      ],
    };
    const [first, second] = rows(solve(id, tight), "bolts");
    expect(first?.["force"]).toBe(second?.["force"]);
  });

  test("shanks carry what friction leaves, whatever the clearances", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -20, max: 60 }), { minLength: 1, maxLength: 12 }),
        load,
        (um, side) => {
          const bolts = um.map((c) => ({ ...bolt, clearance: of("length", c * 1e-6) }));
          const solution = solve(id, { ...good, sideLoad: of("force", side), bolts });
          const sum = rows(solution, "bolts").reduce((total, row) => total + (row["force"] ?? 0), 0);
          expect(Math.abs(sum - Math.max(0, side - 128800))).toBeLessThan(1e-3);
        },
      ),
    );
  });

  test("half of the clearance halves the play", () => {
    const alone = { ...good, sideLoad: "129.7 kN", bolts: [{ ...bolt, clearance: "10 um" }] };
    expectClose(si(solve(id, alone), "slip"), 11e-6, 1e-9);
    expectClose(si(solve(id, { ...alone, travelShare: "50 %" }), "slip"), 6e-6, 1e-9);
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze(structuredClone(good))));
  });
});
