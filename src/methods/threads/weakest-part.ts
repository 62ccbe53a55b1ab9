// Which part gives way first, from the formula texts of thread-stripping itself, so that the loads have
// one spelling.
import { isProblem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import type { Insides } from "../inside.ts";
import type { Steps } from "../method.ts";

const parts = [
  ["boltLoad", "bolt"],
  ["externalStripLoad", "external thread"],
  ["internalStripLoad", "internal thread"],
] as const;

/** The part with the least load, the bolt in a tie; undefined where a load has no value. */
export function weakestPart(steps: Steps, inputs: Insides): string | undefined {
  const values = evaluateSteps(steps, inputs);
  if (isProblem(values)) return undefined;
  const loads = parts.map(([name, words]) => ({ words, load: values[name] ?? Number.NaN }));
  if (loads.some(({ load }) => Number.isNaN(load))) return undefined;
  return loads.reduce((least, next) => (next.load < least.load ? next : least)).words;
}
