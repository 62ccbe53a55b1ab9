// Each row of the loader's table: what YAML would make of a text, and what a page makes of it.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { largestPage } from "../../src/document/gate.ts";
import { readPage } from "../../src/document/read.ts";
import { examplePage, header, marksOf, onlyItem, pageOf, problemsOf, sentencesOf } from "./pages.ts";

describe("texts that YAML may read otherwise", () => {
  test.each(["no", "on", "1:30", "2026-11-25", "1/4", "3/8-16", "20 degC", "yes", "M24x3", "1-1/4-12"])(
    "%s is a text",
    (typed) => {
      expect(onlyItem(pageOf("given: a", `value: ${typed}`))).toMatchObject({ value: typed });
    },
  );

  test.each(["010", "007", "1e3", "0123e4", "0x10", "0o17", "1.", ".5", "+.5e3"])(
    "%s has to stand in quotes, and then stays as it is",
    (typed) => {
      expect(problemsOf(pageOf("given: a", `value: ${typed}`))).toMatchObject([
        { code: "number-form", where: "page.yaml:5:12", got: typed, suggestions: [`"${typed}"`] },
      ]);
      expect(onlyItem(pageOf("given: a", `value: "${typed}"`))).toMatchObject({ value: typed });
    },
  );

  test.each([".inf", "-.inf", ".nan", "12345678901234567890", "0.1234567890123456"])(
    "%s is refused",
    (typed) => {
      expect(marksOf(pageOf("given: a", `value: ${typed}`))).toEqual(["5:12 number-form"]);
    },
  );

  test("true, false and null are no values", () => {
    for (const typed of ["true", "false", "null", "~", ""])
      expect(problemsOf(pageOf("given: a", `value: ${typed}`))).toHaveLength(1);
  });
});

describe("YAML that a page does not use", () => {
  test.each([
    ["a key given twice", pageOf("given: a", "value: 1 mm", "value: 2 mm"), ["6:5 duplicate-key"]],
    ["a key as number and as text", pageOf("picture: p", 'of: { 1: a, "1": b }'), ["5:17 duplicate-key"]],
    ["a directive", `%YAML 1.1\n---\n${examplePage}`, ["1:1 refused-yaml"]],
    ["a tag", pageOf("given: a", "value: !secret 12 mm"), ["5:12 refused-yaml"]],
    ["a standard tag", pageOf("given: a", "value: !!str 12"), ["5:12 refused-yaml"]],
    ["an anchor", pageOf("given: a", "value: &x 12 mm"), ["5:12 refused-yaml"]],
    ["an alias", pageOf("given: a", "value: *x"), ["5:12 refused-yaml"]],
    ["a circle", "a: &a [*a]\n", ["1:4 refused-yaml", "1:8 refused-yaml"]],
    ["a tab as indentation", `${header}\t- note: x\n`, ["4:1 yaml"]],
    ["a second colon", pageOf("note: torque: 30"), ["4:11 yaml"]],
    ["a leading @", pageOf("note: @home"), ["4:11 yaml"]],
    ["a leading backtick", pageOf("note: `x`"), ["4:11 yaml"]],
    ["a second document", `${examplePage}---\na: 1\n`, ["46:1 yaml"]],
    ["a list as key", `${header}  - ? [a]\n    : b\n`, ["4:7 yaml"]],
    ["an open quote", pageOf('note: "x'), ["5:1 yaml"]],
    ["an open bracket", pageOf("picture: p", "of: { a: b"), ["6:1 yaml"]],
  ])("%s is refused with its line and column", (_, text, marks) => {
    expect(marksOf(text)).toEqual(marks);
  });

  test("an alias bomb is refused before anything grows", () => {
    const levels = Array.from(
      { length: 9 },
      (_, i) => `a${i + 1}: &a${i + 1} [${Array(9).fill(`*a${i}`).join(",")}]`,
    );
    const problems = problemsOf(`a0: &a0 [x]\n${levels.join("\n")}\n`);
    expect(problems.every((p) => p.code === "refused-yaml")).toBe(true);
  });

  test.each([
    ["__proto__", pageOf("picture: p", "of: { __proto__: x }"), ["5:11 odd-key"]],
    ["constructor", pageOf("picture: p", "of: { constructor: x }"), ["5:11 odd-key"]],
    ["<<", pageOf("given: a", "value: 1 mm", "<<: { says: x }"), ["6:5 odd-key"]],
    ["__proto__ as field", pageOf("given: a", "value: 1 mm", "__proto__: { says: x }"), ["6:5 odd-key"]],
    ["an empty key", pageOf("picture: p", 'of: { "": x }'), ["5:11 odd-key"]],
  ])("the key %s is refused", (_, text, marks) => {
    expect(marksOf(text)).toEqual(marks);
  });

  test("what is wrong in the YAML is said with its remedy", () => {
    expect(sentencesOf(pageOf("note: torque: 30"))).toEqual([
      'page.yaml:4:11 · second colon on one line: got torque: 30, must stand in quotes; put the whole text in quotes: says: "torque: 30 N.m"',
    ]);
    expect(sentencesOf(`${header}\t- note: x\n`)).toEqual([
      "page.yaml:4:1 · indentation: must be made of spaces, never tabs; replace the tab by spaces",
    ]);
    expect(sentencesOf(pageOf("given: a", "value: *x"))).toEqual([
      'page.yaml:5:12 · alias: got *x, must not be used on a page; write the value out where it is used; quote a text that starts with *: "*..."',
    ]);
  });

  test("marks that are part of a text are no anchors, aliases or tags", () => {
    expect(onlyItem(pageOf("note: |", "  2 * 3 & 4 ! [ { % @ `", "  *x &y !z %w"))).toMatchObject({
      text: "2 * 3 & 4 ! [ { % @ `\n*x &y !z %w\n",
    });
    expect(onlyItem(pageOf("working: w", "is: a * b"))).toMatchObject({ formula: "a * b" });
  });
});

