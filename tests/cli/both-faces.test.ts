// Terminal, data and page say the same of what a page rests on: set-asides first, then why a number may not
// hold, where its doubt comes from, and which values have no source.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checkCommand } from "../../src/cli/commands/check.ts";
import type { Line } from "../../src/engine/line.ts";
import { openPage } from "../../src/engine/open-page.ts";
import "../../src/methods/index.ts";
import { caveats } from "../../src/report/caveats.ts";
import { exceptions } from "../../src/report/exceptions.ts";

const text = `splitline: 1
title: Bores
page:
  - given: limit
    value: 25.015 mm
  - given: old
    value: 25.000 mm
    source: drawing, invented
  - reading: holes
    says: Bores as read
    columns: { position: tag, depth: tag, diameter: length, state: tag, reason: text, by: text, when: text }
    key: [position, depth]
    expect: { position: [1, 13], depth: [outer, split] }
    uncertainty: { diameter: 3 um, k: 2 }
    rows: |
      position,depth,diameter/mm,state,reason,by,when
      1,outer,25.010,,,,
      1,split,25.011,,,,
      1,split,25.032,set aside,read cold,,
      13,outer,25.012,,,,
      13,split,25.033,set aside,gauge slipped,fitter B,day 2
  - check: loosest
    says: Bore inside its limit?
    each: holes
    key: position
    that: largest(holes.diameter)
    atMost: limit
    source: owner, invented
  - check: all
    says: All bores inside?
    that: largest(holes.diameter)
    atMost: limit
    source: owner, invented
`;

const folder = mkdtempSync(join(tmpdir(), "faces-"));
const file = join(folder, "page.yaml");
let lines: readonly Line[] = [];
beforeAll(async () => {
  writeFileSync(file, text);
  const live = openPage(text, "page.yaml");
  if (!("lines" in live)) throw new Error("the page did not open");
  live.change("old", "25.002 mm");
  await live.settle();
  lines = live.lines();
});
afterAll(() => rmSync(folder, { recursive: true }));

const read13 =
  "hole 13, split, 25.033 mm: set aside, gauge slipped, by fitter B, day 2; hole 13 is judged on 1 of 2 readings";
const read1 = "hole 1, split, 25.032 mm: set aside, read cold, who is not stated; read again: 25.011 mm";
const mayNotHold =
  "position 13 with 1 reading set aside: judged on fewer readings than the plan expects: 13, split: gauge slipped, fitter B";

async function terminal(): Promise<string[]> {
  const { out = "" } = await checkCommand([file], Number.POSITIVE_INFINITY);
  return out.split("\n").map((line) => line.trim());
}

describe("in the terminal", () => {
  test("set-asides stand before the checks, with who, why and what counts now", async () => {
    const said = await terminal();
    expect(said[1]).toBe("set aside  holes: 2 readings kept and not used");
    expect(said.slice(2, 4)).toEqual([read1, read13]);
    expect(said[4]).toContain("unproven");
  });

  test("why a number may not hold is a line of its own", async () => {
    const said = await terminal();
    expect(said).toContain("unproven · hole 13: 25.012 mm ± 0.0030 mm against at most 25.015 mm");
    expect(said).toContain(`it may not hold: ${mayNotHold}`);
  });

  test("values without a source are named at the end", async () => {
    expect(await terminal()).toContain("values whose source is not stated: limit");
  });
});

test("as data: limits and doubt as values, reservations, who and why", async () => {
  const { out = "" } = await checkCommand([file, "--json"], Number.POSITIVE_INFINITY);
  const data: unknown = JSON.parse(out);
  expect(data).toMatchObject({
    pages: [
      {
        setAside: [
          { reading: "holes", place: "hole 1, split", by: null, now: "read again: 25.011 mm" },
          {
            reading: "holes",
            place: "hole 13, split",
            value: "25.033 mm",
            why: "gauge slipped",
            by: "fitter B",
            when: "day 2",
          },
        ],
        odd: [],
        sourceNotStated: ["limit"],
        warnings: [],
        checks: [
          {
            name: "loosest",
            rows: [
              { position: "1", state: "proven", mayNotHold: [] },
              {
                position: "13",
                state: "unproven",
                value: 25.012,
                unit: "mm",
                limits: { atLeast: null, unit: "mm" },
                doubt: { unit: "mm", from: ["Bores as read"] },
                why: "25.012 mm ± 0.0030 mm against at most 25.015 mm",
                mayNotHold: [mayNotHold],
              },
            ],
          },
          { name: "all", state: "unproven" },
        ],
      },
    ],
  });
});

