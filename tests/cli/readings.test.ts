// splitline readings: what a page's readings hold, one of them out as CSV, and the same file in again.
import { mkdirSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import * as fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readingsCommand } from "../../src/cli/commands/readings.ts";
import type { ReadingItem } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import { lineOf } from "../../src/readings/edited.ts";
import { noAnswers, planImport } from "../../src/readings/plan-import.ts";
import { readingCsv } from "../../src/readings/reading-csv.ts";
import { root } from "./built.ts";
import { type Folder, heads, pageFolder, pageText } from "./readings-page.ts";

let at: Folder;
beforeEach(() => {
  at = pageFolder();
});
afterEach(() => at.remove());

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
      `${heads}1,along,25.010,,\n1,across,25.011,,\n3,along,25.034,,\n3,across,,missing,\n5,along,25.019,,\n5,across,25.045,corrected,\n5,across,25.020,,"gauge was warm, read again"\n5,along,26.019,set aside,slip of the pen\n`,
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

  it("never onto a file that is there, a page least of all, unless told to replace it", async () => {
    const other = pageText.replace("Bores, invented", "Another page");
    at.write("other.yaml", other);
    const there = /a file that is there already.*nothing is written.*--replace/;
    for (const [name, text, says] of [
      ["other.yaml", other, /a page, must be another file; nothing is written/],
      ["notes.csv", "kept,by hand\n", there],
    ] as const) {
      at.write(name, text);
      const ran = await at.readings(["holes", "--out", name]);
      expect({ exit: ran.exit, out: ran.out }).toEqual({ exit: 2, out: "" });
      expect(ran.err).toMatch(says);
      expect(readFileSync(join(at.path, name), "utf8")).toBe(text);
    }
    expect((await at.readings(["holes", "--out", "notes.csv", "--replace"])).exit).toBe(0);
    expect(readFileSync(join(at.path, "notes.csv"), "utf8")).toContain("1,along,25.010");
    expect((await at.readings(["holes", "--out", "-", "--replace"])).exit).toBe(0);
    expect((await at.readings(["holes", "--out", "page.yaml", "--replace"])).err).toContain(
      "the page itself",
    );
    const page = await at.readings(["holes", "--out", "other.yaml", "--replace"]);
    expect(page.err).toContain("a page");
    expect(readFileSync(join(at.path, "other.yaml"), "utf8")).toBe(other);
    expect(at.text()).toBe(pageText);
  });

  it("a device or a pipe is written to, as it was", async () => {
    expect((await at.readings(["holes", "--out", "/dev/null"])).exit).toBe(0);
  });

  it("state, reason and by go out and in again where only the rows have them", async () => {
    const bare = pageFolder(
      "splitline: 1\ntitle: t\npage:\n  - reading: r\n    columns: { p: tag, d: length }\n    key: [p]\n    rows: |\n      p,d/mm,state,reason,by\n      1,25.0,set aside,gauge slipped,fitter B\n      1,25.1,,read again,\n",
    );
    const { out } = await bare.readings(["r", "--out", "-"]);
    expect(out).toBe(
      "p,d/mm,state,reason,by\n1,25.0,set aside,gauge slipped,fitter B\n1,25.1,,read again,\n",
    );
    for (const mode of ["--add", "--replace"])
      expect((await bare.readings(["r", "--in", "-", mode], out)).out).toContain("nothing to write");
    bare.remove();
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
        const made = await asked(one.page, reading, "--out", file, "--replace", ...sort);
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

  it("whatever stands in the fields, in every manner of writing the page may have", () => {
    const unit = fc.constantFrom(...Array.from("ab1 ,;\t\"'=+-@#:µ\n"));
    const text = fc.string({ unit, maxLength: 8 }).map((typed) => typed.trim());
    const size = fc.option(fc.integer({ min: -99_999, max: 99_999 }), { nil: undefined });
    const rows = fc.array(fc.record({ text, size, own: fc.boolean() }), { maxLength: 8 });
    const manner = fc.record({
      delimiter: fc.constantFrom("comma" as const, "semicolon" as const, "tab" as const),
      decimal: fc.constantFrom("point" as const, "comma" as const),
    });
    fc.assert(
      fc.property(
        rows,
        manner,
        fc.boolean(),
        fc.boolean(),
        (fields, { delimiter, decimal }, keyed, replace) => {
          const number = (n: number, own: boolean) =>
            `${(n / 1000).toFixed(3)}${own ? " in" : ""}`.replace(".", decimal === "comma" ? "," : ".");
          const lines = fields.map((row, i) => [
            `${i}`,
            row.size === undefined ? "" : number(row.size, row.own),
            row.text,
          ]);
          const table = [["tag", "size/mm", "remark"], ...lines].map(
            (line) => `${lineOf(line, delimiter)}\n`,
          );
          const item: ReadingItem = {
            kind: "reading",
            name: "r",
            index: 0,
            place: { line: 1, column: 1 },
            columns: { tag: "tag", size: "length", remark: "text" },
            ...(keyed ? { key: ["tag"] } : {}),
            delimiter,
            decimal,
            rows: table.join(""),
          };
          const made = readingCsv(item, item.rows, false);
          if (isProblem(made)) throw new Error(sentence(made));
          // a file that holds one number of two meanings is asked about; the answer is known here
          const plan = planImport(item, item.rows, made.csv, {
            ...noAnswers,
            mode: replace ? "replace" : "add",
            delimiter: "comma",
            decimal: "point",
          });
          expect(plan.faults.map(sentence)).toEqual([]);
          expect(plan.text).toBe(item.rows);
        },
      ),
    );
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
