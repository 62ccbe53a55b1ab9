// What is known of a part of a formula before any number is.

import { type Dimension, dimensionless, dimensionWords, sameDimension } from "../units/dimension.ts";
import type { Kind } from "../units/kind.ts";

export interface Typed {
  readonly dimension: Dimension;
  readonly kind?: Kind | undefined;
  /** One value per row. */
  readonly column?: boolean;
  /** The outcome of a comparison. */
  readonly truth?: boolean;
  /** A literal 0 fits any dimension. */
  readonly anyDimension?: boolean;
  /** A typed number or the result of a function such as sin: it scales and leaves the kind of what it scales. */
  readonly factor?: boolean;
}

export const plainNumber: Typed = { dimension: dimensionless };
export const factor: Typed = { ...plainNumber, factor: true };

/** "force", "torque", "length^2/time", "plain number". */
export function wordsFor(t: Typed): string {
  if (t.truth) return "the outcome of a comparison";
  if (t.kind) return t.kind === "temperature" ? "temperature reading" : t.kind;
  return sameDimension(t.dimension, dimensionless) ? "plain number" : dimensionWords(t.dimension);
}
