// A formula that is one comparison is a limit: what lies on it is inside, whatever the last bit says.
import { isProblem, type Problem } from "../problem.ts";
import { comparisonsAtLimit } from "./arithmetic.ts";
import type { Tree } from "./tree.ts";
import { evaluator, type Lookup, type Value } from "./value.ts";

export function evaluatorAtLimit(tree: Tree): (lookup: Lookup) => Value | Problem {
  const plain = evaluator(tree);
  if (tree.type !== "compare") return plain;
  const [left, right, holds] = [evaluator(tree.left), evaluator(tree.right), comparisonsAtLimit[tree.op]];
  return (lookup) => {
    const exact = plain(lookup);
    if (isProblem(exact)) return exact;
    const [a, b] = [left(lookup), right(lookup)];
    return typeof a === "number" && typeof b === "number" ? holds(a, b) : exact;
  };
}
