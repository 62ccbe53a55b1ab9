#!/usr/bin/env node
// The command line's door: picks a command, writes its answer, sets the exit code.
// Each command is imported only when asked for, so that a conversion starts without the rest.
import { version } from "../../package.json";
import { isProblem, problem } from "../problem.ts";
import { visible } from "../visible.ts";
import { readArguments } from "./arguments.ts";
import { asJson, exitFine, exitUnwritten, type Outcome, refused, wantsJson, worded } from "./outcome.ts";

type Run = (args: readonly string[], width: number) => Outcome | Promise<Outcome>;

const commands: Readonly<Record<string, () => Promise<Run>>> = {
  convert: async () => (await import("./commands/convert.ts")).convertCommand,
  methods: async () => (await import("./commands/methods.ts")).methodsCommand,
  solve: async () => (await import("./commands/solve.ts")).solveCommand,
  evidence: async () => (await import("./commands/evidence.ts")).evidenceCommand,
  check: async () => (await import("./commands/check.ts")).checkCommand,
  readings: async () => (await import("./commands/readings.ts")).readingsCommand,
  help: async () => (await import("./commands/help.ts")).helpCommand,
};

/** A fault of the program itself, never of the input (EX_SOFTWARE of sysexits.h). */
const exitFault = 70;

async function answer(args: readonly string[], width: number): Promise<Outcome> {
  const [first = "help", ...rest] = args;
  if (first === "--version" || first === "-v") return versionAnswer(rest);
  const name = first === "--help" || first === "-h" ? "help" : first;
  if (!Object.hasOwn(commands, name)) {
    const { unknownWord } = await import("./commands/unknown.ts");
    return unknownWord(first, Object.keys(commands), wantsJson(args));
  }
  const asksHelp = name !== "help" && rest.some((word) => word === "--help" || word === "-h");
  const load = asksHelp ? commands["help"] : commands[name];
  const run = await load?.();
  return run ? run(asksHelp ? [name, ...rest.filter(isJsonFlag)] : rest, width) : { exit: exitFault };
}

const isJsonFlag = (word: string): boolean => wantsJson([word]);

function versionAnswer(args: readonly string[]): Outcome {
  const read = readArguments("splitline --version", args, {});
  if (isProblem(read)) return refused(read, wantsJson(args));
  return { exit: exitFine, out: read.flags.has("json") ? asJson({ version }) : `${version}\n` };
}

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
    await write(await answer(process.argv.slice(2), width));
  } catch (error) {
    const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
    await write({
      exit: exitFault,
      err: `splitline: a fault of the program itself, please report it\n${told}\n`,
    });
  }
}

await main();
