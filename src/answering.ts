// Public functions answer with problems. TypeScript keeps its callers right; a caller without it is told what to pass.
import { isProblem, type Problem, problem } from "./problem.ts";
import { kinds } from "./units/kind.ts";

const has = (value: unknown, ...names: readonly string[]): boolean =>
  typeof value === "object" && value !== null && names.every((name) => name in value);

const isQuantity = (value: unknown): boolean => has(value, "exact", "unit", "text");

/** What an argument may be, each by the words that ask for it. */
const tests = {
  "a text": (value: unknown) => typeof value === "string",
  "a number": (value: unknown) => typeof value === "number",
  "a kind of quantity": (value: unknown) => typeof value === "string" && Object.hasOwn(kinds, value),
  "a unit": (value: unknown) => has(value, "dimension", "kinds", "text"),
  "a quantity": isQuantity,
  "a quantity or its text": (value: unknown) => typeof value === "string" || isQuantity(value),
  "a parsed formula": (value: unknown) => has(value, "type", "at"),
  "what a formula shows": (value: unknown) => has(value, "type"),
  "a problem": isProblem,
  "a source": (value: unknown) => has(value, "title", "known"),
  "inputs by name": (value: unknown) => has(value) && !Array.isArray(value),
  "a declaration of a method": (value: unknown) => has(value, "id", "inputs", "outputs", "sources"),
  "a function": (value: unknown) => typeof value === "function",
  options: (value: unknown) => has(value),
  limits: (value: unknown) => has(value),
} as const;

type Asked = keyof typeof tests;
type Argument = Asked | { readonly maybe: Asked };

/** An argument that may be left out. */
export const maybe = (asked: Asked): Argument => ({ maybe: asked });

/** The same function, which says what it has to be given where it is given something else. */
export function answering<Given extends readonly unknown[], Answer>(
  name: string,
  asked: readonly Argument[],
  f: (...given: Given) => Answer,
): (...given: Given) => Answer; // where the types hold, the problem below does not arise
export function answering(
  name: string,
  asked: readonly Argument[],
  f: (...given: readonly unknown[]) => unknown,
): (...given: readonly unknown[]) => unknown {
  const wanted = asked.map((argument) =>
    typeof argument === "string" ? { is: argument, needed: true } : { is: argument.maybe, needed: false },
  );
  return (...given) => {
    for (const [i, { is, needed }] of wanted.entries()) {
      const value = given[i];
      if ((value === undefined && !needed) || tests[is](value)) continue;
      return notAsked(`${name}, argument ${i + 1}`, shown(value), `be ${is}`);
    }
    try {
      return f(...given);
    } catch (error) {
      const why = error instanceof Error ? error.message : undefined;
      return notAsked(name, wanted.map(({ is }) => is).join(", "), "be whole", why);
    }
  };
}

const notAsked = (what: string, got: string, must: string, why?: string): Problem =>
  problem({ code: "wrong-argument", what, got, must, why });

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  return Array.isArray(value) ? "a list" : typeof value === "object" ? "an object" : `a ${typeof value}`;
}
