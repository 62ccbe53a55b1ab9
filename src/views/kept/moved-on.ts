// What was kept against a file that has moved on since: what the file left alone goes on; what both changed, or the
// file no longer has, is kept aside. The file's correction stands until a person chooses.
import type { Item, Page } from "../../document/item.ts";
import { readPage } from "../../document/read.ts";
import { givenOfSource, sourceKey } from "../../document/source-key.ts";
import { mergedRows } from "../../readings/row-places.ts";
import type { Aside, Kept } from "./kept.ts";

type Texts = Readonly<Record<string, string>>;

interface Carried {
  /** Goes on in the page. */
  readonly typed: Texts;
  readonly aside: Texts;
}

export function movedOn(kept: Kept, page: Page, base: string): Kept {
  const before = itemsOf(readPage(kept.base, page.file).page);
  const now = itemsOf(page);
  const names = new Set(Object.keys(kept.typed).map((key) => givenOfSource(key) ?? key));
  const carried = [...names].map((name) => carry(kept.typed, before.get(name), now.get(name), name));
  const typed = all(carried.map((one) => one.typed));
  const aside = all(carried.map((one) => one.aside));
  const isLeftAlone = (key: string) => {
    const name = givenOfSource(key) ?? key;
    return same(before.get(name), now.get(name));
  };
  const goesOn = (name: string) =>
    typed[name] === kept.typed[name] && (typed[name] !== undefined || isLeftAlone(name));
  return {
    ...kept,
    base,
    typed,
    saved: Object.fromEntries(Object.entries(kept.saved).filter(([key]) => isLeftAlone(key))),
    changes: kept.changes.filter(({ name }) => goesOn(name)),
    undone: kept.undone.filter(({ name }) => goesOn(name)),
    aside: withAside(kept.aside, { why: "file changed", base: kept.base, typed: aside }),
  };
}

/** The same entries are not listed twice, and none where there is nothing. */
export function withAside(all: readonly Aside[], one: Aside): readonly Aside[] {
  if (Object.keys(one.typed).length === 0) return all;
  const text = (aside: Aside) => JSON.stringify([aside.base, aside.typed]);
  return all.some((other) => text(other) === text(one)) ? all : [...all, one];
}

const itemsOf = (page: Page | undefined): ReadonlyMap<string, Item> =>
  new Map((page?.items ?? []).flatMap((item) => ("name" in item ? [[item.name, item]] : [])));

const all = (texts: readonly Texts[]): Texts => Object.assign({}, ...texts);

/** What can be entered of an item: the file says the same of both. */
function same(a: Item | undefined, b: Item | undefined): boolean {
  if (a?.kind === "given" && b?.kind === "given") return a.value === b.value && a.source === b.source;
  return a?.kind === "reading" && b?.kind === "reading" && a.rows === b.rows;
}

function carry(typed: Texts, before: Item | undefined, now: Item | undefined, name: string): Carried {
  const mine = Object.fromEntries(
    [name, sourceKey(name)].flatMap((key) => (typed[key] === undefined ? [] : [[key, typed[key]]])),
  );
  if (now?.kind === "given" && before?.kind !== "reading") {
    if (same(before, now)) return { typed: mine, aside: {} };
    const [value, source] = [
      mine[name] ?? (before?.kind === "given" ? before.value : undefined),
      mine[sourceKey(name)],
    ];
    const isInFile = value === now.value && (source === undefined || source === now.source);
    return { typed: {}, aside: isInFile ? {} : mine };
  }
  if (now?.kind === "reading" && before?.kind !== "given") {
    const text = mine[name] ?? now.rows;
    if (text === now.rows) return { typed: {}, aside: {} };
    if (before?.kind === "reading" && same(before, now) && hasSameColumns(before, now))
      return { typed: mine, aside: {} };
    const merged = mergedRows(now, before?.kind === "reading" ? before.rows : "", now.rows, text);
    if (!merged) return { typed: {}, aside: mine };
    return {
      typed: merged.text === now.rows ? {} : { [name]: merged.text },
      aside: merged.open > 0 ? mine : {},
    };
  }
  return { typed: {}, aside: mine };
}

const hasSameColumns = (a: Item & { kind: "reading" }, b: Item & { kind: "reading" }): boolean =>
  JSON.stringify(a.columns) === JSON.stringify(b.columns);
