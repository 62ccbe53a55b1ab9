// What was entered and does not stand in the page, entry by entry: what the page says there, and what is kept here.
import type { Item, Page, ReadingItem } from "../../document/item.ts";
import { readPage } from "../../document/read.ts";
import { givenOfSource, sourceKey } from "../../document/source-key.ts";
import { type Difference, keptBesides } from "../../readings/row-places.ts";
import { labelOf } from "../../report/labels.ts";
import { counted, listed } from "../../words.ts";
import type { Aside } from "./kept.ts";

export interface Entry {
  /** The given, its source, or the reading it was typed into. */
  readonly key: string;
  readonly label: string;
  readonly kept: string;
  /** What the page says there now; none where it has no such line. */
  readonly now: string | undefined;
  /** For a reading, how its rows are read. */
  readonly item: ReadingItem | undefined;
  /** Place by place, where both can be read. */
  readonly places: readonly Difference[] | undefined;
}

/** The text that stands at a key of a page file. */
export function textIn(page: Page | undefined, key: string): string | undefined {
  const given = givenOfSource(key);
  const item = named(page, given ?? key);
  if (item?.kind === "given") return given === undefined ? item.value : (item.source ?? "");
  return item?.kind === "reading" && given === undefined ? item.rows : undefined;
}

const named = (page: Page | undefined, name: string): Item | undefined =>
  page?.items.find((item) => "name" in item && item.name === name);

/** `now` gives what stands at a key of the page as it is. */
export function entriesOf(
  { base, typed }: Pick<Aside, "base" | "typed">,
  page: Page | undefined,
  now: (key: string) => string | undefined,
): readonly Entry[] {
  const before = readPage(base, "").page;
  return Object.entries(typed).flatMap(([key, kept]): readonly Entry[] => {
    const given = givenOfSource(key);
    const stands = now(key);
    if (stands === kept || kept === textIn(before, key)) return [];
    const [here, was] = [named(page, given ?? key), named(before, given ?? key)];
    const label = labelIn(here ?? was, given ?? key);
    const item = readingOf(here) ?? readingOf(was);
    if (given !== undefined || !item)
      return [
        {
          key,
          label: given === undefined ? label : `Source of ${label}`,
          kept,
          now: stands,
          item: undefined,
          places: undefined,
        },
      ];
    const began = readingOf(was)?.rows ?? "";
    const places = keptBesides(item, began, stands ?? began, kept);
    return places?.length === 0 ? [] : [{ key, label, kept, now: stands, item, places }];
  });
}

const labelIn = (item: Item | undefined, name: string): string => (item ? labelOf(item) : name);

const readingOf = (item: Item | undefined): ReadingItem | undefined =>
  item?.kind === "reading" ? item : undefined;

/** "5 readings and 1 value"; a source counts with its value. */
export function countedEntries(entries: readonly Entry[]): string {
  const readings = entries.reduce(
    (sum, { item, places, kept }) => sum + (item ? countOf(places, kept) : 0),
    0,
  );
  const values = entries.filter(({ key, item }) => !item && givenOfSource(key) === undefined);
  const sources = entries.filter(({ key }) => {
    const given = givenOfSource(key);
    return given !== undefined && !values.some((value) => sourceKey(value.key) === key);
  });
  const parts = [
    readings > 0 && counted(readings, "reading"),
    values.length > 0 && counted(values.length, "value"),
    sources.length > 0 && counted(sources.length, "source"),
  ].filter((part) => part !== false);
  return listed(parts);
}

/** Rows that cannot be held against the page are counted as they stand, below their heading. */
const countOf = (places: readonly Difference[] | undefined, kept: string): number =>
  places?.reduce((sum, { readings }) => sum + readings, 0) ??
  Math.max(1, kept.split("\n").filter((line) => line.trim() !== "").length - 1);
