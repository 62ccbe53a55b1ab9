// What a command hands back; only main.ts writes it out and ends the process.
import { type Problem, root, sentence } from "../problem.ts";
import { escaped, onOneLine } from "../visible.ts";

/** 0 answered, or every check proven or waived. */
export const exitFine = 0;
/** A check fails. */
export const exitFails = 1;
/** The input could not be read. */
export const exitUnread = 2;
/** A check is unproven, or something has no answer. */
export const exitOpen = 3;
/** The answer could not be written: a full disk, or a reader that has gone. */
export const exitUnwritten = 4;
/** All that fails is a window that no torque passes. */
export const exitClosed = 5;

export interface Outcome {
  readonly exit: number;
  readonly out?: string;
  readonly err?: string;
  /** The text is data for another program, which gets every byte of it; a terminal gets it cleaned. */
  readonly isData?: boolean;
}

/** The sentence of a problem, with what could be typed instead where the sentence does not say it yet. */
export function worded(p: Problem): string {
  const said = sentence(p);
  const unsaid = p.suggestions.filter((text) => !said.includes(text)).slice(0, 3);
  return unsaid.length === 0
    ? said
    : onOneLine(`${said}; try ${unsaid.map((text) => `"${text}"`).join(" or ")}`);
}

export interface ProblemRecord {
  readonly code: string;
  /** In the page file, from 1; null where the problem stands in none. */
  readonly line: number | null;
  readonly column: number | null;
  readonly what: string;
  readonly got: string | null;
  readonly must: string | null;
  readonly why: string | null;
  readonly hint: string | null;
  readonly suggestions: readonly string[];
  readonly text: string;
}

export function problemRecord(p: Problem, text = worded(root(p))): ProblemRecord {
  const first = root(p);
  const [, line, column] = /:(\d+):(\d+)(?: · |$)/.exec(first.where ?? "") ?? [];
  return {
    code: first.code,
    line: line === undefined ? null : Number(line),
    column: column === undefined ? null : Number(column),
    what: first.what,
    got: first.got ?? null,
    must: first.must ?? null,
    why: first.why ?? null,
    hint: first.hint ?? null,
    suggestions: first.suggestions,
    text,
  };
}

export const asJson = (value: unknown): string => escaped(`${JSON.stringify(value, null, 2)}\n`);

/** Whether data was asked for, if only by a flag that is refused: --json=1. */
export function wantsJson(args: readonly string[]): boolean {
  const end = args.indexOf("--");
  return (end < 0 ? args : args.slice(0, end)).some((word) => /^--?json(?:=|$)/.test(word));
}

/** Bad input: one sentence on the error stream, or the problem as data for `--json`. */
export function refused(p: Problem, json: boolean): Outcome {
  return json
    ? { exit: exitUnread, out: asJson({ problem: problemRecord(p) }) }
    : { exit: exitUnread, err: `${worded(p)}\n` };
}
