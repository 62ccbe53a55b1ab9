import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { holdCount, notFound } from "../../../src/methods/opening/hold-count.ts";
import { text } from "../cells.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, refusal, si, testLimits, yes } from "../helpers.ts";

const id = "hold-count";
const good = goodFor(id);

describe("limits", () => {
  testLimits(holdCount, good, {
    "expected >= 1": { expected: "0", countedOnce: "0", countedTwice: "0", kept: "0" },
    "kept <= expected": { kept: "21" },
    "countedOnce == countedTwice": { countedTwice: "17" },
    "max(countedOnce, countedTwice) <= due": { countedOnce: "19", countedTwice: "19" },
  });
});

const count = (expected: number, once: number, twice: number, kept = 0) =>
  solve(id, {
    expected: String(expected),
    countedOnce: String(once),
    countedTwice: String(twice),
    kept: String(kept),
  });

describe("demo (invented figures)", () => {
  test("19 of 20 bolts out: closed, 1 missing; 20 of 20 counted twice: open", () => {
    expect(yes(count(20, 19, 19), "open")).toBe(false);
    expect(si(count(20, 19, 19), "missing")).toBe(1);
    expect(yes(count(20, 20, 20), "open")).toBe(true);
  });

  test("both dowels present, counted twice: open", () => expect(yes(count(2, 2, 2), "open")).toBe(true));

  test("the position is named where both lists are given, and keeps the hold point closed", () => {
    const positions = Array.from({ length: 20 }, (_, i) => ({ position: String(i + 1) }));
    const found = positions.filter(({ position }) => position !== "14");
    const hold = solve(id, { expected: "20", countedOnce: "20", countedTwice: "20", positions, found });
    expect(text(hold, "missingPositions")).toBe("14");
    expect(yes(hold, "open")).toBe(false);
    expect(si(hold, "missing")).toBe(1);
  });
});

describe("laws", () => {
  const n = fc.integer({ min: 0, max: 40 });
  test("open exactly when both counts are what is due", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), n, n, n, (expected, once, twice, keep) => {
        const kept = Math.min(keep, expected);
        const hold = count(expected, once, twice, kept);
        expect(yes(hold, "open")).toBe(once === expected - kept && twice === expected - kept);
        expect(si(hold, "missing")).toBe(Math.max(0, expected - kept - Math.min(once, twice)));
        expect(answer(hold).warnings.length > 0).toBe(
          once !== twice || Math.max(once, twice) > expected - kept,
        );
      }),
    );
  });

  test("notFound keeps the order of the drawing", () => {
    expect(notFound(["3", "1", "2"], ["1"])).toEqual(["3", "2"]);
  });
});

describe("edges", () => {
  test("a position that the drawing does not have, or that was counted twice, is refused", () => {
    const positions = [{ position: "1" }, { position: "2" }];
    const inputs = { ...good, positions };
    expect(refusal(solve(id, { ...inputs, found: [{ position: "7" }] })).got).toBe("7");
    expect(refusal(solve(id, { ...inputs, found: ["1", "1"] })).got).toBe("1 in rows 1 and 2");
    expect(refusal(solve(id, { ...good, found: ["1"] })).got).toBe("no positions of the drawing");
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze({ ...good, positions: ["1", "2"], found: ["1", "2"] })));
  });
});
