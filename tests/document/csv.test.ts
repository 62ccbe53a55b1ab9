import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heading, readCsv } from "../../src/document/csv.ts";
import { guarded, writeCsv } from "../../src/document/write-csv.ts";
import { sentence } from "../../src/problem.ts";

const table = (text: string, answers = {}) => {
  const { table: found, problems } = readCsv(text, answers);
  if (!found) throw new Error(problems.map(sentence).join("\n"));
  return found;
};

const fields = (text: string, answers = {}) => table(text, answers).rows.map((row) => row.fields);
const said = (text: string, answers = {}) => readCsv(text, answers).problems.map(sentence);

describe("delimiter and decimal mark, decided together", () => {
  test.each([
    ["comma and point", "p,d/mm\n1,25.011\n", "comma", "point"],
    ["semicolon and comma", "p;d/mm\n1;25,01\n", "semicolon", "comma"],
    ["semicolon and point", "p;d/mm\n1;25.011\n", "semicolon", "point"],
    ["tab and comma", "p\td/mm\n1\t25,01\n", "tab", "comma"],
    ["a quoted comma between commas", 'p,d/mm\n1,"25,01"\n', "comma", "comma"],
    ["one column with decimal commas", "d/mm\n25,01\n25,5\n", "semicolon", "comma"],
    ["a comma that can only be a decimal", "p;d/mm\n1;0,011\n2;25,011\n", "semicolon", "comma"],
    ["no numbers at all", "p,q\na,b\n", "comma", "point"],
  ])("%s", (_, text, delimiter, decimal) => {
    expect(table(text)).toMatchObject({ delimiter, decimal });
  });

  test("a comma that may mark decimals or thousands is asked about", () => {
    expect(said("p;d/mm\n1;25,011\n")).toEqual([
      "table: got 25,011 on line 2, must be clear about the comma; it may mark decimals or thousands; write the numbers with a point, or say: decimal: comma",
    ]);
    expect(table("p;d/mm\n1;25,011\n", { decimal: "comma" })).toMatchObject({ decimal: "comma" });
  });

  test("two decimal marks in one table are asked about", () => {
    expect(said("p;d/mm\n1;25,01\n2;25.01\n")).toEqual([
      "table: got 25,01 on line 2 and 25.01 on line 3, must have one decimal mark; write all numbers with a point, or say which: decimal: comma",
    ]);
  });

  test("headings that two delimiters part are asked about", () => {
    expect(readCsv("a,b;c\n1,2;3\n").problems).toMatchObject([
      { code: "csv-delimiter", suggestions: ["comma", "semicolon"] },
    ]);
    expect(fields("a,b;c\n1,2;3\n", { delimiter: "semicolon", decimal: "comma" })).toEqual([["1,2", "3"]]);
  });

  test("a comma in a column of remarks decides nothing", () => {
    const isNumeric = ({ name }: { name: string }) => name === "d";
    expect(table('d/mm,note\n25.011,"1,5 turns"\n', { isNumeric })).toMatchObject({ decimal: "point" });
  });
});

describe("rows and fields", () => {
  test("fields keep their text, spaces included, and their line", () => {
    expect(table('a,b\n 1 , x\n"two\nlines",y\nz,\n').rows).toMatchObject([
      { line: 2, fields: [" 1 ", " x"] },
      { line: 3, fields: ["two\nlines", "y"] },
      { line: 5, fields: ["z", ""] },
    ]);
  });

  test("doubled quotes are one quote; a quote inside a bare field is a quote", () => {
    expect(fields('a,b\n"3/8"" bolt",5\'-6 1/2"\n')).toEqual([['3/8" bolt', "5'-6 1/2\""]]);
  });

  test("CRLF, LF, a byte order mark and a missing last newline read alike", () => {
    const plain = fields("a,b\n1,2\n3,\n");
    expect(fields("\uFEFFa,b\r\n1,2\r\n3,\r\n")).toEqual(plain);
    expect(fields("a,b\n1,2\n3,")).toEqual(plain);
  });

  test("a wrong number of fields is named by its line, every one of them", () => {
    expect(said("p,d/mm\n1,25,011\n2,25.010\n3\n")).toEqual([
      'line 2: got 3 fields, must have 2, as the headings; put a field that holds a comma in quotes: "25,011"',
      "line 4: got 1 fields, must have 2, as the headings; leave a missing reading blank, but keep its delimiters",
    ]);
  });

  test("blank lines are left out and named, except in a table of one column", () => {
    expect(table("a,b\n1,2\n\n3,4\n").blankLines).toEqual([3]);
    expect(fields("d/mm\n1.0\n\n3.0\n")).toEqual([["1.0"], [""], ["3.0"]]);
  });

  test("an open quote and text after a quote are named by line", () => {
    expect(said('a,b\n1,"x\n')).toContain(
      'line 2: got a quote that is never closed, must close each quoted field once; a quote inside a quoted field is written twice: "3/8"" bolt"',
    );
    expect(said('a,b\n1,"x"y\n')).toHaveLength(1);
  });

  test("nothing, and headings without or with the same name, are refused", () => {
    expect(readCsv("").problems).toMatchObject([{ code: "csv-empty" }]);
    expect(readCsv("\n\n").problems).toMatchObject([{ code: "csv-empty" }]);
    expect(readCsv("a,,a\n1,2,3\n").problems).toMatchObject([
      { code: "csv-heading" },
      { code: "csv-heading" },
    ]);
  });

  test("only a line of headings is a table without rows", () => {
    expect(fields("a,b\n")).toEqual([]);
  });
});

