// One plain loop per operation over columns of samples; a number that is the same in every sample
// fills a column. Two operations in one pass, from a generated table of 195 pairs, were less than 10 % quicker
// with the random numbers counted, and are not kept.
//
// A value out of domain must not vanish again, as 1 / Infinity or exp(-Infinity) would let it: such
// operations add x - x, which is 0, or NaN for an infinity.
// biome-ignore-all lint/style/noNonNullAssertion: every index is below the length of its column, and these loops are the cost
/* oxlint-disable typescript/no-non-null-assertion */

import { binaryOperations, comparisons, unaryFunctions } from "./arithmetic.ts";
import type { Operation } from "./graph.ts";

/** The first n samples; every column is a multiple of 4 long. `out` may be one of the operands. */
export type Kernel = (
  n: number,
  out: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
) => void;

export const filled =
  (value: number): Kernel =>
  (n, out) => {
    out.fill(value, 0, n);
  };

const each =
  (f: (a: number) => number): Kernel =>
  (n, out, a) => {
    for (let i = 0; i < n; i++) out[i] = f(a[i]!) + (a[i]! - a[i]!);
  };

const eachTwo =
  (f: (a: number, b: number) => number): Kernel =>
  (n, out, a, b) => {
    for (let i = 0; i < n; i++) {
      const [x, y] = [a[i]!, b[i]!];
      out[i] = f(x, y) + (x - x) + (y - y);
    }
  };

const eachPair = (f: (a: number, b: number) => boolean): Kernel => eachTwo((a, b) => Number(f(a, b)));

/** The everyday operations have loops of their own: nothing is called for a sample, and four in a turn. */
export const kernels: Readonly<Record<Exclude<Operation, "input" | "constant">, Kernel>> = {
  "+": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! + b[i]!;
      out[i + 1] = a[i + 1]! + b[i + 1]!;
      out[i + 2] = a[i + 2]! + b[i + 2]!;
      out[i + 3] = a[i + 3]! + b[i + 3]!;
    }
  },
  "-": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! - b[i]!;
      out[i + 1] = a[i + 1]! - b[i + 1]!;
      out[i + 2] = a[i + 2]! - b[i + 2]!;
      out[i + 3] = a[i + 3]! - b[i + 3]!;
    }
  },
  "*": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! * b[i]!;
      out[i + 1] = a[i + 1]! * b[i + 1]!;
      out[i + 2] = a[i + 2]! * b[i + 2]!;
      out[i + 3] = a[i + 3]! * b[i + 3]!;
    }
  },
  "/": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      out[i] = a[i]! / b0 + (b0 - b0);
      const b1 = b[i + 1]!;
      out[i + 1] = a[i + 1]! / b1 + (b1 - b1);
      const b2 = b[i + 2]!;
      out[i + 2] = a[i + 2]! / b2 + (b2 - b2);
      const b3 = b[i + 3]!;
      out[i + 3] = a[i + 3]! / b3 + (b3 - b3);
    }
  },
  square: (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! * a[i]!;
      out[i + 1] = a[i + 1]! * a[i + 1]!;
      out[i + 2] = a[i + 2]! * a[i + 2]!;
      out[i + 3] = a[i + 3]! * a[i + 3]!;
    }
  },
  negate: each((a) => -a),
  sqrt: (n, out, a) => {
    for (let i = 0; i < n; i++) out[i] = Math.sqrt(a[i]!);
  },
  abs: each(unaryFunctions.abs),
  sin: each(unaryFunctions.sin),
  cos: each(unaryFunctions.cos),
  tan: each(unaryFunctions.tan),
  asin: each(unaryFunctions.asin),
  acos: each(unaryFunctions.acos),
  atan: each(unaryFunctions.atan),
  exp: each(unaryFunctions.exp),
  ln: each(unaryFunctions.ln),
  log10: each(unaryFunctions.log10),
  round: each(unaryFunctions.round),
  "^": eachTwo(binaryOperations["^"]),
  min: eachTwo(Math.min),
  max: eachTwo(Math.max),
  "<": eachPair(comparisons["<"]),
  "<=": eachPair(comparisons["<="]),
  "==": eachPair(comparisons["=="]),
  "!=": eachPair(comparisons["!="]),
  // a is the outcome of a comparison, 1 or 0
  choose: (n, out, a, b, c) => {
    for (let i = 0; i < n; i++) {
      const test = a[i]!;
      out[i] = (test === 0 ? c[i]! : b[i]!) + (test - test);
    }
  },
};