test("as data: at every check its limits in SI and as typed, and what lies behind it", async () => {
  const { out = "" } = await checkCommand([file, "--json"], Number.POSITIVE_INFINITY);
  const data: unknown = JSON.parse(out);
  const aside1 = { reading: "holes", place: "hole 1, split", why: "read cold" };
  const aside13 = { reading: "holes", place: "hole 13, split", by: "fitter B" };
  const limits = {
    atLeast: null,
    atMost: expect.closeTo(25.015, 9),
    unit: "mm",
    si: { atLeast: null, atMost: expect.closeTo(0.025015, 9), unit: "m" },
    typed: { atLeast: null, atMost: { text: "limit", value: 25.015, unit: "mm" } },
  };
  expect(data).toMatchObject({
    pages: [
      {
        checks: [
          {
            name: "loosest",
            warnings: [],
            odd: [],
            setAside: [aside1, aside13],
            rows: [
              { says: "hole 1", limits, setAside: [aside1] },
              { says: "hole 13", limits, setAside: [aside13] },
            ],
          },
          { name: "all", limits, setAside: [aside1, aside13] },
        ],
      },
    ],
  });
});

const small = `splitline: 1
title: Small
page:
  - given: gap
    value: 24,5 mm
    source: drawing, invented
  - given: torques
    value: 40 N.m
    source: a handbook, from memory
  - check: light
    that: gap
    atMost: 1 in
  - check: between
    that: torques
    between: [ 10 N.m, torques * 2 ]
  - note: torques are {play} here
`;

describe("of a small page", () => {
  const opened = async (words = small) => {
    const live = openPage(words, "small.yaml");
    if (!("lines" in live)) throw new Error(JSON.stringify(live));
    await live.settle();
    return live.lines();
  };

  test("what a note asks for in vain is told on the page as in the terminal", async () => {
    const found = exceptions(await opened()).filter(({ name }) => name.startsWith("#"));
    expect(found).toMatchObject([{ mark: "no answer", words: expect.stringContaining("Play") }]);
  });

  test("more readings set aside than are listed are counted whole", async () => {
    const rows = Array.from({ length: 20 }, (_, i) => `1,${i},25.0${10 + i},set aside,cold ${i},,`);
    const many = text.replace(
      "      13,outer",
      `${rows.map((row) => `      ${row}\n`).join("")}      13,outer`,
    );
    const [first] = exceptions(await opened(many));
    expect(first?.words).toBe("22 readings kept and not used:");
    expect(first?.rows).toHaveLength(22);
  });

  test("a limit as data: a literal, a formula, a warning of what it rests on", async () => {
    const path = join(folder, "small.yaml");
    writeFileSync(path, small);
    const { out = "" } = await checkCommand([path, "--json"], Number.POSITIVE_INFINITY);
    const data: unknown = JSON.parse(out);
    expect(data).toMatchObject({
      pages: [
        {
          checks: [
            {
              name: "light",
              state: "unproven",
              limits: {
                si: { atMost: 0.0254, unit: "m" },
                typed: { atMost: { text: "1 in", value: 1, unit: "in" } },
              },
              warnings: [{ name: "gap" }],
            },
            {
              name: "between",
              limits: {
                atLeast: 10,
                typed: {
                  atLeast: { value: 10, unit: "N.m" },
                  atMost: { text: "torques * 2", value: null, unit: null },
                },
              },
            },
          ],
          fromMemory: ["torques"],
        },
      ],
    });
  });
});

describe("on the page", () => {
  test("set-asides lead the summary in the same words", () => {
    const [first] = exceptions(lines);
    expect(first).toMatchObject({ mark: "set aside", name: "holes", words: "2 readings kept and not used:" });
    const said = first?.rows?.map(({ says, words }) => `${says}${words}`);
    expect(said).toEqual([read1, read13].map((words) => `${words.replace("hole", "Hole")}.`));
  });

  test("a check says why its number may not hold", () => {
    const all = exceptions(lines).find(({ name }) => name === "all");
    expect(all?.words).toMatch(/^25\.012 mm ± 3 µm|^25\.012 mm/);
    expect(all?.words).toContain("May not hold: ");
    expect(all?.words).toContain("1 reading set aside");
  });

  test("a comma that is still asked about stands in the summary until it is confirmed", async () => {
    const live = openPage(text, "page.yaml");
    if (!("lines" in live)) throw new Error("the page did not open");
    live.change("limit", "25,015 mm");
    live.change("old", "24,5 mm");
    await live.settle();
    const asked = exceptions(live.lines()).find(({ name }) => name === "old");
    expect(asked).toMatchObject({
      mark: "warning",
      words: '"24,5 mm": the comma is read as a decimal mark, 24.5; is that meant?',
    });
    live.confirm("old", "24,5 mm");
    await live.settle();
    const meant = exceptions(live.lines());
    expect(meant.some(({ name }) => name === "old")).toBe(false);
  });

  test("an odd reading is asked about with what was read", async () => {
    const odd = text.replace("    uncertainty:", "    odd: { diameter: 5 um }\n    uncertainty:");
    const live = openPage(odd.replace("1,split,25.011", "1,split,25.061"), "page.yaml");
    if (!("lines" in live)) throw new Error("the page did not open");
    await live.settle();
    const asked = exceptions(live.lines()).find(({ mark }) => mark === "odd");
    expect(asked?.words).toContain("hole 1, split, 25.061 mm");
  });

  test("values without a source of their own are listed, changed ones too", () => {
    expect(caveats(lines).unsourced).toEqual(["limit", "old"]);
  });
});
