// The limits of a check: in words, and as values in the unit shown, in SI and as they were typed.
import type { CheckItem } from "../document/item.ts";
import type { CheckValue, Line } from "../engine/line.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import { baseUnit } from "../units/base-unit.ts";
import { inUnit } from "../units/in-unit.ts";
import { kinds } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import type { Unit } from "../units/unit.ts";
import { unitText } from "./values.ts";

/** The unit that value and limits of a check are shown in. */
export const shownUnit = ({ unit, kind }: CheckValue, unitOf: UnitChoice): Unit =>
  unit ?? unitOf(kind ?? "ratio");

/** "at most 0.9", "0 to 15 um"; empty for a yes or no. */
export function limitWords(
  { limits: { atLeast, atMost } }: CheckValue,
  text: (si: number) => string,
): string {
  if (atLeast !== undefined && atMost !== undefined) return `${text(atLeast)} to ${text(atMost)}`;
  if (atLeast !== undefined) return `at least ${text(atLeast)}`;
  return atMost === undefined ? "" : `at most ${text(atMost)}`;
}

/** How the value was held against its limit; `uncertainty` in words where one was counted. */
export const ruleWords = (uncertainty: string | undefined): string =>
  uncertainty === undefined
    ? "Compared unrounded; no uncertainty is stated."
    : `Guarded: proven only if the value stays inside with its whole uncertainty${uncertainty}.`;

interface Bounds<T> {
  readonly atLeast: T | null;
  readonly atMost: T | null;
}

/** What stands in the check; with a number where that is a quantity, or the name of a given. */
interface TypedLimit {
  readonly text: string;
  readonly value: number | null;
  readonly unit: string | null;
}

export interface LimitValues extends Bounds<number> {
  readonly unit: string;
  readonly si: Bounds<number> & { readonly unit: string };
  readonly typed: Bounds<TypedLimit>;
}

export function limitValues(
  value: CheckValue,
  item: CheckItem,
  shown: Unit,
  lineAt: (name: string) => Line | undefined,
): LimitValues | null {
  const { atLeast, atMost } = value.limits;
  if (atLeast === undefined && atMost === undefined) return null;
  const both = (as: (si: number) => number): Bounds<number> => ({
    atLeast: atLeast === undefined ? null : as(atLeast),
    atMost: atMost === undefined ? null : as(atMost),
  });
  const [low, high] = item.between ?? [item.atLeast, item.atMost];
  const typed = (text: string | undefined) =>
    text === undefined ? null : typedLimit(text, value, lineAt(text.trim()));
  return {
    ...both((si) => inUnit(si, shown)),
    unit: unitText(shown.text),
    si: {
      ...both((si) => si),
      unit: unitText(value.kind ? kinds[value.kind].si : baseUnit(shown.dimension).text),
    },
    typed: { atLeast: typed(low), atMost: typed(high) },
  };
}

function typedLimit(text: string, { kind }: CheckValue, line: Line | undefined): TypedLimit {
  const given =
    line && !isProblem(line.value) && line.value.type === "quantity" ? line.value.typed : undefined;
  const found = given ?? quantity(text, kind);
  if (!isProblem(found)) return { text, value: found.value, unit: unitText(found.unit.text) };
  const bare = text.trim() === "" ? Number.NaN : Number(text);
  return { text, value: Number.isFinite(bare) ? bare : null, unit: null };
}
