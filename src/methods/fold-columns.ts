// For the line with numbers put in: a function over a column, such as mean(trial.stretch), is shown
// as the number it comes to, since a whole column does not fit on the line.
import { checkDimensions } from "../formula/check-dimensions.ts";
import { isColumnFunction } from "../formula/functions.ts";
import type { Tree } from "../formula/tree.ts";
import { evaluator } from "../formula/value.ts";
import { isProblem, problem } from "../problem.ts";
import { kindsOf } from "../units/kind.ts";
import { dimensionOf, type Leaf } from "./leaf.ts";

type LeafOf = (name: string) => Leaf | undefined;

/** The tree with such calls replaced by names, and what those names stand for. */
export function foldColumns(tree: Tree, leaf: LeafOf): { readonly tree: Tree; readonly leaf: LeafOf } {
  const folded = new Map<string, Leaf>();
  const visit = (node: Tree): Tree => {
    switch (node.type) {
      case "call": {
        const worth = isColumnFunction(node.name) ? columnWorth(node, leaf) : undefined;
        if (!worth) return { ...node, args: node.args.map(visit) };
        const name = `column${folded.size + 1}`;
        folded.set(`${name}.value`, worth);
        return { type: "name", name, output: "value", at: node.at };
      }
      case "negate":
        return { ...node, of: visit(node.of) };
      case "binary":
      case "compare":
        return { ...node, left: visit(node.left), right: visit(node.right) };
      case "choose":
        return { ...node, test: visit(node.test), yes: visit(node.yes), no: visit(node.no) };
      case "number":
      case "quantity":
      case "name":
      case "constant":
        return node;
    }
  };
  const found = visit(tree);
  return { tree: found, leaf: (name) => folded.get(name) ?? leaf(name) };
}

function columnWorth(node: Tree, leaf: LeafOf): Leaf | undefined {
  const unknown = (name: string) => problem({ code: "unknown-name", what: name });
  const typed = checkDimensions(node, (name) => {
    const found = leaf(name);
    return found
      ? { dimension: dimensionOf(found), kind: found.kind, column: typeof found.si !== "number" }
      : unknown(name);
  });
  const value = evaluator(node)((name) => leaf(name)?.si ?? unknown(name));
  if (isProblem(typed) || typeof value !== "number") return undefined;
  const kind = typed.kind ?? kindsOf(typed.dimension)[0];
  return { symbol: "", kind, dimension: typed.dimension, si: value };
}
