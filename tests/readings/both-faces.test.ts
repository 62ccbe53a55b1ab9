// The terminal and the page take a file in alike: the same units, the same questions, the same fates, the same table.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { readingsCommand } from "../../src/cli/commands/readings.ts";
import type { DecimalMark, Delimiter, ReadingItem } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { textOfBytes } from "../../src/readings/file-text.ts";
import { noAnswers, planImport } from "../../src/readings/plan-import.ts";

/** What the person says to what is asked. */
interface Said {
  readonly reason?: string;
  readonly by?: string;
  readonly far?: boolean;
  readonly decimal?: DecimalMark;
  readonly delimiter?: Delimiter;
}

interface Outcome {
  /** "2 new" for each line of the file that is a reading. */
  readonly fates: readonly string[];
  /** Code and place of what hinders. */
  readonly problems: readonly string[];
  /** The rows of the reading afterwards. */
  readonly rows: string;
}

function readingIn(page: string): ReadingItem {
  const { page: read, problems } = readPage(page, "page.yaml");
  const found = read?.items[0];
  if (found?.kind !== "reading") throw new Error(problems.map(sentence).join("; "));
  return found;
}

/** As `splitline readings page.yaml r --in file.csv --write` does it. */
async function inTerminal(page: string, file: string | Uint8Array, said: Said = {}): Promise<Outcome> {
  const folder = mkdtempSync(join(tmpdir(), "splitline-faces-"));
  const [at, csv] = [join(folder, "page.yaml"), join(folder, "file.csv")];
  writeFileSync(at, page);
  writeFileSync(csv, file);
  const { reason, by, far, decimal, delimiter } = said;
  const flags = [
    ...(reason === undefined ? [] : ["--reason", reason]),
    ...(by === undefined ? [] : ["--by", by]),
    ...(far ? ["--as-read"] : []),
    ...(decimal === undefined ? [] : ["--decimal", decimal]),
    ...(delimiter === undefined ? [] : ["--delimiter", delimiter]),
  ];
  const words = [at, "r", "--in", csv, "--write", "--json", ...flags];
  const { out = "", err = "" } = await readingsCommand(words, Number.POSITIVE_INFINITY);
  expect(err).toBe("");
  const data = JSON.parse(out);
  const { rows } = readingIn(readFileSync(at, "utf8"));
  rmSync(folder, { recursive: true });
  return {
    fates: (data.rows ?? []).map((row: { line: number; fate: string }) => `${row.line} ${row.fate}`),
    problems: (data.problems ?? []).map((p: Problem) => `${p.code}: ${p.what}`),
    rows,
  };
}

/** As the panel of the page does it: the bytes of a file, what stands in the reading, and the answers. */
function onPage(page: string, file: string | Uint8Array, { far, reason = "", ...said }: Said = {}): Outcome {
  const item = readingIn(page);
  const text = textOfBytes(typeof file === "string" ? new TextEncoder().encode(file) : file);
  const answers = { ...noAnswers, ...said, reason, far: far ? "taken as read" : "" };
  const plan = isProblem(text) ? undefined : planImport(item, item.rows, text, answers);
  const problems = isProblem(text) ? [text] : [...(plan?.faults ?? []), ...(plan?.asked ?? [])];
  return {
    fates: plan?.text === undefined ? [] : plan.rows.map(({ row, fate }) => `${row.line} ${fate}`),
    problems: problems.map(({ code, what }) => `${code}: ${what}`),
    rows: plan?.text ?? item.rows,
  };
}

const pageWith = (heads: string, rows: readonly string[]): string =>
  `splitline: 1\ntitle: t\npage:\n  - reading: r\n${heads
    .split("\n")
    .map((line) => `    ${line}\n`)
    .join("")}    rows: |\n${rows.map((row) => `      ${row}\n`).join("")}`;

