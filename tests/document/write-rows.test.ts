import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeRows } from "../../src/document/write-rows.ts";
import { isProblem, type Problem } from "../../src/problem.ts";
import { examplePage, header, readGood } from "./pages.ts";

const done = (written: string | Problem): string => {
  if (isProblem(written)) throw new Error(`${written.code}: ${written.what}`);
  return written;
};

const rowsIn = (text: string): string | undefined => {
  const found = readGood(text).items.find((item) => item.kind === "reading");
  return found?.kind === "reading" ? found.rows : undefined;
};

const before = "position,depth,direction,diameter/mm\n1,u1,along,25.011\n1,u1,across,\n";

describe("writeRows", () => {
  test("a missing reading filled in changes its line and not one other byte", () => {
    const written = done(writeRows(examplePage, "holes", before.replace("across,", "across,25.012")));
    expect(written).toBe(examplePage.replace("1,u1,across,", "1,u1,across,25.012"));
  });

  test("the same rows give the same bytes, in CRLF too", () => {
    expect(writeRows(examplePage, "holes", before)).toBe(examplePage);
    const crlf = `\uFEFF${examplePage.replaceAll("\n", "\r\n")}`;
    expect(writeRows(crlf, "holes", before)).toBe(crlf);
  });

  test("a block keeps its own indentation and the blank lines behind it", () => {
    const text = `${header}  - reading: r\n    columns: { a: tag }\n    rows: |\n          a\n          1\n\n  # next\n  - note: x\n`;
    expect(done(writeRows(text, "r", "a\n1\n2\n"))).toBe(
      text.replace("          1\n", "          1\n          2\n"),
    );
  });

  test("rows in quotes become a block", () => {
    const text = `${header}  - reading: r\n    columns: { a: tag }\n    rows: "a\\n1\\n"\n`;
    expect(done(writeRows(text, "r", "a\n2\n"))).toBe(
      `${header}  - reading: r\n    columns: { a: tag }\n    rows: |\n      a\n      2\n`,
    );
  });

  test("any rows are read back as they were, and the rest of the page as before", () => {
    const line = fc.string({ unit: fc.constantFrom(...Array.from("ab1,;\" #:-'|>[{\t")), maxLength: 12 });
    fc.assert(
      fc.property(fc.array(line, { maxLength: 5 }), fc.boolean(), (lines, last) => {
        const rows = lines.join("\n") + (last ? "\n" : "");
        const written = done(writeRows(examplePage, "holes", rows));
        return (
          rowsIn(written) === rows &&
          readGood(written).items.length === 11 &&
          done(writeRows(written, "holes", before)) === examplePage
        );
      }),
    );
  });

  test("a name that is no reading is answered with the nearest reading", () => {
    expect(writeRows(examplePage, "hole", "a\n")).toMatchObject({
      code: "no-such-reading",
      suggestions: ["holes"],
    });
  });
});
