// The methods that have been loaded, and one way to solve by id. Who loads them is not known here:
// all at once in index.ts, or family by family in load.ts.
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import { allIds } from "./families.ts";
import type { InputValue } from "./field.ts";
import type { Declaration, Method } from "./method.ts";
import type { Solution } from "./solution.ts";

/** A method whose names are known only at run time. */
export type AnyMethod = Declaration & Pick<Method, "solveNamed">;

const loaded = new Map<string, AnyMethod>();

/** The methods by their id. */
export const methods: ReadonlyMap<string, AnyMethod> = loaded;

export function addMethods(list: readonly AnyMethod[]): void {
  for (const method of list) loaded.set(method.id, method);
}

export function methodNamed(id: string): AnyMethod | Problem {
  const found = loaded.get(id);
  if (found) return found;
  const near = nearest(id, allIds);
  return problem({
    code: "unknown-method",
    what: "method",
    got: id,
    must: "be one of the methods",
    hint: near.length > 0 ? `did you mean ${near.join(" or ")}?` : "splitline methods lists them",
    suggestions: near,
  });
}

export function solve(
  id: string,
  inputs: Readonly<Record<string, InputValue | undefined>>,
): Solution | Problem {
  const found = methodNamed(id);
  return "solveNamed" in found ? found.solveNamed(inputs) : found;
}
