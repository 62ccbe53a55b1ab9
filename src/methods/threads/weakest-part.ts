// Which part gives way first, from the formula texts of thread-stripping itself, so that the loads have
// one spelling.
import { parse } from "../../formula/parse.ts";
import { evaluator } from "../../formula/value.ts";
import { isProblem } from "../../problem.ts";
import { type Inside, type Insides, lookIn } from "../inside.ts";
import type { Steps } from "../method.ts";

const parts = [
  ["boltLoad", "bolt"],
  ["externalStripLoad", "external thread"],
  ["internalStripLoad", "internal thread"],
] as const;

/** The part with the least load, the bolt in a tie; undefined where a load has no value. */
export function weakestPart(steps: Steps, inputs: Insides): string | undefined {
  const values = new Map<string, Inside>(Object.entries(inputs));
  for (const [name, text] of Object.entries(steps)) {
    const tree = parse(text);
    if (isProblem(tree)) throw new Error(`${name}: ${text} does not parse`);
    const value = evaluator(tree)(lookIn(values));
    if (isProblem(value) || typeof value === "object") return undefined;
    values.set(name, value);
  }
  const loads = parts.map(([name, words]) => ({ words, load: Number(values.get(name)) }));
  return loads.reduce((least, next) => (next.load < least.load ? next : least)).words;
}
