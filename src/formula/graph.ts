// Formulas as one graph of operations on columns of samples. Equal parts are one node, parts
// without an uncertain input are numbers, small whole powers are multiplications.

import { binaryOperations, comparisons, type UnaryFunction, unaryFunctions } from "./arithmetic.ts";
import type { Comparison } from "./tree.ts";

export type Operation =
  | "input"
  | "constant"
  | UnaryFunction
  | "square"
  | "negate"
  | "+"
  | "-"
  | "*"
  | "/"
  | "^"
  | "min"
  | "max"
  | "<"
  | "<="
  | "=="
  | "!="
  | "choose";

export interface GraphNode {
  readonly op: Operation;
  /** Places of the operands in the graph; always smaller than the place of the node. */
  readonly of: readonly number[];
  /** The number of a constant; the place of an input among the inputs. */
  readonly value: number;
}

/** Operations whose operands may be swapped. */
const symmetric: ReadonlySet<Operation> = new Set(["+", "*", "min", "max", "==", "!="]);

export class Graph {
  readonly nodes: GraphNode[] = [];
  readonly #places = new Map<string, number>();

  input(index: number): number {
    return this.#place({ op: "input", of: [], value: index });
  }

  constant(value: number): number {
    return this.#place({ op: "constant", of: [], value });
  }

  /** The number a node stands for, when no input takes part in it. */
  known(place: number): number | undefined {
    const node = this.nodes[place];
    return node?.op === "constant" ? node.value : undefined;
  }

  unary(op: UnaryFunction | "negate" | "square", x: number): number {
    const value = this.known(x);
    if (value === undefined) return this.#place({ op, of: [x], value: 0 });
    if (op === "negate") return this.constant(-value);
    return this.constant(op === "square" ? value * value : finite(unaryFunctions[op](value)));
  }

  binary(op: "+" | "-" | "*" | "/" | "^" | "min" | "max", a: number, b: number): number {
    const [x, y] = [this.known(a), this.known(b)];
    if (Number.isNaN(x) || Number.isNaN(y)) return this.constant(Number.NaN);
    if (x !== undefined && y !== undefined) return this.constant(finite(apply(op, x, y)));
    if (op === "^" && y !== undefined) return this.#power(a, y);
    if (op === "-" && y !== undefined) return this.binary("+", a, this.constant(-y));
    if (op === "+" && (x === 0 || y === 0)) return x === 0 ? b : a;
    if (op === "*" && (x === 1 || y === 1)) return x === 1 ? b : a;
    if (op === "/" && y === 0) return this.constant(Number.NaN);
    if (op === "/" && y === 1) return a;
    if (op === "*" && a === b) return this.unary("square", a);
    return this.#place({ op, of: symmetric.has(op) && a > b ? [b, a] : [a, b], value: 0 });
  }

  compare(sign: Comparison, a: number, b: number): number {
    const [x, y] = [this.known(a), this.known(b)];
    if (Number.isNaN(x) || Number.isNaN(y)) return this.constant(Number.NaN);
    if (x !== undefined && y !== undefined) return this.constant(Number(comparisons[sign](x, y)));
    if (sign === ">") return this.compare("<", b, a);
    if (sign === ">=") return this.compare("<=", b, a);
    return this.#place({ op: sign, of: symmetric.has(sign) && a > b ? [b, a] : [a, b], value: 0 });
  }

  choose(test: number, yes: number, no: number): number {
    const known = this.known(test);
    if (known !== undefined) return Number.isNaN(known) ? test : known === 0 ? no : yes;
    return this.#place({ op: "choose", of: [test, yes, no], value: 0 });
  }

  #power(base: number, exponent: number): number {
    switch (exponent) {
      case 0.5:
        return this.unary("sqrt", base);
      case 1:
        return base;
      case 2:
        return this.unary("square", base);
      case 3:
      case 5:
        return this.binary("*", this.#power(base, exponent - 1), base);
      case 4:
      case 6:
        return this.unary("square", this.#power(base, exponent / 2));
      case -1:
      case -2:
      case -3:
      case -4:
        return this.binary("/", this.constant(1), this.#power(base, -exponent));
      default:
        return this.#place({ op: "^", of: [base, this.constant(exponent)], value: 0 });
    }
  }

  #place(node: GraphNode): number {
    const key = `${node.op} ${node.of.join(" ")} ${Object.is(node.value, -0) ? "-0" : node.value}`;
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.nodes.length);
    return this.nodes.push(node) - 1;
  }
}

/** A constant part out of its domain has no value, whatever is done with it after. */
const finite = (value: number): number => (Number.isFinite(value) ? value : Number.NaN);

function apply(op: "+" | "-" | "*" | "/" | "^" | "min" | "max", a: number, b: number): number {
  if (op === "min") return Math.min(a, b);
  return op === "max" ? Math.max(a, b) : binaryOperations[op](a, b);
}
