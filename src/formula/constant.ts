// Parts of a formula that hold no name: their exact value, where it is a ratio of whole numbers.

import {
  add,
  divide,
  fromDecimal,
  multiply,
  negate,
  power,
  type Rational,
  subtract,
} from "../units/rational.ts";
import type { Tree } from "./tree.ts";

/** Powers of powers would otherwise grow the exact numbers without end. */
const largestExponent = 64n;
const largestBase = 10n ** 40n;

/** undefined when a name, pi, a quantity or a function stands in it, or when it has no value. */
export function constantRatio(tree: Tree): Rational | undefined {
  if (tree.type === "number")
    return Math.abs(tree.value) < 1e60 && (tree.value === 0 || Math.abs(tree.value) > 1e-60)
      ? fromDecimal(tree.text)
      : undefined;
  if (tree.type === "negate") {
    const of = constantRatio(tree.of);
    return of && negate(of);
  }
  if (tree.type !== "binary") return undefined;
  const left = constantRatio(tree.left);
  const right = left && constantRatio(tree.right);
  if (!left || !right) return undefined;
  switch (tree.op) {
    case "+":
      return add(left, right);
    case "-":
      return subtract(left, right);
    case "*":
      return multiply(left, right);
    case "/":
      return right.n === 0n ? undefined : divide(left, right);
    default: {
      const size = right.n < 0n ? -right.n : right.n;
      if (right.d !== 1n || size > largestExponent || (left.n === 0n && right.n < 0n)) return undefined;
      if (left.n > largestBase || left.n < -largestBase || left.d > largestBase) return undefined;
      return power(left, Number(right.n));
    }
  }
}
