// Which column of a reading a heading means, and in which unit: "diameter/mm", "Head a [mm]", "head_a_mm",
// "Torque_ft_lb", "temp F". Read alike in the page's own rows and in a file that is taken in. No sentence
// about a heading names a unit that the heading does not say.
import { isProblem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import type { Heading } from "./csv.ts";
import type { ColumnKind } from "./item.ts";
import { toCamelCase } from "./names.ts";

type Columns = Readonly<Record<string, ColumnKind>>;

export interface Meant {
  readonly name: string;
  readonly kind: ColumnKind;
  /** As the heading says it; it may be none of the column's kind. */
  readonly unit: string | undefined;
}

export const kindOfQuantity = (kind: ColumnKind | undefined): Kind | undefined =>
  kind === undefined || kind === "tag" || kind === "text" ? undefined : kind;

export const isQuantity = (kind: ColumnKind | undefined): boolean => kindOfQuantity(kind) !== undefined;

/** "head_a" and "Head a" are the column headA. */
const named = (heading: string, columns: Columns): string | undefined =>
  [heading, toCamelCase(heading)].find((name) => Object.hasOwn(columns, name));

/** Every way to take the last words for a unit: "Torque_ft_lb" is Torque_ft in lb, or Torque in ft lb. */
export function parted({ name }: Pick<Heading, "name">): readonly { name: string; unit: string }[] {
  return [...name.matchAll(/[\s_,]+/g)].flatMap((gap) => {
    const before = name.slice(0, gap.index);
    const words = name
      .slice(gap.index)
      .split(/[\s_,]+/)
      .filter((word) => word !== "");
    if (before === "" || words.length === 0) return [];
    const text = words.join(" ");
    const without = /^in (?=\S)/.exec(text) ? [{ name: before, unit: text.slice(3) }] : [];
    return [{ name: before, unit: text }, ...without]; // "d in mm"
  });
}

/** The whole heading first; words behind a name only where they are a unit of the column's kind. */
export function meantBy(heading: Heading, columns: Columns): Meant | undefined {
  const plain = named(heading.name, columns);
  if (plain !== undefined) return { name: plain, kind: columns[plain] ?? "text", unit: heading.unit };
  if (heading.unit !== undefined) return undefined;
  for (const part of parted(heading)) {
    const name = named(part.name, columns);
    const kind = name === undefined ? undefined : columns[name];
    const said = kind === undefined ? undefined : unitText(part.unit, kind);
    if (name !== undefined && kind !== undefined && said !== undefined) return { name, kind, unit: said };
  }
  return undefined;
}

function unitText(text: string, kind: ColumnKind): string | undefined {
  const of = kindOfQuantity(kind);
  const found = of === undefined ? undefined : unit(text, of);
  return found === undefined || isProblem(found) ? undefined : found.text;
}

/** The unit of this kind that a heading says, whatever stands before it. */
export function unitSaid(heading: Heading, kind: Kind): string | undefined {
  if (heading.unit !== undefined) return unitText(heading.unit, kind);
  return parted(heading)
    .map((part) => unitText(part.unit, kind))
    .find((text) => text !== undefined);
}

/** "diameter/mm": the heading of a column in a table that is only begun. */
export function headingFor(name: string, kind: ColumnKind | undefined, inUnit?: Unit): string {
  const of = kindOfQuantity(kind);
  const text = inUnit?.text ?? (of === undefined ? undefined : kinds[of].usual[0]);
  return text === undefined || text === "1" ? name : `${name}/${text}`;
}

/** Two units as examples, so that neither is taken over unread. */
export function unitHint(name: string, kind: Kind): string {
  const [first, second] = kinds[kind].usual.map((text) => `${name}/${text}`);
  return `write the unit that the numbers are in, as in ${first}${second === undefined ? "" : ` or ${second}`}`;
}
