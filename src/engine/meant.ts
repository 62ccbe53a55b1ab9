// What a text of a page stands for where a number is wanted.
import type { Tree } from "../formula/tree.ts";
import { isProblem, type Problem } from "../problem.ts";
import type { Quantity } from "../units/quantity.ts";
import { formulaTree, isLiteral, looksLikeQuantity } from "./formula.ts";

/** A quantity as typed, or a formula over the page: a name is the shortest. */
export type Meant = { readonly quantity: Quantity } | { readonly formula: Tree };

/**
 * A text that begins like a number is a quantity where it can be read as one, and nothing else where it is no
 * more than a typed value; every other text is a formula.
 */
export function meant(text: string, read: (text: string) => Quantity | Problem): Meant | Problem {
  const tree = formulaTree(text);
  if (looksLikeQuantity(text)) {
    const quantity = read(text);
    if (!isProblem(quantity)) return { quantity };
    if (isProblem(tree) || isLiteral(tree)) return quantity;
  }
  return isProblem(tree) ? tree : { formula: tree };
}
