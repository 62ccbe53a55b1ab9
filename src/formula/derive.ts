// Exact partial derivatives, tree to tree. At a kink (abs, min, max, a choice) the derivative is
// that of the branch taken; a step (round) and an order (smallest, largest) have none to offer.

import { isProblem, type Problem } from "../problem.ts";
import {
  call,
  choose,
  compare,
  isZero,
  minus,
  negative,
  number,
  oneLess,
  plus,
  product,
  quotient,
  raise,
} from "./build.ts";
import { type ColumnFunction, isColumnFunction, type ScalarFunction } from "./functions.ts";
import { refusal } from "./refusal.ts";
import { type BinaryNode, type CallNode, names, rowNames, type Tree } from "./tree.ts";

/**
 * The partial derivative by one name. `isColumn` tells which names hold a column, which matters
 * inside sum, mean and deviation; where it is not given, every name with an output is taken for one.
 */
export function derive(tree: Tree, name: string, isColumn?: (fullName: string) => boolean): Tree | Problem {
  if (isColumn?.(name)) {
    return refusal("formula-no-derivative", tree.at, {
      got: `the derivative by the column ${name}`,
      must: "be by one number",
    });
  }
  return derivative(tree, { name, isColumn: isColumn ?? ((other) => other !== name && other.includes(".")) });
}

interface By {
  readonly name: string;
  readonly isColumn: (fullName: string) => boolean;
}

const uses = (tree: Tree, by: By): boolean => names(tree).includes(by.name);

function derivative(tree: Tree, by: By): Tree | Problem {
  if (!uses(tree, by)) return number(0, tree.at);
  switch (tree.type) {
    case "name":
      return number(1, tree.at);
    case "negate": {
      const of = derivative(tree.of, by);
      return isProblem(of) ? of : negative(of);
    }
    case "binary":
      return binary(tree, by);
    case "choose": {
      const yes = derivative(tree.yes, by);
      if (isProblem(yes)) return yes;
      const no = derivative(tree.no, by);
      return isProblem(no) ? no : choose(tree.test, yes, no);
    }
    case "call":
      return isColumnFunction(tree.name) ? overColumn(tree, tree.name, by) : scalarCall(tree, by);
    default:
      return refusal("formula-no-derivative", tree.at, { got: "a comparison", must: "be a number" });
  }
}

function binary(tree: BinaryNode, by: By): Tree | Problem {
  const { left: u, right: v } = tree;
  const du = derivative(u, by);
  if (isProblem(du)) return du;
  const dv = derivative(v, by);
  if (isProblem(dv)) return dv;
  switch (tree.op) {
    case "+":
      return plus(du, dv);
    case "-":
      return minus(du, dv);
    case "*":
      return plus(product(du, v), product(u, dv));
    case "/":
      return minus(quotient(du, v), quotient(product(u, dv), raise(v, number(2, v.at))));
    default:
      // u^v: v u^(v-1) du + u^v ln(u) dv, each only where its part changes
      return plus(
        isZero(du) ? du : product(product(v, raise(u, oneLess(v))), du),
        isZero(dv) ? dv : product(product(tree, call("ln", u)), dv),
      );
  }
}

const one = (at: number): Tree => number(1, at);
const square = (u: Tree): Tree => raise(u, number(2, u.at));

/** Outer derivatives times the inner one, du. */
const chain: Readonly<Partial<Record<ScalarFunction, (u: Tree, du: Tree) => Tree>>> = {
  sqrt: (u, du) => quotient(du, product(number(2, u.at), call("sqrt", u))),
  abs: (u, du) => choose(compare(">=", u, number(0, u.at)), du, negative(du)),
  sin: (u, du) => product(call("cos", u), du),
  cos: (u, du) => negative(product(call("sin", u), du)),
  tan: (u, du) => quotient(du, square(call("cos", u))),
  asin: (u, du) => quotient(du, call("sqrt", minus(one(u.at), square(u)))),
  acos: (u, du) => negative(quotient(du, call("sqrt", minus(one(u.at), square(u))))),
  atan: (u, du) => quotient(du, plus(one(u.at), square(u))),
  exp: (u, du) => product(call("exp", u), du),
  ln: (u, du) => quotient(du, u),
  log10: (u, du) => quotient(du, product(u, call("ln", number(10, u.at)))),
};

function scalarCall(tree: CallNode, by: By): Tree | Problem {
  const [u, ...rest] = tree.args;
  if (!u) return number(0, tree.at);
  const du = derivative(u, by);
  if (isProblem(du)) return du;
  if (tree.name === "min" || tree.name === "max") {
    if (rest.length === 0) return du;
    const others: Tree = rest.length === 1 && rest[0] ? rest[0] : { ...tree, args: rest };
    const dOthers = derivative(others, by);
    return isProblem(dOthers)
      ? dOthers
      : choose(compare(tree.name === "min" ? "<=" : ">=", u, others), du, dOthers);
  }
  const outer = isColumnFunction(tree.name) ? undefined : chain[tree.name];
  return outer ? outer(u, du) : none(tree);
}

function none(tree: CallNode): Problem {
  return refusal("formula-no-derivative", tree.at, {
    got: `the derivative of ${tree.name}`,
    must: "change smoothly with its inputs",
  });
}

/** Summaries of a column whose rows depend on the name; `du` may turn out the same for every row. */
function overColumn(tree: CallNode, name: ColumnFunction, by: By): Tree | Problem {
  const [u] = tree.args;
  if (!u || name === "count") return number(0, tree.at);
  if (name === "smallest" || name === "largest") return none(tree);
  const du = derivative(u, by);
  if (isProblem(du) || isZero(du)) return du;
  const over = (summary: ColumnFunction, arg: Tree): Tree => ({
    type: "call",
    name: summary,
    args: [arg],
    at: tree.at,
  });
  const varies = rowNames(du).some(by.isColumn);
  switch (name) {
    case "sum":
      return varies ? over("sum", du) : product(over("count", u), du);
    case "mean":
      return varies ? over("mean", du) : du;
    default: {
      if (!varies) return number(0, tree.at);
      const products = over("sum", product(minus(u, over("mean", u)), du));
      return quotient(products, product(minus(over("count", u), one(tree.at)), tree));
    }
  }
}
