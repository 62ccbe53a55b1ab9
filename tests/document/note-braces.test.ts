// Braces in notes are read with the page: a formula that does not parse is said where it stands.
import { describe, expect, test } from "vitest";
import { contentFingerprint } from "../../src/document/fingerprint.ts";
import { readPage } from "../../src/document/read.ts";
import { writeCanonical } from "../../src/document/write-canonical.ts";
import { readGood } from "./pages.ts";

const head = "splitline: 1\ntitle: t\npage:\n";
const told = (items: string): readonly string[] =>
  readPage(head + items, "p.yaml").problems.map((p) => `${p.where} ${p.code}`);

describe("a note with braces", () => {
  test.each([
    ["  - note: set {netTorque} net\n", []],
    ["  - note: a} b and \\{c\n", []],
    ["  - note: set {net torque} now\n", ["p.yaml:4:15 formula-implicit-product"]],
    ["  - note: set {netTorque now\n", []],
    ['  - note: "set {} now"\n', ["p.yaml:4:16 empty-brace"]],
    ["  - note: |\n      fine {a}\n\n      - \\{x\\} `{` {b +} {c}\n", ["p.yaml:7:19 formula-missing-value"]],
    [
      "  - given: a\n    value: 5 kN\n    note: >\n      twice {2 *\n      (a}\n",
      ["p.yaml:7:13 formula-bracket"],
    ],
    ["  - caution: C1\n    note: at {a = 2}\n", ["p.yaml:5:14 formula-assignment"]],
  ])("%j", (items, where) => {
    expect(told(items)).toEqual(where);
  });

  test("stands in the fingerprint and in the file with its braces", async () => {
    const bound = readGood(`${head}  - note: set {a}\n`);
    const other = readGood(`${head}  - note: set {b}\n`);
    expect(bound.items[0]).toMatchObject({ text: "set {a}" });
    expect(writeCanonical(`${head}  - note: set {a}\n`)).toContain("{a}");
    expect(await contentFingerprint(bound)).not.toBe(await contentFingerprint(other));
  });

  test("the sentence names the note, the formula and the column in it", () => {
    const { problems } = readPage(`${head}  - given: a\n    value: 1\n    note: is {a +}\n`, "p.yaml");
    expect(problems[0]?.what).toMatch(/^note of given a · \{a \+\} · formula, column \d/);
  });
});
