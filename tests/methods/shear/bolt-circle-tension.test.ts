import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { boltCircleTension } from "../../../src/methods/shear/bolt-circle-tension.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, of, si, testLimits } from "../helpers.ts";

const id = "bolt-circle-tension";
const good = goodFor(id);

describe("limits", () => {
  testLimits(boltCircleTension, good, {
    "circleRadius > 0": { circleRadius: "0 mm" },
    "count >= 3": { count: "2" },
  });
});

const radius = fc.double({ min: 0.02, max: 2, noNaN: true });
const moment = fc.double({ min: 1, max: 1e6, noNaN: true });
const count = fc.integer({ min: 3, max: 80 });
const inputs = (m: number, r: number, n: number) => ({
  moment: of("torque", m),
  circleRadius: of("length", r),
  count: of("count", n),
});

describe("laws", () => {
  test("bolts whose pull grows with their arm, the first on the axis of most pull, hold exactly the moment", () => {
    fc.assert(
      fc.property(moment, radius, count, (m, r, n) => {
        const largest = si(solve(id, inputs(m, r, n)), "largest");
        const angles = Array.from({ length: n }, (_, k) => (2 * Math.PI * k) / n);
        const held = angles.reduce((sum, a) => sum + largest * Math.cos(a) * r * Math.cos(a), 0);
        expectClose(held, m, 1e-12);
      }),
    );
  });

  test("the line load comes close to the bolts as they grow many, from below", () => {
    fc.assert(
      fc.property(moment, radius, fc.integer({ min: 6, max: 80 }), (m, r, n) => {
        const bolts = si(solve(id, inputs(m, r, n)), "largest");
        const line = si(solve(id, { ...inputs(m, r, n), form: "line load" }), "largest");
        expect(line).toBeLessThan(bolts);
        expect(bolts / line - 1).toBeLessThan((Math.PI / n) ** 2 / 5); // x / sin x = 1 + x²/6 + …
      }),
    );
  });

  test("the pull turns its sign with the moment", () => {
    expectClose(si(solve(id, { ...good, moment: "-12 kN.m" }), "largest"), -si(solve(id, good), "largest"));
  });
});

test("inputs are not changed, and the form is said", () => {
  expect(answer(solve(id, deepFreeze({ ...good }))).notes).toContain("form: bolts");
});