const bores = pageWith(
  `columns: { position: tag, direction: tag, diameter: length }
key: [position, direction]
expect: { position: [1, 3, 5, 7], direction: [along, across] }
odd: { diameter: 10 um }`,
  ["position,direction,diameter/mm", "1,along,25.010", "1,across,25.4", "3,along,25.034", "3,across,"],
);
const remarked = pageWith(
  `columns: { bolt: tag, d: length }
key: [bolt]`,
  [
    "bolt,d/mm,state,reason,by",
    "A1,20.0,set aside,gauge slipped,fitter B",
    "A2,20.1,,,",
    "A2,20.2,,read again,fitter B",
  ],
);
const tightened = pageWith(
  `columns: { nut: tag, torque: torque, angle: angle, note: text }
key: [nut]`,
  ["nut,torque/N.m,angle/deg,note", "1,500,30,", "2,510,,dry"],
);
const keyless = pageWith("columns: { position: tag, stretch: length }", [
  "position,stretch/mm",
  "5,0.230",
  "5,0.230",
]);
const german = pageWith(
  `columns: { position: tag, depth: length, remark: text }
key: [position]
decimal: comma
delimiter: semicolon`,
  ["position;depth/mm;remark", "1;-1,25;=1+1"],
);
const empty = pageWith("columns: { position: tag, d: length }\nkey: [position]", []).replace("|\n", '""\n');

interface Case {
  readonly page: string;
  readonly file: string | Uint8Array;
  readonly said?: Said;
  /** What becomes of the lines, or what hinders. */
  readonly fates?: string;
  readonly problems?: string;
  /** Rows behind those that were there, or all of them where it begins with a heading. */
  readonly adds?: string;
  readonly rows?: string;
}

const h = "position,direction,diameter/mm\n";
const w = "bolt,d/mm\n";
const utf16 = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le"));

