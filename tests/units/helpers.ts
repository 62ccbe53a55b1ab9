import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { divide, type Rational, subtract, toNumber } from "../../src/units/rational.ts";

/** The value, or a failing test that says the problem's sentence. */
export function answered<T>(value: T | Problem): T {
  if (isProblem(value)) throw new Error(sentence(value));
  return value;
}

/** Relative error of a double against an exact number, worked out exactly. */
export function relativeError(value: number, exact: Rational): number {
  if (exact.n === 0n) return Math.abs(value);
  return Math.abs(toNumber(divide(subtract(exactOf(value), exact), exact)));
}

/** Every double is a whole number times a power of two. */
function exactOf(value: number): Rational {
  let scale = 0;
  let scaled = value;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    scale += 1;
  }
  const n = BigInt(scaled);
  return reduce(n, 2n ** BigInt(scale));
}

function reduce(n: bigint, d: bigint): Rational {
  let [a, b] = [n < 0n ? -n : n, d];
  while (b !== 0n) [a, b] = [b, a % b];
  return n === 0n ? { n: 0n, d: 1n, pi: 0 } : { n: n / a, d: d / a, pi: 0 };
}
