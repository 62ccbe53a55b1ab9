// splitline check: states, reasons and exit codes of pages, and every kind of page that cannot be read.
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { json, root, splitline } from "./built.ts";

const folder = mkdtempSync(join(tmpdir(), "pages-"));
afterAll(() => rmSync(folder, { recursive: true }));

function page(name: string, text: string | Uint8Array): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

const start = "splitline: 1\ntitle: One bolt\npage:\n  - given: gap\n    value: 5 mm\n";
const check = (name: string, rest: string): string => `  - check: ${name}\n    that: gap\n${rest}`;
const proven = page("proven.yaml", start + check("small", '    atMost: "6 mm"\n'));
const fails = page(
  "fails.yaml",
  start + check("small", '    atMost: "6 mm"\n') + check("tiny", '    atMost: "4 mm"\n'),
);
const unproven = page(
  "unproven.yaml",
  start + check("near", '    atMost: "5.1 mm"\n    uncertainty: "0.2 mm"\n'),
);
const waived = page(
  "waived.yaml",
  start + check("tiny", '    atMost: "4 mm"\n    waived: { by: R. Vance, why: replaced next week }\n'),
);
const window = (name: string, scatter: string): string =>
  `  - working: ${name}\n    by: preload-window\n    of: { separationLoad: 75 kN, scatter: ${scatter}, relaxation: 5 %, proofLoad: 211 kN, nutFactor: 0.14, diameter: 24 mm }\n  - check: ${name}Open\n    that: ${name}.open\n    source: owner\n`;
const closed = page("closed.yaml", start + window("wide", "20 %") + window("narrow", "60 %"));
const closedAndMore = page(
  "closed-and-more.yaml",
  start + window("narrow", "60 %") + check("tiny", '    atMost: "4 mm"\n'),
);
const silent = page(
  "silent.yaml",
  'splitline: 1\ntitle: Silent\npage:\n  - given: gap\n    value: 5 mmm\n  - working: twice\n    is: 2 * gap\n  - check: small\n    that: twice\n    atMost: "6 mm"\n',
);

it("a closed window is told apart from other failures, by exit code and by name", async () => {
  const { exit, data } = await json("check", closedAndMore, closed);
  expect(exit).toBe(1);
  expect(data).toMatchObject({
    pages: [
      {
        checks: [
          { name: "narrowOpen", state: "fails", code: "closed-window" },
          { name: "tiny", state: "fails" },
        ],
      },
      {
        checks: [
          { name: "wideOpen", state: "proven" },
          { name: "narrowOpen", code: "closed-window" },
        ],
      },
    ],
  });
});

describe("check of notes", () => {
  const words = (text: string): string => page("note.yaml", `${start}  - note: ${JSON.stringify(text)}\n`);

  it("a typed number that equals a value is a remark and changes no exit code", async () => {
    const { exit, out } = await splitline("check", words("a gap of 5 mm"));
    expect(exit).toBe(0);
    expect(out).toMatch(/remarks\s+note at line 2\s+5 mm: got a typed number that is gap now/);
    expect((await json("check", words("a gap of 5 mm"))).data).toMatchObject({
      pages: [{ remarks: [{ code: "unbound-number", what: "5 mm", hint: "write {gap}" }] }],
    });
  });

  it("a bound value is told as it reads, and without an answer the page is open", async () => {
    const file = words("gap {gap}, play {play}");
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(3);
    expect(out).toMatch(/note at line 2\s+\{play\} · play: got a name that no item of the page has/);
    expect((await json("check", file)).data).toMatchObject({
      pages: [{ lines: [{ name: "gap" }, { name: "#2", text: "gap 5 mm, play no answer" }] }],
    });
  });
});

