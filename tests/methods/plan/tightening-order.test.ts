import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { splitLineSequence } from "../../../src/methods/plan/split-line-sequence.ts";
import { circleSequence, tighteningOrder } from "../../../src/methods/plan/tightening-order.ts";
import { text } from "../cells.ts";
import { fitted, order } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, type Inputs, refusal, rows, testLimits } from "../helpers.ts";

const id = "tightening-order";
const good = goodFor(id);
const sequence = (inputs: Inputs) => text(solve(id, inputs), "sequence");

describe("limits", () => {
  testLimits(tighteningOrder, good, { "count >= 1": { count: "0" } });
});

describe("circle", () => {
  test.each([
    ["4", "1 3 2 4"],
    ["8", "1 5 3 7 2 6 4 8"], // as printed
    ["12", "1 7 4 10 2 8 5 11 3 9 6 12"],
    ["16", "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16"],
    ["5", "1 3 5 2 4"],
    ["1", "1"],
    ["2", "1 2"],
  ])("%s bolts: %s", (count, expected) => expect(sequence({ arrangement: "circle", count })).toBe(expected));

  test("every position stands once", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (n) => {
        expect(circleSequence(n).toSorted((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i));
      }),
    );
  });

  test("an even count: each second position is opposite the one before", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 250 }), (half) => {
        const found = circleSequence(2 * half);
        for (let turn = 0; turn < found.length; turn += 2)
          expect(found[turn + 1]).toBe((found[turn] ?? 0) + half);
      }),
    );
  });

  test("a multiple of four: each second pair lies across the pair before", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (quarter) => {
        const found = circleSequence(4 * quarter);
        for (let turn = 0; turn < found.length; turn += 4)
          expect(found[turn + 2]).toBe((found[turn] ?? 0) + quarter);
      }),
    );
  });

  test("an odd count: every step is as nearly across as there is", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (k) => {
        const n = 2 * k + 1;
        const found = circleSequence(n);
        for (const [turn, place] of found.entries()) {
          const next = found[turn + 1];
          if (next !== undefined) expect((next - place + n) % n).toBe(k);
        }
      }),
    );
  });

  test("named positions are taken in the order they stand round the circle", () => {
    const positions = ["N", "E", "S", "W"].map((position) => ({ position }));
    expect(sequence({ arrangement: "circle", positions })).toBe("N S E W");
  });
});

/** The twenty bolts of the demo: 1 to 10 left from -450, 11 to 20 right and back. */
const line = Array.from({ length: 20 }, (_, i) => ({
  position: String(i + 1),
  side: i < 10 ? "left" : "right",
  x: `${i < 10 ? -450 + 100 * i : 450 - 100 * (i - 10)} mm`,
  kind: fitted.includes(String(i + 1)) ? "fitted 25" : "plain 26",
}));

describe("split line", () => {
  test("the demo: 5 15 6 16 4 14 7 17 3 13 8 18 2 12 9 19 1 11 10 20, by count or by positions", () => {
    expect(sequence({ arrangement: "split line", count: "20" })).toBe(order.join(" "));
    expect(sequence({ arrangement: "split line", positions: line })).toBe(order.join(" "));
  });

  test("y in place of the side", () => {
    const positions = line.map(({ position, side, x }) => ({
      position,
      x,
      y: side === "left" ? "-300 mm" : "300 mm",
    }));
    expect(sequence({ arrangement: "split line", positions })).toBe(order.join(" "));
  });

  test("fitted first: all of them before any plain one, each lot in its order", () => {
    const found = sequence({ arrangement: "split line", positions: line, fittedFirst: "yes" }).split(" ");
    expect(found).toEqual([
      ...order.filter((p) => fitted.includes(p)),
      ...order.filter((p) => !fitted.includes(p)),
    ]);
  });

  const places = fc.uniqueArray(fc.integer({ min: -500, max: 500 }), { minLength: 1, maxLength: 15 });
  const sided = fc
    .tuple(places, places)
    .map(([left, right]) =>
      [...left.map((x) => ({ side: "left", x })), ...right.map((x) => ({ side: "right", x }))].map(
        (p, index) => ({ ...p, index }),
      ),
    );

  test("every position stands once, whatever the spacing and the sides", () => {
    fc.assert(
      fc.property(sided, (positions) => {
        const found = splitLineSequence(positions);
        expect(found.toSorted((a, b) => a - b)).toEqual(positions.map((p) => p.index));
      }),
    );
  });

  test("on even sides, each second bolt is straight across the middle from the one before, and rings grow outward", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), (half) => {
        const xs = Array.from({ length: half }, (_, i) => i + 0.5).flatMap((x) => [-x, x]);
        const positions = ["left", "right"]
          .flatMap((side) => xs.map((x) => ({ side, x })))
          .map((p, index) => ({ ...p, index }));
        const found = splitLineSequence(positions).flatMap((index) => positions[index] ?? []);
        for (let turn = 0; turn + 1 < found.length; turn += 2) {
          expect(found[turn + 1]?.x).toBe(-(found[turn]?.x ?? 0));
          expect(found[turn + 1]?.side).not.toBe(found[turn]?.side);
        }
        const rings = found.map((p) => Math.abs(p.x));
        expect(rings).toEqual(rings.toSorted((a, b) => a - b));
      }),
    );
  });

  test("a bolt in the middle of its side comes first", () => {
    const positions = [-100, 0, 100].flatMap((x) =>
      ["left", "right"].map((side) => ({ position: `${side[0]}${x}`, side, x: `${x} mm` })),
    );
    expect(sequence({ arrangement: "split line", positions })).toBe("l0 r0 l-100 r100 l100 r-100");
  });
});

describe("edges", () => {
  test.each([
    ["neither count nor positions", { arrangement: "circle" }, "count or positions"],
    ["half a bolt", { arrangement: "circle", count: "7.5" }, "be a whole number"],
    ["an odd count on a split line", { arrangement: "split line", count: "7" }, "even"],
    [
      "count and positions that differ",
      { arrangement: "circle", count: "3", positions: [{ position: "1" }] },
      "same",
    ],
    [
      "a position twice",
      { arrangement: "circle", positions: [{ position: "1" }, { position: "1" }] },
      "once",
    ],
    [
      "no x on a split line",
      { arrangement: "split line", positions: [{ position: "1", side: "left" }] },
      "x",
    ],
    [
      "no side on a split line",
      { arrangement: "split line", positions: [{ position: "1", x: "1 mm" }] },
      "side or y",
    ],
    ["fitted first without kinds", { ...good, fittedFirst: "yes" }, "fitted or plain"],
  ] satisfies [string, Inputs, string][])("%s is refused", (_, inputs, must) =>
    expect(refusal(solve(id, inputs)).must).toContain(must),
  );

  test("positions are numbers where they are, and texts always", () => {
    const found = rows(solve(id, good), "order");
    expect(found[1]).toMatchObject({ turn: 2, number: 5 });
  });

  test("inputs are not changed; the split line says that it rests on practice", () => {
    const solution = answer(solve(id, deepFreeze({ arrangement: "split line", positions: line })));
    expect(solution.notes.join()).toContain("common practice, no source");
  });
});