const corpus: Readonly<Record<string, Case>> = {
  // worth, not spelling
  "25.01 over 25.010": { page: bores, file: `${h}1,along,25.01\n`, fates: "2 same" },
  "1 in over 25.4 mm": { page: bores, file: "position,direction,diameter/in\n1,across,1\n", fates: "2 same" },
  "a field with its own unit over the same size": {
    page: bores,
    file: `${h}1,along,25010 um\n`,
    fates: "2 same",
  },
  "inches beside millimetres": {
    page: bores,
    file: "position,direction,diameter [in]\n5,along,0.985\n",
    fates: "2 new",
    adds: "5,along,0.985 in\n",
  },
  "a blank says nothing": { page: bores, file: `${h}1,along,\n`, fates: "2 same" },
  "a blank of the page is filled": {
    page: bores,
    file: `${h}3,across,25.033\n`,
    fates: "2 fills a blank",
    rows: `${h}1,along,25.010\n1,across,25.4\n3,along,25.034\n3,across,25.033\n`,
  },
  "one blank of two filled": {
    page: tightened,
    file: "nut,angle/deg\n2,31\n",
    fates: "2 fills a blank",
    rows: "nut,torque/N.m,angle/deg,note\n1,500,30,\n2,510,31,dry\n",
  },
  // corrections
  "a correction without a reason": {
    page: bores,
    file: `${h}1,along,25.02\n`,
    problems: "no-reason: line 2",
  },
  "a correction with the person's reason": {
    page: bores,
    file: `${h}1,along,25.02\n`,
    said: { reason: "read again" },
    fates: "2 corrects",
    rows: `${h.replace("\n", ",reason\n")}1,along,25.010,\n1,across,25.4,\n3,along,25.034,\n3,across,,\n1,along,25.02,read again\n`,
  },
  "a correction with the person's reason and name": {
    page: remarked,
    file: `${w}A2,20.3\n`,
    said: { reason: "read again", by: "fitter D" },
    fates: "2 corrects",
    adds: "A2,20.3,,read again,fitter D\n",
  },
  "a correction with its own reason": {
    page: remarked,
    file: "bolt,d/mm,reason,by\nA2,20.3,wrong face,fitter C\n",
    fates: "2 corrects",
    adds: "A2,20.3,,wrong face,fitter C\n",
  },
  "who corrected before does not say so again": {
    page: remarked,
    file: "bolt,d/mm,reason\nA2,20.3,wrong face\n",
    fates: "2 corrects",
    adds: "A2,20.3,,wrong face,\n",
  },
  "what was corrected, once more": { page: remarked, file: `${w}A2,20.1\n`, fates: "2 same" },
  "what was set aside, once more": { page: remarked, file: `${w}A1,20.00\n`, fates: "2 same" },
  "a place whose reading is set aside": {
    page: remarked,
    file: `${w}A1,20.05\n`,
    fates: "2 new",
    adds: "A1,20.05,,,\n",
  },
  "a correction takes over what it does not say": {
    page: tightened,
    file: "nut,angle/deg,reason\n1,33,dial slipped\n",
    fates: "2 corrects",
    rows: "nut,torque/N.m,angle/deg,note,reason\n1,500,30,,\n2,510,,dry,\n1,500,33,,dial slipped\n",
  },
  // far off
  "a value far from all others": {
    page: bores,
    file: `${h}5,along,998\n`,
    problems: "far-off: line 2, diameter",
  },
  "a far value with its own reason": {
    page: bores,
    file: "position,direction,diameter/mm,reason\n5,along,998,as asked for\n",
    fates: "2 new",
    rows: `${h.replace("\n", ",reason\n")}1,along,25.010,\n1,across,25.4,\n3,along,25.034,\n3,across,,\n5,along,998,as asked for\n`,
  },
  "a far value that the person takes": {
    page: bores,
    file: `${h}5,along,998\n`,
    said: { far: true },
    fates: "2 new",
    rows: `${h.replace("\n", ",reason\n")}1,along,25.010,\n1,across,25.4,\n3,along,25.034,\n3,across,,\n5,along,998,taken as read\n`,
  },
  "a far correction is asked about although its reason is given": {
    page: bores,
    file: `${h}1,along,998\n`,
    said: { reason: "read again" },
    problems: "far-off: line 2, diameter",
  },
  "an odd value is no far one": {
    page: bores,
    file: `${h}5,along,25.6\n`,
    fates: "2 new",
    adds: "5,along,25.6\n",
  },
  // headings
  "one heading for each place": {
    page: bores,
    file: "position,along_mm,across_mm\n5,25.02,25.03\n7,,25.04\n",
    fates: "2 new, 2 new, 3 new",
    adds: "5,along,25.02\n5,across,25.03\n7,across,25.04\n",
  },
  "one place under two headings": {
    page: bores,
    file: "position,along_mm,Along [mm]\n5,25.02,25.02\n",
    problems: "column-twice: line 1, headings along_mm and Along [mm]",
  },
  "a place in a heading and in a column": {
    page: bores,
    file: "position,direction,along_mm\n5,along,25.02\n",
    problems: "column-twice: line 1, headings direction and along_mm",
  },
  "two headings for one column": {
    page: bores,
    file: "position,direction,diameter/mm,Diameter [in]\n5,along,25.02,0.985\n",
    problems: "column-twice: line 1, headings diameter/mm and Diameter [in]",
  },
  "headings in another case and order, one unknown": {
    page: bores,
    file: "Gauge,Diameter_mm,DIRECTION,Position\n7,25.02,along,5\n",
    fates: "2 new",
    adds: "5,along,25.02\n",
  },
  "a key column that is missing": {
    page: bores,
    file: "position,diameter/mm\n5,25.02\n",
    problems: "missing-column: line 1",
  },
  "nothing that is read there": {
    page: bores,
    file: "position,direction\n5,along\n",
    problems: "missing-column: line 1",
  },
  "no column that is read of several": {
    page: tightened,
    file: "nut,note\n3,dry\n",
    problems: "missing-column: line 1",
  },
  "one of several columns": {
    page: tightened,
    file: "nut,torque/lbf.ft\n3,370\n",
    fates: "2 new",
    adds: "3,370 lbf.ft,,\n",
  },
  "a unit of another kind": {
    page: bores,
    file: "position,direction,diameter/kg\n5,along,25.02\n",
    problems: "wrong-kind: line 1, heading diameter/kg",
  },
  "no unit": {
    page: bores,
    file: "position,direction,diameter\n5,along,25.02\n7,along,25.02\n",
    problems: "no-unit: line 2, diameter",
  },
  // tags
  "a tag in another case is that tag": {
    page: bores,
    file: `${h}5,Along,25.02\n`,
    fates: "2 new",
    adds: "5,along,25.02\n",
  },
  "a tag of the page in another case": { page: remarked, file: `${w}a2,20.2\n`, fates: "2 same" },
  "a tag of the file in two cases": {
    page: remarked,
    file: `${w}B1,20.2\nb1,20.3\n`,
    problems: "duplicate-reading: line 3",
  },
  "a tag nobody expects": {
    page: bores,
    file: `${h}9,along,25.02\n`,
    problems: "not-expected: line 2, position",
  },
  "a tag that nobody named beforehand": {
    page: remarked,
    file: `${w}C7,20.2\n`,
    fates: "2 new",
    adds: "C7,20.2,,,\n",
  },
  "a blank key": { page: bores, file: `${h},along,25.02\n`, problems: "no-key: line 2, position" },
  "swapped headings": {
    page: bores,
    file: "direction,position,diameter/mm\n5,along,25.02\n7,across,25.02\n",
    problems: "not-expected: line 2, position, not-expected: line 3, position",
  },
  "a key twice": {
    page: bores,
    file: `${h}5,along,25.02\n5,along,25.03\n`,
    problems: "duplicate-reading: line 3",
  },
  "a row twice": {
    page: bores,
    file: `${h}5,along,25.02\n5,along,25.020\n`,
    problems: "duplicate-reading: line 3",
  },
  "a key twice, the second with its reason": {
    page: remarked,
    file: "bolt,d/mm,reason\nC1,20.3,\nC1,20.4,read again\n",
    fates: "2 new, 3 corrects",
    adds: "C1,20.3,,,\nC1,20.4,,read again,\n",
  },
  "a general reason explains no second row of the file": {
    page: bores,
    file: `${h}5,along,25.02\n5,along,25.03\n`,
    said: { reason: "read again" },
    problems: "duplicate-reading: line 3",
  },
  "rows without a key, as often as they are there": {
    page: keyless,
    file: "position,stretch/mm\n5,0.23\n5,0.230\n5,0.23\n15,0.217\n",
    fates: "2 same, 3 same, 4 new, 5 new",
    adds: "5,0.23\n15,0.217\n",
  },
  // remarks
  "set aside with its reason": {
    page: remarked,
    file: "bolt,d/mm,state,reason,by\nC1,20.3,Set aside,burr,fitter C\n",
    fates: "2 new",
    adds: "C1,20.3,Set aside,burr,fitter C\n",
  },
  "set aside without a reason": {
    page: remarked,
    file: "bolt,d/mm,state\nC1,20.3,set aside\n",
    problems: "no-reason: line 2, state",
  },
  "states that were worked out say nothing": {
    page: remarked,
    file: "bolt,d/mm,state\nA2,20.1,corrected\n",
    fates: "2 same",
  },
  "when it was read, for which there is no column": {
    page: remarked,
    file: "bolt,d/mm,when,by\nC1,20.3,2026-05-04,fitter C\n",
    fates: "2 new",
    adds: "C1,20.3,,,fitter C\n",
  },
  // manner of writing
  "decimal commas between semicolons": {
    page: bores,
    file: "position;direction;diameter/mm\n5;along;25,0200\n",
    fates: "2 new",
    adds: "5,along,25.0200\n",
  },
  "a file with points into a table with commas": {
    page: german,
    file: "remark,depth/mm,position\n'=2+2,1.5,3\n",
    fates: "2 new",
    adds: "3;1,5;=2+2\n",
  },
  "a comma of two meanings": {
    page: bores,
    file: 'position,direction,diameter/um\n5,along,"25,020"\n',
    problems: "csv-decimal: table",
  },
  "the same once its mark is said": {
    page: bores,
    file: 'position,direction,diameter/mm\n5,along,"25,020"\n',
    said: { decimal: "comma" },
    fates: "2 new",
    adds: "5,along,25.020\n",
  },
  "two marks": {
    page: bores,
    file: "position;direction;diameter/mm\n5;along;25,02\n7;along;25.02\n",
    problems: "csv-decimal: table",
  },
  "a ragged row": { page: bores, file: `${h}5,along\n`, problems: "csv-fields: line 2" },
  "blank rows and rows with nothing but a key": {
    page: bores,
    file: `${h}\n5,along,\n7,along,25.02\n`,
    fates: "4 new",
    adds: "7,along,25.02\n",
  },
  "quotes, doubled and with a line end inside": {
    page: german,
    file: 'position,depth/mm,remark\n"3",1.5,"so ""far"";\nand further"\n',
    fates: "2 new",
    adds: '3;1,5;"so ""far"";\nand further"\n',
  },
  "a quote that is never closed": { page: bores, file: `${h}5,along,"25\n`, problems: "csv-quotes: line 2" },
  "a mark of the byte order and line ends of two characters": {
    page: bores,
    file: `\uFEFF${h}5,along,25.02\n`.replaceAll("\n", "\r\n"),
    fates: "2 new",
    adds: "5,along,25.02\n",
  },
  "UTF-16": { page: bores, file: utf16(`${h}5,along,25.02\n`), fates: "2 new", adds: "5,along,25.02\n" },
  "a word for a number": {
    page: bores,
    file: `${h}5,along,about 25\n`,
    problems: "not-a-quantity: line 2, diameter",
  },
  "a bell": { page: bores, file: `${h}5,along,25.02\u0007\n`, problems: "odd-character: line 2" },
  "a spreadsheet": {
    page: bores,
    file: Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 0]),
    problems: "not-text: file",
  },
  "nothing at all": { page: bores, file: " \n\n", problems: "csv-empty: table" },
  "headings alone": { page: bores, file: h, problems: "csv-empty: line 1" },
  "into a reading that holds nothing yet": {
    page: empty,
    file: "d/in,position\n0.5,1\n",
    fates: "2 new",
    rows: "position,d/in\n1,0.5\n",
  },
};

