// What a file would do to a reading, worked out before anything is changed.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import type { ReadingItem } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import { textOfBytes } from "../../src/readings/file-text.ts";
import { type ImportAnswers, noAnswers, nothingNew, planImport } from "../../src/readings/plan-import.ts";
import { emptyPage } from "../views/bench-page.ts";

function reading(name: string, text = emptyPage): ReadingItem {
  const { page, problems } = readPage(text, "page.yaml");
  const item = page?.items.find((found) => found.kind === "reading" && found.name === name);
  if (item?.kind !== "reading") throw new Error(problems.map(sentence).join("; "));
  return item;
}

const holes = reading("holes");
const heads = "position,depth,direction,diameter/mm,state,reason\n";
const plan = (file: string, answers: Partial<ImportAnswers> = {}, current = heads) =>
  planImport(holes, current, file, { ...noAnswers, ...answers });
const oddIn = (after: ReturnType<typeof plan>["after"]) =>
  after?.states.filter((state) => state === "odd").length;
const faults = (file: string, answers?: Partial<ImportAnswers>, current?: string) =>
  plan(file, answers, current).faults.map(sentence);

describe("a good file", () => {
  test("is read with its own delimiter, decimal mark and unit, and keeps both", () => {
    const { text, csv, rows } = plan(
      "Position;Depth;Direction;Diameter [in]\r\n1;up outer;along;0,9848\r\n1;up outer;across;0,9847\r\n",
    );
    expect(csv).toMatchObject({ delimiter: "semicolon", decimal: "comma" });
    expect(rows.map(({ fate }) => fate)).toEqual(["new", "new"]);
    expect(text).toBe(`${heads}1,up outer,along,0.9848 in,,\n1,up outer,across,0.9847 in,,\n`);
  });

  test("keeps the rows that are there, byte for byte, and their delimiter and decimal mark", () => {
    const current =
      'position;depth;direction;diameter/mm;state;reason\n1;up outer;along;25,0120;;"so; quoted"\n1;up outer;across;;;\n';
    const { text, rows } = plan(
      "position,depth,direction,diameter/mm\n1,up outer,across,25.011\n3,up outer,along,25.034\n",
      {},
      current,
    );
    expect(rows.map(({ fate }) => fate)).toEqual(["fills a blank", "new"]);
    expect(text).toBe(
      'position;depth;direction;diameter/mm;state;reason\n1;up outer;along;25,0120;;"so; quoted"\n1;up outer;across;25,011;;\n3;up outer;along;25,034;;\n',
    );
  });

  test("may have its places side by side, as the demo's holes.csv has", () => {
    const demo = readFileSync(fileURLToPath(new URL("../../demo-data/holes.csv", import.meta.url)), "utf8");
    const asFound = demo
      .split("\n")
      .filter((line) => !line.startsWith("after rework"))
      .join("\n");
    expect(faults(asFound)[0]).toContain("column position of holes");
    const columns = { hole_no: "position", stage: "", note: "" };
    const { rows, skipped, text, after } = plan(asFound, { columns });
    expect(rows.length).toBe(96);
    expect(skipped.map(({ line }) => line)).toEqual([3, 5, 8, 10, 13, 15, 18, 20]); // plain holes, nothing read
    expect(text?.split("\n")[1]).toBe("1,up outer,along,25.012,,");
    expect(oddIn(after)).toBe(0);
    expect(faults(demo, { columns }).some((words) => words.includes("hole 3, up outer, along again"))).toBe(
      true,
    );
  });

  test("a second time brings nothing new, and says so", () => {
    const file = "position,depth,direction,diameter/mm\n1,up outer,along,25.012\n";
    const after = plan(file).text;
    const again = plan(file, {}, after);
    expect(again).toMatchObject({ faults: [], asked: [], text: after });
    expect(sentence(nothingNew(again))).toBe(
      "table: got 1 readings that are all there already, must bring something new",
    );
  });

  test("corrects what is there only with a reason, and the first stays", () => {
    const current = `${heads}1,up outer,along,25.102,,\n`;
    const file = "position,depth,direction,diameter/mm\n1,up outer,along,25.012\n";
    const { rows, asked, text } = plan(file, {}, current);
    expect(rows.map(({ fate }) => fate)).toEqual(["asked"]);
    expect({ text, asked: asked.map(sentence) }).toEqual({
      text: undefined,
      asked: [
        "line 2: got hole 1, up outer, along, which the page has already, must say why it corrects the earlier one in a column reason",
      ],
    });
    expect(plan(file, { reason: "digits swapped" }, current).text).toBe(
      `${current}1,up outer,along,25.012,,digits swapped\n`,
    );
  });

  test("tells how many readings would be odd", () => {
    const rows = ["along,25.012", "across,25.102"].map((row) => `1,up outer,${row}\n1,up split,${row}\n`);
    const { after } = plan(`position,depth,direction,diameter/mm\n${rows.join("")}1,lo split,along,25.011\n`);
    expect(oddIn(after)).toBe(2);
  });
});

