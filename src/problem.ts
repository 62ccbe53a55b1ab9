// A problem is data; the one function below puts it into words, so that the command line,
// the page and the tests all say the same sentence.

import { onOneLine } from "./visible.ts";

export interface ProblemFields {
  /** Stable kebab-case name of the kind of problem, e.g. "unknown-unit". */
  readonly code: string;
  /** The thing that is wrong, in the person's words: "nut factor", "line 12". */
  readonly what: string;
  /** Where it stands: method id, cell name, or file:line:column. */
  readonly where?: string | undefined;
  /** What was found. */
  readonly got?: string | undefined;
  /** What it has to be instead. */
  readonly must?: string | undefined;
  /** Why that matters, or what happens otherwise. */
  readonly why?: string | undefined;
  /** What the person can do now. */
  readonly hint?: string | undefined;
  /** Texts that would be accepted in place of what was typed; a tap applies one. */
  readonly suggestions?: readonly string[] | undefined;
  /** The first problem upstream, when this one only passes it on. */
  readonly cause?: Problem | undefined;
}

/** Longer than any sentence that is read; what a hostile file makes longer is cut, and says so. */
const longest = 2000;
const short = (text: string): string =>
  text.length <= longest ? text : `${text.slice(0, longest)}… (${text.length} characters)`;

/** Why there is no answer, or what to ask: data, worded by `sentence` alone. Returned, never thrown. */
export class Problem {
  readonly code: string;
  readonly what: string;
  readonly where: string | undefined;
  readonly got: string | undefined;
  readonly must: string | undefined;
  readonly why: string | undefined;
  readonly hint: string | undefined;
  readonly suggestions: readonly string[];
  readonly cause: Problem | undefined;

  constructor(fields: ProblemFields) {
    this.code = fields.code;
    this.what = short(fields.what);
    this.where = fields.where;
    this.got = fields.got && short(fields.got);
    this.must = fields.must && short(fields.must);
    this.why = fields.why && short(fields.why);
    this.hint = fields.hint && short(fields.hint);
    this.suggestions = fields.suggestions ?? [];
    this.cause = fields.cause;
  }

  /** The same problem with some of its facts replaced. */
  with(fields: Partial<ProblemFields>): Problem {
    const { code, what, where, got, must, why, hint, suggestions, cause } = this;
    return new Problem({ code, what, where, got, must, why, hint, suggestions, cause, ...fields });
  }

  /** The same problem, seen from another place; a place that is already known is kept. */
  at(where: string): Problem {
    return this.where === undefined ? this.with({ where }) : this;
  }
}

export const problem = (fields: ProblemFields): Problem => new Problem(fields);

/** Whether an answer is a problem. */
export const isProblem = (value: unknown): value is Problem => value instanceof Problem;

/** The problem that started it all. */
export function root(p: Problem): Problem {
  return p.cause ? root(p.cause) : p;
}

/**
 * House wording: where · what: got …, must …; why; hint.
 * Lower case, no full stop, no exclamation mark.
 */
export function sentence(p: Problem): string {
  const facts = [p.got && `got ${p.got}`, p.must && `must ${p.must}`].filter(Boolean).join(", ");
  const reasons = [facts, p.why, p.hint].filter(Boolean).join("; ");
  const head = [p.where, p.what].filter(Boolean).join(" · ");
  return onOneLine(reasons ? `${head}: ${reasons}` : head);
}
