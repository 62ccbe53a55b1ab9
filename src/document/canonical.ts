// JSON in the one form RFC 8785 (June 2020) gives it: keys in UTF-16 order, numbers as ECMAScript writes them,
// no spaces. And a page as such JSON: what was typed, without sign-off, places and comments.
import { isSpaceOrTab } from "./blank-end.ts";
import { held } from "./held.ts";
import type { Item, Page } from "./item.ts";

export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Takes checked data only; anything JSON cannot hold is a mistake of the caller. */
export function canonicalJson(value: Json): string {
  if (typeof value === "string") return canonicalText(value);
  if (typeof value === "number" && !Number.isFinite(value))
    throw new TypeError(`JSON has no number ${value}`);
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  if (isList(value)) return `[${value.map(canonicalJson).join(",")}]`;
  const keys = Object.keys(value).sort((a, b) => (a < b ? -1 : 1));
  return `{${keys.map((key) => `${canonicalText(key)}:${canonicalJson(value[key] ?? null)}`).join(",")}}`;
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value);

const halfPair = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

function canonicalText(text: string): string {
  if (halfPair.test(text)) throw new TypeError("half a surrogate pair has no place in canonical JSON");
  return JSON.stringify(text);
}

/** NFC, one micro sign (U+00B5 for U+03BC), LF: texts that read alike are alike. */
const plainText = (text: string): string =>
  text.normalize("NFC").replaceAll("\u03BC", "\u00B5").replaceAll("\r\n", "\n");

const withoutTrailingSpace = (rows: string): string =>
  rows
    .split(/(?=[\n\r\u2028\u2029])/)
    .map(withoutSpaceBehind)
    .join("");

function withoutSpaceBehind(line: string): string {
  let end = line.length;
  while (end > 0 && isSpaceOrTab(line.charAt(end - 1))) end -= 1;
  return line.slice(0, end);
}

const notContent: ReadonlySet<string> = new Set(["place", "index", "rowsLine"]);

function normalised(value: unknown): Json {
  if (typeof value === "string") return plainText(value);
  if (Array.isArray(value)) return value.map(normalised);
  if (value === null || typeof value !== "object") return held<Json>(value);
  const entries = Object.entries(value).filter(([, field]) => field !== undefined);
  return Object.fromEntries(entries.map(([key, field]) => [plainText(key), normalised(field)]));
}

export function itemContent(item: Item): Json {
  const entries = Object.entries(item).filter(([key]) => !notContent.has(key));
  const fields = entries.map(([key, field]) => [
    key,
    key === "rows" && typeof field === "string" ? withoutTrailingSpace(plainText(field)) : field,
  ]);
  return normalised(Object.fromEntries(fields));
}

/** What a signature stands for; the order of the items counts. */
export function pageContent(page: Page): Json {
  const { file: _file, items, ...header } = page;
  const content = items.filter((item) => item.kind !== "sign-off").map(itemContent);
  return { splitline: 1, ...held<Readonly<Record<string, Json>>>(normalised(header)), page: content };
}
