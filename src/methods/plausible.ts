// What is possible and what is usual for each sort of input, declared once and judged wherever one is
// taken in, in lists too. Impossible is refused; unusual is said as advice. A number that is unusual as
// typed and usual in a sister unit is asked about: 205 MPa for 205 GPa, 0.14 % for 0.14.
import { type Problem, problem } from "../problem.ts";
import { inUnit } from "../units/in-unit.ts";
import type { Unit } from "../units/unit.ts";
import type { QuantityField } from "./field.ts";
import { formatShort, usualUnit } from "./solution.ts";
import { type Bound, type Range, type SortOfInput, sorts, unitsOf } from "./sorts.ts";

/** The sort a field says it is; a count or an expansion is one by its kind. */
export function sortOf(field: QuantityField): SortOfInput | undefined {
  if (field.as) return sorts[field.as];
  return field.kind === "count" || field.kind === "expansion" ? sorts[field.kind] : undefined;
}

/** A value with the unit it was typed in, where there was one. */
interface Typed {
  readonly si: number;
  readonly unit?: Unit | undefined;
}

export interface Judged {
  readonly refused?: Problem;
  readonly unusual?: Problem;
}

const slack = 1e-12; // a value exactly on its bound is inside, whatever its last bit says

/** A bound that the value breaks: as text, and why. */
function broken({ low, high }: Range, si: number): { must: string; bound: Bound } | undefined {
  const over = (a: number, b: number) => a - b > slack * Math.max(Math.abs(a), Math.abs(b));
  if (low && (low.open ? !over(si, low.si) : over(low.si, si)))
    return { must: `be ${low.open ? "above" : "at least"} ${low.at}`, bound: low };
  if (high && (high.open ? !over(high.si, si) : over(si, high.si)))
    return { must: `be ${high.open ? "below" : "at most"} ${high.at}`, bound: high };
  return undefined;
}

/** The same digits in the units that people mix up, where that is usual: "205 GPa" for 205 MPa. */
function meant(sort: SortOfInput, si: number, typed: Unit): readonly string[] {
  return unitsOf(sort).flatMap((other) => {
    const read = inUnit(si, typed) / inUnit(1, other);
    const usual = other.text !== typed.text && !broken(sort.usual ?? sort.possible, read);
    return usual ? [formatShort(read, other)] : [];
  });
}

export function judge(field: QuantityField, value: Typed, where: string): Judged {
  const sort = sortOf(field);
  if (!sort || (value.si === 0 && sort.orZero)) return {};
  const said = (code: string, must: string, why: string) =>
    problem({
      code,
      where,
      what: field.says,
      got: formatShort(value.si, value.unit ?? usualUnit(sort.kind)),
      must,
      why,
    });
  if (sort.whole !== undefined && Math.abs(value.si - Math.round(value.si)) > slack * Math.abs(value.si))
    return { refused: said("implausible", "be a whole number", sort.whole) };
  const impossible = broken(sort.possible, value.si);
  const readAs = value.unit ? meant(sort, value.si, value.unit) : [];
  if (impossible)
    return {
      refused: said("implausible", impossible.must, impossible.bound.else).with({
        hint: readAs.length > 0 ? `is ${readAs.join(" or ")} meant?` : sort.hint,
        suggestions: readAs,
      }),
    };
  const unusual = sort.usual && broken(sort.usual, value.si);
  if (!unusual) return {};
  if (readAs.length === 0) return { unusual: said("unusual", unusual.must, unusual.bound.else) };
  const asItStands = unitsOf(sort)
    .filter((unit) => unit.text !== value.unit?.text)
    .slice(0, 1)
    .map((unit) => formatShort(value.si, unit));
  return {
    refused: said("which-unit", "say which unit is meant", unusual.bound.else).with({
      hint: `${readAs.join(" or ")}? if it is right as it stands, give it as ${asItStands.join("")}`,
      suggestions: [...readAs, ...asItStands],
    }),
  };
}
