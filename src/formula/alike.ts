// What may be added, subtracted and compared. The words of a refusal name both sides.

import type { Problem } from "../problem.ts";
import { sameDimension } from "../units/dimension.ts";
import { kindsAgree } from "../units/kind.ts";
import { refusal } from "./refusal.ts";
import { type Typed, wordsFor } from "./typed.ts";

/** Two sides of one kind, for a comparison, a choice, min and max. The result has the kind that is known. */
export function alike(left: Typed, right: Typed, sign: string, at: number): Typed | Problem {
  if (left.anyDimension) return right;
  if (right.anyDimension) return left;
  if (!sameDimension(left.dimension, right.dimension))
    return unlike("formula-unlike-dimensions", left, right, sign, at);
  if (left.kind && right.kind && left.kind !== right.kind && !kindsAgree(left.kind, right.kind)) {
    return unlike("formula-unlike-kinds", left, right, sign, at);
  }
  return { dimension: left.dimension, kind: left.kind ?? right.kind };
}

export function sum(left: Typed, right: Typed, at: number): Typed | Problem {
  if (isReading(left) && isReading(right)) {
    return unlike(
      "formula-temperature",
      left,
      right,
      "+",
      at,
      "add a temperature difference, in K, to a reading",
    );
  }
  if (readingAndChange(left, right) || readingAndChange(right, left)) return reading(left);
  return alike(left, right, "+", at);
}

export function difference(left: Typed, right: Typed, at: number): Typed | Problem {
  if (isReading(left) && isReading(right))
    return { dimension: left.dimension, kind: "temperature difference" };
  if (isReading(right) && (left.anyDimension || left.kind === "temperature difference")) {
    return unlike("formula-temperature", left, right, "-", at, "subtract a reading from a reading");
  }
  if (left.kind === "temperature" && right.kind === "temperature difference") return reading(left);
  // What is subtracted may be a reading or a change, as with "20 K": the kind of the result stays open.
  if (
    sameDimension(left.dimension, right.dimension) &&
    (isReading(left) || isReading(right)) &&
    !right.anyDimension
  ) {
    return { dimension: left.dimension };
  }
  return alike(left, right, "-", at);
}

const isReading = (t: Typed): boolean => t.kind === "temperature";

/** The other side may be a difference, or in kelvin of unknown kind. */
function readingAndChange(one: Typed, other: Typed): boolean {
  if (!isReading(one) || other.anyDimension || !sameDimension(one.dimension, other.dimension)) return false;
  return other.kind === undefined || other.kind === "temperature difference";
}

const reading = (t: Typed): Typed => ({ dimension: t.dimension, kind: "temperature" });

function unlike(code: string, left: Typed, right: Typed, sign: string, at: number, hint?: string): Problem {
  return refusal(code, at, {
    got: `${wordsFor(left)} ${sign} ${wordsFor(right)}`,
    must: "be of one kind on both sides",
    ...(hint === undefined ? {} : { hint }),
  });
}
