// One shape for every problem with the text of a formula, so that each carries its column.
// `where` stays free for the line or the method that holds the formula.

import { type Problem, type ProblemFields, problem } from "../problem.ts";

export function refusal(code: string, at: number, fields: Omit<ProblemFields, "code" | "what">): Problem {
  return problem({ code, what: `formula, column ${at}`, ...fields });
}

/** A problem from elsewhere (a quantity in quotes, say), given the column it stands at. */
export function placed(p: Problem, at: number): Problem {
  const { code, where, got, must, why, hint, suggestions, cause } = p;
  const what = `formula, column ${at}, ${p.what}`;
  return problem({ code, what, where, got, must, why, hint, suggestions, cause });
}

/** The 1-based column a formula problem points at. */
export function columnOf(p: Problem): number | undefined {
  const found = /^formula, column (\d+)/.exec(p.what)?.[1];
  return found === undefined ? undefined : Number(found);
}
