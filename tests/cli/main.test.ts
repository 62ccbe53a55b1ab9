// The door of the command line: help, version, unknown words, closed pipes.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { version } from "../../package.json";
import { built, json, splitline, splitlineToClosedPipe } from "./built.ts";

describe("the command line", () => {
  it("starts with a line that lets a shell run it", async () => {
    expect(readFileSync(await built(), "utf8").split("\n")[0]).toBe("#!/usr/bin/env node");
  });

  it.each([[[]], [["help"]], [["--help"]], [["-h"]]])(
    "%j shows every command and the exit codes",
    async (words) => {
      const { exit, out } = await splitline(...words);
      expect(exit).toBe(0);
      for (const word of ["convert", "methods", "solve", "evidence", "check", "readings", "exit codes"])
        expect(out).toContain(word);
    },
  );

  it.each(["convert", "methods", "solve", "evidence", "check", "readings"])(
    "%s --help shows that command only",
    async (command) => {
      const { exit, out } = await splitline(command, "--help");
      expect({ exit, same: (await splitline("help", command)).out === out }).toEqual({ exit: 0, same: true });
      expect(out.startsWith(`splitline ${command}`)).toBe(true);
    },
  );

  it("--version is the version of the package", async () => {
    expect(await splitline("--version")).toEqual({ exit: 0, out: `${version}\n`, err: "" });
  });

  it("an unknown command is refused with the nearest one", async () => {
    const { exit, out, err } = await splitline("chekc", "notebooks");
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain("did you mean splitline check?");
  });

  it.each(["constructor", "__proto__", "toString"])("%s is no command either", async (word) => {
    expect((await splitline(word)).exit).toBe(2);
    expect((await splitline("methods", word)).exit).toBe(2);
  });

  it("an unknown flag is refused, before a command and after it", async () => {
    expect((await splitline("--vresion")).err).toContain("--version");
    const { exit, err } = await splitline("check", "notebooks", "--jsn");
    expect(exit).toBe(2);
    expect(err).toContain("did you mean --json?");
  });

  it("--json gives an unknown command as data", async () => {
    const { exit, data } = await json("chekc");
    expect(exit).toBe(2);
    expect(data).toMatchObject({ problem: { code: "unknown-command", suggestions: ["check"] } });
  });

  it.each([
    [["methods", "--json"], 0],
    [["check", "notebooks", "--json"], 1],
    [["help"], 0],
  ])("%j to a reader that closed ends quietly with its own exit code", async (words, exit) => {
    expect(await splitlineToClosedPipe(...words)).toEqual({ exit, err: "" });
  });

  it("uses no colour and no control characters", async () => {
    const { out } = await splitline("check", "notebooks");
    expect(out.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
  });
});
