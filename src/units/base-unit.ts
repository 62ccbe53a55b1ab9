// The SI base unit of a dimension that no kind has a name for: "kg.m3/s2".
import type { Unit } from "./build-unit.ts";
import type { Dimension } from "./dimension.ts";
import { kindsOf } from "./kind.ts";
import { one } from "./rational.ts";

const bases = [
  ["mass", "kg"],
  ["length", "m"],
  ["time", "s"],
  ["temperature", "K"],
] as const;

const known = new Map<string, Unit>();

export function baseUnit(d: Dimension): Unit {
  const text = textOf(d);
  const before = known.get(text);
  if (before) return before;
  const made = { text, factor: one, dimension: d, kinds: kindsOf(d) };
  known.set(text, made);
  return made;
}

/** An exponent such as a half is written out: m^0.5. */
function textOf(d: Dimension): string {
  const side = (sign: 1 | -1): string[] =>
    bases.flatMap(([axis, symbol]) => {
      const exponent = Math.round(d[axis] * sign * 1e6) / 1e6;
      if (exponent <= 0) return [];
      if (exponent === 1) return [symbol];
      return [Number.isInteger(exponent) ? `${symbol}${exponent}` : `${symbol}^${exponent}`];
    });
  const [top, bottom] = [side(1), side(-1)];
  const head = top.length === 0 ? "1" : top.join(".");
  if (bottom.length === 0) return head;
  return bottom.length === 1 ? `${head}/${bottom[0]}` : `${head}/(${bottom.join(".")})`;
}
