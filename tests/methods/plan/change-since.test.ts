import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { changeSince } from "../../../src/methods/plan/change-since.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, expectPrinted, of, si, testLimits, yes } from "../helpers.ts";

const id = "change-since";
const good = goodFor(id);
const um = 1e-6;

describe("limits", () => {
  testLimits(changeSince, good, {
    'uncertaintyBefore >= "0 um"': { uncertaintyBefore: "-1 um" },
    'uncertaintyAfter >= "0 um"': { uncertaintyAfter: "-1 um" },
  });
});

test("demo (invented figures): 3.61 and 3.61 um let a change of 5.11 um be seen", () => {
  expectPrinted(si(solve(id, good), "threshold"), "5.11", um);
  expect(yes(solve(id, good), "real")).toBe(true);
  expect(yes(solve(id, { ...good, after: "25.0151 mm" }), "real")).toBe(false);
});

describe("laws", () => {
  const size = fc.integer({ min: 24_900, max: 25_100 }).map((n) => n * um);
  const doubt = fc.integer({ min: 0, max: 20 }).map((n) => n * um);
  const change = (before: number, after: number, first: number, second: number) =>
    solve(id, {
      before: of("length", before),
      after: of("length", after),
      uncertaintyBefore: of("length", first),
      uncertaintyAfter: of("length", second),
    });

  test("exchanging then and now turns the sign and keeps the verdict", () => {
    fc.assert(
      fc.property(size, size, doubt, doubt, (a, b, first, second) => {
        const [forth, back] = [change(a, b, first, second), change(b, a, second, first)];
        expect(si(forth, "difference") + si(back, "difference")).toBe(0);
        expectClose(si(forth, "threshold"), si(back, "threshold"));
        expect(yes(forth, "real")).toBe(yes(back, "real"));
      }),
    );
  });

  test("a change within either doubt alone is never real", () => {
    fc.assert(
      fc.property(size, doubt, doubt, (a, first, second) => {
        const within = Math.max(first, second) * 0.999;
        expect(yes(change(a, a + within, first, second), "real")).toBe(false);
      }),
    );
  });
});

test("no change is not real, even with no doubt; any is, with none", () => {
  const exact = { uncertaintyBefore: "0 um", uncertaintyAfter: "0 um" };
  expect(yes(solve(id, { ...good, ...exact, after: "25.01 mm" }), "real")).toBe(false);
  expect(yes(solve(id, { ...good, ...exact, after: "25.010001 mm" }), "real")).toBe(true);
  answer(solve(id, deepFreeze({ ...good })));
});
