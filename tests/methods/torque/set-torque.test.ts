import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { setTorque } from "../../../src/methods/torque/set-torque.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("set-torque");

describe("hand calculation", () => {
  test("500 N.m net and 26 N.m running torque are set as 526 N.m", () => {
    expectClose(
      si(setTorque.solve({ netTorque: "500 N.m", runOnTorque: "26 N.m" }), "setTorque"),
      526,
      1e-15,
    );
  });

  test("units may differ: 10 lbf.ft net and 24 lbf.in running torque are 12 lbf.ft", () => {
    // AC 43.13-1B 7-40: running torque is added. 24 lbf.in = 2 lbf.ft.
    const set = si(setTorque.solve({ netTorque: "10 lbf.ft", runOnTorque: "24 lbf.in" }), "setTorque");
    expectClose(set, 12 * 4.4482216152605 * 0.3048, 1e-15);
  });
});

describe("laws", () => {
  test("no running torque leaves the net torque as it is", () => {
    expect(si(setTorque.solveNamed({ ...good, runOnTorque: "0 N.m" }), "setTorque")).toBe(500);
  });

  test("is never below the net torque", () => {
    fc.assert(
      fc.property(between(0, 1000), between(0, 100), (net, drag) => {
        const set = si(
          setTorque.solve({ netTorque: of("torque", net), runOnTorque: of("torque", drag) }),
          "setTorque",
        );
        expect(set).toBeGreaterThanOrEqual(net);
        expectClose(set, net + drag, 1e-15);
      }),
    );
  });
});

describe("limits", () => {
  testLimits(setTorque, good, {
    "netTorque >= 0": { netTorque: "-1 N.m" },
    "runOnTorque >= 0": { runOnTorque: "-1 N.m" },
    "runOnTorque <= netTorque": { runOnTorque: "501 N.m" },
  });

  test("a drag of exactly the net torque carries no warning", () => {
    expect(answer(setTorque.solveNamed({ ...good, runOnTorque: "500 N.m" })).warnings).toEqual([]);
  });
});
