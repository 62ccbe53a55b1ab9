// One page being worked on: its live values, what was changed here, and the way back.
import type { Item, Page } from "../document/item.ts";
import { fetchPage } from "../engine/fetch-page.ts";
import type { OpenPage } from "../engine/opened.ts";
import type { Problem } from "../problem.ts";
import { type Keeper, type Keeping, keeperOf } from "./keeper.ts";
import { asItCame, type Change, type Kept } from "./kept.ts";
import { givenOfSource, sourceKey } from "./source-key.ts";
import { backwards, spliced, spliceOf } from "./splice.ts";

export interface Session {
  readonly id: string;
  readonly file: string;
  readonly live: OpenPage;
  /** What stands in an entry or in the rows of a reading now. */
  readonly typed: (name: string) => string;
  readonly edit: (name: string, text: string) => void;
  /** Takes back the last change; gives the entry to show again. */
  readonly undo: () => { readonly name: string; readonly text: string } | undefined;
  /** Name of the entry or reading that the last change was made to. */
  readonly lastChanged: () => string | undefined;
  readonly isChanged: () => boolean;
  readonly keeping: () => Keeping;
  readonly markSaved: () => void;
  /** Keeps what the file has; the page is then opened again. */
  readonly backToFile: () => void;
  readonly confirm: (name: string, text: string) => void;
  readonly isConfirmed: (name: string, text: string) => boolean;
  readonly dispose: () => void;
}

/**
 * `base` is the file's text, or not given for a file opened by hand, which stands in the store. What was typed
 * here last time is typed into it again, so that an entry is read by the kind the file gave it, and a file that
 * has moved on since keeps its own changes.
 */
export async function openSession(
  id: string,
  file: string,
  base: string | undefined,
  onKeeping: () => void,
): Promise<Session | readonly Problem[] | undefined> {
  const keeper = await keeperOf(id, onKeeping);
  const text = base ?? keeper.found?.base;
  const live = text === undefined ? undefined : await fetchPage(text, file);
  if (text === undefined || !live || !("settle" in live)) {
    keeper.dispose();
    return live && !("settle" in live) ? live : undefined;
  }
  const kept = keeper.found ?? asItCame(text);
  const inFile = typedIn(live.page);
  const typed = new Map(inFile);
  for (const [name, words] of Object.entries(kept.typed)) {
    if (!inFile.has(name)) continue;
    put(live, name, words);
    typed.set(name, words);
  }
  return session({ id, file, live, inFile, typed, keeper, start: { ...kept, base: text } });
}

/** The text of every given, and the rows of every reading. */
const typedIn = (page: Page): Map<string, string> =>
  new Map(page.items.flatMap((item: Item) => textIn(item)));

const textIn = (item: Item): readonly (readonly [string, string])[] => {
  if (item.kind === "given")
    return [
      [item.name, item.value],
      [sourceKey(item.name), ""],
    ];
  return item.kind === "reading" ? [[item.name, item.rows]] : [];
};

function put(live: OpenPage, name: string, text: string): void {
  const given = givenOfSource(name);
  if (given !== undefined) live.restate(given, text);
  else if (live.line(name)?.item.kind === "reading") live.enter(name, text);
  else live.change(name, text);
}

interface Start {
  readonly id: string;
  readonly file: string;
  readonly live: OpenPage;
  readonly inFile: ReadonlyMap<string, string>;
  readonly typed: Map<string, string>;
  readonly keeper: Keeper;
  readonly start: Kept;
}

/** Changes that can be undone; what is older stays done. */
const longestJournal = 500;

interface Edit {
  readonly name: string;
  readonly before: string;
  readonly text: string;
  /** An entry typed at a stretch is one change; in a table each reading is one. */
  readonly goesOn: boolean;
}

function journalled(changes: readonly Change[], { name, before, text, goesOn }: Edit): Change[] {
  const last = changes.at(-1);
  if (!goesOn || last?.name !== name)
    return [...changes.slice(1 - longestJournal), { name, ...spliceOf(before, text) }];
  return [...changes.slice(0, -1), { name, ...spliceOf(spliced(before, backwards(last)), text) }];
}

function session({ id, file, live, inFile, typed, keeper, start }: Start): Session {
  let { confirmed, saved, count } = start;
  let changes = [...start.changes];
  /** Compared entry by entry: the file's text is only made when it is saved. */
  const edits = () => Object.fromEntries([...typed].filter(([name, text]) => text !== inFile.get(name)));
  const isChanged = () => [...typed].some(([name, text]) => text !== (saved[name] ?? inFile.get(name)));
  const store = (now = edits()) => {
    const isFileOpenedByHand = id.startsWith("file:");
    count += 1;
    const isAsItCame = [now, saved, confirmed].every((part) => Object.keys(part).length === 0);
    if (isAsItCame && !isFileOpenedByHand) keeper.forget();
    else keeper.keep({ count, base: start.base, typed: now, saved, changes, confirmed });
  };
  const change = (name: string, text: string): void => {
    typed.set(name, text);
    put(live, name, text);
    store();
  };
  if (start.count > 0 || id.startsWith("file:")) store();
  return {
    id,
    file,
    live,
    typed: (name) => typed.get(name) ?? "",
    edit: (name, text) => {
      const before = typed.get(name) ?? "";
      if (before === text) return;
      const goesOn = live.line(givenOfSource(name) ?? name)?.item.kind === "given";
      changes = journalled(changes, { name, before, text, goesOn });
      change(name, text);
    },
    undo: () => {
      const last: Change | undefined = changes.pop();
      if (!last) return undefined;
      const text = spliced(typed.get(last.name) ?? "", backwards(last));
      change(last.name, text);
      return { name: last.name, text };
    },
    lastChanged: () => changes.at(-1)?.name,
    isChanged,
    keeping: keeper.state,
    markSaved: () => {
      saved = edits();
      changes = [];
      store();
    },
    backToFile: () => {
      changes = [];
      store(saved);
    },
    confirm: (name, text) => {
      confirmed = { ...confirmed, [name]: text };
      store();
    },
    isConfirmed: (name, text) => confirmed[name] === text,
    dispose: () => {
      keeper.dispose();
      live.dispose();
    },
  };
}
