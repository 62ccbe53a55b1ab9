// Files that are no readings of this page: each is answered with one sentence that names the line.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readingsCommand } from "../../src/cli/commands/readings.ts";
import { root, splitlineIn } from "./built.ts";
import { type Folder, heads, pageFolder, pageText } from "./readings-page.ts";

let at: Folder;
beforeEach(() => {
  at = pageFolder();
});
afterEach(() => at.remove());

type Wrong = readonly [what: string, content: string | Uint8Array, says: RegExp];

const wrongFiles: readonly Wrong[] = [
  [
    "mixed decimal marks",
    "position;direction;diameter/mm\n7;along;25,01\n7;across;25.02\n",
    /25,01 on line 2 and 25\.02 on line 3/,
  ],
  [
    "a comma of two meanings",
    'position,direction,diameter/um\n7,along,"25,010"\n',
    /on line 2.*--decimal comma/,
  ],
  ["two delimiters", "position;a,direction;b\n1;2,3;4\n", /--delimiter/],
  [
    "no unit",
    "position,direction,diameter\n7,along,25.01\n",
    /line 2, diameter: got 25\.01 without a unit.*diameter\/mm/,
  ],
  [
    "a unit of another kind",
    "position,direction,diameter/kg\n7,along,25.01\n",
    /line 1, heading diameter\/kg/,
  ],
  [
    "a word for a number",
    `${heads}7,along,wide,,\n`,
    /line 2, diameter: got "wide", must be a number and a unit/,
  ],
  [
    "a key twice",
    `${heads}7,along,25.01,,\n7,along,25.02,,\n`,
    /line 3: got hole 7, along again, after line 2/,
  ],
  [
    "a row twice",
    `${heads}1,along,25.010,,\n1,along,25.010,,\n`,
    /line 3: got hole 1, along again, after line 2/,
  ],
  [
    "a key of the page without a reason",
    `${heads}1,along,25.013,,\n`,
    /line 2: got hole 1, along, which the page has already.*reason/,
  ],
  [
    "set aside without a reason",
    `${heads}7,along,25.013,set aside,\n`,
    /line 2, state: got set aside without a reason, must say why/,
  ],
  ["a blank key", `${heads},along,25.013,,\n`, /line 2, position: got nothing/],
  [
    "a tag nobody expects",
    `${heads}9,along,25.013,,\n`,
    /line 2, position: got 9, must be one of 1, 3, 5, 7/,
  ],
  [
    "swapped columns",
    "direction,position,diameter/mm\n7,along,25.01\n7,across,25.02\n",
    /line 2, position: got along.*heading direction.*swapped/,
  ],
  [
    "a number among tags",
    "position,direction,diameter/mm\n25.01,along,7\n25.02,across,7\n",
    /line 2, position: got 25\.01, must be one of/,
  ],
  ["a diameter of 998 mm", `${heads}7,along,998,,\n`, /line 2, diameter: got 998 mm, must be near/],
  [
    "inches for millimetres",
    "position,direction,diameter/in\n7,along,25.01\n",
    /line 2, diameter: got 25\.01 in, must be near/,
  ],
  [
    "a column twice",
    "position,direction,diameter/mm,diameter_mm\n7,along,25,25\n",
    /line 1, headings diameter\/mm and diameter_mm/,
  ],
  ["a field too many", `${heads}7,along,25,01,,\n`, /line 2: got 6 fields, must have 5/],
  ["an open quote", `${heads}7,along,25.01,,"never\n`, /line 2: got a quote that is never closed/],
  [
    "a column that is missing",
    "position,direction\n7,along\n",
    /line 1: got the headings position, direction, must hold the column diameter/,
  ],
  [
    "a wide table",
    readFileSync(join(root, "demo-data/holes.csv")),
    /line 1: .*columns position, direction and diameter of holes.*one line for each value/,
  ],
  ["headings only", heads, /line 1: got headings with no row below/],
  ["nothing", "", /an empty file/],
  ["blanks only", " \n\n", /an empty file/],
  ["a spreadsheet", Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 0, 0]), /a spreadsheet or a zip file/],
  ["zero bytes", Uint8Array.from([0, 1, 2, 3]), /bytes that are no text/],
  ["another encoding", Uint8Array.from([0x70, 0xb5, 0x0a]), /no UTF-8 text/],
  ["a bell", `${heads}7,along,25.01,,\u0007\n`, /line 2: got the character U\+0007/],
  ["line ends of a kind long gone", "position,direction\r7,along\r", /line 1: got the character U\+000D/],
  [
    "100 000 rows",
    `${heads}${"7,along,25.01,,\n".repeat(100_000)}`,
    /got 100000 rows, must have at most 20000 rows/,
  ],
  ["3 MB", "x".repeat(3_000_000), /more than 2000000 bytes/],
];

