// The door of the command line: help, version, unknown words, closed pipes.
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { version } from "../../package.json";
import { built, json, splitline, splitlineAlone, splitlineTo, splitlineToClosedPipe } from "./built.ts";

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
    expect(await splitlineAlone("--version")).toEqual({ exit: 0, out: `${version}\n`, err: "" });
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

  it.each([[["methods", "--json"]], [["check", "notebooks", "--json"]], [["help"]]])(
    "%j to a reader that closed ends quietly with exit code 4",
    async (words) => {
      expect(await splitlineToClosedPipe(...words)).toEqual({ exit: 4, err: "" });
    },
  );

  it.skipIf(!existsSync("/dev/full"))("a full disk is exit code 4 and one sentence", async () => {
    expect(await splitlineTo("/dev/full", "check", "notebooks")).toEqual({
      exit: 4,
      err: "splitline · answer: got a full disk, must be written whole; what stands there is cut off\n",
    });
  });

  it("--version and help answer --json with data", async () => {
    expect(await json("--version")).toEqual({ exit: 0, data: { version } });
    const all = await json("help");
    expect(all.exit).toBe(0);
    expect(all.data).toMatchObject({
      commands: expect.arrayContaining([expect.objectContaining({ name: "check" })]),
      exitCodes: { "1": "a check fails", "4": expect.stringContaining("could not be written") },
    });
    expect((await json("help", "solve")).data).toMatchObject({ commands: [{ name: "solve" }] });
    expect(await json("solve", "--help")).toEqual(await json("help", "solve"));
  });

  it.each([["--version"], ["help"], ["check", "notebooks"], ["methods"], ["zork"]])(
    "%s with --json=1 is refused as data",
    async (...words) => {
      const { exit, out } = await splitline(...words, "--json=1");
      expect(exit).toBe(2);
      expect(JSON.parse(out)).toMatchObject({ problem: { text: expect.any(String) } });
    },
  );

  it("uses no colour and no control characters", async () => {
    const { out } = await splitlineAlone("check", "notebooks");
    expect(out.replaceAll("\n", "")).not.toMatch(/\p{Cc}/u);
  });
});
