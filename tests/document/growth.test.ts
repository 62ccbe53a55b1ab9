// Texts made to be slow: each takes a time that grows with its length and no faster.
import { describe, expect, test } from "vitest";
import { blankEnd, isSpaceOrTab } from "../../src/document/blank-end.ts";
import { heading, readCsv } from "../../src/document/csv.ts";
import { parseMarkdown } from "../../src/document/markdown.ts";
import { growth, linear } from "../growth.ts";

const many = (text: string) => (n: number) => text.repeat(Math.ceil(n / text.length));
const blanks = many(" ");

describe("a heading of a table grows in time as in length", () => {
  test.each<[string, (n: number) => string]>([
    ["blanks before the name", (n) => `${blanks(n)}a`],
    ["blanks in the name", (n) => `a${blanks(n)}b`],
    ["blanks behind a slash and a line end", (n) => `a/${blanks(n)}x\n x`],
    ["a square bracket left open", (n) => `a[${blanks(n)}`],
    ["a round bracket with text behind", (n) => `a(${blanks(n)}) x`],
  ])("%s", (_, text) => {
    expect(growth((n) => heading(text(n)), 250)).toBeLessThan(linear);
  });
});

describe("a note grows in time as in length", () => {
  test.each<[string, (n: number) => string]>([
    ["blanks in a heading", (n) => `# a${blanks(n)}b`],
    ["marks in a heading", (n) => `# a${many(" #")(n)}b`],
    ["blanks in an entry", (n) => `- a${blanks(n)}\u2028b`],
    ["brackets of no link", many("[")],
    ["links left open", many("[a](")],
    ["emphasis left open", many("*a ")],
    ["strong left open", many("**a ")],
    ["underlines left open", many(" _a")],
    ["code left open", many("`` ")],
    ["values left open", many("{a ")],
  ])("%s", (_, text) => {
    expect(growth((n) => parseMarkdown(text(n)), 2000)).toBeLessThan(linear);
  });
});

describe("the blank lines at the end of a text", () => {
  test.each([
    ["a\n", 1],
    ["a\r\n\r\n", 1],
    ["a \n \t\n", 2],
    ["a", 1],
    ["a  ", 3],
    ["\n\n", 0],
    ["", 0],
  ])("of %j begin at %i", (text, at) => expect(blankEnd(text, isSpaceOrTab)).toBe(at));

  test("are found in a time as their length", () => {
    expect(growth((n) => blankEnd(`${"\r\n".repeat(n)}x`), 10_000)).toBeLessThan(linear);
  });
});

describe("readCsv", () => {
  test("a heading longer than 300 characters and a field longer than 2000 are refused with their line", () => {
    expect(readCsv(`a,${"b".repeat(301)}\n1,2\n`).problems.map(({ code, what }) => ({ code, what }))).toEqual(
      [{ code: "csv-too-long", what: "line 1" }],
    );
    const long = readCsv(`a,b\n1,${"b".repeat(2001)}\n`).problems;
    expect(long.map(({ code, what, got }) => ({ code, what, got }))).toEqual([
      { code: "csv-too-long", what: "line 2", got: "a field of 2001 characters, the 2. on the line" },
    ]);
    expect(readCsv(`a,${"b".repeat(300)}\n1,${"b".repeat(2000)}\n`).problems).toEqual([]);
  });
});
