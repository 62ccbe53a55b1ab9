import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { fitPlane, gapPlane, type Station } from "../../../src/methods/opening/gap-plane.ts";
import { isProblem } from "../../../src/problem.ts";
import { stations } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectPrinted, of, refusal, rows, si, testLimits } from "../helpers.ts";

const id = "gap-plane";
const good = goodFor(id);

describe("limits", () => {
  testLimits(gapPlane, good, {
    "count(stations.gap) >= 4": { stations: stations(3).slice(0, 3) },
    "tilt < 0.1": {
      stations: [
        { x: "0 mm", y: "0 mm", gap: "1 mm" },
        { x: "1 mm", y: "0 mm", gap: "2 mm" },
        { x: "0 mm", y: "1 mm", gap: "2 mm" },
        { x: "1 mm", y: "1 mm", gap: "3 mm" },
      ],
    },
  });
});

test("three stations spoil the twist, not the tilt", () => {
  const three = answer(solve(id, { stations: stations(3).slice(0, 3) }));
  expect(Object.keys(three.spoilt).toSorted()).toEqual(["residuals", "twist"]);
});

describe("demo (invented readings)", () => {
  test("step 3: 1.78 mm, +0.53 and -0.47, together 0.71 mm/m, twist 0.175 mm", () => {
    const plane = solve(id, { stations: stations(3) });
    expectPrinted(si(plane, "mean"), "1.78", 1e-3);
    expectPrinted(si(plane, "tiltX"), "0.53", 1e-3);
    expectPrinted(si(plane, "tiltY"), "-0.47", 1e-3);
    expectPrinted(si(plane, "tilt"), "0.71", 1e-3);
    expectPrinted(si(plane, "twist"), "0.175", 1e-3);
  });

  test("only step 3 is beyond 0.10 mm of twist", () => {
    const twisted = Array.from({ length: 9 }, (_, step) => step).filter(
      (step) => si(solve(id, { stations: stations(step) }), "twist") > 0.1e-3,
    );
    expect(twisted).toEqual([3]);
  });
});

/** Normal equations of three unknowns by Cramer's rule: no centring, no square directions. */
function byCramer(points: readonly Station[]): readonly [number, number] {
  const sum = (of: (p: Station) => number) => points.reduce((total, p) => total + of(p), 0);
  const [n, x, y, xx, xy, yy] = [
    points.length,
    sum((p) => p.x),
    sum((p) => p.y),
    sum((p) => p.x * p.x),
    sum((p) => p.x * p.y),
    sum((p) => p.y * p.y),
  ];
  const [z, xz, yz] = [sum((p) => p.gap), sum((p) => p.x * p.gap), sum((p) => p.y * p.gap)];
  const det = (
    a: number,
    b: number,
    c: number,
    d: number,
    e: number,
    f: number,
    g: number,
    h: number,
    i: number,
  ) => a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const all = det(n, x, y, x, xx, xy, y, xy, yy);
  return [det(n, z, y, x, xz, xy, y, yz, yy) / all, det(n, x, z, x, xx, xz, y, xy, yz) / all];
}

const place = fc.integer({ min: -2000, max: 2000 }).map((mm) => mm / 1000);
const station = fc.record({
  x: place,
  y: place,
  gap: fc.integer({ min: 0, max: 40_000 }).map((um) => um * 1e-6),
});
/** With four corners, so that a plane is always fixed. */
const round = fc
  .array(station, { maxLength: 10 })
  .map((more) => [...[-1, 1].flatMap((x) => [-0.5, 0.5].map((y) => ({ x, y, gap: 0.001 * x }))), ...more]);

const planeOf = (points: readonly Station[]) => {
  const plane = fitPlane(points);
  if (isProblem(plane)) throw new Error("no plane");
  return plane;
};

