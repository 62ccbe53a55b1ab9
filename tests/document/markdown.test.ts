import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Block, parseMarkdown } from "../../src/document/markdown.ts";
import { type Inline, parseInlines } from "../../src/document/markdown-inline.ts";

const text = (words: string): Inline => ({ type: "text", text: words });

describe("parseMarkdown", () => {
  test("paragraphs are parted by blank lines, line breaks inside are spaces", () => {
    expect(parseMarkdown("one\ntwo\n\nthree\n")).toEqual([
      { type: "paragraph", inlines: [text("one two")] },
      { type: "paragraph", inlines: [text("three")] },
    ]);
  });

  test("lists with dashes, stars and numbers; a line without a mark goes on", () => {
    expect(parseMarkdown("- a\n  more\n* b\n\n1. c\n2) d\n")).toEqual([
      { type: "list", ordered: false, items: [[text("a more")], [text("b")]] },
      { type: "list", ordered: true, items: [[text("c")], [text("d")]] },
    ]);
  });

  test("headings of three levels", () => {
    expect(parseMarkdown("# A\n### C ##\nx")).toEqual([
      { type: "heading", level: 1, inlines: [text("A")] },
      { type: "heading", level: 3, inlines: [text("C")] },
      { type: "paragraph", inlines: [text("x")] },
    ]);
  });

  test("a negative number at the start of a line is no list", () => {
    expect(parseMarkdown("-12.6 um")).toEqual([{ type: "paragraph", inlines: [text("-12.6 um")] }]);
  });

  test("emphasis, strong and code, one inside the other", () => {
    expect(parseInlines("a *b* **c *d*** `e*f*`")).toEqual([
      text("a "),
      { type: "emphasis", inlines: [text("b")] },
      text(" "),
      { type: "strong", inlines: [text("c "), { type: "emphasis", inlines: [text("d")] }] },
      text(" "),
      { type: "code", text: "e*f*" },
    ]);
  });

  test.each([
    "2 * 3 * 4",
    "F_M and F_V",
    "a * b",
    "**open",
    "*",
    "**",
    "5 * x*",
    "a_b_c",
    "`open",
    "[x",
    "[x](",
    "[x] (y)",
  ])("%s is plain text", (words) => {
    expect(parseInlines(words)).toEqual([text(words)]);
  });

  test("a mark behind a backslash is text", () => {
    expect(parseInlines("\\*a\\*")).toEqual([text("*a*")]);
  });

  test.each([
    "https://example.org/a?b=c#d",
    "http://example.org",
    "mailto:a@example.org",
    "holes.csv",
    "../demo/holes.csv",
    "#top",
    "?x=1",
    "/a/b",
  ])("a link to %s is a link", (href) => {
    expect(parseInlines(`[see](${href})`)).toEqual([{ type: "link", href, inlines: [text("see")] }]);
  });

  test.each([
    "javascript:alert`1`",
    "JavaScript:x",
    "data:text/html,x",
    "vbscript:x",
    "file:///etc/x",
    "//example.org",
    "/\\example.org",
    "\\\\host",
    "java\u0009script:x",
    "blob:x",
    "https:evil",
    "ftp://x",
  ])("an address like %j leads nowhere", (href) => {
    const links = parseInlines(`[see](${href})`).filter((inline) => inline.type === "link");
    expect(links).toEqual([]);
  });

  const bound = (formula: string): Inline => ({ type: "bound", formula });

  test.each<[string, readonly Inline[]]>([
    ["set {netTorque} net", [text("set "), bound("netTorque"), text(" net")]],
    ["{ a*b*c } and *{d}*", [bound("a*b*c"), text(" and "), { type: "emphasis", inlines: [bound("d")] }]],
    ["*most {a*b} of it*", [{ type: "emphasis", inlines: [text("most "), bound("a*b"), text(" of it")] }]],
    ["\\{no value\\} and `{code}`", [text("{no value} and "), { type: "code", text: "{code}" }]],
    ["[at {x}](#y)", [{ type: "link", href: "#y", inlines: [text("at "), bound("x")] }]],
    ["{open", [text("{open")]],
    ["a } b", [text("a } b")]],
  ])("values of the page: %s", (words, inlines) => {
    expect(parseInlines(words)).toEqual(inlines);
  });

  test("markup of web pages is text like any other", () => {
    expect(parseMarkdown("<script>x</script> &amp;")).toEqual([
      { type: "paragraph", inlines: [text("<script>x</script> &amp;")] },
    ]);
  });

  test("on any text: never throws, keeps every letter and digit, and every link is allowed", () => {
    const letters = (inlines: readonly Inline[]): string =>
      inlines
        .map((inline) => {
          if (inline.type === "bound") return inline.formula;
          return "text" in inline ? inline.text : letters(inline.inlines);
        })
        .join("");
    const words = (block: Block): string =>
      block.type === "list" ? block.items.map(letters).join("") : letters(block.inlines);
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...Array.from("ab *_`[]()\\\n-#")), maxLength: 80 }),
        (note) => {
          const only = (all: string) => all.replace(/[^ab]/g, "");
          // The address of a link is not shown.
          const shown = only(parseMarkdown(note).map(words).join(""));
          return note.includes("](") || shown === only(note);
        },
      ),
    );
  });

  test("a hostile note costs no more than its length allows", () => {
    expect(parseMarkdown("*a ".repeat(3000))).toHaveLength(1);
    expect(parseMarkdown("[".repeat(20_000))).toHaveLength(1);
  });
});
