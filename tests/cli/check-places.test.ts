// splitline check says where in the file a problem stands that is found only when the page is worked out.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { json, splitline } from "./built.ts";

const folder = mkdtempSync(join(tmpdir(), "splitline-places-"));
afterAll(() => rmSync(folder, { recursive: true }));

function page(...items: readonly string[]): string {
  const file = join(folder, "p.yaml");
  writeFileSync(file, `splitline: 1\ntitle: a page\npage:\n${items.join("\n")}\n`);
  return file;
}

describe("a problem found when the page is worked out", () => {
  it.each([
    ["a formula, at its column", ["  - working: w", "    is: pi +* 2"], "w", 5, 13],
    ["a formula in quotes", ["  - working: w", '    is: "pi +* 2"'], "w", 5, 14],
    ["a formula in a block", ["  - working: w", "    is: >", "      pi +* 2"], "w", 5, 9],
    ["a name that is not there", ["  - working: w", "    is: zork + 1"], "w", 5, 9],
    ["a unit", ["  - working: w", '    is: 2 * "1 mm"', "    unit: kN"], "w", 6, 11],
    ["a given", ["  - given: a", "    value: 5 kg", "    as: force"], "a", 5, 12],
    [
      "an input of a method, by its limit",
      [
        "  - working: m",
        "    by: preload-from-torque",
        "    of:",
        "      torque: 5 N.m",
        "      nutFactor: 14",
        '      diameter: "24 mm"',
      ],
      "m",
      8,
      18,
    ],
    [
      "an input of a method, by its formula",
      [
        "  - working: m",
        "    by: preload-from-torque",
        "    of:",
        "      torque: pi +* 2",
        "      nutFactor: 0.2",
        '      diameter: "24 mm"',
      ],
      "m",
      7,
      19,
    ],
    ["a method that is not there", ["  - working: m", "    by: zork", "    of: { a: 1 }"], "m", 5, 9],
  ])("%s", async (_, items, name, line, column) => {
    const file = page(...items);
    const { out } = await splitline("check", file);
    expect(out).toContain(`${file}:${line}:${column} · `);
    expect((await json("check", file)).data).toMatchObject({
      pages: [
        {
          lines: expect.arrayContaining([
            expect.objectContaining({ name, problem: expect.objectContaining({ line, column }) }),
          ]),
        },
      ],
    });
  });

  it.each([
    ["that", ["  - check: c", "    that: pi +* 2", "    atMost: 1"], 5, 15],
    ["a limit", ["  - check: c", "    that: 1 + 1", "    atMost: zork"], 6, 13],
    ["the second of two limits", ["  - check: c", "    that: 1 + 1", "    between: [1, zork]"], 6, 18],
    [
      "a line that it waits for",
      ["  - check: c", "    that: w + 1", "    atMost: 1", "  - working: w", "    is: zork"],
      8,
      9,
    ],
  ])("of a check: %s", async (_, items, line, column) => {
    const file = page(...items);
    expect((await splitline("check", file)).out).toContain(`${file}:${line}:${column} · `);
    expect((await json("check", file)).data).toMatchObject({
      pages: [{ checks: [{ state: "no answer", problem: { line, column } }] }],
    });
  });

  it("a problem of the page file itself carries the same, and one of no file has none", async () => {
    const file = page("  - zork: a");
    expect((await json("check", file)).data).toMatchObject({
      pages: [{ problems: [{ line: 4, column: 5 }] }],
    });
    expect((await json("check", join(folder, "none.yaml"))).data).toMatchObject({
      pages: [{ problems: [{ line: null, column: null }] }],
    });
  });
});

describe("warnings as data", () => {
  it("a given whose reading should be confirmed is among them, with its place", async () => {
    const file = page("  - given: a", '    value: "6 kg-m"', "    as: torque");
    expect((await json("check", file)).data).toMatchObject({
      pages: [{ warnings: [{ name: "a", line: 5, column: 12, spoils: [] }] }],
    });
  });
});
