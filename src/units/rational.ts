// Exact numbers for unit factors and typed values: n/d · π^pi in lowest terms, d > 0.
// A value becomes a double once, at the end (toNumber), so no factor carries a rounding of its own.
import { layOut, roundDigits } from "./decimal.ts";

export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
  readonly pi: number;
}

const abs = (a: bigint): bigint => (a < 0n ? -a : a);

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [abs(a), abs(b)];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}

export function rational(n: bigint | number, d: bigint | number = 1n, pi = 0): Rational {
  const [top, bottom] = [BigInt(n), BigInt(d)];
  if (bottom === 0n) throw new RangeError("a rational needs a denominator that is not zero");
  if (top === 0n) return { n: 0n, d: 1n, pi: 0 };
  const common = greatestCommonDivisor(top, bottom) * (bottom < 0n ? -1n : 1n);
  return { n: top / common, d: bottom / common, pi };
}

export const one = rational(1);

// Longer than any number a person types; keeps powers of ten small.
const decimalText = /^([+-]?)(\d{1,200})?(?:\.(\d{0,200}))?(?:[eE]([+-]?\d{1,3}))?$/;
const fractionText = /^([+-]?\d{1,200})\/(\d{1,200})$/;

/** "4.448", "1e-3" or "1/3"; anything else is undefined. Never Number(text): that reads "" as 0 and "0x10" as 16. */
export function fromDecimal(text: string): Rational | undefined {
  const fraction = fractionText.exec(text);
  if (fraction?.[1] && fraction[2]) {
    const bottom = BigInt(fraction[2]);
    return bottom === 0n ? undefined : rational(BigInt(fraction[1]), bottom);
  }
  const match = decimalText.exec(text);
  if (!match) return undefined;
  const [, sign, whole = "", decimals = "", exponent = "0"] = match;
  if (whole === "" && decimals === "") return undefined;
  const digits = BigInt(whole + decimals) * (sign === "-" ? -1n : 1n);
  const shift = Number.parseInt(exponent, 10) - decimals.length;
  return shift >= 0 ? rational(digits * 10n ** BigInt(shift)) : rational(digits, 10n ** BigInt(-shift));
}

export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d, a.pi + b.pi);

export function divide(a: Rational, b: Rational): Rational {
  if (b.n === 0n) throw new RangeError("division of a rational by zero");
  return rational(a.n * b.d, a.d * b.n, a.pi - b.pi);
}

export const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d, pi: a.pi });

/** Exact when both carry the same power of π; a degree plus a radian is good to 99 digits. */
export function add(a: Rational, b: Rational): Rational {
  if (a.n === 0n) return b;
  if (b.n === 0n) return a;
  if (a.pi !== b.pi) return add(withoutPi(a), withoutPi(b));
  return rational(a.n * b.d + b.n * a.d, a.d * b.d, a.pi);
}

export const subtract = (a: Rational, b: Rational): Rational => add(a, negate(b));

export function power(r: Rational, wholeNumber: number): Rational {
  const size = BigInt(Math.abs(wholeNumber));
  const raised = rational(r.n ** size, r.d ** size, r.pi * Math.abs(wholeNumber));
  return wholeNumber < 0 ? divide(one, raised) : raised;
}

export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d && a.pi === b.pi;

/** Negative, zero or positive, as a sorting function wants it. */
export function compare(a: Rational, b: Rational): number {
  const difference = subtract(a, b).n;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

// π to 99 decimals: known since 1706 by Machin's formula, checked in the tests by the same formula.
const piDigits =
  "3141592653589793238462643383279502884197169399375105820974944592307816406286208998628034825342117067";

function withoutPi(r: Rational): Rational {
  if (r.pi === 0) return r;
  const pi = rational(BigInt(piDigits), 10n ** BigInt(piDigits.length - 1));
  return multiply({ ...r, pi: 0 }, power(pi, r.pi));
}

const exactInDouble = 2n ** 53n;
const smallestNormal = 2 ** -1022;
const bits = (a: bigint): number => a.toString(16).length * 4;

/** The nearest double, ties to even. */
export function toNumber(r: Rational): number {
  const { n, d } = withoutPi(r);
  const top = abs(n);
  if (top <= exactInDouble && d <= exactInDouble) return Number(n) / Number(d);
  // A quotient of at least 64 bits, its last bit set when anything was cut off: Number() then rounds once.
  const shift = 70 + bits(d) - bits(top);
  const quotient = shift > 0 ? (top << BigInt(shift)) / d : top / (d << BigInt(-shift));
  const exactly =
    shift > 0 ? quotient * d === top << BigInt(shift) : quotient * (d << BigInt(-shift)) === top;
  const rough = scaleByPowerOfTwo(Number((quotient << 1n) | (exactly ? 0n : 1n)), -shift - 1);
  const size = rough < smallestNormal ? nearestSubnormal(top, d) : rough;
  return n < 0n ? -size : size;
}

/** Below 2^-1022 doubles are whole multiples of 2^-1074. */
function nearestSubnormal(top: bigint, d: bigint): number {
  const whole = (top << 1074n) / d;
  const twiceRest = ((top << 1074n) % d) * 2n;
  const up = twiceRest > d || (twiceRest === d && whole % 2n === 1n);
  return Number(whole + (up ? 1n : 0n)) * Number.MIN_VALUE;
}

function scaleByPowerOfTwo(value: number, exponent: number): number {
  const first = Math.max(-1000, Math.min(1000, exponent));
  return value * 2 ** first * 2 ** (exponent - first);
}

/** Rounded half to even from the exact value; plain digits between 1e-4 and 1e9, else "1.5e-7". */
export function toDecimal(r: Rational, significant: number): string {
  const { n, d } = withoutPi(r);
  if (n === 0n) return "0";
  const top = abs(n);
  // Decimal exponent guessed from the lengths, then enough digits for one guard digit and the rest as "more".
  const guess = top.toString().length - d.toString().length;
  const shift = significant + 2 - guess;
  const scaledTop = shift > 0 ? top * 10n ** BigInt(shift) : top;
  const scaledBottom = shift < 0 ? d * 10n ** BigInt(-shift) : d;
  const digits = (scaledTop / scaledBottom).toString();
  const more = scaledTop % scaledBottom !== 0n;
  const exponent = digits.length - 1 - shift;
  return layOut(roundDigits({ negative: n < 0n, digits, exponent, more }, significant));
}

/** Whether the decimal text ends: no π, and no prime but 2 and 5 below the line. */
export function terminates(r: Rational): boolean {
  let rest = r.d;
  while (rest % 2n === 0n) rest /= 2n;
  while (rest % 5n === 0n) rest /= 5n;
  return r.pi === 0 && rest === 1n;
}

/** The whole decimal text of a number that terminates; undefined when it is longer than `longest` digits. */
export function exactDecimal(r: Rational, longest = 24): string | undefined {
  if (!terminates(r)) return undefined;
  if (r.n === 0n) return "0";
  let places = 0;
  let scale = 1n;
  while (scale % r.d !== 0n) {
    places += 1;
    scale *= 10n;
    if (places > 400) return undefined;
  }
  const digits = ((abs(r.n) * scale) / r.d).toString();
  const kept = digits.replace(/0+$/, "");
  if (kept.length > longest) return undefined;
  return layOut({ negative: r.n < 0n, digits: kept, exponent: digits.length - 1 - places });
}
