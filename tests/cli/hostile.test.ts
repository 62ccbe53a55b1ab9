// Files made to mislead or to hold up: what is not seen never reaches a terminal, and nothing waits for ever.
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { splitlineAlone, splitlineAloneIn } from "./built.ts";

const folder = mkdtempSync(join(tmpdir(), "splitline-hostile-"));
afterAll(() => rmSync(folder, { recursive: true }));

const write = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

const unseen = /(?![\n])\p{Cc}|[\u202A-\u202E\u2066-\u2069\u2028\u2029]/u;
const page = (head: string, item: string): string => `splitline: 1\n${head}\npage:\n${item}\n`;
const failing = "  - check: c\n    that: 1 + 1\n    atMost: 1";

describe("a page whose texts hold what is not seen", () => {
  it.each([
    ["a title", page(String.raw`title: "\e[2A\e[2K proven"`, failing), ":2:8 ", "U+001B"],
    ["a label", page("title: a", `${failing}\n    says: "\\x9b2K proven"`), ":7:11 ", "U+009B"],
    [
      "a source",
      page("title: a", '  - given: a\n    value: 1 mm\n    source: "x\\u202eyz"'),
      ":6:13 ",
      "U+202E",
    ],
    ["a value", page("title: a", '  - given: a\n    value: "1 mm\\x7f"'), ":5:12 ", "U+007F"],
    ["an isolate", page(String.raw`title: "\u2066x\u2069"`, failing), ":2:8 ", "U+2066"],
    ["a lone return", page(String.raw`title: "a\rproven"`, failing), ":2:8 ", "U+000D"],
  ])("%s is refused at its place", async (_, text, where, code) => {
    const { exit, out } = await splitlineAlone("check", write("odd.yaml", text));
    expect(exit).toBe(2);
    expect(out).toContain(`odd.yaml${where}`);
    expect(out).toContain(`got the character ${code}, written as an escape`);
    expect(out).not.toMatch(unseen);
  });

  it("line ends inside a title or a label begin no line of the answer", async () => {
    const text = page(
      String.raw`title: "a\n  proven        c: fine"`,
      `${failing}\n    says: "x\\n  proven        d: fine"`,
    );
    const { out } = await splitlineAlone("check", write("lines.yaml", text));
    expect(out.split("\n").filter((line) => line.startsWith("  proven"))).toEqual([]);
    expect(out).toContain("  fails");
  });

  it("a line separator is named, and stays itself in data", async () => {
    const file = write("separator.yaml", page(String.raw`title: "a\u2028b"`, failing));
    expect((await splitlineAlone("check", file)).out).toContain("a<U+2028>b");
    const { out } = await splitlineAlone("check", file, "--json");
    expect(out).not.toMatch(unseen);
    expect(JSON.parse(out)).toMatchObject({ pages: [{ title: "a\u2028b" }] });
  });
});

describe("names and words that hold what is not seen", () => {
  it.each([
    ["an escape", "a\u001b[2Kb.yaml", "a<U+001B>[2Kb.yaml"],
    ["a line end", "a\nproven.yaml", "a proven.yaml"],
    ["an override", "a\u202eb.yaml", "a<U+202E>b.yaml"],
  ])("a file named with %s is shown cleaned", async (_, name, shown) => {
    write(name, page("title: a", failing));
    const { out } = await splitlineAloneIn(folder, ["check", name]);
    expect(out).toContain(shown);
    expect(out).not.toMatch(unseen);
  });

  it.each([[["\u001b[2K"]], [["check", "\u001b[2K"]], [["convert", "5 \u001b[2Kmm"]], [["solve", "\u202e"]]])(
    "%j is answered cleaned",
    async (words) => {
      const { exit, out, err } = await splitlineAlone(...words);
      expect(exit).toBe(2);
      expect(out + err).not.toMatch(unseen);
    },
  );
});

describe("what is no file", () => {
  const unlike = process.platform === "win32" ? [] : ["pipe", "device"];

  it.each(unlike)("a %s is refused by name and not waited for", async (kind) => {
    const file = join(folder, `${kind}.yaml`);
    if (kind === "pipe") execFileSync("mkfifo", [file]);
    else symlinkSync("/dev/zero", file);
    const { exit, out } = await splitlineAlone("check", file);
    expect({ exit, says: out.split("\n")[2]?.trim() }).toEqual({
      exit: 2,
      says: `check · ${file}: got a ${kind}, must be a page file or a folder of pages; save it to a file first`,
    });
    const given = write(
      "page.yaml",
      page("title: a", "  - reading: r\n    columns: { p: tag }\n    rows: p"),
    );
    expect((await splitlineAlone("readings", given, "r", "--in", file)).err).toContain(
      `got a ${kind}, must be a CSV file`,
    );
    expect((await splitlineAlone("readings", file)).err).toContain(`got a ${kind}, must be a page file`);
    rmSync(file);
  });

  it.skipIf(unlike.length === 0)(
    "standard input by its device is refused, and - still read for --in",
    async () => {
      const { exit, out } = await splitlineAloneIn(folder, ["check", "/dev/stdin"], "splitline: 1\n");
      expect(exit).toBe(2);
      expect(out).toMatch(/got a (pipe|socket), must be a page file/);
      const given = write(
        "page.yaml",
        page("title: a", "  - reading: r\n    columns: { p: tag }\n    rows: p"),
      );
      expect((await splitlineAloneIn(folder, ["readings", given, "r", "--in", "-"], "p\n1\n")).exit).toBe(0);
    },
  );

  it.skipIf(unlike.length === 0)("a pipe that nobody reads is not written to", async () => {
    const file = join(folder, "out.csv");
    execFileSync("mkfifo", [file]);
    const given = write(
      "page.yaml",
      page("title: a", "  - reading: r\n    columns: { p: tag }\n    rows: p"),
    );
    const { exit, err } = await splitlineAlone("readings", given, "r", "--out", file);
    expect(exit).toBe(2);
    expect(err).toContain("got a pipe that nobody reads");
  });

  it("a folder called as a page is refused by name", async () => {
    mkdirSync(join(folder, "inner"));
    mkdirSync(join(folder, "inner", "a.yaml"));
    const { exit, out } = await splitlineAlone("check", join(folder, "inner"));
    expect(exit).toBe(2);
    expect(out).toContain("a.yaml: got a folder, must be a page file");
  });
});
