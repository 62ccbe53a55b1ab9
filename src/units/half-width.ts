// One number for a spread, with what it means, so that a caller decides what to do with each meaning.
import type { Quantity } from "./typed.ts";

export interface HalfWidth {
  /** In SI of the dimension; the wider side where limits stand unevenly about the value. */
  readonly halfWidth: number;
  /** A bare ± and limits are limits; "standard" is one standard uncertainty, "expanded" is k of them. */
  readonly meaning: "limits" | "standard" | "expanded";
  /** How many standard uncertainties the half-width is; 1 for limits, where it means nothing. */
  readonly k: number;
}

/** Undefined for a value typed without a spread. */
export function halfWidthOf({ spread, si }: Quantity): HalfWidth | undefined {
  if (!spread) return undefined;
  if (spread.form === "plusMinus")
    return { halfWidth: Math.abs(spread.halfWidth.si), meaning: "limits", k: 1 };
  if (spread.form === "limits")
    return { halfWidth: Math.max(spread.upper.si - si, si - spread.lower.si), meaning: "limits", k: 1 };
  const { u, k } = spread;
  return k === undefined
    ? { halfWidth: u.si, meaning: "standard", k: 1 }
    : { halfWidth: u.si * k, meaning: "expanded", k };
}