describe("laws", () => {
  test("equals the normal equations solved by Cramer's rule, near machine precision", () => {
    fc.assert(
      fc.property(round, (points) => {
        const plane = planeOf(points);
        const [tiltX, tiltY] = byCramer(points);
        expect(Math.abs(plane.tiltX - tiltX)).toBeLessThan(1e-14);
        expect(Math.abs(plane.tiltY - tiltY)).toBeLessThan(1e-14);
      }),
    );
  });

  test("what is left over adds up to nothing and leans neither way", () => {
    fc.assert(
      fc.property(round, (points) => {
        const { residuals } = planeOf(points);
        const sum = (weight: (p: Station) => number) =>
          residuals.reduce((total, e, i) => total + e * weight(points[i] ?? { x: 0, y: 0, gap: 0 }), 0);
        for (const weight of [() => 1, (p: Station) => p.x, (p: Station) => p.y])
          expect(Math.abs(sum(weight))).toBeLessThan(1e-14);
      }),
    );
  });

  test("stations that lie on a plane give it back with no twist, wherever the origin stands", () => {
    const slope = fc.integer({ min: -900, max: 900 }).map((n) => n * 1e-6);
    fc.assert(
      fc.property(round, slope, slope, place, (points, b, c, shift) => {
        const on = points.map((p) => ({ x: p.x + shift, y: p.y - shift, gap: 0.02 + b * p.x + c * p.y }));
        const plane = planeOf(on);
        expect(Math.abs(plane.tiltX - b)).toBeLessThan(1e-14);
        expect(Math.abs(plane.tiltY - c)).toBeLessThan(1e-14);
        expect(Math.max(...plane.residuals.map(Math.abs))).toBeLessThan(1e-14);
      }),
    );
  });

  test("turning the casing by a quarter exchanges the tilts", () => {
    fc.assert(
      fc.property(round, (points) => {
        const [here, there] = [
          planeOf(points),
          planeOf(points.map((p) => ({ x: -p.y, y: p.x, gap: p.gap }))),
        ];
        expect(Math.abs(there.tiltY - here.tiltX)).toBeLessThan(1e-14);
        expect(Math.abs(there.tiltX + here.tiltY)).toBeLessThan(1e-14);
      }),
    );
  });
});

describe("edges", () => {
  const line = (points: readonly (readonly [string, string])[]) => ({
    stations: points.map(([x, y], i) => ({ x, y, gap: `${i} mm` })),
  });

  test.each([
    [
      "fewer than three",
      line([
        ["0 m", "0 m"],
        ["1 m", "0 m"],
      ]),
      "too-few",
    ],
    [
      "all along x",
      line([
        ["0 m", "0 m"],
        ["1 m", "0 m"],
        ["2 m", "0 m"],
        ["5 m", "0 m"],
      ]),
      "on-one-line",
    ],
    [
      "all along y",
      line([
        ["0 m", "0 m"],
        ["0 m", "1 m"],
        ["0 m", "3 m"],
      ]),
      "on-one-line",
    ],
    [
      "on a leaning line",
      line([
        ["0 m", "0 m"],
        ["0.1 m", "0.3 m"],
        ["0.2 m", "0.6 m"],
        ["0.7 m", "2.1 m"],
      ]),
      "on-one-line",
    ],
    [
      "all at one point",
      line([
        ["1 m", "1 m"],
        ["1 m", "1 m"],
        ["1 m", "1 m"],
      ]),
      "on-one-line",
    ],
  ])("%s: no answer", (_, inputs, code) => {
    expect(refusal(solve(id, inputs)).code).toBe(code);
  });

  test("three stations have no leftover and carry a warning that twist cannot show", () => {
    const plane = answer(solve(id, { stations: stations(3).slice(0, 3) }));
    expect(si(plane, "twist")).toBeLessThan(1e-17);
    expect(plane.warnings).toHaveLength(1);
  });

  test("residuals stand in the order of the stations", () => {
    const found = rows(solve(id, { stations: stations(3) }), "residuals");
    expectPrinted(found[4]?.["residual"] ?? 0, "-0.175", 1e-3);
    expect(found[4]?.["x"]).toBe(0.5);
  });

  test("a blank gap is refused and named, and inputs are not changed", () => {
    const blank = [...stations(3), { x: "0 m", y: "0 m", gap: "" }];
    expect(refusal(solve(id, { stations: blank })).where).toContain("stations 7");
    answer(solve(id, deepFreeze({ stations: stations(3).map((s) => ({ ...s, gap: of("length", 0.001) })) })));
  });
});
