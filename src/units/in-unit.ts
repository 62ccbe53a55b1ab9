// Display arithmetic on doubles, for computed SI values; typed values convert exactly (convert.ts).
import { toNumber } from "./rational.ts";
import type { Unit } from "./unit.ts";

interface Doubles {
  readonly factor: number;
  readonly offset: number;
}

const known = new WeakMap<Unit, Doubles>();

export function inUnit(si: number, u: Unit): number {
  let doubles = known.get(u);
  if (!doubles) {
    doubles = { factor: toNumber(u.factor), offset: u.offset ? toNumber(u.offset) : 0 };
    known.set(u, doubles);
  }
  return (si - doubles.offset) / doubles.factor;
}

/** A half-width of a temperature is a difference: it does not start from 0 degC. */
export function differenceUnit(shown: Unit): Unit {
  const { offset, ...rest } = shown;
  return offset === undefined ? shown : rest;
}
