// What a line is called when another line, a list or a heading speaks of it.
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

export function labelOf(item: Item): string {
  if (item.says) return item.says;
  if ("name" in item) return item.name;
  if (item.kind === "picture") return item.picture.replaceAll("-", " ");
  if (item.kind === "caution") return cautions[item.code].title;
  return kindWords[item.kind];
}

/** A heading before what is said of it: a question needs no colon. */
export const asked = (label: string): string => (/[?:.]$/.test(label) ? label : `${label}:`);
