// Dimensions and kinds of a formula, before any number is known.

import { isProblem, type Problem } from "../problem.ts";
import {
  dimensionless,
  divideDimensions,
  multiplyDimensions,
  powerDimension,
  sameDimension,
} from "../units/dimension.ts";
import type { Quantity } from "../units/quantity.ts";
import { toNumber } from "../units/rational.ts";
import { alike, difference, sum } from "./alike.ts";
import { columnCall, scalarCall } from "./call-types.ts";
import { constantRatio } from "./constant.ts";
import { isColumnFunction } from "./functions.ts";
import { refusal } from "./refusal.ts";
import { type BinaryNode, type CallNode, fullName, type Tree } from "./tree.ts";
import { factor, plainNumber, type Typed, wordsFor } from "./typed.ts";

export type { Typed } from "./typed.ts";

type TypeOf = (fullName: string) => Typed | Problem;

export function checkDimensions(tree: Tree, typeOf: TypeOf): Typed | Problem {
  return visit(tree, typeOf, false);
}

/** `rows`: inside a column function, where columns may be combined row by row. */
function visit(tree: Tree, typeOf: TypeOf, rows: boolean): Typed | Problem {
  switch (tree.type) {
    case "number":
      return tree.value === 0 ? { ...factor, anyDimension: true } : factor;
    case "quantity":
      return typeOfQuantity(tree.quantity);
    case "name":
      return typeOf(fullName(tree));
    case "constant":
      return plainNumber;
    case "negate":
      return negated(tree.of, tree.at, operand(tree.of, typeOf, rows));
    case "binary":
      return binary(tree, typeOf, rows);
    case "compare":
      return pair(tree.left, tree.right, typeOf, rows, (left, right) => {
        const both = alike(left, right, tree.op, tree.at);
        return isProblem(both) ? both : { ...plainNumber, truth: true, ...rowFlag(left, right) };
      });
    case "choose":
      return choose(tree, typeOf, rows);
    default:
      return isColumnFunction(tree.name) ? overColumn(tree, typeOf) : call(tree, typeOf, rows);
  }
}

/** A unit of several kinds, such as N.m, leaves the kind open; a degree reading does not. */
function typeOfQuantity(q: Quantity): Typed {
  const { dimension, kinds, offset } = q.unit;
  if (offset !== undefined) return { dimension, kind: "temperature" };
  return kinds.length === 1 ? { dimension, kind: kinds[0] } : { dimension };
}

/** A part that takes part in arithmetic: a number, and a column only inside a column function. */
function operand(tree: Tree, typeOf: TypeOf, rows: boolean): Typed | Problem {
  const typed = visit(tree, typeOf, rows);
  if (isProblem(typed)) return typed;
  if (typed.truth) {
    return refusal("formula-truth", tree.at, {
      got: "the outcome of a comparison",
      must: "be a number",
      hint: "choose with a > b ? c : d",
    });
  }
  if (typed.column && !rows) {
    const name = tree.type === "name" ? fullName(tree) : "column";
    return refusal("formula-whole-column", tree.at, {
      got: `the whole column ${name}`,
      must: "be one number",
      hint: `take sum(${name}), mean(${name}), smallest(${name}) or largest(${name})`,
    });
  }
  return typed;
}

function pair(
  leftTree: Tree,
  rightTree: Tree,
  typeOf: TypeOf,
  rows: boolean,
  join: (left: Typed, right: Typed) => Typed | Problem,
): Typed | Problem {
  const left = operand(leftTree, typeOf, rows);
  if (isProblem(left)) return left;
  const right = operand(rightTree, typeOf, rows);
  if (isProblem(right)) return right;
  const joined = join(left, right);
  return isProblem(joined) ? joined : { ...joined, ...rowFlag(left, right) };
}

const rowFlag = (...parts: readonly Typed[]): { column?: true } =>
  parts.some((part) => part.column) ? { column: true } : {};

