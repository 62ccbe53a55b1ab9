// The figures of the demo page, as they were worked out by hand and in a separate script.
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import type { OpenPage } from "../../src/engine/opened.ts";
import { isProblem } from "../../src/problem.ts";
import { coneByHand, inSeries, thermalByHand } from "./cone-by-hand.ts";
import { checkAt, lineAt, open, siAt, stateAt } from "./helpers.ts";

let page: OpenPage;
beforeAll(async () => {
  page = open(readFileSync(new URL("../../notebooks/pump-2-old-card.yaml", import.meta.url), "utf8"));
  await page.settle();
});

const kN = 1e3;
const MPa = 1e6;
const percent = 0.01;
const stiffness = 1e6; // kN/mm in N/m

/** Rounded to the digits of the figure, the value is the figure. */
const figure = (name: string, printed: string, unit = 1) => {
  const decimals = printed.split(".")[1]?.length ?? 0;
  expect(
    Math.abs(siAt(page, name) / unit - Number(printed)),
    `${name} is ${siAt(page, name) / unit}`,
  ).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
};

/** SI number of a step between. */
function step(line: string, name: string): number {
  const { value } = lineAt(page, line);
  if (isProblem(value) || value.type !== "solution") throw new Error(`no solution at ${line}`);
  return value.solution.working.find((worked) => worked.name === name)?.si ?? Number.NaN;
}

describe("bolt", () => {
  test("stress area 352.5 mm², proof load of that area 211.5 kN", () => {
    figure("bolt.stressArea", "352.5", 1e-6);
    expect(siAt(page, "strength.proofStress")).toBeCloseTo(600 * MPa, 3);
    expect((siAt(page, "bolt.stressArea") * siAt(page, "strength.proofStress")) / kN).toBeCloseTo(211.5, 1);
  });
});

describe("old card", () => {
  test("520 lbf.ft is 705.0 N.m", () => figure("cardTorque", "705.0"));
  test("dry: 146.9 kN, 69 % of proof", () => {
    figure("dryPreload.preload", "146.9", kN);
    figure("dryShare", "69", percent);
  });
  test("with paste: 209.8 kN, 99 % of proof, 1.24 at the top of scatter", () => {
    figure("pastePreload.preload", "209.8", kN);
    figure("pasteShare", "99", percent);
    expect(checkAt(page, "oldCardTop").si).toBeCloseTo(1.24, 2);
    expect(stateAt(page, "oldCardTop")).toBe("fails");
  });
});

describe("trial", () => {
  test("mean 142.4 kN, deviation 5.98 kN, nut factor 0.1405, scatter 19.1 %", () => {
    figure("trialPreload", "142.4", kN);
    figure("trialDeviation", "5.98", kN);
    figure("nutFactor", "0.1405");
    figure("trialScatter", "19.1", percent);
    expect(stateAt(page, "scatterCovered")).toBe("proven");
  });
});

describe("stiffness and temperature", () => {
  // Fitted bolt, 97 mm of 25 mm shank and 11 mm of 352.503 mm2, E 205: 97/490.874 + 11/352.503 = 0.228812 1/mm,
  // so 205/0.228812 = 895.93 kN/mm. Face 33.25, hole 25, 4 mm of steel, 100 of iron, 4 of steel: the slices give
  // 2841.9 kN/mm, the cone at mid-grip 33.25 + 2 x 54 tan 30 = 95.60 mm.
  const bolt = 205 / (97 / ((Math.PI / 4) * 25 ** 2) + 11 / ((Math.PI / 4) * (24 - 0.9382 * 3) ** 2));
  const washer = { thickness: 4, modulus: 205 };
  const stack = [washer, { thickness: 100, modulus: 170 }, washer];
  const clamped = coneByHand(stack, 33.25, 25);
  const series = inSeries(bolt, clamped); // 681.2 kN/mm
  const change = (casing: number, shank: number) => thermalByHand([11, casing], [11.5, shank], 108, series);

  test("896 and 2842 kN/mm share the load at 0.240", () => {
    expect([bolt.toFixed(1), clamped.toFixed(0), series.toFixed(1)]).toEqual(["895.9", "2842", "681.2"]);
    figure("boltSpring.stiffness", "896", stiffness);
    figure("clampSpring.stiffness", clamped.toFixed(0), stiffness);
    figure("share.loadFactor", (bolt / (bolt + clamped)).toFixed(3)); // 0.240
  });
  test("the cone is 96 mm wide and the flange has room for 76: fails", () => {
    figure("clampSpring.coneDiameter", (33.25 + 108 * Math.tan(Math.PI / 6)).toFixed(1), 1e-3); // 95.6
    figure("room", "76", 1e-3); // twice the 38 mm to the bore edge; 57 to the outside, 50 to half the pitch
    expect(stateAt(page, "coneFits")).toBe("fails");
  });
  test("the cone that just stays inside: 21.6 deg, 2157.5 kN/mm, 22.7 kN in the warm-up, less than is counted", () => {
    const angle = Math.atan((76 - 33.25) / 108); // 0.37691 rad
    const narrow = coneByHand(stack, 33.25, 25, angle);
    expect([((angle * 180) / Math.PI).toFixed(1), narrow.toFixed(1)]).toEqual(["21.6", "2157.5"]);
    figure("narrowSpring.coneDiameter", "76.0", 1e-3);
    figure("narrowSpring.stiffness", narrow.toFixed(1), stiffness);
    figure(
      "warmUpNarrow.change",
      thermalByHand([11, 50], [11.5, 19], 108, inSeries(bolt, narrow)).toFixed(1),
      kN,
    );
    expect(stateAt(page, "wideConeCovers")).toBe("proven");
  });
  test("warm-up +24.4, steady +5.1, trip −23.0 kN", () => {
    // (11 x 50 - 11.5 x 19) e-6 x 108 x 681.2 = 331.5e-6 x 73568 = 24.39 kN, and so on.
    expect([change(50, 19), change(90, 80), change(50, 75)].map((kilo) => kilo.toFixed(1))).toEqual([
      "24.4",
      "5.1",
      "-23.0",
    ]);
    figure("warmUp.change", "24.4", kN);
    figure("steady.change", "5.1", kN);
    figure("trip.change", "-23.0", kN);
  });
});

