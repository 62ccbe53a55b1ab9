// Words that more than one part of the page uses.
import type { Item } from "../document/item.ts";
import { cautions } from "./cautions.ts";

export const kindWords: Readonly<Record<Item["kind"], string>> = {
  note: "note",
  given: "given",
  working: "working",
  check: "check",
  reading: "reading",
  picture: "picture",
  caution: "caution",
  "sign-off": "sign-off",
};

/** What a line is called when another line speaks of it. */
export function labelOf(item: Item): string {
  if (item.says) return item.says;
  if ("name" in item) return item.name;
  if (item.kind === "picture") return item.picture.replaceAll("-", " ");
  if (item.kind === "caution") return cautions[item.code].title;
  return kindWords[item.kind];
}

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A heading before what is said of it: a question needs no colon. */
export const asked = (label: string): string => (/[?:.]$/.test(label) ? label : `${label}:`);