describe("any text at all", () => {
  test("is answered with a page or with problems that have a place, and never thrown at", () => {
    const piece = fc.constantFrom(
      "[",
      "]",
      "{",
      "}",
      ": ",
      "- ",
      "\n",
      "\n  ",
      "\n    ",
      "\t",
      "# ",
      '"',
      "'",
      "|",
      ">",
      "&a",
      "*a",
      "!t ",
      "%",
      "? ",
      "given: a",
      "value: 3 mm",
      "of: ",
      "page:",
      "---\n",
      "...\n",
      "0x1",
      "~",
      "<<: ",
      ",",
      "__proto__: ",
      "\uFEFF",
    );
    const damaged = fc
      .tuple(fc.nat(examplePage.length), fc.nat(30), fc.array(piece, { maxLength: 6 }))
      .map(([at, cut, pieces]) => examplePage.slice(0, at) + pieces.join("") + examplePage.slice(at + cut));
    fc.assert(
      fc.property(
        fc.oneof(
          damaged,
          fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join("")),
        ),
        (text) => {
          const { page, problems } = readPage(text, "page.yaml");
          return page
            ? problems.length === 0
            : problems.length > 0 && problems.every((p) => /^page\.yaml:\d+:\d+$/.test(p.where ?? ""));
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("size, depth and characters", () => {
  test("a page over the size limit is refused unread, counted in bytes", () => {
    const text = `${header}  - note: "${"µ".repeat(largestPage.bytes / 2)}"\n`;
    expect(text.length).toBeLessThan(largestPage.bytes);
    expect(problemsOf(text)).toMatchObject([{ code: "page-too-large", where: "page.yaml" }]);
  });

  test("a page of rows just under the size limit reads", () => {
    const rows = "      1,25.011\n".repeat(100_000);
    expect(
      marksOf(
        `${header}  - reading: r\n    columns: { a: tag, d: length }\n    rows: |\n      a,d/mm\n${rows}`,
      ),
    ).toEqual([]);
  });

  test.each([
    ["brackets", "[".repeat(5000)],
    ["braces", "{a: ".repeat(5000)],
    ["dashes on one line", "- ".repeat(5000)],
    ["question marks on one line", "? ".repeat(5000)],
    ["two million brackets", "[".repeat(1_999_000)],
    ["keys ever further in", Array.from({ length: 500 }, (_, i) => `${" ".repeat(i)}a:`).join("\n")],
  ])("deep nesting by %s is refused before parsing", (_, text) => {
    expect(problemsOf(text)).toMatchObject([{ code: "page-too-deep" }]);
  });

  test("brackets inside texts are no nesting", () => {
    expect(marksOf(pageOf("note: |", `  ${"[".repeat(500)}`))).toEqual([]);
    expect(marksOf(pageOf(`note: "${"[".repeat(500)}"`))).toEqual([]);
  });

  test("many items are no nesting", () => {
    expect(marksOf(`${header}${"  - note: x\n".repeat(500)}`)).toEqual([]);
  });

  test.each([
    ["a NUL", "a\u0000b", "U+0000"],
    ["a text of another encoding", "20 \uFFFDC", "U+FFFD"],
    ["a mark that turns the reading order", "20 \u202E mm", "U+202E"],
    ["half a surrogate pair", "a\uD800b", "U+D800"],
  ])("%s is refused with its place", (_, typed, named) => {
    const [found] = problemsOf(pageOf(`note: ${typed}`));
    expect(found).toMatchObject({ code: "odd-character", got: `the character ${named}` });
    expect(found?.where).toMatch(/^page\.yaml:4:\d+$/);
  });
});
