// Exact numbers as text, and as few digits as say enough.
import { exactDecimal, type Rational, toDecimal } from "./rational.ts";

/** "24.856662386075674" where the decimal ends, else a fraction such as "250/9" or "pi/180". */
export function exactText(r: Rational): string {
  const decimal = exactDecimal(r, 60);
  if (decimal !== undefined) return decimal;
  const power = Math.abs(r.pi) === 1 ? "pi" : `pi^${Math.abs(r.pi)}`;
  const top = r.pi > 0 ? `${r.n === 1n ? "" : r.n === -1n ? "-" : `${r.n}*`}${power}` : `${r.n}`;
  const bottom = r.pi < 0 ? (r.d === 1n ? power : `(${r.d}*${power})`) : `${r.d}`;
  return bottom === "1" ? top : `${top}/${bottom}`;
}

const fewest = 5;

/** At least 5 significant digits and as many as were typed; all of them when the decimal is short; never fewer than the whole part has. */
export function shortText(r: Rational, typed: string): string {
  const short = exactDecimal(r, 8);
  if (short !== undefined) return short;
  const whole = toDecimal({ n: r.n < 0n ? -r.n : r.n, d: r.d, pi: r.pi }, 17).split(/[.e]/)[0] ?? "";
  const digitsTyped = /\d[\d.]*/.exec(typed)?.[0].replace(/^[0.]+|\./g, "").length ?? 0;
  return toDecimal(r, Math.min(17, Math.max(fewest, digitsTyped, whole.length)));
}