describe("check", () => {
  it.each([
    ["proven", proven, 0],
    ["waived", waived, 0],
    ["fails", fails, 1],
    ["unproven", unproven, 3],
    ["no answer", silent, 3],
    ["fails", closed, 5],
    ["fails", closedAndMore, 1],
  ])("a page with %s ends with its exit code", async (state, file, code) => {
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(code);
    expect(out).toMatch(new RegExp(`^  ${state} +\\w+: `, "m"));
  });

  it.each([
    ["picture: wrnch", " · picture: got wrnch", "did you mean wrench?"],
    ["picture: torque-angle", "picture torque-angle", "it is called angle-by-nut now"],
    ["picture: fit-bar", "picture fit-bar", "got an input gap, must be given only size, holeMax"],
  ])("%s with an input it does not take is refused by name", async (first, at, why) => {
    const file = page("picture.yaml", `${start}  - ${first}\n    of: { gap: gap }\n`);
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(2);
    const flat = out.replaceAll(/\s+/g, " ");
    expect(flat).toContain(at.replaceAll(/\s+/g, " "));
    expect(flat).toContain(why);
  });

  it("fails wins over unproven, and a page that cannot be read over both", async () => {
    expect((await splitline("check", unproven, fails, proven)).exit).toBe(1);
    expect((await splitline("check", fails, join(folder, "none.yaml"))).exit).toBe(2);
  });

  it("exceptions stand before what is proven, each with its reason", async () => {
    const { out } = await splitline("check", fails);
    expect(out).toMatch(/fails +tiny: tiny\n +5(\.0+)? mm against at most 4 mm\n +proven +small/);
    expect(out).toMatch(/1 page; 1 fails, 1 proven\n$/);
  });

  it("a waiver names who and why, and what the numbers say", async () => {
    expect((await splitline("check", waived)).out).toContain(
      "waived by R. Vance: replaced next week; without the waiver: fails",
    );
  });

  it("no answer names the cell that caused it and shows no number", async () => {
    const { out } = await splitline("check", silent);
    expect(out).toMatch(/no answer +small: small\n +because of gap: /);
    expect(out).toMatch(/no answer elsewhere\n +gap +.*\n +twice +because of gap: /);
  });

  it("a page without checks says so", async () => {
    const { exit, out } = await splitline("check", page("bare.yaml", start));
    expect(exit).toBe(0);
    expect(out).toContain("no checks on this page");
  });

  it("a folder stands for its pages by name", async () => {
    const files = readdirSync(join(root, "notebooks")).filter((name) => /\.ya?ml$/.test(name));
    expect(files.length).toBeGreaterThan(0);
    expect((await json("check", "notebooks")).data).toMatchObject({
      pages: files.sort().map((name) => ({ file: join("notebooks", name), lines: expect.any(Array) })),
    });
  });

  it("--json has checks and lines, null where there is no answer", async () => {
    const nothingKnown = {
      doubt: null,
      mayNotHold: [],
      fromMemory: [],
      sourceNotStated: ["gap"],
      warnings: [],
      odd: [],
      setAside: [],
    };
    const atMost = (mm: number) => ({
      atLeast: null,
      atMost: mm,
      unit: "mm",
      si: { atLeast: null, atMost: mm / 1000, unit: "m" },
      typed: { atLeast: null, atMost: { text: `${mm} mm`, value: mm, unit: "mm" } },
    });
    expect((await json("check", fails)).data).toEqual({
      pages: [
        {
          file: fails,
          title: "One bolt",
          setAside: [],
          odd: [],
          exceptions: [{ mark: "fails", name: "tiny", words: "5 mm against at most 4 mm." }],
          pictures: [],
          warnings: [],
          notCovered: [],
          sourceNotStated: ["gap"],
          fromMemory: [],
          checks: [
            {
              name: "small",
              says: "small",
              state: "proven",
              value: 5,
              unit: "mm",
              limit: "at most 6 mm",
              limits: atMost(6),
              why: expect.any(String),
              ...nothingKnown,
            },
            {
              name: "tiny",
              says: "tiny",
              state: "fails",
              value: 5,
              unit: "mm",
              limit: "at most 4 mm",
              limits: atMost(4),
              why: expect.any(String),
              ...nothingKnown,
            },
          ],
          lines: [{ name: "gap", kind: "length", value: 5, unit: "mm", text: "5 mm" }],
        },
      ],
    });
    expect((await json("check", silent)).data).toMatchObject({
      pages: [
        {
          checks: [
            {
              name: "small",
              state: "no answer",
              value: null,
              limit: null,
              why: expect.stringContaining("gap"),
            },
          ],
          lines: [
            {
              name: "gap",
              value: null,
              text: "no answer",
              problem: { code: expect.any(String), text: expect.any(String) },
            },
            { name: "twice", value: null, problem: { text: expect.stringContaining("because of gap") } },
          ],
        },
      ],
    });
  });

  it("a working with several outputs has a cell for each", async () => {
    const file = page(
      "thread.yaml",
      "splitline: 1\ntitle: Thread\npage:\n  - working: bolt\n    by: metric-thread\n    of: { designation: M24x3 }\n",
    );
    const { data } = await json("check", file);
    expect(data).toMatchObject({
      pages: [
        {
          lines: expect.arrayContaining([
            expect.objectContaining({ name: "bolt.pitch", value: 3, unit: "mm" }),
          ]),
        },
      ],
    });
  });
});

