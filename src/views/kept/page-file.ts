// The page as it was kept: the file that the entries were made into, with the entries in it.
import { readPage } from "../../document/read.ts";
import { givenOfSource } from "../../document/source-key.ts";
import { opened } from "../../engine/opened.ts";
import type { Aside } from "./kept.ts";

/** Without the entries where that file can no longer be read: they go out one by one. */
export function keptPage({ base, typed }: Pick<Aside, "base" | "typed">): string {
  const { page } = readPage(base, "");
  if (!page) return base;
  const live = opened(page, base);
  for (const [key, text] of Object.entries(typed)) {
    const given = givenOfSource(key);
    if (given !== undefined) live.restate(given, text);
    else if (live.line(key)?.item.kind === "reading") live.enter(key, text);
    else live.change(key, text);
  }
  const text = live.text();
  live.dispose();
  return text;
}
