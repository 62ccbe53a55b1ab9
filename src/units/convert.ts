// The same quantity in another unit, exact until the last step.
import { isProblem, type Problem, problem } from "../problem.ts";
import { sameDimension } from "./dimension.ts";
import { withUnit } from "./format.ts";
import { inTarget, keptDigits } from "./kept-digits.ts";
import { type Kind, withArticle } from "./kind.ts";
import { type Rational, toNumber } from "./rational.ts";
import { spreadIn } from "./spread-in.ts";
import { commonKind, type Quantity } from "./typed.ts";
import { type Unit, unit } from "./unit.ts";

export { inUnit } from "./in-unit.ts";

export interface Converted {
  readonly value: number;
  readonly exact: Rational;
  readonly unit: Unit;
  /** "24.86 N.m": 4 significant digits, rounded from the exact value; a length keeps its typed place. */
  readonly text: string;
  /** "± 0.5 N.m" or "30.46 psi to 37.71 psi", where a spread was typed. */
  readonly spread?: string;
}

/** "lbf.ft", a trade notation, or for a temperature the reading or the difference that fits. */
export function convert(q: Quantity, to: string): Converted | Problem {
  const target = targetUnit(q, to);
  return isProblem(target) ? target : convertTo(q, target);
}

/** A quantity in a unit of its kind. */
export function convertTo(q: Pick<Quantity, "exact" | "step" | "spread">, target: Unit): Converted {
  const exact = inTarget(q.exact, target);
  const spread = spreadIn(q, target);
  return {
    value: toNumber(exact),
    exact,
    unit: target,
    text: withUnit(keptDigits(exact, target, q.step), target),
    ...(spread === undefined ? {} : { spread }),
  };
}

function targetUnit(q: Quantity, to: string): Unit | Problem {
  const own = q.unit.kinds;
  const inKind = q.kind === undefined ? undefined : unit(to, q.kind);
  if (inKind && !isProblem(inKind)) return inKind;
  const plain = unit(to);
  if (isProblem(plain)) return inKind ?? plain;
  const shared = commonKind(plain.kinds, own);
  if (shared !== undefined) return unit(to, shared);
  const nameless = own.length === 0 && plain.kinds.length === 0;
  if (nameless && sameDimension(plain.dimension, q.unit.dimension)) return plain;
  return mismatch(q, to, plain);
}

function mismatch(q: Quantity, to: string, plain: Unit): Problem {
  const name = (u: Unit): string =>
    u.kinds[0] === undefined ? `built as ${u.text}` : withArticle(u.kinds[0]);
  return problem({
    code: "wrong-kind",
    what: "conversion",
    got: `${q.text}, ${q.kind === undefined ? name(q.unit) : withArticle(q.kind)}, to ${to}`,
    must: `stay the same kind; ${to} is ${name(plain)}`,
    why: sameDimension(plain.dimension, q.unit.dimension) ? sameDimensionOnly(q.kind, plain) : undefined,
  });
}

const sameDimensionOnly = (kind: Kind | undefined, plain: Unit): string =>
  kind === "torque" && plain.kinds[0] === "energy"
    ? "a torque has the dimension of energy but is not given in joules"
    : "the dimension is the same but the meaning is not";