describe("check of what cannot be read", () => {
  const empty = join(folder, "empty");
  mkdirSync(empty);
  const noise = Uint8Array.from({ length: 4096 }, (_, i) => (i * 167 + 13) % 256);

  it.each([
    ["a missing file", join(folder, "none.yaml"), "no such file"],
    ["a folder without pages", empty, "without pages"],
    ["a path through a file", join(proven, "x.yaml"), "not a folder"],
    ["an empty file", page("empty.yaml", ""), "nothing"],
    ["a file of blanks", page("blanks.yaml", "\n\n   \n"), "page"],
    ["a binary file", page("binary.yaml", noise), "UTF-8"],
    ["a file with a zero byte", page("zero.yaml", "splitline: 1\0\n"), "U+0000"],
    ["a huge file", page("huge.yaml", new Uint8Array(2_500_000).fill(97)), "at most 2000000 bytes"],
    ["an endless file", "/dev/zero", "got a device, must be a page file"],
    ["a page of another version", page("version.yaml", "splitline: 9\ntitle: x\npage: []\n"), "splitline"],
    ["plain text", page("text.yaml", "just a sentence\n"), "page"],
  ])("%s: exit code 2 and a sentence that says why", async (_, file, says) => {
    const { exit, out, err } = await splitline("check", file);
    expect({ exit, err }).toEqual({ exit: 2, err: "" });
    expect(out).toContain(says);
    const { data } = await json("check", file);
    expect(data).toMatchObject({
      pages: [{ file, checks: [], lines: [], problems: [{ text: expect.any(String) }] }],
    });
  });

  it("malformed YAML is placed by file, line and column", async () => {
    const file = page(
      "malformed.yaml",
      "splitline: 1\ntitle: x\npage:\n  - given: a\n    value: 14 mm\n   - check: b\n",
    );
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(2);
    expect(out).toContain(`${file}:6:`);
  });

  it("every problem of a page is said at once", async () => {
    const text =
      "splitline: 1\ntitle: x\npage:\n  - given: a\n    vlue: 14 mm\n  - chek: b\n    that: a\n  - check: c\n    thet: a\n";
    const file = page("wrong.yaml", text);
    const { exit, out } = await splitline("check", file);
    expect(exit).toBe(2);
    for (const place of [":5:5", ":6:5", ":9:5"]) expect(out).toContain(file + place);
    expect(out).toContain("did you mean value?");
  });

  it("nothing to check is refused", async () => {
    const { exit, err } = await splitline("check");
    expect(exit).toBe(2);
    expect(err).toContain("splitline check notebooks");
  });
});
