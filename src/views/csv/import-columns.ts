// Which column of the reading each heading of a file fills, and in what unit; asked where the file does not say.
import { isQuantity, kindOfQuantity, meantBy, parted, unitSaid } from "../../document/column-heading.ts";
import type { CsvTable, Heading } from "../../document/csv.ts";
import type { ReadingItem } from "../../document/item.ts";
import { keyColumns } from "../../document/place-words.ts";
import type { Fields } from "../../document/rows-text.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { Kind } from "../../units/kind.ts";
import { unit } from "../../units/unit.ts";
import { askedColumns } from "../readings/places.ts";

export interface ImportColumn {
  readonly at: number;
  /** As it stands in the file. */
  readonly heading: string;
  /** None: left out. */
  readonly column: string | undefined;
  readonly kind: Kind | undefined;
  readonly unit: string | undefined;
  /** Where the heading itself names a place, as "up_outer_along_mm" does: the keys it stands for. */
  readonly place: Fields | undefined;
}

export interface ColumnAnswers {
  /** Heading → column, or "" to leave it out. */
  readonly columns: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<string, string>>;
}

export function importColumns(
  item: ReadingItem,
  table: CsvTable,
  answers: ColumnAnswers,
): readonly ImportColumn[] {
  const places = placeHeadings(item);
  return table.headings.map((head, at) => columnOf({ item, head, at, answers, places }));
}

interface Task {
  readonly item: ReadingItem;
  readonly head: Heading;
  readonly at: number;
  readonly answers: ColumnAnswers;
  readonly places: ReadonlyMap<string, Fields>;
}

function columnOf({ item, head, at, answers, places }: Task): ImportColumn {
  const chosen = answers.columns[head.text];
  const meant = chosen === undefined ? meantBy(head, item.columns) : undefined;
  const named = chosen === undefined && !meant ? placeNamed(head, places) : undefined;
  const column = chosen === "" ? undefined : (chosen ?? meant?.name ?? (named && askedColumns(item)[0]));
  const known = column === undefined ? undefined : kindOfQuantity(item.columns[column]);
  const unitText =
    answers.units[head.text] ?? meant?.unit ?? named?.unit ?? head.unit ?? (known && unitSaid(head, known));
  return { at, heading: head.text.trim(), column, kind: known, unit: known && unitText, place: named?.place };
}

const normal = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, " ")
    .trim();

/** "up outer along" → the keys it stands for, where one quantity is read at places with several keys. */
function placeHeadings(item: ReadingItem): ReadonlyMap<string, Fields> {
  const rest = keyColumns(item).slice(1);
  const found = new Map<string, Fields>();
  if (rest.length === 0 || askedColumns(item).length !== 1) return found;
  let combinations: Record<string, string>[] = [{}];
  for (const key of rest)
    combinations = combinations.flatMap((before) =>
      (item.expect?.[key] ?? []).map((value) => ({ ...before, [key]: value })),
    );
  for (const place of combinations) found.set(normal(rest.map((key) => place[key]).join(" ")), place);
  return found;
}

function placeNamed(head: Heading, places: ReadonlyMap<string, Fields>) {
  for (const { name, unit: text } of [...parted(head).toReversed(), head]) {
    const place = places.get(normal(name));
    if (place) return { place, unit: text };
  }
  return undefined;
}

/** What keeps the columns from being read, each with what to do. */
export function columnFaults(item: ReadingItem, columns: readonly ImportColumn[]): readonly Problem[] {
  const byPlace = columns.some((column) => column.place);
  const needed = [...(byPlace ? keyColumns(item).slice(0, 1) : keyColumns(item))];
  const measured = askedColumns(item);
  const filled = columns.map((column) => column.column);
  const missing = needed.filter((key) => !filled.includes(key));
  const faults = missing.map((key) =>
    problem({
      code: "missing-column",
      what: `column ${key}`,
      got: `headings ${columns.map((column) => column.heading).join(", ")}`,
      must: "be among the headings",
      hint: `choose below which heading holds ${key}`,
    }),
  );
  if (measured.length > 0 && !measured.some((name) => filled.includes(name)))
    faults.push(
      problem({
        code: "nothing-read",
        what: "headings",
        got: columns.map((column) => column.heading).join(", "),
        must: `name at least one of ${measured.join(", ")}`,
        hint: "choose below which heading holds it",
      }),
    );
  return [...faults, ...twiceFilled(columns), ...columns.flatMap(unitFault)];
}

function twiceFilled(columns: readonly ImportColumn[]): readonly Problem[] {
  const plain = columns.filter((column) => column.column !== undefined && !column.place);
  return plain.flatMap((column, i) =>
    plain.findIndex((other) => other.column === column.column) === i
      ? []
      : [
          problem({
            code: "column-twice",
            what: `heading ${column.heading}`,
            got: `column ${column.column} a second time`,
            must: "fill each column once",
            hint: "leave one of the two out below",
          }),
        ],
  );
}

function unitFault({ column, kind, unit: text, heading }: ImportColumn): readonly Problem[] {
  if (column === undefined || kind === undefined || !isQuantity(kind) || text === undefined) return [];
  const found = unit(text, kind);
  return isProblem(found) ? [found.with({ what: `unit of ${heading}` })] : [];
}
