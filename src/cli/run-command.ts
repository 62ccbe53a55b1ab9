// From the words on the command line to an answer, nothing written yet.
// Each command is imported only when asked for, so that a conversion starts without the rest.
import { version } from "../../package.json";
import { isProblem } from "../problem.ts";
import { readArguments } from "./arguments.ts";
import { asJson, exitFine, type Outcome, refused, wantsJson } from "./outcome.ts";

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

/** `width` in characters, infinite where no terminal folds the lines. */
export async function runCommand(args: readonly string[], width: number): Promise<Outcome> {
  const [first = "help", ...rest] = args;
  if (first === "--version" || first === "-v") return versionAnswer(rest);
  const name = first === "--help" || first === "-h" ? "help" : first;
  const load = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!load) {
    const { unknownWord } = await import("./commands/unknown.ts");
    return unknownWord(first, Object.keys(commands), wantsJson(args));
  }
  const asksHelp = name !== "help" && rest.some((word) => word === "--help" || word === "-h");
  if (!asksHelp) return (await load())(rest, width);
  const { helpCommand } = await import("./commands/help.ts");
  return helpCommand([name, ...rest.filter((word) => wantsJson([word]))]);
}

function versionAnswer(args: readonly string[]): Outcome {
  const read = readArguments("splitline --version", args, {});
  if (isProblem(read)) return refused(read, wantsJson(args));
  return { exit: exitFine, out: read.flags.has("json") ? asJson({ version }) : `${version}\n` };
}
