// A table changed as data: what is read again is what was put in, and what is not touched keeps every byte.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ReadingItem } from "../../src/document/item.ts";
import { isProblem } from "../../src/problem.ts";
import { edited, lineOf } from "../../src/readings/edited.ts";
import { keptBesides, mergedRows } from "../../src/readings/row-places.ts";
import { openTable, type Table } from "../../src/readings/table.ts";

const item: ReadingItem = {
  kind: "reading",
  name: "r",
  index: 0,
  place: { line: 1, column: 1 },
  columns: { tag: "tag", size: "length", remark: "text" },
  key: ["tag"],
  rows: "",
};

function open(text: string, of = item): Table {
  const table = openTable(of, text);
  if (isProblem(table)) throw new Error(table.what);
  return table;
}

describe("a table changed as data", () => {
  const unit = fc.constantFrom(...Array.from("ab1 ,;\t\"'=-.µ\n"));
  const text = fc.string({ unit, maxLength: 8 }).map((typed) => typed.trim());
  const size = fc.option(fc.integer({ min: -99_999, max: 99_999 }), { nil: undefined });
  const fields = fc.record({ size, remark: text });
  const manner = fc.record({
    delimiter: fc.constantFrom("comma" as const, "semicolon" as const, "tab" as const),
    decimal: fc.constantFrom("point" as const, "comma" as const),
  });

  test("reads back as it was put, in every manner of writing", () => {
    fc.assert(
      fc.property(
        fc.array(fields, { maxLength: 5 }),
        fc.array(fields, { maxLength: 3 }),
        fc.option(fc.nat(4), { nil: undefined }),
        fields,
        manner,
        (rows, more, at, anew, { delimiter, decimal }) => {
          const of = { ...item, delimiter, decimal };
          const sizeText = (n: number | undefined) => (n === undefined ? "" : (n / 1000).toFixed(3));
          const typed = (n: number | undefined) => sizeText(n).replace(".", decimal === "comma" ? "," : ".");
          const lines = [
            ["tag", "size/mm", "remark"],
            ...rows.map((row, i) => [`${i}`, typed(row.size), row.remark]),
          ];
          const begun = lines.map((line) => `${lineOf(line, delimiter)}\n`).join("");
          const table = open(begun, of);
          const put = (row: typeof anew) => ({ size: sizeText(row.size), remark: row.remark });
          const changed = at !== undefined && at < rows.length ? new Map([[at, put(anew)]]) : undefined;
          const added = more.map((row, i) => ({ tag: `x${i}`, ...put(row), reason: "why" }));
          const after = edited(table, { columns: ["reason"], added, ...(changed && { changed }) });
          const wanted = [
            ...rows.map((row, i) => ({ tag: `${i}`, ...put(i === at ? anew : row), reason: "" })),
            ...added,
          ];
          expect(open(after, of).rows.map(({ texts }) => texts)).toEqual(wanted);
          expect(edited(table, {})).toBe(begun);
        },
      ),
    );
  });

  test("keeps spaces, quotes and blank lines of rows that are not touched", () => {
    const text = 'tag, size/mm ,remark\n\n1, 25.0 ,"so"\n\n2,,  \n\n';
    const table = open(text);
    expect(edited(table, { changed: new Map([[1, { size: "25.1" }]]) })).toBe(
      text.replace("2,,  ", "2,25.1,  "),
    );
    expect(edited(table, { added: [{ tag: "3" }] })).toBe(`${text.slice(0, -1)}3,,\n`);
  });
});

describe("two texts of one reading", () => {
  const heads = "tag,size/mm,remark\n";
  test("that say the same worth in other digits are at one", () => {
    const merged = mergedRows(item, `${heads}1,,\n`, `${heads}1,25.010,\n`, `${heads}1,25.01,\n`);
    expect(merged).toEqual({ text: `${heads}1,25.010,\n`, open: 0 });
    expect(keptBesides(item, `${heads}1,,\n`, `${heads}1,25.010,\n`, `${heads}1,25.01,\n`)).toEqual([]);
  });
  test("that say another worth stay open, and the file stands", () => {
    const merged = mergedRows(item, `${heads}1,,\n`, `${heads}1,25.011,\n`, `${heads}1,25.01,\n`);
    expect(merged).toEqual({ text: `${heads}1,25.011,\n`, open: 1 });
  });
  test("of which one has other digits for what both began with keep them", () => {
    const merged = mergedRows(item, `${heads}1,25.01,\n`, `${heads}1,25.01,\n`, `${heads}1,25.010,\n`);
    expect(merged).toEqual({ text: `${heads}1,25.010,\n`, open: 0 });
  });
});
