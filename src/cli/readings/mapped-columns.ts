// The columns of a reading that the headings of a table fill, and what is wrong with them.

import { kindOfQuantity, meantBy } from "../../document/column-heading.ts";
import type { Heading } from "../../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../../document/item.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
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
