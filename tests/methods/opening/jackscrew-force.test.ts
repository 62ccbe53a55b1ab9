import * as fc from "fast-check";
import { describe, test } from "vitest";
import { jackscrewForce } from "../../../src/methods/opening/jackscrew-force.ts";
import { preloadFromTorque } from "../../../src/methods/torque/preload-from-torque.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("jackscrew-force");
const solve = (change: Inputs) => jackscrewForce.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("40 N.m at K = 0.2 on 20 mm is 10 kN each, 40 kN from four", () => {
    expectClose(si(solve({}), "forceEach"), 10_000);
    expectClose(si(solve({}), "forceTotal"), 40_000);
  });
});

describe("laws", () => {
  test("each screw gives what preload-from-torque says", () => {
    fc.assert(
      fc.property(between(1, 500), between(0.05, 0.5), between(0.005, 0.05), (torque, k, d) => {
        const screw = { torque: of("torque", torque), nutFactor: of("ratio", k), diameter: of("length", d) };
        expectClose(si(solve(screw), "forceEach"), si(preloadFromTorque.solve(screw), "preload"));
      }),
    );
  });
});

describe("limits", () => {
  testLimits(jackscrewForce, good, {
    "torque >= 0": { torque: "-1 N.m" },
    "count >= 1": { count: "0" },
  });
});
