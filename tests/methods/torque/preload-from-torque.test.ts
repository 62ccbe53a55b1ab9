import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { preloadFromTorque } from "../../../src/methods/torque/preload-from-torque.ts";
import { torqueFromPreload } from "../../../src/methods/torque/torque-from-preload.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, of, si, testLimits, typedNumber } from "../helpers.ts";

const good = goodFor("preload-from-torque");
const lbf = 4.4482216152605;

describe("hand calculation", () => {
  test("72.675 lbf.in on a No. 10 screw with K = 0.3 gives 1275 lbf", () => {
    // Speck p. 85, T = K d F. 72.675 / (0.3 × 0.190) = 72675/57 = 1275 exactly.
    const solution = preloadFromTorque.solve({
      torque: "72.675 lbf.in",
      nutFactor: 0.3,
      diameter: "0.190 in",
    });
    expectClose(si(solution, "preload"), 1275 * lbf, 1e-14);
  });

  test("480 N.m at K = 1/5 on 24 mm gives 100 kN", () => {
    // 480 / (0.2 × 0.024) = 480 000 / 4.8 = 100 000 N.
    expectClose(
      si(preloadFromTorque.solve({ torque: "480 N.m", nutFactor: "20 %", diameter: "24 mm" }), "preload"),
      1e5,
    );
  });
});

describe("laws", () => {
  test("preloadFromTorque({ torque, nutFactor, diameter }) halves when the nut factor doubles", () => {
    fc.assert(
      fc.property(
        between(1, 2000),
        between(0.05, 0.27),
        between(0.004, 0.1),
        (torque, nutFactor, diameter) => {
          const at = (k: number) =>
            si(
              preloadFromTorque.solve({
                torque: of("torque", torque),
                nutFactor: of("ratio", k),
                diameter: of("length", diameter),
              }),
              "preload",
            );
          expectClose(at(nutFactor), 2 * at(2 * nutFactor));
        },
      ),
    );
  });

  test("gives the same preload from N.mm, lbf.in and lbf.ft as from N.m", () => {
    fc.assert(
      fc.property(typedNumber(1, 900), (text) => {
        const from = (torque: string) => si(preloadFromTorque.solveNamed({ ...good, torque }), "preload");
        expectClose(from(`${text} N.m`), from(`${text}e3 N.mm`), 1e-14);
        expectClose(from(`${text} lbf.ft`), 12 * from(`${text} lbf.in`), 1e-14);
        // 1 lbf.in = 0.45359237 × 9.80665 × 0.0254 N.m, exact.
        expectClose(from(`${text} lbf.in`), 0.45359237 * 9.80665 * 0.0254 * from(`${text} N.m`), 1e-14);
      }),
    );
  });

  test("torqueFromPreload undoes it", () => {
    fc.assert(
      fc.property(
        between(1, 2000),
        between(0.05, 0.55),
        between(0.004, 0.1),
        (torque, nutFactor, diameter) => {
          const joint = { nutFactor: of("ratio", nutFactor), diameter: of("length", diameter) };
          const preload = si(preloadFromTorque.solve({ torque: of("torque", torque), ...joint }), "preload");
          expectClose(
            si(torqueFromPreload.solve({ preload: of("force", preload), ...joint }), "torque"),
            torque,
          );
        },
      ),
    );
  });

  test("rises with torque, falls with nut factor and with diameter", () => {
    const at = (change: Record<string, string>) =>
      si(preloadFromTorque.solveNamed({ ...good, ...change }), "preload");
    expect(at({ torque: "501 N.m" })).toBeGreaterThan(at({}));
    expect(at({ nutFactor: "0.141" })).toBeLessThan(at({}));
    expect(at({ diameter: "25 mm" })).toBeLessThan(at({}));
  });
});

describe("edges", () => {
  test("zero torque gives zero preload, not a problem", () => {
    expect(si(preloadFromTorque.solveNamed({ ...good, torque: "0 N.m" }), "preload")).toBe(0);
  });

  test("a nut factor of exactly 0.086 or 0.52 carries no warning", () => {
    for (const nutFactor of ["0.086", "0.52"])
      expect(answer(preloadFromTorque.solveNamed({ ...good, nutFactor })).warnings).toEqual([]);
  });
});

describe("limits", () => {
  testLimits(preloadFromTorque, good, {
    "torque >= 0": { torque: "-1 N.m" },
  });
});
