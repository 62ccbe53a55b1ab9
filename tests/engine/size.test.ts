// Large pages: how many formulas run, and no depth that breaks. Nothing here is timed.
// The reader takes at most 2,000 items, so the longest pages are handed to the engine as items.
import { describe, expect, test } from "vitest";
import type { Item, Page } from "../../src/document/item.ts";
import { type OpenPage, opened } from "../../src/engine/opened.ts";
import { problemAt, rootAt, siAt } from "./helpers.ts";

const place = { line: 1, column: 1 };
const given = (name: string, value: string): Item => ({ kind: "given", name, value, place, index: 0 });
const working = (name: string, formula: string): Item => ({
  kind: "working",
  name,
  formula,
  place,
  index: 0,
});

function open(items: readonly Item[]): OpenPage {
  const page: Page = {
    file: "page.yaml",
    title: "a page",
    show: {},
    items: items.map((item, index) => ({ ...item, index })),
  };
  return opened(page, "");
}

const chain = (length: number): Item[] => [
  given("c0", "1 mm"),
  ...Array.from({ length }, (_, i) => working(`c${i + 1}`, `c${i} + "1 mm"`)),
];

async function ranAfter(page: OpenPage, name: string, text: string): Promise<readonly string[]> {
  page.change(name, text);
  return (await page.settle()).ran;
}

describe("a chain of 5,000 lines", () => {
  test("settles, follows a change to its end, and comes back from no answer", {
    timeout: 120_000,
  }, async () => {
    const page = open(chain(5000));
    expect((await page.settle()).ran).toHaveLength(5001);
    expect(siAt(page, "c5000")).toBeCloseTo(5.001, 9);
    expect(await ranAfter(page, "c0", "2 mm")).toHaveLength(5001);
    expect(siAt(page, "c5000")).toBeCloseTo(5.002, 9);
    await ranAfter(page, "c0", "two");
    expect(rootAt(page, "c5000")).toBe(problemAt(page, "c0"));
    expect(page.line("c5000")?.guilty).toBe("c0");
    expect(page.why("c5000")).toHaveLength(5001);
  });

  test("listed from its end backwards it settles the same", { timeout: 120_000 }, async () => {
    const page = open(chain(5000).toReversed());
    await page.settle();
    expect(siAt(page, "c5000")).toBeCloseTo(5.001, 9);
  });

  test("closed to a loop at its end is named and does not hang", { timeout: 120_000 }, async () => {
    const page = open([working("c0", "c5000"), ...chain(5000).slice(1)]);
    await page.settle();
    expect(problemAt(page, "c2500").code).toBe("loop");
  });

  test("a cut in the middle stops the wave there: only what lies before it runs", {
    timeout: 120_000,
  }, async () => {
    const items = chain(2000);
    items[1000] = working("c1000", 'min(c999, "1 mm")');
    const page = open(items);
    await page.settle();
    const ran = await ranAfter(page, "c0", "2 mm");
    expect(ran).not.toContain("c1001");
    expect(ran).toHaveLength(1001);
  });
});

describe("1,000 lines in ten levels of a hundred", () => {
  const level = (n: number, i: number) => `l${n}x${i}`;
  const lines = [
    ...Array.from({ length: 100 }, (_, i) => given(level(0, i), `${i + 1} mm`)),
    ...Array.from({ length: 9 }, (_, n) =>
      Array.from({ length: 100 }, (_, i) =>
        working(level(n + 1, i), `${level(n, i)} + ${level(n, (i + 1) % 100)}`),
      ),
    ).flat(),
  ];

  test("opening runs each once", { timeout: 60_000 }, async () => {
    const page = open(lines);
    expect((await page.settle()).ran).toHaveLength(1000);
  });

  test("a change runs the cone behind it: 1 + 2 + … + 10 lines", { timeout: 60_000 }, async () => {
    const page = open(lines);
    await page.settle();
    const ran = await ranAfter(page, level(0, 50), "7 mm");
    expect(ran).toHaveLength(55);
    expect(new Set(ran).size).toBe(55);
  });

  test("the same page opened twice runs in the same order and gives the same numbers", {
    timeout: 60_000,
  }, async () => {
    const [one, two] = [open(lines), open(lines)];
    expect((await one.settle()).ran).toEqual((await two.settle()).ran);
    for (let i = 0; i < 100; i++) expect(siAt(one, level(9, i))).toBe(siAt(two, level(9, i)));
  });
});

test("one given used by 3,000 lines reaches them all", { timeout: 60_000 }, async () => {
  const page = open([
    given("a", "1 mm"),
    ...Array.from({ length: 3000 }, (_, i) => working(`b${i}`, `a * ${i + 2}`)),
  ]);
  await page.settle();
  expect(await ranAfter(page, "a", "2 mm")).toHaveLength(3001);
  expect(siAt(page, "b2999")).toBeCloseTo(6.002, 12);
});
