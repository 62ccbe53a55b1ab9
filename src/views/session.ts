// One page being worked on: its live values, what was changed here, and the way back.
import type { Page } from "../document/item.ts";
import { fetchPage } from "../engine/fetch-page.ts";
import type { LivePage } from "../engine/live-page.ts";
import type { Problem } from "../problem.ts";
import { asItCame, forget, type Kept, keep, readKept } from "./kept.ts";

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
  /** Keeps what the file has; the page is then opened again. */
  readonly backToFile: () => void;
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
  const kept = readKept(id) ?? asItCame(base);
  const inFile = typedIn(live.page);
  const typed = new Map(inFile);
  for (const [name, text] of Object.entries(kept.typed)) {
    if (!inFile.has(name)) continue;
    live.change(name, text);
    typed.set(name, text);
  }
  return session({ id, file, live, inFile, typed, start: { ...kept, base } });
}

/** The text of every given. */
const typedIn = (page: Page | undefined): Map<string, string> =>
  new Map(page?.items.flatMap((item) => (item.kind === "given" ? [[item.name, item.value] as const] : [])));

interface Start {
  readonly id: string;
  readonly file: string;
  readonly live: LivePage;
  readonly inFile: ReadonlyMap<string, string>;
  readonly typed: Map<string, string>;
  readonly start: Kept;
}

function session({ id, file, live, inFile, typed, start }: Start): Session {
  let { confirmed, saved } = start;
  let changes = [...start.changes];
  let kept = true;
  /** Compared entry by entry: the file's text is only made when it is saved. */
  const edits = () => Object.fromEntries([...typed].filter(([name, text]) => text !== inFile.get(name)));
  const isChanged = () => [...typed].some(([name, text]) => text !== (saved[name] ?? inFile.get(name)));
  const store = () => {
    const isFileOpenedByHand = id.startsWith("file:");
    const now = { base: start.base, typed: edits(), saved, changes, confirmed };
    const isAsItCame = [now.typed, saved, confirmed].every((part) => Object.keys(part).length === 0);
    if (isAsItCame && !isFileOpenedByHand) forget(id);
    else kept = keep(id, now);
  };
  store();
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
      saved = edits();
      changes = [];
      store();
    },
    backToFile: () => {
      keep(id, { base: start.base, typed: saved, saved, changes: [], confirmed });
    },
    confirm: (name, text) => {
      confirmed = { ...confirmed, [name]: text };
      store();
    },
    isConfirmed: (name, text) => confirmed[name] === text,
    dispose: () => live.dispose(),
  };
}
