// Exact fractions for second implementations: numerator and denominator as whole numbers.

export interface Fraction {
  readonly n: bigint;
  readonly d: bigint;
}

export const fraction = (n: bigint | number, d: bigint | number = 1n): Fraction => ({
  n: BigInt(n),
  d: BigInt(d),
});
export const plus = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.d + b.n * a.d, d: a.d * b.d });
export const times = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.n, d: a.d * b.d });
export const over = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.d, d: a.d * b.n });

/** Nearest double, or within one step of it: the quotient is taken to 60 binary places beyond. */
export function toDouble({ n, d }: Fraction): number {
  const shift = BigInt(Math.max(0, d.toString(2).length - n.toString(2).length) + 120);
  return Number((n << shift) / d) / 2 ** Number(shift);
}
