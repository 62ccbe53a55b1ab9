import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { InputValue, RowValue } from "../../../src/methods/field.ts";
import { solve } from "../../../src/methods/index.ts";
import { boltGroupShear } from "../../../src/methods/shear/bolt-group-shear.ts";
import { sentence } from "../../../src/problem.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, of, refusal, rows, si, testLimits } from "../helpers.ts";

const id = "bolt-group-shear";
const good = goodFor(id);

/** Rows of named values, as the good inputs give them. */
function namedRows(value: InputValue | undefined): readonly RowValue[] {
  if (typeof value !== "object" || "si" in value) throw new Error("expected rows");
  return value.map((row) => {
    if (typeof row !== "object" || "si" in row) throw new Error("expected a row of named values");
    return row;
  });
}

/** The same group with nothing said of the areas. */
const unsized = namedRows(good["bolts"]).map(({ x, y }): RowValue => ({ x: x ?? "", y: y ?? "" }));

describe("limits", () => {
  testLimits(boltGroupShear, good, {
    "smallest(bolts.area) > 0": {
      bolts: [
        { x: "0 mm", y: "0 mm", area: "0 mm2" },
        { x: "9 mm", y: "0 mm", area: "5 mm2" },
      ],
    },
    "equalBolts == 0": { bolts: unsized },
    "count(force.x) == count(at.x)": {
      at: [
        { x: "0 mm", y: "0 mm" },
        { x: "1 mm", y: "0 mm" },
      ],
    },
  });
});

interface Point {
  readonly x: number;
  readonly y: number;
}

/** By complex numbers: a force on bolt k is s_k (V + i w z_k), where w turns the group so that moments balance. */
function byRotation(bolts: readonly (Point & { area: number })[], force: Point, at: Point): number[] {
  const total = bolts.reduce((sum, b) => sum + b.area, 0);
  const c = {
    x: bolts.reduce((sum, b) => sum + b.area * b.x, 0) / total,
    y: bolts.reduce((sum, b) => sum + b.area * b.y, 0) / total,
  };
  const moment = (at.x - c.x) * force.y - (at.y - c.y) * force.x;
  const stiffness = bolts.reduce((sum, b) => sum + b.area * Math.hypot(b.x - c.x, b.y - c.y) ** 2, 0);
  const turn = moment / stiffness;
  return bolts.map((b) =>
    Math.hypot(
      (force.x * b.area) / total - turn * b.area * (b.y - c.y),
      (force.y * b.area) / total + turn * b.area * (b.x - c.x),
    ),
  );
}

const place = fc.integer({ min: -300, max: 300 }).map((mm) => mm / 1000);
const point = fc.record({ x: place, y: place });
const group = fc
  .array(
    fc.record({ x: place, y: place, area: fc.integer({ min: 50, max: 900 }).map((mm2) => mm2 * 1e-6) }),
    {
      minLength: 2,
      maxLength: 12,
    },
  )
  .filter((bolts) =>
    bolts.some((b) => Math.hypot(b.x - (bolts[0]?.x ?? 0), b.y - (bolts[0]?.y ?? 0)) > 0.01),
  );
const force = fc.record({
  x: fc.integer({ min: -50, max: 50 }).map((kN) => kN * 1000),
  y: fc.integer({ min: -50, max: 50 }).map((kN) => kN * 1000),
});

const asLengths = (p: Point) => ({ x: of("length", p.x), y: of("length", p.y) });
const asForces = (p: Point) => ({ x: of("force", p.x), y: of("force", p.y) });
const inputsOf = (bolts: readonly (Point & { area: number })[], load: Point, at: Point) => ({
  bolts: bolts.map((b) => ({ ...asLengths(b), area: of("area", b.area) })),
  force: [asForces(load)],
  at: [asLengths(at)],
});

