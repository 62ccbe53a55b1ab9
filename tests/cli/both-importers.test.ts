// The terminal and the page take a file in alike: the same units, the same questions.
import { describe, expect, test } from "vitest";
import { planImport as planInTerminal } from "../../src/cli/readings/import-plan.ts";
import type { DecimalMark, ReadingItem } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { type Problem, sentence } from "../../src/problem.ts";
import { planImport as planOnPage } from "../../src/views/csv/import-plan.ts";

function item(columns: string, heads: string): ReadingItem {
  const text = `splitline: 1\ntitle: t\npage:\n  - reading: r\n    columns: ${columns}\n    key: [position]\n    rows: |\n      ${heads}\n`;
  const { page, problems } = readPage(text, "page.yaml");
  const found = page?.items[0];
  if (found?.kind !== "reading") throw new Error(problems.map(sentence).join("; "));
  return found;
}

const torques = item("{ position: tag, torque: torque }", "position,torque/N.m");
const sizes = item("{ position: tag, d: length }", "position,d/mm");
const temps = item("{ position: tag, temp: temperature }", "position,temp/degC");

interface Taken {
  readonly text: string;
  readonly faults: readonly Problem[];
}

const inTerminal = (reading: ReadingItem, file: string, decimal?: DecimalMark): Taken => {
  const plan = planInTerminal(reading, file, { mode: "add", asRead: true, decimal });
  return "rows" in plan ? { text: plan.text, faults: [] } : { text: "", faults: plan };
};
const onPage = (reading: ReadingItem, file: string, decimal?: DecimalMark): Taken => {
  const plan = planOnPage(reading, reading.rows, file, { columns: {}, units: {}, reason: "", decimal });
  return { text: plan.text ?? "", faults: plan.faults };
};
const faces = [
  ["terminal", inTerminal],
  ["page", onPage],
] as const;

describe.each(faces)("%s", (_, take) => {
  test.each<[string, ReadingItem, string]>([
    ["Position,Torque_ft_lb\n1,450\n", torques, "1,450 lbf.ft\n"],
    ["position,torque ft-lb\n1,450\n", torques, "1,450 lbf.ft\n"],
    ["position,d thou\n1,984.3\n", sizes, "1,984.3 thou\n"],
    ["position,temp F\n1,68\n", temps, "1,68 degF\n"],
    ["position,temp_C\n1,20\n", temps, "1,20\n"],
  ])("%j is read in the unit of its heading", (file, reading, row) => {
    const { text, faults } = take(reading, file);
    expect(faults.map(sentence)).toEqual([]);
    expect(text.endsWith(row), text).toBe(true);
  });

  test.each<[string, ReadingItem, RegExp]>([
    ["position,Torque_kgm\n1,45\n", torques, /N\.m|lbf/],
    ["position,Torqu_ft_lb\n1,450\n", torques, /N\.m/],
    ["position,d_inces\n1,0.98\n", sizes, /mm|thou/],
  ])("what is said about %j names no other unit", (file, reading, other) => {
    const { text, faults } = take(reading, file);
    expect(text).toBe("");
    expect(faults.map(sentence).join("\n")).not.toMatch(other);
  });

  test("a number without a unit is asked about with two units, never with one", () => {
    const words = take(torques, "position,torque\n1,450\n").faults.map(sentence).join("\n");
    expect(words).toContain("450 without a unit");
    expect(words).toContain("as in torque/N.m or torque/lbf.ft");
  });

  test.each([
    ["position,d/mm,reason\n1,25.2,read again\n", "position,d/mm,reason\n1,25.0,\n1,25.2,read again\n"],
    [
      "position,d/mm,state,reason,by\n1,25.2,,read again,fitter B\n",
      "position,d/mm,reason,by\n1,25.0,,\n1,25.2,read again,fitter B\n",
    ],
    ["position,d/mm,reason\n3,25.1,\n", "position,d/mm\n1,25.0\n3,25.1\n"],
  ])("%j goes into a table without a column of reasons", (file, after) => {
    const { text, faults } = take(item("{ position: tag, d: length }", "position,d/mm\n      1,25.0"), file);
    expect(faults.map(sentence)).toEqual([]);
    expect(text).toBe(after);
  });

  test("1.234 between semicolons may be more than a thousand, and is asked about", () => {
    const file = "position;d/um\n1;1.234\n2;1.250\n";
    const [fault] = take(sizes, file).faults;
    expect(fault && sentence(fault)).toBe(
      "table: got 1.234 on line 2, must be clear about the point; it may mark decimals or thousands; write thousands without a mark, or say: decimal: point",
    );
    expect(fault?.suggestions).toEqual(["point"]);
    expect(take(sizes, file, "point").text).toContain("1,1.234 um\n2,1.250 um\n");
    const words = take(sizes, file, "comma").faults.map(sentence).join("\n");
    expect(words).toContain("got 1.234, must mark its decimals with a comma, as the rest of the table");
  });

  test.each([
    ["1.2345", "position;d/mm\n1;1.234\n2;1.2345\n"],
    ["0.250", "position;d/mm\n1;1.234\n2;0.250\n"],
    ["a comma between the fields", "position,d/mm\n1,1.234\n2,1.250\n"],
    ["a tab between the fields", "position\td/mm\n1\t1.234\n2\t1.250\n"],
  ])("with %s the point is sure", (_why, file) => {
    expect(take(sizes, file).faults.map(sentence)).toEqual([]);
  });
});