describe("a wrong file is answered by line and leaves nothing behind", () => {
  test.each([
    [
      "mixed decimal marks",
      "position;depth;direction;diameter/mm\n1;up outer;along;25,012\n1;up outer;across;25.011\n",
      "25,012 on line 2 and 25.011 on line 3",
    ],
    ["no unit", "position,depth,direction,diameter\n1,up outer,along,25.012\n", "25.012 without a unit"],
    [
      "a unit of another kind",
      "position,depth,direction,diameter/kN\n1,up outer,along,25.012\n",
      "line 1, heading diameter/kN",
    ],
    [
      "duplicate keys",
      "position,depth,direction,diameter/mm\n1,up outer,along,25.012\n3,up outer,along,25.0\n1,up outer,along,25.013\n",
      "line 4: got hole 1, up outer, along again, after line 2",
    ],
    [
      "swapped columns",
      "diameter/mm,depth,direction,position\n1,up outer,along,25.012\n3,up outer,across,25.011\n",
      "the heading diameter/mm stands over such tags: are the two headings swapped?",
    ],
    [
      "a place that is not expected",
      "position,depth,direction,diameter/mm\n2,up outer,along,25.012\n",
      "line 2, position: got 2, must be one of 1, 3, 5",
    ],
    [
      "a word for a number",
      "position,depth,direction,diameter/mm\n1,up outer,along,about 25\n",
      "line 2, diameter: got",
    ],
    [
      "a row without its key",
      "position,depth,direction,diameter/mm\n,up outer,along,25.012\n",
      "line 2, position: got nothing, must say which reading the row is",
    ],
    ["a row too short", "position,depth,direction,diameter/mm\n1,up outer,25.012\n", "line 2: got 3 fields"],
    [
      "one column twice",
      "position,depth,direction,diameter/mm,Diameter [in]\n1,up outer,along,25.012,0.98\n",
      "headings diameter/mm and Diameter [in]: got column diameter twice",
    ],
    [
      "no column of readings",
      "position,depth,direction\n1,up outer,along\n",
      "must hold the column diameter of holes as well",
    ],
    [
      "an open quote",
      'position,depth,direction,diameter/mm\n1,"up outer,along,25.012\n',
      "a quote that is never closed",
    ],
    ["nothing", "\n\n", "got an empty file"],
    ["a word list", "hello", "must hold the columns position, depth, direction and diameter of holes"],
  ])("%s", (_, file, words) => {
    const made = plan(file);
    expect(made.text).toBeUndefined();
    expect(made.faults.map(sentence).join("\n")).toContain(words);
  });

  test("headings alone bring nothing new", () => {
    const made = plan("position,depth,direction,diameter/mm\n");
    expect(made.text).toBe(heads);
    expect(sentence(nothingNew(made))).toContain("got no reading");
    const over = plan("position,depth,direction,diameter/mm\n", {}, `${heads}1,up outer,along,25.0,,\n`);
    expect(over.faults.map(sentence)).toEqual([
      "line 1: got headings with no row below, must have at least one row",
    ]);
  });

  test("100 000 rows", () => {
    const rows = Array.from({ length: 100_000 }, (_, i) => `${i},up outer,along,25.012\n`);
    expect(faults(`position,depth,direction,diameter/mm\n${rows.join("")}`)).toEqual([
      expect.stringContaining("must have at most 20000 rows"),
    ]);
  });

  test("a comma that may part thousands is asked about, and the answer is taken", () => {
    const file = "position;depth;direction;diameter/um\n1;up outer;along;25,012\n";
    expect(plan(file).faults[0]?.suggestions).toEqual(["comma"]);
    expect(plan(file, { decimal: "comma" }).text).toBe(`${heads}1,up outer,along,25.012 um,,\n`);
  });

  test("a unit chosen by the person is taken", () => {
    const file = "position,depth,direction,diameter\n1,up outer,along,25.012\n";
    expect(plan(file, { units: { diameter: "mm" } }).text).toBe(`${heads}1,up outer,along,25.012,,\n`);
  });

  test("a correction asks why, and brings the column of reasons where there is none", () => {
    const plain = reading(
      "holes",
      emptyPage
        .replace(", state: tag, reason: text }\n    key: [position", " }\n    key: [position")
        .replace(
          "diameter/mm,state,reason\n  - reading: shanks",
          "diameter/mm\n      1,up outer,along,25.102\n  - reading: shanks",
        ),
    );
    const file = "position,depth,direction,diameter/mm\n1,up outer,along,25.012\n";
    expect(planImport(plain, plain.rows, file, noAnswers)).toMatchObject({
      text: undefined,
      asked: [{ code: "no-reason" }],
    });
    const made = planImport(plain, plain.rows, file, { ...noAnswers, reason: "digits swapped" });
    expect(made.text).toMatch(
      /diameter\/mm,reason\n1,up outer,along,25.102,\n1,up outer,along,25.012,digits swapped\n$/,
    );
  });
});

describe("the bytes of a file", () => {
  const bytes = (...values: number[]) => new Uint8Array(values);
  test.each([
    ["a spreadsheet", bytes(0x50, 0x4b, 3, 4, 20, 0), "a spreadsheet or a zip file"],
    ["a PDF", new TextEncoder().encode("%PDF-1.7"), "a PDF"],
    ["bytes with zeros", bytes(1, 2, 0, 4), "bytes that are no text"],
    ["another encoding", bytes(0x31, 0x2c, 0xb0, 0x43), "no UTF-8 text"],
  ])("%s is named for what it is", (_, found, words) => {
    const text = textOfBytes(found);
    expect(isProblem(text) && sentence(text)).toContain(words);
  });
  test("UTF-8 with or without its mark and UTF-16 are text", () => {
    const heading = "diameter/µm\n";
    const wide = bytes(
      0xff,
      0xfe,
      ...heading.split("").flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
    );
    expect(textOfBytes(new TextEncoder().encode(heading))).toBe(heading);
    expect(textOfBytes(new TextEncoder().encode(`\uFEFF${heading}`))).toBe(heading);
    expect(textOfBytes(wide)).toBe(heading);
  });
});