describe("laws", () => {
  test("every resultant equals that of a second derivation to 1e-9", () => {
    fc.assert(
      fc.property(group, force, point, (bolts, load, at) => {
        const found = rows(solve(id, inputsOf(bolts, load, at)), "bolts");
        for (const [index, other] of byRotation(bolts, load, at).entries())
          expect(Math.abs((found[index]?.["resultant"] ?? Number.NaN) - other)).toBeLessThan(1e-9 * 1e6);
      }),
    );
  });

  test("the forces on the bolts balance the load and its moment", () => {
    fc.assert(
      fc.property(group, force, point, (bolts, load, at) => {
        const solution = answer(solve(id, inputsOf(bolts, load, at)));
        const work = (index: number, name: string) =>
          solution.working.find((step) => step.name === `bolts ${index + 1} · ${name}`)?.si ?? Number.NaN;
        let [x, y, moment] = [0, 0, 0];
        for (const [index, bolt] of bolts.entries()) {
          const fx = work(index, "share") * load.x + work(index, "momentX");
          const fy = work(index, "share") * load.y + work(index, "momentY");
          x += fx;
          y += fy;
          moment += bolt.x * fy - bolt.y * fx;
        }
        expect(x).toBeCloseTo(load.x, 5);
        expect(y).toBeCloseTo(load.y, 5);
        expect(moment).toBeCloseTo(at.x * load.y - at.y * load.x, 5);
      }),
    );
  });

  test("a load through the centroid has no moment part, and equal bolts share it equally", () => {
    const shifted = { ...good, at: [{ x: "0 mm", y: "0 mm" }] };
    for (const row of rows(solve(id, shifted), "bolts")) {
      expectClose(row["resultant"] ?? 0, 4000);
      expect(row["moment"]).toBe(0);
    }
  });

  test("moving group and load together changes nothing; twice the load doubles every force", () => {
    fc.assert(
      fc.property(group, force, point, (bolts, load, at) => {
        const here = rows(solve(id, inputsOf(bolts, load, at)), "bolts");
        const moved = inputsOf(
          bolts.map((b) => ({ ...b, x: b.x + 1, y: b.y - 2 })),
          { x: 2 * load.x, y: 2 * load.y },
          { x: at.x + 1, y: at.y - 2 },
        );
        for (const [index, row] of rows(solve(id, moved), "bolts").entries())
          expect(Math.abs((row["resultant"] ?? 0) - 2 * (here[index]?.["resultant"] ?? 0))).toBeLessThan(
            1e-3,
          );
      }),
    );
  });
});

describe("edges", () => {
  test("bolts at one point: no answer, in words", () => {
    const bolts = [0, 1, 2].map(() => ({ x: "1 mm", y: "1 mm" }));
    expect(sentence(refusal(solve(id, { ...good, bolts })))).toBe(
      "bolt-group-shear · bolts: got all at one point, must lie apart; bolts at one point have no arm against a moment; give each bolt its x and y",
    );
    expect(refusal(solve(id, { ...good, bolts: bolts.slice(1) })).got).toBe("all at one point");
    expect(refusal(solve(id, { ...good, bolts: bolts.slice(2) })).got).toBe("one bolt");
  });

  test("areas for some bolts only: no answer that names the bolt", () => {
    const bolts = [
      { x: "0 mm", y: "0 mm", area: "5 mm2" },
      { x: "9 mm", y: "0 mm" },
    ];
    expect(refusal(solve(id, { ...good, bolts })).what).toBe("bolts 2");
  });

  test("bolts without areas are said to be taken as equal; with equal areas the forces are the same, without a word", () => {
    const plain = answer(solve(id, { ...good, bolts: unsized }));
    expect(plain.warnings.map((warning) => warning.got)).toEqual(["4"]);
    expect(plain.spoilt).toEqual({});
    const sized = namedRows(good["bolts"]).map((bolt) => ({ ...bolt, area: "201 mm2" }));
    const given = answer(solve(id, { ...good, bolts: sized }));
    expect(given.warnings).toEqual([]);
    for (const [index, row] of rows(given, "bolts").entries())
      expectClose(row["resultant"] ?? 0, rows(plain, "bolts")[index]?.["resultant"] ?? Number.NaN);
  });

  test("one row may be written as one record; several forces add up", () => {
    const one = si(
      solve(id, { ...good, force: '{"x": "3 kN", "y": "-16 kN"}', at: '{"x": "300 mm", "y": "0 mm"}' }),
      "largest",
    );
    const parts = solve(id, {
      ...good,
      force: [
        { x: "3 kN", y: "0 kN" },
        { x: "0 kN", y: "-16 kN" },
      ],
      at: [
        { x: "0 mm", y: "0 mm" },
        { x: "300 mm", y: "0 mm" },
      ],
    });
    expectClose(si(parts, "largest"), one);
  });

  test("no load gives no force", () => {
    expect(si(solve(id, { ...good, force: [{ x: "0 kN", y: "0 kN" }] }), "largest")).toBe(0);
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze(structuredClone(good))));
  });
});
