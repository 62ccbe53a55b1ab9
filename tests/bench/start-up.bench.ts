// How long the command line takes to answer, against Node starting with nothing to do.
// Child processes of one parent, in turn; disk warm.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Bench } from "./bench.ts";

const entry = join(process.cwd(), ".cache", "bench", "cli", "splitline.js"); // built by run.mjs
const folder = mkdtempSync(join(tmpdir(), "start-up-"));
const page = join(folder, "small.yaml");
const empty = join(folder, "empty.mjs");

/** Runs and gives what must be the same for all: that it ended well. */
const ends =
  (...args: readonly string[]) =>
  (): number => {
    execFileSync(process.execPath, args, { stdio: "ignore" });
    return 0;
  };

const bench: Bench = {
  title: "start-up · a process from start to end",
  reference: "bare node",
  bars: { convert: 1.5, "check one small page": 2.0 },
  cases: {
    "bare node": ends(empty),
    convert: ends(entry, "convert", "220 lbf.in", "--to", "N.m"),
    methods: ends(entry, "methods"),
    "check one small page": ends(entry, "check", page),
  },
  before: () => {
    writeFileSync(empty, "");
    const item = "  - given: gap\n    value: 5 mm\n  - check: small\n    that: gap\n    atMost: '\"6 mm\"'\n";
    writeFileSync(page, `splitline: 1\ntitle: Small\npage:\n${item}`);
  },
  after: () => rmSync(folder, { recursive: true }),
};

export default bench;
