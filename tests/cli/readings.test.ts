// splitline readings: what a page's readings hold, one of them out as CSV, and a CSV file into it:
// shown first, written all or nothing, and nothing else of the page touched.
import { execFileSync } from "node:child_process";
import { chmodSync, lstatSync, mkdirSync, readdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { open, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readingsCommand } from "../../src/cli/commands/readings.ts";
import { readPage } from "../../src/document/read.ts";
import { root, splitlineIn } from "./built.ts";
import { type Folder, pageFolder, pageText } from "./readings-page.ts";

let at: Folder;
beforeEach(() => {
  at = pageFolder();
});
afterEach(() => at.remove());

const heads = "position,direction,diameter/mm,state,reason\n";

describe("the list", () => {
  it("names each reading, its columns with units, its rows by state and what is wanted", async () => {
    const { exit, out, err } = await at.readings([]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toBe(`page.yaml: Bores, invented

holes: Bores as read
  columns  position, direction, diameter/mm, state, reason
  key      position, direction
  rows     8: 5 entered, 3 missing, 1 corrected, 1 set aside
  wanted   7 · along; 7 · across

trial: Stretch, read twice without a key
  columns  position, stretch/mm
  rows     2: 2 entered

german: Decimal commas
  columns  position, depth/mm, remark
  key      position
  rows     2: 2 entered
`);
  });

  it("of one reading tells each row that is more than entered, by its line of the page", async () => {
    const { out } = await at.readings(["holes"]);
    const corrected = /line (\d+) +corrected/.exec(out)?.[1];
    expect(pageText.split("\n")[Number(corrected) - 1]?.trim()).toBe("5,across,25.045,,");
    expect(out).toContain("set aside");
    expect(out).not.toContain("trial");
  });

  it("as data", async () => {
    const { exit, data } = await at.data([]);
    expect(exit).toBe(0);
    expect(data).toMatchObject({
      file: "page.yaml",
      title: "Bores, invented",
      readings: [
        {
          name: "holes",
          columns: [
            { name: "position", kind: "tag", unit: "" },
            {},
            { name: "diameter", kind: "length", unit: "mm" },
            {},
            {},
          ],
          key: ["position", "direction"],
          rows: 8,
          states: { entered: 5, missing: 3, odd: 0, corrected: 1, setAside: 1 },
          notEntered: [{ state: "missing" }, { state: "corrected" }, { state: "set aside" }],
          wanted: [
            { position: "7", direction: "along" },
            { position: "7", direction: "across" },
          ],
        },
        { name: "trial" },
        { name: "german" },
      ],
    });
  });

  it("a reading that has no answer says why and ends with 2", async () => {
    const broken = pageFolder(pageText.replace(',,"gauge was warm, read again"', ",,"));
    const { exit, out } = await broken.readings([]);
    broken.remove();
    expect(exit).toBe(2);
    expect(out).toMatch(/holes: Bores as read\n {2}no answer: .*a second row/);
    expect(out).toContain("trial");
  });
});

describe("out", () => {
  it("writes the same bytes each time, fields as typed, to a file and to standard output", async () => {
    const { out } = await at.readings(["holes", "--out", "-"]);
    expect(out).toBe(
      `${heads}1,along,25.010,,\n1,across,25.011,,\n3,along,25.034,,\n3,across,,,\n5,along,25.019,,\n5,across,25.045,,\n5,across,25.020,,"gauge was warm, read again"\n5,along,26.019,set aside,slip of the pen\n`,
    );
    expect(await at.readings(["holes", "--out", "holes.csv"])).toEqual({
      exit: 0,
      out: "holes.csv: 8 rows, 5 columns of holes\n",
      err: "",
    });
    expect(readFileSync(join(at.path, "holes.csv"), "utf8")).toBe(out);
    expect(readdirSync(at.path).sort()).toEqual(["holes.csv", "page.yaml"]);
  });

  it("files use a point and a comma, and what a grid program would run gets a quote mark", async () => {
    const { out } = await at.readings(["german", "--out", "-"]);
    expect(out).toBe("position,depth/mm,remark\n1,-1.25,\"'-rough, with a comma\"\n2,0.50,'=1+1\n");
  });

  it("--sort follows the order the page expects; a correction stays behind what it corrects", async () => {
    const { out } = await at.readings(["holes", "--out", "-", "--sort"]);
    const keys = out.split("\n").map((line) => line.split(",").slice(0, 3).join(" "));
    expect(keys.slice(5, 9)).toEqual([
      "5 along 25.019",
      "5 along 26.019",
      "5 across 25.045",
      "5 across 25.020",
    ]);
    expect((await at.readings(["trial", "--out", "-", "--sort"])).err).toContain("a reading without a key");
  });

  it("never onto the page itself, a folder or a folder that is not there", async () => {
    mkdirSync(join(at.path, "folder"));
    symlinkSync("page.yaml", join(at.path, "link.yaml"));
    for (const [out, says] of [
      ["page.yaml", "the page itself"],
      ["link.yaml", "the page itself"],
      ["folder", "a folder"],
      ["none/holes.csv", "no such folder"],
    ] as const) {
      const ran = await at.readings(["holes", "--out", out]);
      expect({ exit: ran.exit, out: ran.out }).toEqual({ exit: 2, out: "" });
      expect(ran.err).toContain(says);
    }
    expect(at.text()).toBe(pageText);
  });
});

const pages = readdirSync(join(root, "notebooks")).filter((name) => name.endsWith(".yaml"));
const readingsOf = (name: string) =>
  readPage(readFileSync(join(root, "notebooks", name), "utf8"), name).page?.items.flatMap((item) =>
    item.kind === "reading" ? [item.name] : [],
  ) ?? [];

/** In this process, since it is asked hundreds of times. */
async function asked(...args: readonly string[]): Promise<{ exit: number; out: string }> {
  const { exit, out = "", err = "" } = await readingsCommand(args, Number.POSITIVE_INFINITY);
  return { exit, out: out + err };
}

describe("out and in again", () => {
  it("there are readings to try", () => expect(pages.flatMap(readingsOf).length).toBeGreaterThan(20));

  it.each(pages)("every reading of %s comes back byte for byte and changes nothing", async (name) => {
    const text = readFileSync(join(root, "notebooks", name), "utf8");
    const one = pageFolder(text);
    const file = join(one.path, "rows.csv");
    for (const reading of readingsOf(name))
      for (const sort of [[], ["--sort"]]) {
        const made = await asked(one.page, reading, "--out", file, ...sort);
        if (sort.length > 0 && made.exit === 2) continue; // a reading without a key
        expect(made.exit, made.out).toBe(0);
        for (const mode of sort.length > 0 ? ["--add"] : ["--add", "--replace"]) {
          const { exit, out } = await asked(one.page, reading, "--in", file, mode, "--write");
          expect(exit, out).toBe(0);
          expect(out).toContain("nothing to write");
        }
        expect(one.text() === text, reading).toBe(true);
      }
    one.remove();
  });

  it("rows taken out of a page and put in again are the same rows, byte for byte", async () => {
    const name = "pump-2-as-found.yaml";
    const text = readFileSync(join(root, "notebooks", name), "utf8");
    const one = pageFolder(text);
    const { out: csv } = await one.readings(["holes", "--out", "-"]);
    const half = `${csv.split("\n").slice(0, 49).join("\n")}\n`;
    const shorter = await one.readings(["holes", "--in", "-", "--replace", "--write"], half);
    expect(shorter.exit).toBe(0);
    expect(shorter.out).toContain("48 of the page gone");
    expect((await one.readings(["holes", "--out", "-"])).out).toBe(half);
    expect((await one.readings(["holes", "--in", "-", "--add", "--write"], csv)).out).toContain("48 new");
    expect(one.text()).toBe(text);
    one.remove();
  });
});

describe("in, shown first", () => {
  it("tells how the file was read and every row that is not the same, and writes nothing", async () => {
    const csv = [
      "Position;direction;diameter_mm;reason;gauge",
      "1;along;25,01;;7",
      "3;across;25,033;;7",
      "",
      "3;along;25,035;zero was off;7",
      "7;along;25,006;;7",
      "7;across;;;",
    ].join("\r\n");
    const { exit, out, err } = await at.readings(["holes", "--in", at.write("a.csv", csv)]);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toBe(`page.yaml · holes: Bores as read
from a.csv: semicolon between fields, decimal comma
  position   from Position
  direction  from direction
  diameter   from diameter_mm  in mm
  reason     from reason
  left out: gauge
4 rows to add: 1 new, 1 same, 1 fills a blank, 1 corrects, 2 skipped
  line 3  fills a blank  3 · across: diameter 25.033 mm
  line 4  skipped        nothing stands on it
  line 5  corrects       3 · along: diameter 25.034 mm → 25.035 mm, reason zero was off
  line 6  new            7 · along: diameter 25.006 mm
  line 7  skipped        no reading stands on it
afterwards 10 rows: 7 entered, 1 missing, 2 corrected, 1 set aside
nothing is written yet: --write puts it into the page
`);
    expect(at.text()).toBe(pageText);
  });

  it("--write does what was shown, and the same file once more does nothing", async () => {
    const csv = `${heads}3,across,25.033,,\n3,along,25.035,,zero was off\n7,along,25.006,,\n`;
    const { exit, data } = await at.data(["holes", "--in", "-", "--write"], csv);
    expect(exit).toBe(0);
    expect(data).toMatchObject({
      counts: { new: 1, same: 0, fillsABlank: 1, corrects: 1, changed: 0 },
      changesPage: true,
      written: true,
    });
    const expected = pageText
      .replace("3,across,,,", "3,across,25.033,,")
      .replace("pen\n", "pen\n      3,along,25.035,,zero was off\n      7,along,25.006,,\n");
    expect(at.text()).toBe(expected);
    expect((await at.readings(["holes", "--in", "-", "--write"], csv)).out).toContain("nothing to write");
    expect(at.text()).toBe(expected);
  });

  it("a value in another unit keeps its own; the same size in another unit is the same reading", async () => {
    const csv = "position,direction,diameter [in]\n7,along,0.98430\n1,along,0.984645669291338582\n";
    const near = "position,direction,diameter/um\n7,along,25001.2\n1,along,25010\n";
    expect((await at.readings(["holes", "--in", "-", "--write"], near)).out).toContain("1 new, 1 same");
    expect(at.text()).toContain("      7,along,25001.2 um,,\n");
    const { exit, err } = await at.readings(["holes", "--in", "-"], csv);
    expect(exit).toBe(2);
    expect(err).toContain("line 3: got 1 · along, which the page has already"); // not quite the same size
  });

  it("--replace takes the file's unit into the heading and leaves its numbers alone", async () => {
    const csv = `position,stretch/in\n5,0.0090\n15,0.0085\n`;
    const { out } = await at.readings(["trial", "--in", "-", "--replace", "--write"], csv);
    expect(out).toContain("2 of the page gone");
    expect(at.text()).toContain("      position,stretch/in\n      5,0.0090\n      15,0.0085\n");
  });

  it("the page's own delimiter, decimal mark and order of columns are kept", async () => {
    const csv = "remark,depth/mm,position\n'=2+2,1.5,3\n";
    await at.readings(["german", "--in", "-", "--write"], csv);
    expect(at.text()).toBe(`${pageText}      3;1,5;=2+2\n`);
  });

  it("a correction takes over what it does not say", async () => {
    const two = pageFolder(
      "splitline: 1\ntitle: t\npage:\n  - reading: bolts\n    columns: { bolt: tag, a: length, b: length, reason: text }\n    key: [bolt]\n    rows: |\n      bolt,a/mm,b/mm,reason\n      1,5.0,6.0,\n",
    );
    await two.readings(["bolts", "--in", "-", "--write"], "bolt,a/mm,b/mm,reason\n1,,6.1,read again\n");
    expect(two.text()).toContain("      1,5.0,6.0,\n      1,5.0,6.1,read again\n");
    two.remove();
  });

  it("a reading without a key takes a further row only when it is not there as often", async () => {
    const csv = "position,stretch/mm\n5,0.23\n5,0.230\n5,0.230\n15,0.217\n";
    expect((await at.readings(["trial", "--in", "-"], csv)).out).toContain("2 new, 2 same");
  });

  it("a reading that holds nothing yet takes its headings from the file", async () => {
    const none = pageFolder(
      'splitline: 1\ntitle: t\npage:\n  - reading: r\n    columns: { a: tag, x: length }\n    rows: ""\n',
    );
    expect((await none.readings([])).exit).toBe(0);
    await none.readings(["r", "--in", "-", "--write"], "x/in,a\n1.5,k\n");
    expect(none.text()).toContain("    rows: |\n      a,x/in\n      k,1.5\n");
    none.remove();
  });

  it("an odd value is taken and counted; one that can hardly be a reading only with --as-read", async () => {
    const odd = `${heads}7,along,25.010,,\n7,across,25.033,,\n1,along,25.040,,read again\n`;
    const { data } = await at.data(["holes", "--in", "-"], odd);
    expect(data).toMatchObject({ afterwards: { states: { odd: 4 } } });
    const far = `${heads}7,along,998,,\n`;
    expect((await at.readings(["holes", "--in", "-"], far)).err).toBe(
      "standard input · line 2, diameter: got 998 mm, must be near the other readings, which lie about 25.02 mm; it may stand in the wrong column, or in another unit; --as-read takes it as it is\n",
    );
    expect((await at.readings(["holes", "--in", "-", "--as-read"], far)).exit).toBe(0);
  });
});

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
  ["a key twice", `${heads}7,along,25.01,,\n7,along,25.02,,\n`, /line 3: got 7 · along again, after line 2/],
  [
    "a row twice",
    `${heads}1,along,25.010,,\n1,along,25.010,,\n`,
    /line 3: got 1 · along again, after line 2/,
  ],
  [
    "a key of the page without a reason",
    `${heads}1,along,25.013,,\n`,
    /line 2: got 1 · along, which the page has already.*reason/,
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
    const { exit: same, data } = await at.data(["holes", "--in", file, "--write"]);
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

describe("writing", () => {
  const row = `${heads}7,along,25.006,,\n`;

  it("keeps the mode of the page, and a link stays a link", async () => {
    chmodSync(at.page, 0o640);
    symlinkSync("page.yaml", join(at.path, "link.yaml"));
    const { exit } = await splitlineIn(
      at.path,
      ["readings", "link.yaml", "holes", "--in", "-", "--write"],
      row,
    );
    expect(exit).toBe(0);
    expect(statSync(at.page).mode & 0o777).toBe(0o640);
    expect(lstatSync(join(at.path, "link.yaml")).isSymbolicLink()).toBe(true);
    expect(at.text()).toContain("7,along,25.006,,");
    expect(readdirSync(at.path).sort()).toEqual(["link.yaml", "page.yaml"]);
  });

  it("keeps line ends and the byte order mark of the page", async () => {
    const crlf = pageFolder(`\uFEFF${pageText.replaceAll("\n", "\r\n")}`);
    await crlf.readings(["holes", "--in", "-", "--write"], row);
    expect(crlf.text()).toBe(
      `\uFEFF${pageText.replace("pen\n", "pen\n      7,along,25.006,,\n").replaceAll("\n", "\r\n")}`,
    );
    crlf.remove();
  });

  it.skipIf(process.platform === "win32")("is refused when the page changed meanwhile", async () => {
    const pipe = join(at.path, "rows");
    execFileSync("mkfifo", [pipe]);
    const running = at.readings(["holes", "--in", "rows", "--write"]);
    const handle = await open(pipe, "w"); // waits until the command reads the rows: by then it has read the page
    const other = pageText.replace("25.0400 mm", "25.0500 mm");
    await writeFile(at.page, other);
    await handle.writeFile(row);
    await handle.close();
    const { exit, out, err } = await running;
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain("another text than the one that was read");
    expect(at.text()).toBe(other);
    expect(readdirSync(at.path).sort()).toEqual(["page.yaml", "rows"]);
  });

  it("several at once: each is written whole or refused, and none is lost", async () => {
    const rows = ["1", "2", "3", "4", "5", "6"].map((n) => ({ n, csv: `position,stretch/mm\n9,0.10${n}\n` }));
    const ran = await Promise.all(rows.map(({ csv }) => at.readings(["trial", "--in", "-", "--write"], csv)));
    const done = rows.filter((_, i) => ran[i]?.exit === 0);
    expect(done.length).toBeGreaterThan(0);
    expect(ran.every(({ exit }) => exit === 0 || exit === 2)).toBe(true);
    const found = [...at.text().matchAll(/^ +9,0\.10(\d)$/gm)].map(([, n = ""]) => n);
    expect(found.toSorted((a, b) => Number(a) - Number(b))).toEqual(done.map(({ n }) => n));
    expect(readdirSync(at.path)).toEqual(["page.yaml"]);
  });

  it("a page left half done by another program is said so, and stays", async () => {
    at.write(".page.yaml.writing", "");
    const { exit, err } = await at.readings(["holes", "--in", "-", "--write"], row);
    expect(exit).toBe(2);
    expect(err).toContain("remove .page.yaml.writing beside it");
    expect(at.text()).toBe(pageText);
  });
});
