// What check makes of the pictures of a page: an entry that cannot be right is refused with its place, all else is
// told in the sentence that stands under the drawing.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { held } from "../../src/document/held.ts";
import { openPage } from "../../src/engine/open-page.ts";
import { toldPictures } from "../../src/engine/picture.ts";
import "../../src/pictures/index.ts";
import { json, root, splitline } from "./built.ts";

const folder = mkdtempSync(join(tmpdir(), "splitline-pictures-"));
afterAll(() => rmSync(folder, { recursive: true }));

function page(...items: readonly string[]): string {
  const file = join(folder, "p.yaml");
  writeFileSync(file, `splitline: 1\ntitle: a page\npage:\n${items.join("\n")}\n`);
  return file;
}

const wrench = (...more: readonly string[]): readonly string[] => [
  "  - picture: wrench",
  "    of:",
  "      wrenchLength: 650 mm",
  "      adapterLength: 60 mm",
  "      targetTorque: 500 N.m",
  ...more.map((line) => `      ${line}`),
];
const nuts = (column: string, ...rows: readonly string[]): readonly string[] => [
  "  - reading: nuts",
  `    columns: { position: tag, runOn: ${column.startsWith("runOn/mm") ? "length" : "torque"} }`,
  "    rows: |",
  `      position,${column}`,
  ...rows.map((row) => `      ${row}`),
];

describe("an entry that no value can make right", () => {
  it.each<[string, readonly string[], number, number, string]>([
    ["an unknown picture", ["  - picture: wrnch", "    of: { a: 1 }"], 4, 14, "did you mean wrench?"],
    ["an input misspelt", wrench("adapterAngel: 90 deg"), 9, 7, "did you mean adapterAngle?"],
    [
      "an input misspelt in one line with the others",
      ["  - picture: run-on-bars", "    of: { nuts: nuts, least: 8 N.m, moost: 60 N.m }"],
      5,
      37,
      "did you mean most?",
    ],
    ["an input of another dimension", wrench("adapterAngle: 45 mm"), 9, 21, "must be an angle"],
    ["a dimension that has no name", wrench('setting: \'"1 kN" * "2 kN"\''), 9, 16, "must be a torque"],
    [
      "a needed input missing",
      ["  - picture: wrench", "    of:", "      wrenchLength: 650 mm", "      targetTorque: 5 N.m"],
      6,
      7,
      "add adapterLength under of",
    ],
    [
      "a column of another dimension",
      [
        ...nuts("runOn/mm", "1,3"),
        "  - picture: run-on-bars",
        "    of: { nuts: nuts, least: 8 N.m, most: 60 N.m }",
      ],
      10,
      17,
      "got runOn as length, must be a torque",
    ],
    [
      "a word that is none of the choices, under a misspelt name, where further lists are taken",
      [
        "  - reading: places",
        "    columns: { position: tag, x: length, y: length }",
        "    rows: |",
        "      position,x/mm,y/mm",
        "      1,0,0",
        "  - picture: fit-map",
        "    of: { positions: places, pairs: places, yRun: up }",
      ],
      10,
      45,
      "did you mean yRuns?",
    ],
  ])("%s is refused with its place, and the exit code is 2", async (_, items, line, column, words) => {
    const file = page(...items);
    const { exit, out } = await splitline("check", file);
    const flat = out.replaceAll(/\s+/g, " ");
    expect(flat).toContain(`${file}:${line}:${column} · `);
    expect(flat).toContain(words);
    expect(exit).toBe(2);
    const read = await json("check", file);
    expect(read.exit).toBe(2);
    expect(read.data).toMatchObject({
      pages: [{ pictures: [], lines: expect.arrayContaining([expect.objectContaining({ value: null })]) }],
    });
  });

  it("a list that has no rows yet is no answer and no refusal", async () => {
    const file = page(
      "  - reading: record",
      "    columns: { position: tag, angle: angle }",
      "    rows: |",
      "      position,angle/deg",
      "  - picture: angle-by-nut",
      "    of: { record: record, band: 4 deg }",
    );
    const { exit, out } = await splitline("check", file);
    expect(out.replaceAll(/\s+/g, " ")).toContain("picture angle-by-nut: got no angle in record");
    expect(exit).toBe(3);
  });
});

describe("what a picture says", () => {
  it("stands in the text and in the data", async () => {
    const file = page(...wrench());
    const words =
      "Set 457.7 N.m to give 500 N.m at the fastener, with the hand 650 mm from the square and an adapter of 60 mm at 0°.";
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(0);
    expect(out.replaceAll("·", ".")).toContain(`  pictures\n    picture wrench: ${words}`);
    const { data } = await json("check", file);
    expect(JSON.stringify(data).replaceAll("·", ".")).toContain(
      JSON.stringify({
        name: "#1",
        picture: "wrench",
        says: "wrench",
        sentence: words,
        mayNotHold: [],
      }),
    );
  });

  it("is the sentence that the page shows, on every page of the project", async () => {
    const { data } = await json("check", "notebooks");
    const { pages } = held<{
      readonly pages: readonly {
        readonly file: string;
        readonly pictures: readonly { readonly sentence: string }[];
      }[];
    }>(data);
    expect(pages.flatMap(({ pictures }) => pictures).length).toBeGreaterThan(20);
    for (const { file, pictures } of pages) {
      const live = openPage(readFileSync(join(root, file), "utf8"), file);
      if (!("settle" in live)) throw new Error(`${file} did not open`);
      await live.settle();
      const shown = toldPictures(live.lines()).map(({ told }) => told.sentence);
      expect(pictures.map(({ sentence }) => sentence)).toEqual(shown);
      live.dispose();
    }
  });
});
