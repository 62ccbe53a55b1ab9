// Pages made to be large: each is read, or refused by name, and what is said of it stays short.
import { describe, expect, test } from "vitest";
import { readPage } from "../../src/document/read.ts";
import { readingTable } from "../../src/document/reading-table.ts";
import { sentence } from "../../src/problem.ts";
import { steps } from "../steps.ts";

const page = (...items: readonly string[]): string =>
  `splitline: 1\ntitle: a page\npage:\n${items.join("\n")}\n`;
const upTo = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);

const expecting = (...sizes: readonly number[]): string => {
  const names = sizes.map((_, i) => `k${i}`);
  return page(
    "  - reading: r",
    `    columns: { ${names.map((name) => `${name}: tag`).join(", ")}, d: length }`,
    `    key: [${names.join(", ")}]`,
    "    expect:",
    ...sizes.map((size, i) => `      k${i}: [${upTo(size).join(", ")}]`),
    "    rows: |",
    `      ${names.join(",")},d/mm`,
  );
};

describe("expect", () => {
  test.each([[[300, 300, 300]], [[2000, 11]], [[2, 2, 2000, 2000]]])("%j is refused by name", (sizes) => {
    const { problems } = readPage(expecting(...sizes), "p.yaml");
    expect(problems.map(({ code }) => code)).toEqual(["too-many-expected"]);
    expect(problems.map(sentence).join()).toContain("must come to at most 20000");
  });

  test.each([[[48, 8, 3]], [[2000, 10]], [[1000]]])("%j is read", (sizes) => {
    expect(readPage(expecting(...sizes), "p.yaml").problems).toEqual([]);
  });
});

describe("what is said of a page full of mistakes", () => {
  const said = (n: number): string => {
    const items = upTo(n).map((i) => `  - foo: w${i}\n    is: zork${i} + 1`);
    return readPage(page(...items), "p.yaml")
      .problems.map(sentence)
      .join("\n");
  };

  test("does not grow with their number, and the rest is counted", () => {
    expect(said(2000).length / said(500).length).toBeLessThan(1.1);
    expect(said(2000)).toMatch(
      /1900 more problems in this file: the first 100 are listed; mend these first$/,
    );
    expect(said(100)).not.toContain("more problems");
  });

  test("is cut where a word of it is longer than any sentence", () => {
    const text = page(`  - check: c\n    that: ${"a".repeat(1990)}\n    allowed: [${"b".repeat(100)}]`);
    for (const problem of readPage(text, "p.yaml").problems)
      expect(sentence(problem).length).toBeLessThan(4500);
    const columns = upTo(3000).map((i) => `c${i}`);
    const wide = page(
      `  - reading: r\n    columns: { ${columns.map((name) => `${name}: length`).join(", ")} }\n    key: [zork]\n    rows: a`,
    );
    const [first] = readPage(wide, "p.yaml").problems;
    expect(first?.must).toMatch(/^be a column: c0, .*… \(\d+ characters\)$/);
  });
});

/** Four times the size is four times the work, or a little more for what stays the same. */
const linear = 4.5;

test("a table of many columns is read in as many steps as it has columns", () => {
  const read = (n: number) => () => {
    const names = upTo(n).map((i) => `c${i}`);
    return readingTable({
      kind: "reading",
      name: "r",
      columns: Object.fromEntries(names.map((name) => [name, "length"] as const)),
      rows: `${names.map((name) => `${name}/mm`).join(",")}\n${names.map(() => "1").join(",")}\n`,
      place: { line: 1, column: 1 },
      index: 0,
    });
  };
  expect(steps(read(400)) / steps(read(100))).toBeLessThan(linear);
  expect(read(3000)().problems).toEqual([]);
});

test("a mapping of many keys is read in as many steps as it has keys", () => {
  const read = (n: number) => () =>
    readPage(
      `splitline: 1\ntitle: a page\npage: []\n${upTo(n)
        .map((i) => `c${i}: x\n`)
        .join("")}`,
      "p.yaml",
    );
  expect(steps(read(1600)) / steps(read(400))).toBeLessThan(linear);
});
