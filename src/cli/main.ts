#!/usr/bin/env node
// The command line's door: picks a command, writes its answer, sets the exit code.
// Each command is imported only when asked for, so that a conversion starts without the rest.
import { version } from "../../package.json";
import type { Outcome } from "./outcome.ts";

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
  if (first === "--version" || first === "-v") return { exit: 0, out: `${version}\n` };
  const name = first === "--help" || first === "-h" ? "help" : first;
  if (!Object.hasOwn(commands, name)) {
    const { unknownWord } = await import("./commands/unknown.ts");
    return unknownWord(first, Object.keys(commands), args.includes("--json"));
  }
  const asksHelp = name !== "help" && rest.some((word) => word === "--help" || word === "-h");
  const load = asksHelp ? commands["help"] : commands[name];
  const run = await load?.();
  return run ? run(asksHelp ? [name] : rest, width) : { exit: exitFault };
}

/** A reader that closes early, such as head, ends the output quietly. */
function ignoreClosedPipe(stream: NodeJS.WriteStream): void {
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
}

async function main(): Promise<void> {
  ignoreClosedPipe(process.stdout);
  ignoreClosedPipe(process.stderr);
  const width = process.stdout.isTTY ? Math.max(40, process.stdout.columns) : Number.POSITIVE_INFINITY;
  try {
    const outcome = await answer(process.argv.slice(2), width);
    process.exitCode = outcome.exit; // the process ends by itself, so that a pipe gets the whole answer
    if (outcome.err) process.stderr.write(outcome.err);
    if (outcome.out) process.stdout.write(outcome.out);
  } catch (error) {
    process.exitCode = exitFault;
    const told = error instanceof Error ? (error.stack ?? error.message) : String(error);
    process.stderr.write(`splitline: a fault of the program itself, please report it\n${told}\n`);
  }
}

await main();