describe("the same file through both faces: the same fates and the same table", () => {
  test.each(Object.entries(corpus))("%s", async (_, { page, file, said, fates, problems, adds, rows }) => {
    const before = readingIn(page).rows;
    const [terminal, panel] = [await inTerminal(page, file, said), onPage(page, file, said)];
    expect(terminal).toEqual(panel);
    expect(panel).toEqual({
      fates: fates === undefined ? [] : fates.split(", "),
      problems: problems === undefined ? [] : problems.split(/, (?=[a-z]+-)/),
      rows: rows ?? before + (adds ?? ""),
    });
  });

  test.each(Object.entries(corpus).filter(([, { fates }]) => fates !== undefined))(
    "%s, and once more brings nothing new",
    async (_, { page, file, said }) => {
      const { rows } = onPage(page, file, said);
      const after = pageWith(headOf(page), rows.trimEnd().split("\n"));
      if (readingIn(after).rows !== rows) return; // a field of several lines cannot be put into a page by hand
      const again = onPage(after, file, said);
      expect({ ...again, fates: again.fates.map((fate) => fate.replace(/^\d+ /, "")) }).toEqual({
        fates: again.fates.map(() => "same"),
        problems: [],
        rows,
      });
      expect(await inTerminal(after, file, said)).toEqual(again);
    },
  );
});

const headOf = (page: string): string =>
  page.split("\n").slice(4).join("\n").split("\n    rows:")[0]?.replaceAll(/^ {4}/gm, "") ?? "";

const single = (columns: string, heads: string): ReadingItem =>
  readingIn(pageWith(`columns: ${columns}\nkey: [position]`, heads.split("\n")));

const torques = single("{ position: tag, torque: torque }", "position,torque/N.m");
const sizes = single("{ position: tag, d: length }", "position,d/mm");
const temps = single("{ position: tag, temp: temperature }", "position,temp/degC");

function take(reading: ReadingItem, file: string, decimal?: DecimalMark) {
  const { text = "", faults } = planImport(reading, reading.rows, file, { ...noAnswers, decimal });
  return { text, faults };
}

describe("headings and marks", () => {
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
    const { text, faults } = take(single("{ position: tag, d: length }", "position,d/mm\n1,25.0"), file);
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
