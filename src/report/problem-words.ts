// A problem as a sentence of the trade; the terse form for terminals is `sentence` of src/problem.ts.
import { type Problem, problem } from "../problem.ts";
import { onScreen } from "../units/on-screen.ts";
import { capital, ended } from "../words.ts";

/** "Nut factor: 14, but it must be below 1. Was a percentage entered?" A place keeps its spelling. */
export function problemSentence({ where, what, got, must, why, hint }: Problem): string {
  const head = where === undefined ? capital(what) : `${where} · ${what}`;
  const facts = got === undefined ? must && `must ${must}` : must ? `${got}, but it must ${must}` : got;
  const [first, ...more] = [facts, why, hint].filter((part): part is string => !!part);
  const colon = facts !== undefined && facts !== "" && got === undefined ? " " : ": ";
  const said = first === undefined ? head : `${head}${colon}${first}`;
  return onScreen([said, ...more.map(capital)].map(ended).join(" "));
}

/** Beside the line it belongs to, the place need not be named again. */
export function inPlace({ code, what, got, must, why, hint }: Problem): string {
  return problemSentence(problem({ code, what, got, must, why, hint }));
}
