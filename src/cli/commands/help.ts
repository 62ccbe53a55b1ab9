// What can be asked, and how. Each command's own help is its block of this text.
import { exitFine, type Outcome } from "../outcome.ts";

const usage: Readonly<Record<string, string>> = {
  convert: `splitline convert "<quantity>" [--to <unit>] [--as <kind>] [--json]
    One quantity in other units, with how it was read and the exact rule.
    splitline convert "220 lbf.in" --to N.m
    splitline convert "50 degF" --to K --as "temperature difference"`,
  methods: `splitline methods [<id>] [--json]
    Every method by family; with an id its inputs, equations, limits, sources and evidence.
    splitline methods preload-from-torque`,
  solve: `splitline solve <id> name=value ... [--show torque=lbf.ft] [--json]
    One method worked out: outputs, working, notes, sources. Lists are given as JSON text.
    splitline solve preload-from-torque torque="520 lbf.ft" nutFactor=0.14 diameter="24 mm"`,
  evidence: `splitline evidence [--json]
    Every reference row run: how many each method has, how each is known, and the row nearest its tolerance.`,
  check: `splitline check <page or folder> ... [--json]
    Every check of each page with its state and the reason, then what has no answer.
    splitline check notebooks`,
};

export const commandNames: readonly string[] = [...Object.keys(usage), "help"];

const exitCodes = `exit codes
  0  answered; every check is proven or waived
  1  a check fails
  2  the input could not be read
  3  a check is unproven, or something has no answer`;

export function helpCommand(args: readonly string[]): Outcome {
  const own = usage[args[0] ?? ""];
  if (own) return { exit: exitFine, out: `${own}\n\n${exitCodes}\n` };
  const all = Object.values(usage)
    .map((text) => `  ${text.replaceAll("\n", "\n  ")}`)
    .join("\n\n");
  return {
    exit: exitFine,
    out: `splitline: a calculation notebook for fastener and joint engineering\n\n${all}\n\n  splitline help [<command>]\n  splitline --version\n\n${exitCodes}\n`,
  };
}
