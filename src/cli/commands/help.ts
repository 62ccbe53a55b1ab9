// What can be asked, and how. Each command's own help is its block of this text.
import { isProblem } from "../../problem.ts";
import { readArguments } from "../arguments.ts";
import { asJson, exitFine, type Outcome, refused, wantsJson } from "../outcome.ts";

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
    Every check of each page with its state and the reason, what its pictures show, then what has no answer.
    splitline check notebooks`,
  readings: `splitline readings <page> [<reading>] [--out <file.csv> [--sort] [--replace]] [--in <file.csv> [--write]] [--json]
    The readings of a page; one of them out as CSV, or a CSV file into it. Shown first, written with --write.
    splitline readings notebooks/pump-2-as-found.yaml holes --out holes.csv
    splitline readings notebooks/pump-2-as-found.yaml holes --in holes.csv --write`,
};

/** Said only where one command's help is asked for. */
const details: Readonly<Record<string, string>> = {
  check: `    --json gives pages: [{ file, title,
      setAside: [{ reading, place, value, why, by, when, now }], odd: [{ reading, place, value }],
      checks: [{ name, says, state, value, unit, limit, limits: { atLeast, atMost, unit },
        doubt: { halfWidth, unit, from }, why, mayNotHold, fromMemory, sourceNotStated, rows }],
      lines: [{ name, kind, value, unit, text }],
      pictures: [{ name, picture, says, sentence, mayNotHold }],
      warnings: [{ name, text, line, column, spoils }], sourceNotStated }]
    What has no answer has a problem: { code, line, column, what, got, must, why, hint, text }`,
  readings: `    --out <file>        the reading as CSV, units in the heads; - is standard output
      --sort            by its key, in the order the page expects
      --replace         in place of a file that is there; never of a page
    --in <file>         CSV with one line for each reading; - is standard input; shown, not written
      --add             beside the rows that are there (the default): the same reading is
                        left alone, a blank is filled, a row with a known key corrects it and needs a reason
      --replace         in place of all rows; what changes and what goes is named
      --write           put it into the page, all of it or nothing
      --reason <text>   why its rows correct what is there, where they do not say it themselves
      --as-read         take values that lie far from all others as they are; the rows then say so
      --by <name>       who says that
      --delimiter comma|semicolon|tab, --decimal point|comma    where the file leaves it open
    Numbers are never converted: a value in another unit than the page's keeps its own.

    --json gives
      list    { file, title, readings: [{ name, says, columns: [{ name, kind, unit }], key, rows,
                states: { entered, missing, odd, corrected, setAside }, notEntered: [{ line, state }],
                wanted: [{ <column>: <value> }] }] }; what has no answer has a problem, and rows null
      --out   { file, reading, rows, columns, out }, or csv in place of out for -
      --in    { file, reading, from, mode, delimiter, decimal, columns: [{ name, heading, kind, unit }], leftOut,
                counts: { new, same, fillsABlank, corrects, changed },
                rows: [{ line, fate, key, pageLine, changes: [{ column, from, to }] }],
                gone: [{ pageLine, key }], skipped: [{ line, why }],
                afterwards: { rows, states, wanted }, changesPage, written }
      a file that cannot be read: { problem, problems, written: false }`,
};

const exitCodes = `exit codes
  0  answered; every check is proven or waived
  1  a check fails
  2  the input could not be read, or a picture is asked what it cannot take
  3  a check is unproven, or something has no answer
  4  the answer could not be written: a full disk, or a reader that has gone
  5  all that fails is a window that no torque passes
  70 a fault of the program itself`;

const codes = Object.fromEntries(
  exitCodes.split("\n").flatMap((line) => {
    const [code = "", ...words] = line.trim().split(/ +/);
    return /^\d/.test(code) ? [[code, words.join(" ")] as const] : [];
  }),
);

/** One command where it is named, else all of them; the text is what a person reads. */
const helpRecords = (name: string) =>
  Object.entries(usage)
    .filter(([command]) => !Object.hasOwn(usage, name) || command === name)
    .map(([command, text]) => ({
      name: command,
      text: [text, ...(details[command] === undefined ? [] : [details[command]])].join("\n\n"),
    }));

export function helpCommand(args: readonly string[]): Outcome {
  const read = readArguments("help", args, {});
  if (isProblem(read)) return refused(read, wantsJson(args));
  const [name = ""] = read.words;
  const own = Object.hasOwn(usage, name) ? usage[name] : undefined;
  const more = details[name] === undefined ? "" : `\n\n${details[name]}`;
  if (read.flags.has("json"))
    return { exit: exitFine, out: asJson({ commands: helpRecords(name), exitCodes: codes }) };
  if (own) return { exit: exitFine, out: `${own}${more}\n\n${exitCodes}\n` };
  const all = Object.values(usage)
    .map((text) => `  ${text.replaceAll("\n", "\n  ")}`)
    .join("\n\n");
  return {
    exit: exitFine,
    out: `splitline: a calculation notebook for fastener and joint engineering\n\n${all}\n\n  splitline help [<command>]\n  splitline --version\n\n${exitCodes}\n`,
  };
}
