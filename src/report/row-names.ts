// What the rows of a line are called: "hole 18"; a finding is named by its place already.
import type { Item } from "../document/item.ts";
import { nounOfRows } from "../document/place-words.ts";
import type { ChecksValue, Line, RowsValue } from "../engine/line.ts";

export type ItemOf = (name: string) => Item | undefined;

export function itemsOf(lines: readonly Line[]): ItemOf {
  const items = new Map(lines.map(({ name, item }) => [name, item]));
  return (name) => items.get(name);
}

/** Gives each row of a line its name. */
export function rowNames(
  item: Item,
  { key }: Pick<ChecksValue | RowsValue, "key">,
  itemOf: ItemOf,
): (row: { readonly key: string }) => string {
  if (key === "finding") return (row) => row.key;
  const noun = nounOfRows(item, key, itemOf);
  return (row) => `${noun} ${row.key}`;
}
