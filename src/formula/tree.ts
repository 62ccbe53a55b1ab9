// The small tree that everything else in this folder reads. Each node has `at`, the 1-based
// column of its operator, name or number in the text it came from.

import type { Quantity } from "../units/quantity.ts";
import { type FunctionName, isColumnFunction } from "./functions.ts";

export type BinaryOperator = "+" | "-" | "*" | "/" | "^";
export type Comparison = "<" | "<=" | ">" | ">=" | "==" | "!=";

export type Tree =
  | NumberNode
  | { readonly type: "quantity"; readonly quantity: Quantity; readonly at: number }
  | NameNode
  | { readonly type: "constant"; readonly name: "pi"; readonly at: number }
  | { readonly type: "negate"; readonly of: Tree; readonly at: number }
  | BinaryNode
  | CompareNode
  | CallNode
  | ChooseNode;

const binaryOperators: ReadonlySet<string> = new Set(["+", "-", "*", "/", "^"]);
const comparisonSigns: ReadonlySet<string> = new Set(["<", "<=", ">", ">=", "==", "!="]);

export const isBinaryOperator = (text: string): text is BinaryOperator => binaryOperators.has(text);
export const isComparison = (text: string): text is Comparison => comparisonSigns.has(text);

interface NumberNode {
  readonly type: "number";
  readonly value: number;
  /** As typed. */
  readonly text: string;
  readonly at: number;
}

/** torque, tension.preload, or segments.length (a column). */
export interface NameNode {
  readonly type: "name";
  readonly name: string;
  readonly output?: string;
  readonly at: number;
}

export interface BinaryNode {
  readonly type: "binary";
  readonly op: BinaryOperator;
  readonly left: Tree;
  readonly right: Tree;
  readonly at: number;
}

interface CompareNode {
  readonly type: "compare";
  readonly op: Comparison;
  readonly left: Tree;
  readonly right: Tree;
  readonly at: number;
}

export interface CallNode {
  readonly type: "call";
  readonly name: FunctionName;
  readonly args: readonly Tree[];
  readonly at: number;
}

interface ChooseNode {
  readonly type: "choose";
  readonly test: Tree;
  readonly yes: Tree;
  readonly no: Tree;
  readonly at: number;
}

export const fullName = (n: { readonly name: string; readonly output?: string }): string =>
  n.output === undefined ? n.name : `${n.name}.${n.output}`;

/** The nodes directly below, in the order of the text. */
export function children(tree: Tree): readonly Tree[] {
  switch (tree.type) {
    case "negate":
      return [tree.of];
    case "binary":
    case "compare":
      return [tree.left, tree.right];
    case "call":
      return tree.args;
    case "choose":
      return [tree.test, tree.yes, tree.no];
    default:
      return [];
  }
}

/** Full names, in order of first use. */
export function names(tree: Tree): readonly string[] {
  const found = new Set<string>();
  const visit = (node: Tree): void => {
    if (node.type === "name") found.add(fullName(node));
    children(node).forEach(visit);
  };
  visit(tree);
  return [...found];
}

/** Names used row by row; those inside a further column function stand for themselves. */
export function rowNames(tree: Tree): readonly string[] {
  if (tree.type === "name") return [fullName(tree)];
  if (tree.type === "call" && isColumnFunction(tree.name)) return [];
  return [...new Set(children(tree).flatMap(rowNames))];
}
