// Works out formula texts inside a procedure. A search or an ordering that needs a closed form
// reads the same text as the steps do, so that no equation is spelled twice.
import { names as namesIn, parse } from "../formula/parse.ts";
import { evaluator } from "../formula/value.ts";
import { isProblem, type Problem, sentence } from "../problem.ts";
import { type Insides, isKnown, lookIn } from "./inside.ts";
import type { Steps } from "./method.ts";

interface Compiled {
  readonly name: string;
  readonly uses: readonly string[];
  readonly value: ReturnType<typeof evaluator>;
}

const compiled = new WeakMap<Steps, readonly Compiled[]>();

/** A text that does not parse is a fault of ours, as at load. */
function compile(steps: Steps): readonly Compiled[] {
  const known = compiled.get(steps);
  if (known) return known;
  const made = Object.entries(steps).map(([name, text]) => {
    const tree = parse(text);
    if (isProblem(tree)) throw new Error(`step ${name} does not parse: ${sentence(tree)}`);
    return { name, uses: namesIn(tree), value: evaluator(tree) };
  });
  compiled.set(steps, made);
  return made;
}

/** The steps whose names all have values, in order; a later step sees the earlier ones. */
export function evaluateSteps(steps: Steps, known: Insides): Readonly<Record<string, number>> | Problem {
  const values = new Map(Object.entries(known));
  const found: Record<string, number> = {};
  for (const { name, uses, value } of compile(steps)) {
    if (!uses.every((used) => isKnown(values, used))) continue;
    const result = value(lookIn(values));
    if (isProblem(result)) return result.with({ what: `${name} · ${result.what}` });
    if (typeof result === "object") continue;
    found[name] = Number(result);
    values.set(name, Number(result));
  }
  return found;
}
