#!/usr/bin/env node
// The command line's door: writes the answer of a command and sets the exit code.
import { problem } from "../problem.ts";
import { visible } from "../visible.ts";
import { exitUnwritten, type Outcome, worded } from "./outcome.ts";
import { runCommand } from "./run-command.ts";

/** A fault of the program itself, never of the input (EX_SOFTWARE of sysexits.h). */
const exitFault = 70;

/** Writes the text whole, each character that is not seen named in its place; gives what kept it from that. */
const written = (stream: NodeJS.WriteStream, text: string, isData = false): Promise<string | undefined> =>
  new Promise((resolve) => {
    stream.on("error", ({ code = "an error while writing" }: NodeJS.ErrnoException) => resolve(code));
    stream.write(isData && !stream.isTTY ? text : visible(text), (error) => {
      if (!error) resolve(undefined);
    });
  });

/** A reader that closes early, such as head, is told nothing: it asked for no more. */
async function write({ exit, out = "", err = "", isData }: Outcome): Promise<void> {
  process.exitCode = exit; // the process ends by itself, so that a pipe gets the whole answer
  const kept = err === "" ? undefined : await written(process.stderr, err);
  const lost = out === "" ? undefined : await written(process.stdout, out, isData);
  if (kept === undefined && lost === undefined) return;
  process.exitCode = exitUnwritten;
  if (lost !== undefined && lost !== "EPIPE") await written(process.stderr, `${worded(unwritten(lost))}\n`);
}

const unwritten = (got: string) =>
  problem({
    code: "unwritten",
    where: "splitline",
    what: "answer",
    got: got === "ENOSPC" ? "a full disk" : got,
    must: "be written whole",
    why: "what stands there is cut off",
  });

async function main(): Promise<void> {
  const width = process.stdout.isTTY ? Math.max(40, process.stdout.columns) : Number.POSITIVE_INFINITY;
  try {
    await write(await runCommand(process.argv.slice(2), width));
  } catch (error) {
    const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
    await write({
      exit: exitFault,
      err: `splitline: a fault of the program itself, please report it\n${told}\n`,
    });
  }
}

await main();
