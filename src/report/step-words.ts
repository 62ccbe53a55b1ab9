// A step of a working: what it is called, and its lines in symbols, with numbers, and as a result.
import { inWords } from "../document/place-words.ts";
import { plain, type Shown } from "../formula/show.ts";
import { methods } from "../methods/register.ts";
import type { UnitChoice, WorkedStep } from "../methods/solution.ts";

/** What an output of a method is called. */
export const saysOf = (method: string, output: string): string =>
  methods.get(method)?.outputs[output]?.says ?? inWords(output);

/** "frusta 2 · stiffness": a step of one row of a list says which. */
export function stepName(method: string, { name, says }: WorkedStep): string {
  const row = name.lastIndexOf(" · ");
  const own = row < 0 ? 0 : row + 3;
  return name.slice(0, own) + (says ?? saysOf(method, name.slice(own)));
}

/** Symbols, numbers, result; a step that only names a number needs one line. */
export function stepLines(step: WorkedStep, unitOf: UnitChoice, result: Shown): readonly Shown[] {
  const all = [step.symbols(), step.numbers(unitOf), result];
  return all.filter((shown, i) => i === 0 || plain(shown) !== plain(all[i - 1] ?? shown));
}
