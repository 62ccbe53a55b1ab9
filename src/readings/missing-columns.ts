// A file that lacks columns of the reading: which, and whether it is a wide table, one line for many readings.
import { isQuantity, kindOfQuantity, parted, unitSaid } from "../document/column-heading.ts";
import type { CsvTable, Heading } from "../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../document/item.ts";
import { toCamelCase } from "../document/names.ts";
import { keyColumns } from "../document/place-words.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { unit } from "../units/unit.ts";
import { listed } from "../words.ts";
import type { ImportColumn } from "./import-columns.ts";
import { askedColumns } from "./places.ts";
import type { Table } from "./table.ts";

/** Rows that are added say which reading they are and at least one of what is read there; `whole` says all. */
export function missingColumns(
  { item, columns: own }: Table,
  columns: readonly ImportColumn[],
  csv: CsvTable,
  { headLine, whole }: { readonly headLine: number; readonly whole: boolean },
): Problem | undefined {
  const there = new Set(columns.flatMap(({ column, place }) => [column, ...Object.keys(place ?? {})]));
  const asked = askedColumns(item).filter((name) => !item.may?.includes(name));
  const wanted = askedColumns(item).some((name) => there.has(name)) ? [] : asked;
  const needed = whole ? own.map(({ name }) => name) : [...keyColumns(item), ...wanted];
  const missing = needed.filter((name) => !there.has(name));
  if (missing.length === 0) return undefined;
  const heads = csv.headings.map((heading) => heading.text.trim());
  const isAny = !whole && wanted.length > 1 && missing.length === wanted.length;
  return problem({
    code: "missing-column",
    what: `line ${headLine}`,
    got: `the headings ${shortened(heads)}`,
    must: isAny
      ? `hold at least one of ${missing.join(", ")} of ${item.name}`
      : `hold the ${missing.length === 1 ? "column" : "columns"} ${listed(missing)} of ${item.name} as well`,
    hint: hintFor({
      item,
      missing,
      csv,
      free: csv.headings.filter((_, at) => columns[at]?.column === undefined),
    }),
  });
}

interface Missing {
  readonly item: ReadingItem;
  readonly missing: readonly string[];
  readonly csv: CsvTable;
  /** Headings that mean no column yet. */
  readonly free: readonly Heading[];
}

function hintFor({ item, missing, csv, free }: Missing): string {
  const [first = ""] = missing;
  const heads = Object.entries(item.columns).map(([name, kind]) => headAlike(name, kind, csv));
  const wanted = missing.find((name) => isQuantity(item.columns[name]));
  const alike = wanted === undefined ? [] : unitsSaid(item.columns[wanted], csv);
  const lacksKey = missing.some((name) => item.key?.includes(name));
  if (alike.length > 1 && lacksKey) return `a reading has one line for each value: ${heads.join(",")}`;
  const near = missing.length === 1 ? nearHeading(first, free) : undefined;
  return near === undefined
    ? `for example ${heads.join(",")}`
    : `if ${near.text.trim()} is ${first}, ${headingOfIts(first, item.columns[first], near)}`;
}

function nearHeading(name: string, free: readonly Heading[]): Heading | undefined {
  const names = free.flatMap((heading) =>
    [heading, ...parted(heading)].map((part) => toCamelCase(part.name)),
  );
  const [near] = nearest(name, names, 1);
  return free.find((heading) =>
    [heading, ...parted(heading)].some((part) => toCamelCase(part.name) === near),
  );
}

/** With the unit that the heading itself says, or one that it may mean; never with another. */
function headingOfIts(name: string, kind: ColumnKind | undefined, near: Heading): string {
  const of = kindOfQuantity(kind);
  if (of === undefined) return `write the heading ${name}`;
  const said = unitSaid(near, of);
  if (said !== undefined) return `write the heading ${name}/${said}`;
  const texts = near.unit === undefined ? parted(near).map((part) => part.unit) : [near.unit];
  const meant = texts.flatMap((text) => {
    const found = unit(text, of);
    return isProblem(found) ? found.suggestions : [];
  });
  const write = `write the heading ${name} with the unit that the numbers are in`;
  return meant.length === 0 ? write : `${write}, such as ${name}/${meant[0]}`;
}

/** The units in which the headings say such quantities, one for each heading. */
function unitsSaid(kind: ColumnKind | undefined, { headings }: CsvTable): readonly string[] {
  const of = kindOfQuantity(kind);
  return of === undefined ? [] : headings.flatMap((heading) => unitSaid(heading, of) ?? []);
}

/** "diameter/mm" where the file's headings say mm and nothing else, else the name alone. */
function headAlike(name: string, kind: ColumnKind, csv: CsvTable): string {
  const said = [...new Set(unitsSaid(kind, csv))];
  return said.length === 1 ? `${name}/${said[0]}` : name;
}

const shortened = (heads: readonly string[], most = 8): string =>
  heads.length <= most
    ? heads.join(", ")
    : `${heads.slice(0, most).join(", ")} and ${heads.length - most} more`;
