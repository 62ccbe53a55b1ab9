// Which column of a reading a heading of a table means: "diameter/mm", "Head a [mm]", "head_a_mm".
import { type Heading, heading } from "../../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../../document/item.ts";
import { toCamelCase } from "../../document/names.ts";
import { isProblem } from "../../problem.ts";
import { kinds } from "../../units/kind.ts";
import { unit } from "../../units/unit.ts";

export interface Meant {
  readonly column: string;
  /** As the heading says it. */
  readonly unit: string | undefined;
}

export const isQuantity = (kind: ColumnKind | undefined): boolean =>
  kind !== undefined && kind !== "tag" && kind !== "text";

/** Name and unit apart, also where the unit trails as in head_a_mm. */
export function parted(head: Heading): readonly Heading[] {
  const cut = head.name.lastIndexOf("_");
  if (cut < 1 || head.unit !== undefined) return [head];
  return [head, { text: head.text, name: head.name.slice(0, cut), unit: head.name.slice(cut + 1) }];
}

export function meantBy(head: Heading, columns: ReadingItem["columns"]): Meant | undefined {
  for (const { name, unit: text } of parted(head))
    for (const [column, kind] of Object.entries(columns)) {
      if (name !== column && toCamelCase(name) !== column) continue;
      const fits = text === undefined || head.unit !== undefined || isUnitOf(text, kind);
      if (fits) return { column, unit: text };
    }
  return undefined;
}

const isUnitOf = (text: string, kind: ColumnKind): boolean =>
  kind !== "tag" && kind !== "text" && !isProblem(unit(text, kind));

/** The heading of a column in a table that is only begun. */
export function headingFor(name: string, kind: ColumnKind): string {
  const usual = kind === "tag" || kind === "text" ? undefined : kinds[kind].usual[0];
  return usual === undefined || usual === "1" ? name : `${name}/${usual}`;
}

export const headingsOf = (columns: ReadingItem["columns"]): readonly Heading[] =>
  Object.entries(columns).map(([name, kind]) => heading(headingFor(name, kind)));
