// How large the numbers were that a value was added up from: what a comparison at a limit takes for rounding.
import { isColumnFunction } from "./functions.ts";
import { fullName, type Tree } from "./tree.ts";
import { evaluator, type Lookup } from "./value.ts";

/** In SI of the value. A difference of two sizes carries the size of the larger one. */
export function scaleOf(tree: Tree, lookup: Lookup, scale: (name: string) => number | undefined): number {
  const worth = (part: Tree): number => {
    const value = evaluator(part)(lookup);
    return typeof value === "number" ? Math.abs(value) : 0;
  };
  const visit = (part: Tree): number => {
    switch (part.type) {
      case "name":
        return scale(fullName(part)) ?? worth(part);
      case "negate":
        return visit(part.of);
      case "binary": {
        const [left, right] = [visit(part.left), visit(part.right)];
        if (part.op === "+" || part.op === "-") return Math.max(left, right, worth(part));
        const [a, b] = [worth(part.left), worth(part.right)];
        if (part.op === "*") return Math.max(left * b, a * right);
        if (part.op === "/") return b === 0 ? 0 : Math.max(left / b, (a * right) / (b * b));
        return a === 0 ? worth(part) : worth(part) * Math.max(1, left / a);
      }
      case "choose":
        return Math.max(visit(part.yes), visit(part.no));
      case "call":
        if (isColumnFunction(part.name)) return worth(part);
        if (part.name === "abs" || part.name === "min" || part.name === "max")
          return Math.max(...part.args.map(visit));
        return worth(part);
      default:
        return worth(part);
    }
  };
  const found = visit(tree);
  return Number.isFinite(found) ? found : 0;
}
