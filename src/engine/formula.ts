// Works out one formula text over the cells of a page: dimensions first, then the number.
import { check } from "../formula/check.ts";
import { parse } from "../formula/parse.ts";
import type { Tree } from "../formula/tree.ts";
import { evaluator } from "../formula/value.ts";
import { workedStep } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { kindsOf } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import type { FormulaValue } from "./cell.ts";
import { type Results, resolve } from "./scope.ts";

const trees = new Map<string, Tree | Problem>();

/** Parsing is the dear part of a formula; the same text is parsed once. */
export function parsed(text: string): Tree | Problem {
  const known = trees.get(text);
  if (known) return known;
  if (trees.size > 5000) trees.clear();
  const made = parse(text);
  trees.set(text, made);
  return made;
}

const evaluators = new WeakMap<Tree, ReturnType<typeof evaluator>>();

function evaluatorOf(tree: Tree): ReturnType<typeof evaluator> {
  const known = evaluators.get(tree);
  if (known) return known;
  const made = evaluator(tree);
  evaluators.set(tree, made);
  return made;
}

/** A text that begins like a number is tried as a quantity; otherwise it is a formula. */
export const looksLikeQuantity = (text: string): boolean => /^\s*[-+−]?[.\d]/.test(text);

export function formulaTree(text: string): Tree | Problem {
  if (looksLikeQuantity(text)) {
    const read = quantity(text);
    if (!isProblem(read)) return { type: "quantity", quantity: read, at: 1 };
    const tree = parsed(text);
    return isProblem(tree) ? read : tree;
  }
  return parsed(text);
}

export function workOut(
  name: string,
  says: string | undefined,
  text: string,
  results: Results,
): FormulaValue | Problem {
  const tree = formulaTree(text);
  if (isProblem(tree)) return tree;
  const typed = check(tree, (used) => {
    const named = resolve(results, used);
    return isProblem(named) ? named : named.typed;
  });
  if (isProblem(typed)) return typed;
  const value = evaluatorOf(tree)((used) => {
    const named = resolve(results, used);
    return isProblem(named) ? named : named.value;
  });
  if (isProblem(value)) return value;
  const kind = typed.truth ? "yes/no" : (typed.kind ?? kindsOf(typed.dimension)[0] ?? "ratio");
  const si = typeof value === "number" ? value : value === true ? 1 : 0;
  const step = workedStep(
    {
      name,
      symbol: name,
      says,
      tree,
      kind,
      si,
      source: undefined,
      ...(typeof value === "boolean" && { yes: value }),
    },
    (used) => {
      const named = resolve(results, used);
      return isProblem(named) ? undefined : named.leaf;
    },
  );
  return { type: "formula", kind, dimension: typed.dimension, si, step };
}
