// What several causes come to in one value.
import { describe, expect, test } from "vitest";
import { type Contribution, differenceOf, halfWidth, own } from "../src/standing.ts";

const limits = (root: string, up: number, down = -up): Contribution => ({
  root,
  group: root,
  meaning: "limits",
  up,
  down,
});
const reading = (group: string, place: string, up: number, down = -up): Contribution => ({
  root: place === "" ? group : `${group} ${place}`,
  group,
  meaning: "expanded",
  up,
  down,
});

describe("half-width", () => {
  test("limits are met at their worst, and the larger end of each counts", () => {
    expect(halfWidth([limits("a", 3), limits("b", 4)])).toBe(7);
    expect(halfWidth([limits("a", 1, -3)])).toBe(3);
    expect(halfWidth([limits("a", 3, -1)])).toBe(3);
  });

  test("expanded uncertainties of two instruments add as squares, and the sum to the limits", () => {
    expect(halfWidth([reading("gauge", "", 3), reading("pin", "", 4)])).toBe(5);
    expect(halfWidth([reading("gauge", "", 3), reading("pin", "", 4), limits("a", 2)])).toBe(7);
  });

  test("readings of one instrument are off together or each by itself, whichever is more", () => {
    const mean = [reading("gauge", "", 2), reading("gauge", "1", 1), reading("gauge", "2", 1)];
    expect(halfWidth(mean)).toBe(2);
    const difference = [reading("gauge", "", 0), reading("gauge", "1", 3), reading("gauge", "2", 4)];
    expect(halfWidth(difference)).toBe(5);
  });

  test("of many readings level with the largest two count", () => {
    const level = Array.from({ length: 9 }, (_, i) => reading("gauge", String(i), 3, 0));
    expect(halfWidth(level)).toBeCloseTo(Math.sqrt((2 * 3 ** 2) / 2), 12);
  });

  test("what two values share falls out of their difference", () => {
    const shared = { ...limits("temperature", 5), ...own(5) };
    expect(halfWidth(differenceOf([shared, limits("a", 1)], [shared]))).toBe(1);
  });
});
