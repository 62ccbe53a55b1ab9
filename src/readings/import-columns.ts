// Which column of the reading each heading of a file fills, and in what unit; asked where the file does not say. A
// heading may name a place as well, as "up_outer_along_mm" does; two headings for one column are refused by name.
import { kindOfQuantity, meantBy, parted, unitSaid } from "../document/column-heading.ts";
import type { Heading } from "../document/csv.ts";
import type { ColumnKind, ReadingItem } from "../document/item.ts";
import { expectedRows, keyColumns } from "../document/place-words.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { unit } from "../units/unit.ts";
import { askedColumns } from "./places.ts";
import { allColumns } from "./remarks.ts";
import { type Column, columnOf, type Fields } from "./table.ts";

export interface ImportColumn {
  readonly at: number;
  /** As it stands in the file. */
  readonly heading: string;
  /** None: left out. */
  readonly column: string | undefined;
  readonly kind: ColumnKind;
  /** As the heading or the person says it; it may be none of the column's kind. */
  readonly unit: string | undefined;
  /** Where the heading itself names a place: the keys it stands for. */
  readonly place: Fields | undefined;
}

export interface ColumnAnswers {
  /** Heading → column, or "" to leave it out. */
  readonly columns: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<string, string>>;
}

export function importColumns(
  item: ReadingItem,
  headings: readonly Heading[],
  { columns: chosen, units }: ColumnAnswers,
): readonly ImportColumn[] {
  const all = allColumns(item);
  const places = placeHeadings(item);
  return headings.map((head, at) => {
    const heading = head.text.trim();
    const answer = chosen[heading];
    const meant = answer === undefined ? meantBy(head, all) : undefined;
    const named = answer === undefined && !meant ? placeNamed(head, places) : undefined;
    const column = answer === "" ? undefined : (answer ?? meant?.name ?? (named && askedColumns(item)[0]));
    const kind = (column === undefined ? undefined : all[column]) ?? "text";
    const of = kindOfQuantity(kind);
    const said = units[heading] ?? meant?.unit ?? named?.unit ?? head.unit ?? (of && unitSaid(head, of));
    return { at, heading, column, kind, unit: of && said, place: named?.place };
  });
}

const normal = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, " ")
    .trim();

/** "up outer along" → the keys it stands for, where one quantity is read at places with several keys. */
function placeHeadings(item: ReadingItem): ReadonlyMap<string, Fields> {
  const rest = keyColumns(item).slice(1);
  if (rest.length === 0 || askedColumns(item).length !== 1) return new Map();
  return new Map(
    expectedRows(item, rest).map((place) => [normal(rest.map((key) => place[key]).join(" ")), place]),
  );
}

function placeNamed(head: Heading, places: ReadonlyMap<string, Fields>) {
  for (const { name, unit: text } of [...parted(head).toReversed(), head]) {
    const place = places.get(normal(name));
    if (place) return { place, unit: text };
  }
  return undefined;
}

/** With its unit, or what is wrong with that. */
export function openColumn({
  at,
  heading,
  column: name = "",
  kind,
  unit: text,
}: ImportColumn): Column | Problem {
  const of = kindOfQuantity(kind);
  const found = of === undefined || text === undefined ? undefined : unit(text, of);
  return isProblem(found) ? found : columnOf({ name, kind, at, heading, unit: found });
}

export const headingFaults = (columns: readonly ImportColumn[], line: number): readonly Problem[] => [
  ...filledTwice(columns, line),
  ...columns.flatMap((column) => {
    const found = column.column === undefined ? undefined : openColumn(column);
    return isProblem(found) ? [found.with({ what: `line ${line}, heading ${column.heading}` })] : [];
  }),
];

/** A heading with a place fills its own column and says its keys, so that no other heading may. */
function filledTwice(columns: readonly ImportColumn[], line: number): readonly Problem[] {
  const filled = columns.filter(({ column }) => column !== undefined);
  return filled.flatMap((column, i) => {
    const before = filled.slice(0, i).find((other) => clash(other, column) !== undefined);
    return before ? [columnTwice(line, clash(before, column) ?? "", before.heading, column.heading)] : [];
  });
}

/** The column that both fill. */
function clash(a: ImportColumn, b: ImportColumn): string | undefined {
  if (a.place && b.place)
    return normal(Object.values(a.place).join(" ")) === normal(Object.values(b.place).join(" "))
      ? a.column
      : undefined;
  if (a.column === b.column) return a.column;
  const [placed, plain] = a.place ? [a, b] : [b, a];
  return placed.place && Object.hasOwn(placed.place, plain.column ?? "") ? plain.column : undefined;
}

const columnTwice = (line: number, name: string, first: string, second: string): Problem =>
  problem({
    code: "column-twice",
    what: `line ${line}, headings ${first} and ${second}`,
    got: `column ${name} twice`,
    must: "fill each column once",
    hint: "take one of the two out of the file",
  });
