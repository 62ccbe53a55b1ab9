// Trees made by us, lightly simplified as they are made: 0 + x, 1 · x, 0 · x, constants folded
// while they stay exact. Nothing is expanded or reordered.

import { type Rational, rational } from "../units/rational.ts";
import { constantRatio } from "./constant.ts";
import type { ScalarFunction } from "./functions.ts";
import type { BinaryOperator, Comparison, Tree } from "./tree.ts";

/** Made trees stand at the column of the node they came from. */
export const number = (value: number, at: number): Tree => {
  const size: Tree = { type: "number", value: Math.abs(value), text: String(Math.abs(value)), at };
  return value < 0 ? { type: "negate", of: size, at } : size;
};

export const isZero = (tree: Tree): boolean => tree.type === "number" && tree.value === 0;
const isOne = (tree: Tree): boolean => tree.type === "number" && tree.value === 1;

const binary = (op: BinaryOperator, left: Tree, right: Tree): Tree => ({
  type: "binary",
  op,
  left,
  right,
  at: left.at,
});

/** A constant result is written as one whole number or one fraction, when it stays short. */
function folded(tree: Tree): Tree {
  const ratio = constantRatio(tree);
  return (ratio && fraction(ratio, tree.at)) ?? tree;
}

const longest = 10n ** 9n;

function fraction(ratio: Rational, at: number): Tree | undefined {
  const { n, d } = ratio;
  if (n > longest || n < -longest || d > longest) return undefined;
  if (d === 1n) return number(Number(n), at);
  const top: Tree = binary("/", number(Math.abs(Number(n)), at), number(Number(d), at));
  return n < 0n ? { type: "negate", of: top, at } : top;
}

export function plus(left: Tree, right: Tree): Tree {
  if (isZero(left)) return right;
  if (isZero(right)) return left;
  if (right.type === "negate") return minus(left, right.of);
  return folded(binary("+", left, right));
}

export function minus(left: Tree, right: Tree): Tree {
  if (isZero(right)) return left;
  if (isZero(left)) return negative(right);
  if (right.type === "negate") return plus(left, right.of);
  return folded(binary("-", left, right));
}

export function negative(of: Tree): Tree {
  if (isZero(of)) return of;
  return of.type === "negate" ? of.of : { type: "negate", of, at: of.at };
}

export function product(left: Tree, right: Tree): Tree {
  if (isZero(left) || isZero(right)) return number(0, left.at);
  if (isOne(left)) return right;
  if (isOne(right)) return left;
  if (left.type === "negate") return negative(product(left.of, right));
  if (right.type === "negate") return negative(product(left, right.of));
  // 1/x on the right becomes a division
  if (right.type === "binary" && right.op === "/" && isOne(right.left)) return quotient(left, right.right);
  if (left.type === "binary" && left.op === "/" && isOne(left.left)) return quotient(right, left.right);
  return folded(binary("*", left, right));
}

export function quotient(top: Tree, bottom: Tree): Tree {
  if (isZero(top) || isOne(bottom)) return top;
  if (top.type === "negate") return negative(quotient(top.of, bottom));
  if (bottom.type === "negate") return negative(quotient(top, bottom.of));
  return folded(binary("/", top, bottom));
}

export function raise(base: Tree, exponent: Tree): Tree {
  if (isOne(exponent) || isOne(base)) return base;
  if (isZero(exponent)) return number(1, base.at);
  return folded(binary("^", base, exponent));
}

export const call = (name: ScalarFunction, arg: Tree): Tree => ({
  type: "call",
  name,
  args: [arg],
  at: arg.at,
});

export const compare = (op: Comparison, left: Tree, right: Tree): Tree => ({
  type: "compare",
  op,
  left,
  right,
  at: left.at,
});

export function choose(test: Tree, yes: Tree, no: Tree): Tree {
  return isZero(yes) && isZero(no) ? yes : { type: "choose", test, yes, no, at: test.at };
}

/** The same exponent, less one; exact for a constant. */
export function oneLess(exponent: Tree): Tree {
  const ratio = constantRatio(exponent);
  const less = ratio && rational(ratio.n - ratio.d, ratio.d, ratio.pi);
  return (less && fraction(less, exponent.at)) ?? minus(exponent, number(1, exponent.at));
}
