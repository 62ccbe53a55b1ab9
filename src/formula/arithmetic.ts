// The arithmetic itself: one function per operation, used for single values and for the constant
// parts of blocks. Outside its domain an operation gives NaN or an infinity; `fault` says why.

import type { Problem } from "../problem.ts";
import { atMost } from "../verdict.ts";
import type { ScalarFunction } from "./functions.ts";
import { refusal } from "./refusal.ts";
import type { BinaryOperator, Comparison } from "./tree.ts";

/** To a whole number; a value halfway between two goes to the even one, as in display. */
export function roundHalfEven(value: number): number {
  if (Math.abs(value) >= 2 ** 52) return value;
  const floor = Math.floor(value);
  const rest = value - floor;
  const up = rest > 0.5 || (rest === 0.5 && floor % 2 !== 0);
  return (up ? floor + 1 : floor) + 0; // + 0 turns -0 into 0
}

export const binaryOperations: Readonly<Record<BinaryOperator, (a: number, b: number) => number>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
};

export const comparisons: Readonly<Record<Comparison, (a: number, b: number) => boolean>> = {
  "<": (a, b) => a < b,
  "<=": (a, b) => a <= b,
  ">": (a, b) => a > b,
  ">=": (a, b) => a >= b,
  "==": (a, b) => a === b,
  "!=": (a, b) => a !== b,
};

/** The same at a limit, where what differs by rounding only is equal: a comparison that stands by itself. */
export const comparisonsAtLimit: Readonly<Record<Comparison, (a: number, b: number) => boolean>> = {
  "<": (a, b) => !atMost(b, a),
  "<=": (a, b) => atMost(a, b),
  ">": (a, b) => !atMost(a, b),
  ">=": (a, b) => atMost(b, a),
  "==": (a, b) => atMost(a, b) && atMost(b, a),
  "!=": (a, b) => !(atMost(a, b) && atMost(b, a)),
};

export type UnaryFunction = Exclude<ScalarFunction, "min" | "max">;

export const unaryFunctions: Readonly<Record<UnaryFunction, (x: number) => number>> = {
  sqrt: Math.sqrt,
  abs: Math.abs,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
  exp: Math.exp,
  ln: Math.log,
  log10: Math.log10,
  round: roundHalfEven,
};

/** Why an operation on finite numbers gave no finite number. */
export function binaryFault(op: BinaryOperator, a: number, b: number, at: number): Problem {
  if ((op === "/" && b === 0) || (op === "^" && a === 0 && b < 0)) {
    return refusal("division-by-zero", at, {
      got: op === "/" ? `${a} / 0` : `0 ^ ${b}`,
      must: "divide by a number other than 0",
    });
  }
  if (op === "^" && a < 0 && !Number.isInteger(b)) {
    return refusal("power-of-negative", at, {
      got: `(${a}) ^ ${b}`,
      must: "have a base of 0 or more, or a whole exponent",
    });
  }
  return overflow(at, `${a} ${op} ${b}`);
}

export function unaryFault(name: UnaryFunction, x: number, at: number): Problem {
  const got = `${name}(${x})`;
  switch (name) {
    case "sqrt":
      return refusal("root-of-negative", at, { got, must: "be of 0 or more" });
    case "ln":
    case "log10":
      return refusal("logarithm-of-zero-or-less", at, { got, must: "be of more than 0" });
    case "asin":
    case "acos":
      return refusal("outside-domain", at, { got, must: "be of a number from -1 to 1" });
    default:
      return overflow(at, got);
  }
}

export function underflow(at: number, got: string): Problem {
  return refusal("underflow", at, {
    got,
    must: "stay above 5e-324 in size",
    why: "a product of numbers that are not 0 is not 0",
  });
}

export function overflow(at: number, got: string): Problem {
  return refusal("overflow", at, { got, must: "stay below 1.8e308" });
}
