import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { edgeOpening } from "../../../src/methods/margins/edge-opening.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, type Inputs, of, si, testLimits, yes } from "../helpers.ts";

const good = goodFor("edge-opening");
const solve = (change: Inputs) => edgeOpening.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("a 95 mm strip with the bolt at 38 mm needs 380/152 = 2.5", () => {
    // 4 w/(4 w − 6 e) = 380/(380 − 228).
    expectClose(si(solve({}), "requiredRatio"), 2.5, 1e-14);
    expectClose(si(solve({}), "ratio"), 3, 1e-14);
    expect(yes(solve({}), "shut")).toBe(true);
  });
});

describe("second implementation", () => {
  test("at the required ratio the pressure at the bore edge is just 0, by statics of the strip", () => {
    // Clamp F − P acts at the bolt, the load P pulls at the pressure line, c inside the edge; strip of width w and
    // depth 1 from x = 0: p(0) = N/w + M (w/2)/(w³/12), with N and M of clamp and load about the middle.
    fc.assert(
      fc.property(between(0.05, 0.2), between(0.05, 0.6), between(0, 0.05), (w, share, c) => {
        const e = share * w;
        const needed = si(
          solve({ stripWidth: of("length", w), boltToEdge: of("length", e), pressureLine: of("length", c) }),
          "requiredRatio",
        );
        const [F, P] = [needed, 1];
        const normal = F - P;
        const moment = F * (w / 2 - e) - P * (w / 2 + c);
        expect(Math.abs(normal / w + (moment * (w / 2) * 12) / w ** 3)).toBeLessThan(1e-9 * (F / w));
      }),
    );
  });
});

describe("laws", () => {
  test("the bolt nearer the edge or the pressure nearer the edge needs less clamp", () => {
    expect(si(solve({ boltToEdge: "30 mm" }), "requiredRatio")).toBeLessThan(si(solve({}), "requiredRatio"));
    expect(si(solve({ pressureLine: "5 mm" }), "requiredRatio")).toBeGreaterThan(
      si(solve({}), "requiredRatio"),
    );
  });

  test("shut exactly where the ratio reaches what is required", () => {
    expect(yes(solve({ residualClamp: "150 kN" }), "shut")).toBe(true);
    expect(yes(solve({ residualClamp: "149.9 kN" }), "shut")).toBe(false);
  });
});

describe("limits", () => {
  testLimits(edgeOpening, good, {
    "externalLoad > 0": { externalLoad: "0 kN" },
    "residualClamp >= 0": { residualClamp: "-1 kN" },
    "stripWidth > 0": { stripWidth: "0 mm" },
    "boltToEdge > 0": { boltToEdge: "0 mm" },
    "boltToEdge < stripWidth": { boltToEdge: "96 mm" },
    "pressureLine >= 0": { pressureLine: "-1 mm" },
    '4 * stripWidth - 6 * boltToEdge > "0 mm"': { boltToEdge: "64 mm" },
    "ratio >= requiredRatio": { residualClamp: "100 kN" },
  });
});
