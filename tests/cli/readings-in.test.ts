// A CSV file into a reading: shown first, then written, and nothing else of the page touched.
import { chmodSync, lstatSync, readdirSync, statSync, symlinkSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { splitlineIn, splitlineReading } from "./built.ts";
import { type Folder, heads, pageFolder, pageText } from "./readings-page.ts";

let at: Folder;
beforeEach(() => {
  at = pageFolder();
});
afterEach(() => at.remove());

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
  line 3  fills a blank  hole 3, across: diameter 25.033 mm
  line 4  skipped        nothing stands on it
  line 5  corrects       hole 3, along: diameter 25.034 mm → 25.035 mm, reason zero was off
  line 6  new            hole 7, along: diameter 25.006 mm
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
    expect(err).toContain("line 3: got hole 1, along, which the page has already"); // not quite the same size
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
      "standard input · line 2, diameter: got 998 mm, must be near the other readings, which lie about 25.0195 mm; it may stand in the wrong column, or in another unit; --as-read takes it as it is\n",
    );
    expect((await at.readings(["holes", "--in", "-", "--as-read"], far)).exit).toBe(0);
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

  it("is refused when the page changed meanwhile", async () => {
    const { input, ran } = await splitlineReading(at.path, [
      "readings",
      "page.yaml",
      "holes",
      "--in",
      "-",
      "--write",
    ]);
    await input(`${heads}${`${" ".repeat(60)}\n`.repeat(10_000)}`); // more than a pipe holds: the command reads, so it has read the page
    const other = pageText.replace("25.0400 mm", "25.0500 mm");
    await writeFile(at.page, other);
    await input(row.replace(heads, ""), "end");
    const { exit, out, err } = await ran;
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain("another text than the one that was read");
    expect(at.text()).toBe(other);
    expect(readdirSync(at.path)).toEqual(["page.yaml"]);
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
