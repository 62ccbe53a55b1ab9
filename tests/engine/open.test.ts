import { describe, expect, test } from "vitest";
import { openPage } from "../../src/engine/open-page.ts";
import { isProblem } from "../../src/problem.ts";
import { check, given, lineAt, method, open, pageText, settled, shown, siAt, working } from "./helpers.ts";

const items = [
  given("torque", "480 N.m"),
  given("nutFactor", "0.2"),
  method("bolt", "metric-thread", { designation: "M24x3" }),
  method("tension", "preload-from-torque", {
    torque: "torque",
    nutFactor: "nutFactor",
    diameter: "bolt.majorDiameter",
  }),
  working("share", 'tension / "200 kN"'),
  check("limit", "share", { atMost: "0.9" }),
];

describe("opening", () => {
  test("openPage(text) settles with every line run once and the values worked by hand", async () => {
    const page = open(pageText(...items));
    const { ran, version } = await page.settle();
    expect(ran.toSorted()).toEqual(["bolt", "limit", "nutFactor", "share", "tension", "torque"]);
    expect(version).toBe(1);
    expect(siAt(page, "tension.preload")).toBeCloseTo(100_000, 6); // 480/(0.2 · 0.024)
    expect(siAt(page, "share")).toBeCloseTo(0.5, 12);
  });

  test("before it settles every line says it is pending and shows no number", () => {
    const page = open(pageText(...items));
    for (const line of page.lines()) expect(isProblem(line.value) && line.value.code).toBe("pending");
  });

  test("the order of items is free: any order gives the same values", async () => {
    const forward = shown(await settled(...items)).toSorted();
    expect(shown(await settled(...items.toReversed())).toSorted()).toEqual(forward);
    expect(shown(await settled(...items.slice(3), ...items.slice(0, 3))).toSorted()).toEqual(forward);
  });

  test("the same page opened twice shows the same, to the last digit", async () => {
    expect(shown(await settled(...items))).toEqual(shown(await settled(...items)));
  });

  test("lines come in the order of the page and know what they use and what uses them", async () => {
    const page = await settled(...items);
    expect(page.lines().map((c) => c.name)).toEqual([
      "torque",
      "nutFactor",
      "bolt",
      "tension",
      "share",
      "limit",
    ]);
    expect(lineAt(page, "tension").uses.toSorted()).toEqual(["bolt", "nutFactor", "torque"]);
    expect(lineAt(page, "tension").usedBy).toEqual(["share"]);
    expect(lineAt(page, "limit").usedBy).toEqual([]);
  });

  test("why(name) is the chain from a value back to its givens", async () => {
    const page = await settled(...items);
    expect(page.why("share").map((c) => c.name)).toEqual(["share", "tension", "torque", "nutFactor", "bolt"]);
    expect(page.why("torque").map((c) => c.name)).toEqual(["torque"]);
    expect(page.why("nothing")).toEqual([]);
  });

  test("a page without a name in it settles at once", async () => {
    const page = await settled("  - note: |\n      only words");
    expect(page.lines()).toHaveLength(1);
  });

  test("text that is no page gives problems, not a page", () => {
    const problems = openPage("splitline: 1\ntitle: t\npage:\n  - gven: a\n", "page.yaml");
    expect(Array.isArray(problems) && problems.length).toBeGreaterThan(0);
  });

  test("an unknown line is undefined, and changing it or a working is refused", async () => {
    const page = await settled(...items);
    expect(page.line("nothing")).toBeUndefined();
    expect(page.change("nothing", "1")).toMatchObject({ code: "not-a-given", got: "no such item" });
    expect(page.change("share", "1")).toMatchObject({ code: "not-a-given", got: "a working" });
  });
});
