// Words and flags of one command. A minus before a digit or a point starts a number, not a flag,
// so that "convert -40 degC" needs no quotes.
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";

/** "yes" stands alone, "text" takes one value, "texts" may be given again. */
export type Flags = Readonly<Record<string, "yes" | "text" | "texts">>;

export interface Arguments {
  readonly words: readonly string[];
  readonly flags: ReadonlyMap<string, readonly string[]>;
}

const common: Flags = { json: "yes", help: "yes" };

const isFlag = (word: string): boolean => /^--?[A-Za-z]/.test(word);

export function readArguments(command: string, args: readonly string[], own: Flags): Arguments | Problem {
  const known: Flags = { ...own, ...common };
  const words: string[] = [];
  const flags = new Map<string, string[]>();
  for (let i = 0; i < args.length; i++) {
    const word = args[i] ?? "";
    if (word === "--") {
      words.push(...args.slice(i + 1));
      break;
    }
    if (!isFlag(word)) {
      words.push(word);
      continue;
    }
    const [, typed = "", joined] = /^--?([^=]*)(?:=([\s\S]*))?$/.exec(word) ?? [];
    const name = typed === "h" ? "help" : typed;
    const form =
      Object.hasOwn(known, name) && (word.startsWith("--") || typed === "h") ? known[name] : undefined;
    if (form === undefined) return unknownFlag(command, word, Object.keys(known));
    if (form === "yes") {
      if (joined !== undefined) return takesNothing(command, name, joined);
      flags.set(name, []);
      continue;
    }
    const value = joined ?? args[++i];
    if (value === undefined || value.trim() === "") return needsValue(command, name);
    const before = flags.get(name);
    if (before && form === "text") return twice(command, name, [...before, value]);
    flags.set(name, [...(before ?? []), value]);
  }
  return { words, flags };
}

function unknownFlag(command: string, word: string, names: readonly string[]): Problem {
  const near = nearest(word.replace(/^-+/, "").replace(/=.*/s, ""), names, 1).map((name) => `--${name}`);
  return problem({
    code: "unknown-flag",
    where: command,
    what: word,
    got: "a flag this command does not know",
    must: `be one of ${names.map((name) => `--${name}`).join(", ")}`,
    hint: near[0] ? `did you mean ${near[0]}?` : undefined,
    suggestions: near,
  });
}

const needsValue = (command: string, name: string): Problem =>
  problem({
    code: "flag-without-value",
    where: command,
    what: `--${name}`,
    got: "nothing",
    must: "be followed by a value",
  });

const takesNothing = (command: string, name: string, got: string): Problem =>
  problem({ code: "flag-with-value", where: command, what: `--${name}`, got, must: "stand alone" });

const twice = (command: string, name: string, values: readonly string[]): Problem =>
  problem({
    code: "flag-twice",
    where: command,
    what: `--${name}`,
    got: values.join(" and "),
    must: "be given once",
  });