describe("a wrong file is answered with one sentence, exit 2, and nothing is written", () => {
  it.each(wrongFiles)("%s", async (_, content, says) => {
    const before = statSync(at.page);
    const file = at.write("wrong.csv", content);
    const { exit, out, err } = await at.readings(["holes", "--in", file, "--write"]);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toMatch(says);
    expect(err.startsWith("wrong.csv · "), err).toBe(true);
    expect(err.trim().split("\n").length).toBeLessThan(3);
    expect(err).not.toMatch(/undefined|\[object|NaN|[.!]\n$/);
    expect({ text: at.text(), time: statSync(at.page).mtimeMs }).toEqual({
      text: pageText,
      time: before.mtimeMs,
    });
    expect(readdirSync(at.path).sort()).toEqual(["page.yaml", "wrong.csv"]);
    // the same as data, in this process
    const words = [at.page, "holes", "--in", join(at.path, file), "--write", "--json"];
    const { exit: same, out: json = "" } = await readingsCommand(words, Number.POSITIVE_INFINITY);
    const data: unknown = JSON.parse(json);
    expect(same).toBe(2);
    expect(data).toMatchObject({ problem: {}, written: false });
  });

  it("a folder, a missing file, and pages that are none", async () => {
    for (const [words, says] of [
      [["page.yaml", "holes", "--in", "."], /a folder, must be a CSV file/],
      [["page.yaml", "holes", "--in", "none.csv"], /no such file/],
      [["none.yaml"], /no such file or folder, must be a page file/],
      [["."], /a folder, must be a page file/],
      [[], /page: got nothing/],
      [["page.yaml", "hole"], /did you mean holes/],
      [["page.yaml", "limit"], /must be one of holes, trial, german/],
      [["page.yaml", "holes", "trial"], /name of one reading/],
      [["page.yaml", "--in", "a.csv"], /be named for --in/],
      [["page.yaml", "holes", "--write"], /come with --in/],
      [["page.yaml", "holes", "--out", "-", "--in", "-"], /--in and --out: got both/],
      [["page.yaml", "holes", "--in", "-", "--add", "--replace"], /--add and --replace: got both/],
      [["page.yaml", "holes", "--in", "-", "--decimal", "dot"], /--decimal: got dot, must be point or comma/],
    ] as const) {
      const { exit, out, err } = await splitlineIn(at.path, ["readings", ...words]);
      expect({ words, exit, out }).toEqual({ words, exit: 2, out: "" });
      expect(err).toMatch(says);
      expect(err.trim().split("\n")).toHaveLength(1);
    }
  });

  it("all wrong lines are named, in order, and a good row among them is not taken", async () => {
    const csv = `${heads}7,along,25.01,,\n9,along,25.01,,\n1,across,25.2,,\n`;
    const { exit, err } = await at.readings(["holes", "--in", "-", "--write"], csv);
    expect(exit).toBe(2);
    expect(err.split("\n").map((line) => /line \d+/.exec(line)?.[0])).toEqual([
      "line 3",
      "line 4",
      undefined,
    ]);
    expect(at.text()).toBe(pageText);
  });

  it("a file of the other mark is read once the mark is said", async () => {
    const csv = 'position,direction,diameter/um\n7,along,"25010,5"\n7,across,"25,010"\n';
    expect((await at.readings(["holes", "--in", "-"], csv)).exit).toBe(2); // 25.010 um among 25010.5 um
    const sure = "position;depth/mm;remark\n3;1,250;\n";
    expect((await at.readings(["german", "--in", "-"], sure)).err).toContain("--decimal comma");
    const read = await at.readings(["german", "--in", "-", "--decimal", "comma"], sure);
    expect(read.out).toContain("depth 1.250 mm");
  });

  it("UTF-16 with its mark, as some grid programs save it, is read", async () => {
    const bytes = Buffer.from(`\uFEFF${heads.replaceAll(",", "\t")}7\talong\t25.01\t\t\r\n`, "utf16le");
    expect((await at.readings(["holes", "--in", at.write("u.txt", bytes)])).out).toContain(
      "tab between fields",
    );
  });
});
