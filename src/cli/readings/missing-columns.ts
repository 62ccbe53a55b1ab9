// A file that lacks columns of the reading: which, and whether it is a wide table, one line for many readings.
import type { CsvTable } from "../../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../../document/item.ts";
import { nearest } from "../../nearest.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { unit } from "../../units/unit.ts";
import { inList } from "./in-list.ts";
import { kindOfQuantity, type MappedColumn, usualHeading } from "./mapped-columns.ts";

/** Remarks, reasons and what may stay blank may be missing from a file whose rows are added. */
function isNeeded(item: ReadingItem, name: string, kind: ColumnKind): boolean {
  if (item.key?.includes(name)) return true;
  return kind !== "text" && name !== "state" && name !== "reason" && !item.may?.includes(name);
}

export function missingColumns(
  item: ReadingItem,
  columns: readonly MappedColumn[],
  csv: CsvTable,
  { headLine, whole = false }: { readonly headLine: number; readonly whole?: boolean | undefined },
): Problem | undefined {
  const there = new Set(columns.map(({ name }) => name));
  const missing = Object.entries(item.columns)
    .filter(([name, kind]) => !there.has(name) && (whole || isNeeded(item, name, kind)))
    .map(([name]) => name);
  if (missing.length === 0) return undefined;
  const heads = csv.headings.map((heading) => heading.text.trim());
  return problem({
    code: "missing-column",
    what: `line ${headLine}`,
    got: `the headings ${shortened(heads)}`,
    must: `hold the ${missing.length === 1 ? "column" : "columns"} ${inList(missing)} of ${item.name} as well`,
    hint: hintFor(item, missing, csv),
  });
}

function hintFor(item: ReadingItem, missing: readonly string[], csv: CsvTable): string {
  const [first = ""] = missing;
  const heads = Object.entries(item.columns).map(([name, kind]) => usualHeading(name, kind));
  const wanted = missing.find((name) => kindOfQuantity(item.columns[name]) !== undefined);
  const alike = wanted === undefined ? 0 : headingsInUnitsOf(item.columns[wanted], csv);
  const lacksKey = missing.some((name) => item.key?.includes(name));
  if (alike > 1 && lacksKey) return `a reading has one line for each value: ${heads.join(",")}`;
  const free = csv.headings.map(({ name }) => name);
  const near = missing.length === 1 ? nearest(first, free, 1)[0] : undefined;
  return near === undefined
    ? `for example ${heads.join(",")}`
    : `if ${near} is ${first}, write the heading ${usualHeading(first, item.columns[first])}`;
}

/** How many headings end in a unit that this kind of column could have. */
function headingsInUnitsOf(kind: ColumnKind | undefined, { headings }: CsvTable): number {
  const of = kindOfQuantity(kind);
  return headings.filter((heading) => {
    const text = heading.unit ?? /_([^_]+)$/.exec(heading.name)?.[1];
    return of !== undefined && text !== undefined && !isProblem(unit(text, of));
  }).length;
}

const shortened = (heads: readonly string[], most = 8): string =>
  heads.length <= most
    ? heads.join(", ")
    : `${heads.slice(0, most).join(", ")} and ${heads.length - most} more`;
