import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { elasticInteraction } from "../../../src/methods/preload/elastic-interaction.ts";
import { type Changes, evenLoads, passResiduals } from "../../../src/methods/preload/elastic-loads.ts";
import { cells } from "../cells.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, refusal, rows, testLimits } from "../helpers.ts";

const id = "elastic-interaction";
const good = goodFor(id);
const { neighbours: _, ...bare } = good;
const pair = (change: string) => [{ position: "1", by: "3", change }];

describe("limits", () => {
  testLimits(elasticInteraction, good, {
    'smallest(passLoads.load) > "0 kN"': { passLoads: ["0 kN"] },
    "smallest(coefficients.change) > -1": { neighbours: "", coefficients: pair("-1") },
    "largest(coefficients.change) < 1": { neighbours: "", coefficients: pair("1") },
    "smallest(neighbours.change) > -1": { neighbours: [{ apart: "1", change: "-1.5" }] },
    "largest(neighbours.change) < 1": { neighbours: [{ apart: "1", change: "10" }] },
    "smallest(neighbours.apart) >= 1": { neighbours: [{ apart: "0", change: "-0.1" }] },
    'smallest(residual.residual) > "0 kN"': { neighbours: [{ apart: "1", change: "-0.9" }] },
    "largest(compensated.load) <= loadLimit": { loadLimit: "110 kN" },
  });
});

const matrix = fc.integer({ min: 1, max: 12 }).chain((n) =>
  fc.array(
    fc.array(
      fc.integer({ min: -30, max: 5 }).map((c) => c / 100),
      { minLength: n, maxLength: n },
    ),
    {
      minLength: n,
      maxLength: n,
    },
  ),
);
const load = fc.integer({ min: 10, max: 300 }).map((kN) => kN * 1000);

/** Residual of one pass from slack as a product of matrices: sum over later bolts, on unit diagonal. */
const byProduct = (changes: Changes, put: readonly number[]): number[] =>
  put.map((own, i) => put.reduce((sum, each, j) => sum + (j > i ? (changes[i]?.[j] ?? 0) * each : 0), own));

describe("laws", () => {
  test("the first pass equals the product with the triangular matrix", () => {
    fc.assert(
      fc.property(matrix, load, (changes, target) => {
        const put = changes.map((__, i) => target + 1000 * i);
        const [found] = passResiduals(changes, [put]);
        for (const [i, other] of byProduct(changes, put).entries())
          expect(Math.abs((found?.[i] ?? 0) - other)).toBeLessThan(1e-9 * target * changes.length);
      }),
    );
  });

  test("the compensated loads leave the wanted load in every bolt", () => {
    fc.assert(
      fc.property(matrix, load, (changes, wanted) => {
        const loads = evenLoads(changes, wanted);
        const [left] = passResiduals(changes, [loads]);
        for (const residual of left ?? [])
          expect(Math.abs(residual - wanted)).toBeLessThan(1e-9 * Math.max(...loads.map(Math.abs)) * 10);
      }),
    );
  });

  test("bolts that do not act on each other keep what they were brought to", () => {
    const none = [0, 1, 2].map(() => [0, 0, 0]);
    expect(
      passResiduals(none, [
        [5, 6, 7],
        [8, 8, 8],
      ]),
    ).toEqual([
      [5, 6, 7],
      [8, 8, 8],
    ]);
    expect(evenLoads(none, 9)).toEqual([9, 9, 9]);
  });

  test("the last bolt of a pass keeps its load; weak interaction dies out as passes repeat", () => {
    fc.assert(
      fc.property(matrix, load, (changes, target) => {
        const weak = changes.map((line) => line.map((c) => c / (2 * changes.length)));
        const passes = passResiduals(
          weak,
          Array.from({ length: 6 }, () => changes.map(() => target)),
        );
        for (const pass of passes) expect(pass.at(-1)).toBe(target);
        const spread = (pass: readonly number[] | undefined) =>
          Math.max(...(pass ?? [0])) - Math.min(...(pass ?? [0]));
        expect(spread(passes[5])).toBeLessThanOrEqual(spread(passes[0]) + 1e-6);
      }),
    );
  });

  test("twice the loads leave twice the residuals", () => {
    fc.assert(
      fc.property(matrix, load, (changes, target) => {
        const once = passResiduals(changes, [changes.map(() => target)])[0] ?? [];
        const twice = passResiduals(changes, [changes.map(() => 2 * target)])[0] ?? [];
        for (const [i, value] of once.entries()) expectClose(twice[i] ?? 0, 2 * value, 1e-9);
      }),
    );
  });
});

describe("coefficients", () => {
  test("by places apart and pair by pair are the same round a circle of four", () => {
    const places = ["1", "2", "3", "4"];
    const coefficients = places.flatMap((position, i) =>
      [1, 3].map((step) => ({ position, by: places[(i + step) % 4] ?? "", change: "-0.1" })),
    );
    expect(cells(solve(id, { ...bare, coefficients }), "residual")).toEqual(
      cells(solve(id, good), "residual"),
    );
  });

  test("on a line the ends are no neighbours", () => {
    const first = rows(solve(id, { ...good, arrangement: "line" }), "residual");
    expect(first.slice(0, 4).map((row) => row["residual"])).toEqual([45000, 40000, 50000, 50000]);
  });

  test.each([
    ["none given", {}, "missing-input"],
    ["both ways given", { neighbours: good["neighbours"], coefficients: pair("-0.1") }, "given-twice"],
    [
      "a position that is not in the order",
      { coefficients: [{ position: "1", by: "9", change: "-0.1" }] },
      "odd-position",
    ],
    [
      "a bolt acting on itself",
      { coefficients: [{ position: "1", by: "1", change: "-0.1" }] },
      "odd-position",
    ],
    ["a pair twice", { coefficients: [...pair("-0.1"), ...pair("-0.2")] }, "odd-position"],
    [
      "places apart between named positions",
      { neighbours: good["neighbours"], order: ["N", "S"] },
      "odd-position",
    ],
    ["a position twice in the order", { neighbours: good["neighbours"], order: ["1", "1"] }, "tag-twice"],
  ])("%s is refused", (__, change, code) => {
    expect(refusal(solve(id, { ...bare, ...change })).code).toBe(code);
  });

  test("no coefficients are supplied: the refusal says so", () => {
    expect(refusal(solve(id, bare)).why).toContain("none are supplied here");
  });
});

test("one bolt alone keeps its load and has no spread", () => {
  const alone = solve(id, {
    order: ["1"],
    neighbours: [{ apart: "1", change: "-0.1" }],
    passLoads: ["100 kN"],
  });
  expect(rows(alone, "spread").map((row) => row["spread"])).toEqual([0]);
});

test("inputs are not changed", () => {
  answer(solve(id, deepFreeze(structuredClone(good))));
});
