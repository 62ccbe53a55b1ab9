// A value as it was typed, with its unit, its kind and its exact SI value. Shared by scan.ts and quantity.ts.
import { type Kind, kindsAgree } from "./kind.ts";
import { add, multiply, type Rational, toNumber } from "./rational.ts";
import type { Unit } from "./unit.ts";

/** One value as a person typed it: the text, its unit and kind, and its SI number beside it. */
export interface Quantity {
  /** As typed, never changed and never written back converted. */
  readonly text: string;
  /** In `unit`. */
  readonly value: number;
  readonly unit: Unit;
  /** The expected kind where one was stated, else the only or the usual one. */
  readonly kind: Kind | undefined;
  /** In SI units of its dimension, kelvin for a temperature reading. */
  readonly si: number;
  readonly exact: Rational;
  /** SI worth of one step of the last typed digit: 1 um for 25.012 mm; a fraction has none. */
  readonly step?: Rational;
  /** What was typed beside the value: ±, limits or a stated uncertainty. */
  readonly spread?: TypedSpread;
}

/** A spread typed with the value. */
export type TypedSpread =
  | { readonly form: "plusMinus"; readonly halfWidth: Quantity }
  | { readonly form: "limits"; readonly lower: Quantity; readonly upper: Quantity }
  /** `k` where the text stated an expanded uncertainty U = k·u. */
  | { readonly form: "standard"; readonly u: Quantity; readonly k?: number };

/** Exact value in SI of `value` in `unit`. */
export function inSi(value: Rational, unit: Unit): Rational {
  const scaled = multiply(value, unit.factor);
  return unit.offset ? add(scaled, unit.offset) : scaled;
}

export function quantityOf(text: string, value: Rational, unit: Unit, expected?: Kind): Quantity {
  const exact = inSi(value, unit);
  const kind = expected ?? unit.kinds[0];
  return { text, value: toNumber(value), unit, kind, si: toNumber(exact), exact };
}

/** The first kind both can stand for, as the first list names it. */
export const commonKind = (a: readonly Kind[], b: readonly Kind[]): Kind | undefined =>
  a.find((kind) => b.some((other) => kindsAgree(kind, other)));