describe("heading", () => {
  test.each([
    ["diameter/mm", "diameter", "mm"],
    ["d [mm]", "d", "mm"],
    ["d (mm)", "d", "mm"],
    ["stiffness/(kN/mm)", "stiffness", "kN/mm"],
    ["stiffness/kN/mm", "stiffness", "kN/mm"],
    ["k [kN/mm]", "k", "kN/mm"],
    [" position ", "position", undefined],
    ["head_a_mm", "head_a_mm", undefined],
  ])("%s", (text, name, unit) => {
    const found = heading(text);
    expect([found.name, found.unit]).toEqual([name, unit]);
  });
});

describe("writeCsv", () => {
  test("quotes only what needs them, ends each line with LF", () => {
    expect(
      writeCsv(
        ["a", "b/mm"],
        [
          ["x,y", "1.0"],
          ['3/8"', ""],
        ],
      ),
    ).toBe('a,b/mm\n"x,y",1.0\n"3/8""",\n');
  });

  test.each(["=1+1", "+cmd", "-2+3", "@SUM(A1)", "\tx", "\u0000x", "\rx", "-", "+", "-1-1", "=", "- 5"])(
    "%j gets a leading quote mark",
    (field) => {
      expect(guarded(field)).toBe(`'${field}`);
    },
  );

  test.each(["-12.6", "+5", "-450", "-1e-6", "0", "-.5", "12 mm", "fitter A", ""])(
    "%j stays as it is",
    (field) => {
      expect(guarded(field)).toBe(field);
    },
  );

  const field = fc
    .oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom("", " ", '"', ",", "\n", "\r\n", ";", "25.011", "-450", "a\nb"),
    )
    .filter((text) => !/\r(?!\n)/.test(text) && guarded(text) === text && !text.startsWith("\uFEFF"));

  test.each(["bolts", "holes", "gaps", "torque-record"])(
    "the demo table %s comes out byte for byte",
    (name) => {
      const text = readFileSync(new URL(`../../demo-data/${name}.csv`, import.meta.url), "utf8");
      const { headings, rows, newline } = table(text);
      expect(
        writeCsv(
          headings.map((one) => one.text),
          rows.map((row) => row.fields),
          newline,
        ),
      ).toBe(text);
    },
  );

  test("what is written reads back as it was, and writes the same bytes again", () => {
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 4 })
          .chain((n) => fc.array(fc.array(field, { minLength: n, maxLength: n }), { maxLength: 6 })),
        (rows) => {
          const headings = (rows[0] ?? ["h"]).map((_, i) => `h${i}`);
          const text = writeCsv(headings, rows);
          const back = table(text, { delimiter: "comma", decimal: "point" });
          expect(back.rows.map((row) => row.fields)).toEqual(rows);
          expect(
            writeCsv(
              headings,
              back.rows.map((row) => row.fields),
            ),
          ).toBe(text);
        },
      ),
    );
  });

  test("no field that is written starts as a formula would, unless it is a plain number", () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 10 }), (text) => {
        const written = guarded(text);
        return !/^[=+\-@\t\r]/.test(written) || Number.isFinite(Number(written));
      }),
    );
  });

  test("reading never throws and never gives a row of the wrong width", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...Array.from('ab1,;\t"\n\r.-')) }), (text) => {
        const { table: found } = readCsv(text);
        return !found || found.rows.every((row) => row.fields.length === found.headings.length);
      }),
    );
  });
});
