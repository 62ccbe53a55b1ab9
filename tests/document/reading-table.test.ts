import { describe, expect, test } from "vitest";
import type { ReadingItem } from "../../src/document/item.ts";
import { readingTable } from "../../src/document/reading-table.ts";
import { sentence } from "../../src/problem.ts";
import { header, readGood } from "./pages.ts";

function reading(columns: string, rows: readonly string[], extra = ""): ReadingItem {
  const lines = rows.map((row) => `      ${row}\n`).join("");
  const [item] = readGood(
    `${header}  - reading: holes\n    columns: ${columns}\n${extra}    rows: |\n${lines}`,
  ).items;
  if (item?.kind !== "reading") throw new Error("no reading");
  return item;
}

const read = (columns: string, rows: readonly string[], extra?: string) =>
  readingTable(reading(columns, rows, extra), "page.yaml");

describe("readingTable", () => {
  test("state and reason may stand in any table without being named", () => {
    const { columns, problems } = read("{ position: tag, diameter: length }", [
      "position,diameter/mm,reason",
      "1,25.102,",
      "1,25.012,digits swapped",
    ]);
    expect(problems).toEqual([]);
    expect(Object.keys(columns)).toEqual(["position", "diameter", "reason"]);
    expect(columns["reason"]?.texts).toEqual([undefined, "digits swapped"]);
  });

  test("quantities are SI numbers, tags are texts, a blank is missing and never zero", () => {
    const { columns, lines, problems } = read("{ position: tag, diameter: length }", [
      "position,diameter/mm",
      "01,25.011",
      "N3,",
      "3,0",
    ]);
    expect(problems).toEqual([]);
    expect(columns["position"]?.texts).toEqual(["01", "N3", "3"]);
    expect(columns["position"]).not.toHaveProperty("values");
    expect(columns["diameter"]?.values).toEqual([0.025011, undefined, 0]);
    expect(columns["diameter"]?.texts).toEqual(["25.011", undefined, "0"]);
    expect(columns["diameter"]?.unit?.text).toBe("mm");
    expect(lines).toEqual([8, 9, 10]);
  });

  test("a field may carry its own unit", () => {
    const { columns } = read("{ d: length, e: length }", ["d,e/mm", "25.011 mm,25 um"]);
    expect(columns["d"]?.values).toEqual([0.025011]);
    expect(columns["e"]?.values?.[0]).toBeCloseTo(25e-6, 12);
  });

  test("a decimal comma gives the value of the point", () => {
    const { columns } = read("{ p: tag, d: length }", ["p;d/mm", "1;25,011", "2;0,5"]);
    expect(columns["d"]?.values).toEqual([0.025011, 0.0005]);
    expect(columns["d"]?.texts).toEqual(["25,011", "0,5"]);
  });

  test("an answer on the page settles the comma", () => {
    expect(read("{ p: tag, d: length }", ["p;d/mm", "1;25,011"]).problems).toHaveLength(1);
    expect(
      read("{ p: tag, d: length }", ["p;d/mm", "1;25,011"], "    decimal: comma\n").columns["d"]?.values,
    ).toEqual([0.025011]);
  });

  test("headings of other files find their column: head_a_mm is headA in mm", () => {
    const { columns, problems } = read("{ boltNo: tag, headA: length }", ["bolt_no,head_a_mm", "1,25.007"]);
    expect(problems).toEqual([]);
    expect(columns["headA"]?.values).toEqual([0.025007]);
  });

  test("every refused field is named by the line of the page, the others are kept", () => {
    const { columns, problems } = read("{ p: tag, d: length }", [
      "p,d/mm",
      "1,25.011",
      "2,25 kN",
      "3,xx",
      "4,25.012",
    ]);
    expect(problems.map((p) => `${p.where} ${p.what}`)).toEqual([
      "page.yaml:9:1 d on line 3",
      "page.yaml:10:1 d on line 4",
    ]);
    expect(columns["d"]?.values).toEqual([0.025011, undefined, undefined, 0.025012]);
  });

  test("numbers without a unit are refused once for their column", () => {
    expect(read("{ p: tag, d: length }", ["p,d", "1,25.011", "2,25.012"]).problems.map(sentence)).toEqual([
      "page.yaml:4:1 · column d: got numbers without a unit, must carry its unit in the heading; write the unit that the numbers are in, as in d/mm or d/in",
    ]);
  });

  test("ratios and counts need no unit", () => {
    expect(read("{ n: count, r: ratio }", ["n,r", "3,0.14"]).columns["r"]?.values).toEqual([0.14]);
  });

  test("a unit of another kind in the heading is refused", () => {
    expect(read("{ d: length }", ["d/kN", "3"]).problems).toHaveLength(1);
  });

  test("a heading that no column names, and a column without heading, are said", () => {
    const { problems } = read("{ p: tag, d: length }", ["p,depth", "1,u1"]);
    expect(problems.map((p) => p.code)).toEqual(["unknown-column", "missing-column"]);
    expect(problems[0]?.suggestions).toEqual(["depth: text"]);
  });

  test("a row with the wrong number of fields is named by the line of the page", () => {
    expect(read("{ p: tag, d: length }", ["p,d/mm", "1,25.011,9"]).problems[0]?.where).toBe("page.yaml:8:1");
  });

  test("the item is not changed", () => {
    const item = reading("{ p: tag, d: length }", ["p,d/mm", "1,25.011"]);
    const before = JSON.stringify(item);
    readingTable(Object.freeze(item));
    expect(JSON.stringify(item)).toBe(before);
  });
});
