// Which column of a reading each heading of a table means: "diameter/mm", "Head a [mm]", "head_a_mm".
// The same reading of heads as the page's own tables have.
import type { Heading } from "../../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../../document/item.ts";
import { toCamelCase } from "../../document/names.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { type Kind, kinds } from "../../units/kind.ts";
import { type Unit, unit } from "../../units/unit.ts";

export interface MappedColumn {
  readonly name: string;
  readonly kind: ColumnKind;
  /** Place among the headings, from 0. */
  readonly at: number;
  /** As typed. */
  readonly heading: string;
  /** From the heading; a field may still carry its own. */
  readonly unit: Unit | undefined;
}

export interface Mapping {
  readonly columns: readonly MappedColumn[];
  /** Headings that mean no column of the reading. */
  readonly leftOut: readonly string[];
  readonly faults: readonly Problem[];
}

export const kindOfQuantity = (kind: ColumnKind | undefined): Kind | undefined =>
  kind === undefined || kind === "tag" || kind === "text" ? undefined : kind;

interface Meant {
  readonly name: string;
  readonly kind: ColumnKind;
  readonly unit: string | undefined;
}

/** Name and unit apart where the unit trails, as in head_a_mm. */
function withTrailingUnit({ text, name, unit: own }: Heading): Heading | undefined {
  const cut = name.lastIndexOf("_");
  return cut < 1 || own !== undefined
    ? undefined
    : { text, name: name.slice(0, cut), unit: name.slice(cut + 1) };
}

const isNamed = (heading: Heading, name: string): boolean =>
  heading.name === name || toCamelCase(heading.name) === name;

export function meantBy(heading: Heading, columns: ReadingItem["columns"]): Meant | undefined {
  const entries = Object.entries(columns);
  const plain = entries.find(([name]) => isNamed(heading, name));
  if (plain) return { name: plain[0], kind: plain[1], unit: heading.unit };
  const shorter = withTrailingUnit(heading);
  const trailing =
    shorter &&
    entries.find(([name, kind]) => {
      const of = kindOfQuantity(kind);
      return of !== undefined && isNamed(shorter, name) && !isProblem(unit(shorter.unit ?? "", of));
    });
  return trailing && { name: trailing[0], kind: trailing[1], unit: shorter?.unit };
}

export function mapColumns(item: ReadingItem, headings: readonly Heading[], line: number): Mapping {
  const columns: MappedColumn[] = [];
  const leftOut: string[] = [];
  const faults: Problem[] = [];
  for (const [at, heading] of headings.entries()) {
    const text = heading.text.trim();
    const meant = meantBy(heading, item.columns);
    const before = meant && columns.find(({ name }) => name === meant.name);
    if (!meant) leftOut.push(text);
    else if (before) faults.push(columnTwice(line, meant.name, before.heading, text));
    else {
      const kind = kindOfQuantity(meant.kind);
      const found = kind === undefined || meant.unit === undefined ? undefined : unit(meant.unit, kind);
      if (isProblem(found)) faults.push(found.with({ what: `line ${line}, heading ${text}` }));
      columns.push({
        name: meant.name,
        kind: meant.kind,
        at,
        heading: text,
        unit: isProblem(found) ? undefined : found,
      });
    }
  }
  return { columns, leftOut, faults };
}

const columnTwice = (line: number, name: string, first: string, second: string): Problem =>
  problem({
    code: "column-twice",
    what: `line ${line}, headings ${first} and ${second}`,
    got: `column ${name} twice`,
    must: "fill each column once",
    hint: "take one of the two out of the file",
  });

/** "diameter/mm" where the unit is not known from elsewhere. */
export function usualHeading(name: string, kind: ColumnKind | undefined): string {
  const of = kindOfQuantity(kind);
  const usual = of === undefined ? undefined : kinds[of].usual[0];
  return usual === undefined || usual === "1" ? name : `${name}/${usual}`;
}