function negated(of: Tree, at: number, typed: Typed | Problem): Typed | Problem {
  if (isProblem(typed) || typed.kind !== "temperature") return typed;
  return refusal("formula-temperature", of.at, {
    got: `the negative of a temperature reading at column ${at}`,
    must: "be a temperature difference",
    hint: "subtract one reading from the other",
  });
}

function binary(tree: BinaryNode, typeOf: TypeOf, rows: boolean): Typed | Problem {
  return pair(tree.left, tree.right, typeOf, rows, (left, right) => {
    switch (tree.op) {
      case "+":
        return sum(left, right, tree.at);
      case "-":
        return difference(left, right, tree.at);
      case "*":
        return (
          scaled(left, right) ??
          scaled(right, left) ?? { dimension: multiplyDimensions(left.dimension, right.dimension) }
        );
      case "/":
        return scaled(left, right) ?? { dimension: divideDimensions(left.dimension, right.dimension) };
      default:
        return raised(tree, left, right);
    }
  });
}

/**
 * A ratio, a count or a typed number leaves the kind of what it scales. An angle does not (torque
 * times angle is energy), nor does a number of unknown kind, which may be an angle: 2 pi, arc / radius.
 */
function scaled(value: Typed, by: Typed): Typed | undefined {
  if (!by.factor && by.kind !== "ratio" && by.kind !== "count") return undefined;
  const kind = value.kind === "temperature" ? undefined : value.kind;
  return { dimension: value.dimension, kind, ...(value.factor && by.factor ? { factor: true } : {}) };
}

function raised(tree: BinaryNode, base: Typed, exponent: Typed): Typed | Problem {
  if (!sameDimension(exponent.dimension, dimensionless)) {
    return refusal("formula-exponent", tree.right.at, {
      got: `${wordsFor(exponent)} as exponent`,
      must: "be a plain number",
    });
  }
  const constant = constantRatio(tree.right);
  if (constant)
    return {
      dimension: powerDimension(base.dimension, toNumber(constant)),
      kind: constant.n === constant.d ? base.kind : undefined,
    };
  if (sameDimension(base.dimension, dimensionless)) return plainNumber;
  return refusal("formula-exponent", tree.at, {
    got: `${wordsFor(base)} to an exponent that may change`,
    must: "have an exponent such as 2, 0.5 or 1/3, or a base without dimension",
  });
}

function choose(tree: Extract<Tree, { type: "choose" }>, typeOf: TypeOf, rows: boolean): Typed | Problem {
  const test = visit(tree.test, typeOf, rows);
  if (isProblem(test)) return test;
  if (!test.truth) {
    return refusal("formula-choice", tree.test.at, {
      got: wordsFor(test),
      must: "be a comparison such as a > b",
    });
  }
  const truths = [visit(tree.yes, typeOf, rows), visit(tree.no, typeOf, rows)] as const;
  const [yes, no] = truths;
  if (!isProblem(yes) && !isProblem(no) && yes.truth && no.truth)
    return { ...plainNumber, truth: true, ...rowFlag(test, yes, no) };
  return pair(tree.yes, tree.no, typeOf, rows, (left, right) => {
    const both = alike(left, right, "or", tree.at);
    return isProblem(both) ? both : { ...both, ...rowFlag(test) };
  });
}

function call(tree: CallNode, typeOf: TypeOf, rows: boolean): Typed | Problem {
  const args: Typed[] = [];
  for (const arg of tree.args) {
    const typed = operand(arg, typeOf, rows);
    if (isProblem(typed)) return typed;
    args.push(typed);
  }
  const result = scalarCall(tree, args);
  return isProblem(result) ? result : { ...result, ...rowFlag(...args) };
}

function overColumn(tree: CallNode, typeOf: TypeOf): Typed | Problem {
  const [arg] = tree.args;
  const typed = arg ? operand(arg, typeOf, true) : plainNumber;
  return isProblem(typed) ? typed : columnCall(tree, typed);
}