describe("windows", () => {
  test.each([
    ["windowAt35", "584", "467", "fails", "opensAt35"],
    ["windowAt25", "506", "505", "fails", "opensAt25"],
    ["windowNow", "475", "526", "proven", "opensNow"],
  ])("%s runs from %s to %s N.m and its check is %s", (window, floor, ceiling, state, check) => {
    figure(`${window}.floorTorque`, floor);
    figure(`${window}.ceilingTorque`, ceiling);
    expect(stateAt(page, check)).toBe(state);
  });
  test("the window at 20 % is 474.8 to 525.7 N.m and closes at 24.8 %", async () => {
    figure("windowNow.floorTorque", "474.8");
    figure("windowNow.ceilingTorque", "525.7");
    // Floor 1.2 x 84.5/(0.9 (1 - u)), ceiling (211.50 - 24.39)/(1 + u): equal where (1 + u)/(1 - u) = 1.6608.
    const ratio = ((211.502 - 24.388) * 0.9) / (1.2 * 84.5);
    expect(((ratio - 1) / (ratio + 1)).toFixed(3)).toBe("0.248");
    for (const [typed, state] of [
      ["24.8 %", "proven"],
      ["24.9 %", "fails"],
    ] as const) {
      page.change("scatter", typed);
      await page.settle();
      expect(stateAt(page, "opensNow"), typed).toBe(state);
    }
    page.change("scatter", "20 %");
    await page.settle();
  });
});

describe("margins at 500 N.m", () => {
  test("148.3 kN, between 118.6 and 178.0, 84 % of proof at the top", () => {
    figure("tension.preload", "148.3", kN);
    figure("bounds.minimum", "118.6", kN);
    figure("bounds.maximum", "178.0", kN);
    figure("topShare", "84", percent);
  });
  test("warm-up top 202.4 kN, 96 % of proof; 106.8 kN left at least", () => {
    figure("warmTop", "202.4", kN);
    expect(checkAt(page, "topInWarmUp").si).toBeCloseTo(0.957, 3);
    expect(stateAt(page, "topInWarmUp")).toBe("proven");
    figure("leastPreload", "106.8", kN);
  });
  test("separation 1.26 at the test, 1.64 at work, 1.29 in a trip", () => {
    figure("atTest.ratio", "1.26");
    figure("atWork.ratio", "1.64");
    figure("inTrip.ratio", "1.29"); // (106.78 - 22.99) / 65
    for (const check of ["shutAtTest", "shutAtWork", "shutInTrip"])
      expect(stateAt(page, check)).toBe("proven");
  });
  test("489 MPa while the wrench turns, 74 % of yield", () => {
    figure("assembly.equivalentStress", "489", MPa);
    figure("assembly.utilisation", "74", percent);
    expect(stateAt(page, "belowYield")).toBe("proven");
  });
  test("faces: 801 MPa bare fails, 281 MPa with the washer is proven", () => {
    figure("bareFace.pressure", "801", MPa);
    figure("washerFace.pressure", "281", MPa);
    expect([stateAt(page, "bareFaceHolds"), stateAt(page, "washerFaceHolds")]).toEqual(["fails", "proven"]);
  });
  test("bedding in loses 8.5 kN, 5.7 %", () => {
    figure("bedding.loss", "8.5", kN); // 12.5e-3 mm x 681.2 kN/mm = 8.515 kN
    expect(checkAt(page, "beddingCovered").si / percent).toBeCloseTo(5.74, 2); // of 148.31 kN
  });
  test("friction holds 129 against 150 kN and fails; shanks shear at 25 MPa", () => {
    figure("frictionHold", "129", kN);
    expect(stateAt(page, "frictionHolds")).toBe("fails");
    figure("shankShear", "25", MPa);
  });
  test("the bore edge needs 2.50 and has 1.64: fails", () => {
    figure("edge.requiredRatio", "2.50");
    expect(checkAt(page, "edgeShut").si).toBeCloseTo(1.64, 2);
    expect(stateAt(page, "edgeShut")).toBe("fails");
  });
  test("set 526 N.m at position 5, 457.7 N.m through the adapter", () => {
    figure("toSet.setTorque", "526");
    figure("withAdapter.setting", "457.7");
  });
});

test("the separation margin inputs are those of the page", () => {
  expect(step("inTrip", "separationLoad")).toBeCloseTo(
    siAt(page, "leastPreload") + siAt(page, "trip.change"),
    6,
  );
});
