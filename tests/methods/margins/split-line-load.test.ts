import { describe, expect, test } from "vitest";
import { splitLineLoad } from "../../../src/methods/margins/split-line-load.ts";
import { text } from "../cells.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, expectClose, type Inputs, refusal, rows, si, testLimits } from "../helpers.ts";

const good = goodFor("split-line-load");
const bare = { halfWidth: good["halfWidth"] ?? "", pitch: good["pitch"] ?? "" };
const solve = (change: Inputs) => splitLineLoad.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("2.5 MPa on 260 by 100 mm is 65 kN per bolt", () => {
    expectClose(si(solve({}), "loadPerBolt"), 65_000);
  });

  test("four bolts at 0.6 MPa and six at 1.5 MPa carry 296.4 kN together", () => {
    // 0.6 · 26 = 15.6 kN, ·4 = 62.4; 1.5 · 26 = 39 kN, ·6 = 234.
    expectClose(si(solve({}), "total"), 296_400);
    expect(rows(solve({}), "zones").map((zone) => Math.round(zone["zoneLoad"] ?? 0))).toEqual([
      15_600, 39_000,
    ]);
  });
});

describe("laws", () => {
  test("25 bar is 2.5 MPa", () => {
    expectClose(si(solve({ pressure: "25 bar" }), "loadPerBolt"), 65_000);
  });

  test("half the pitch halves the load, no pressure is no load", () => {
    expectClose(si(solve({ pitch: "50 mm" }), "loadPerBolt"), 32_500);
    expect(si(splitLineLoad.solveNamed({ ...bare, pressure: "0 MPa" }), "loadPerBolt")).toBe(0);
  });

  test("the worst zone counts and is named, whatever pressure stands beside the zones", () => {
    const zones = [
      { zone: "suction", zonePressure: "0.6 MPa", bolts: "6" },
      { zone: "discharge", zonePressure: "2.5 MPa", bolts: "8" },
      { zonePressure: "1.5 MPa", bolts: "6" },
    ];
    const beside = solve({ pressure: "1 MPa", zones });
    expectClose(si(beside, "loadPerBolt"), 65_000); // 26 kN by the pressure alone
    expect(text(beside, "worstZone")).toBe("discharge");
    expect(answer(beside).warnings.map((warning) => warning.why)).toEqual([
      "a zone has more than the pressure given alone: the zone counts",
    ]);
    const alone = splitLineLoad.solveNamed({ ...bare, zones });
    expectClose(si(alone, "loadPerBolt"), 65_000);
    expect(answer(alone).warnings).toEqual([]);
    const test = solve({ pressure: "3.25 MPa", zones });
    expectClose(si(test, "loadPerBolt"), 84_500);
    expect(text(test, "worstZone")).toBe("pressure");
    expect(text(solve({ zones: zones.slice(2), pressure: "1 MPa" }), "worstZone")).toBe("zone 1");
  });

  test("neither pressure nor zones is asked for", () => {
    expect(refusal(splitLineLoad.solveNamed(bare)).must).toContain("zone by zone as zones");
  });

  test("the order of zones does not matter", () => {
    const zones = [
      { zonePressure: "1.5 MPa", bolts: "6" },
      { zonePressure: "0.6 MPa", bolts: "4" },
    ];
    expectClose(si(solve({ zones }), "total"), si(solve({}), "total"));
  });
});

describe("limits", () => {
  testLimits(splitLineLoad, good, {
    "pressure >= 0": { pressure: "-1 MPa" },
    "halfWidth > 0": { halfWidth: "0 mm" },
    "smallest(zones.zonePressure) >= 0": { zones: [{ zonePressure: "-1 MPa", bolts: "3" }] },
    "smallest(zones.bolts) > 0": { zones: [{ zonePressure: "1 MPa", bolts: "0" }] },
    "pitch > 0": { pitch: "0 mm" },
    "largest(zones.zonePressure) <= pressure": { pressure: "1 MPa" },
  });
});
