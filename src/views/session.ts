// One page being worked on: its live values, what was changed here, and the way back.
import type { Page } from "../document/item.ts";
import { readPage } from "../document/read.ts";
import { fetchPage } from "../engine/fetch-page.ts";
import type { LivePage } from "../engine/live-page.ts";
import type { Problem } from "../problem.ts";
import { forget, type Kept, keep, readKept } from "./kept.ts";

export interface Session {
  readonly id: string;
  readonly file: string;
  readonly live: LivePage;
  /** What stands in an entry now. */
  readonly typed: (name: string) => string;
  readonly edit: (name: string, text: string) => void;
  /** Takes back the last change; gives the entry to show again. */
  readonly undo: () => { readonly name: string; readonly text: string } | undefined;
  readonly canUndo: () => boolean;
  readonly isChanged: () => boolean;
  readonly isKept: () => boolean;
  readonly markSaved: () => void;
  readonly confirm: (name: string, text: string) => void;
  readonly isConfirmed: (name: string, text: string) => boolean;
  readonly dispose: () => void;
}

/**
 * `base` is the file's text. What was typed here last time is typed into it again, so that an entry
 * is read by the kind the file gave it, and a file that has moved on since keeps its own changes.
 */
export async function openSession(
  id: string,
  file: string,
  base: string,
): Promise<Session | readonly Problem[]> {
  const live = await fetchPage(base, file);
  if (!("settle" in live)) return live;
  const kept = readKept(id);
  const typed = typedIn(live.page);
  for (const [name, text] of kept ? typedIn(readPage(kept.text, file).page) : []) {
    if (typed.get(name) === undefined || typed.get(name) === text) continue;
    live.change(name, text);
    typed.set(name, text);
  }
  return session(id, file, live, typed, { text: base, changes: [], confirmed: {}, ...kept, base });
}

/** The text of every given. */
const typedIn = (page: Page | undefined): Map<string, string> =>
  new Map(page?.items.flatMap((item) => (item.kind === "given" ? [[item.name, item.value] as const] : [])));

function session(id: string, file: string, live: LivePage, typed: Map<string, string>, start: Kept): Session {
  let { base, confirmed } = start;
  let changes = [...start.changes];
  let kept = true;
  const isChanged = () => live.text() !== base;
  const isFileOpenedByHand = id.startsWith("file:");
  const store = () => {
    if (!isChanged() && !isFileOpenedByHand) forget(id);
    else kept = keep(id, { text: live.text(), base, changes, confirmed });
  };
  if (isFileOpenedByHand) store();
  return {
    id,
    file,
    live,
    typed: (name) => typed.get(name) ?? "",
    edit: (name, text) => {
      const before = typed.get(name) ?? "";
      if (before === text) return;
      if (changes.at(-1)?.name !== name) changes.push({ name, before }); // one entry typed at a stretch is one change
      typed.set(name, text);
      live.change(name, text);
      store();
    },
    undo: () => {
      const last = changes.pop();
      if (!last) return undefined;
      typed.set(last.name, last.before);
      live.change(last.name, last.before);
      store();
      return { name: last.name, text: last.before };
    },
    canUndo: () => changes.length > 0,
    isChanged,
    isKept: () => kept,
    markSaved: () => {
      base = live.text();
      changes = [];
      store();
    },
    confirm: (name, text) => {
      confirmed = { ...confirmed, [name]: text };
      kept = keep(id, { text: live.text(), base, changes, confirmed });
    },
    isConfirmed: (name, text) => confirmed[name] === text,
    dispose: () => live.dispose(),
  };
}
