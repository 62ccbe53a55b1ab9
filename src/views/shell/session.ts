// One page being worked on: its live values, what was changed here, and the way back.
import type { Item, Page } from "../../document/item.ts";
import { givenOfSource, sourceKey } from "../../document/source-key.ts";
import { backwards, type Splice, spliced, spliceOf } from "../../document/splice.ts";
import { fetchPage } from "../../engine/fetch-page.ts";
import type { OpenPage } from "../../engine/opened.ts";
import type { Problem } from "../../problem.ts";
import { type Keeper, type Keeping, keeperOf } from "../kept/keeper.ts";
import { type Aside, asItCame, type Change, type Kept } from "../kept/kept.ts";

export interface Session {
  readonly id: string;
  readonly file: string;
  readonly live: OpenPage;
  /** What stands in an entry or in the rows of a reading now. */
  readonly typed: (name: string) => string;
  /** Says whether it was taken: a page that another tab keeps takes nothing that would be lost. */
  readonly edit: (name: string, text: string) => boolean;
  /** What is typed next is a change of its own. */
  readonly endStretch: () => void;
  /** Takes back the last change; gives the entry to show again. */
  readonly undo: () => Shown | undefined;
  /** Makes the change again that was last taken back. */
  readonly redo: () => Shown | undefined;
  /** Name of the entry or reading that the last change was made to. */
  readonly lastChanged: () => string | undefined;
  readonly lastUndone: () => string | undefined;
  /** What stands at a key of the page now, the file's own text where nothing else does. */
  readonly standing: (key: string) => string | undefined;
  /** Entries that do not stand in the page. */
  readonly aside: () => readonly Aside[];
  readonly letGo: (aside: Aside) => void;
  readonly isChanged: () => boolean;
  readonly keeping: () => Keeping;
  readonly markSaved: () => void;
  /** Keeps what the file has; the page is then opened again. */
  readonly backToFile: () => void;
  readonly confirm: (name: string, text: string) => void;
  readonly dispose: () => void;
}

export interface Shown {
  readonly name: string;
  readonly text: string;
}

/** A file that cannot be opened, and what was entered into it before. */
export interface Unopened {
  readonly problems: readonly Problem[];
  readonly kept: Kept | undefined;
}

/**
 * `base` is the file's text, or not given for a file opened by hand, which stands in the store. What was typed
 * here last time is typed into it again, so that an entry is read by the kind the file gave it. A file that has
 * moved on since keeps its own changes, and what was entered against them is kept aside.
 */
export async function openSession(
  id: string,
  file: string,
  base: string | undefined,
  onKeeping: () => void,
): Promise<Session | Unopened> {
  const keeper = await keeperOf(id, onKeeping);
  const text = base ?? keeper.found?.base;
  const letGo = (error: unknown): never => {
    keeper.dispose(); // no signal for its methods: asked for again, it must not find itself held
    throw error;
  };
  const live = text === undefined ? undefined : await fetchPage(text, file, loadPictures).catch(letGo);
  if (text === undefined || !live || !("settle" in live)) {
    keeper.dispose();
    return { problems: live && !("settle" in live) ? live : [], kept: keeper.found };
  }
  const found = keeper.found ?? asItCame(text);
  const kept =
    found.base === text ? found : (await import("../kept/moved-on.ts")).movedOn(found, live.page, text);
  const inFile = typedIn(live.page);
  const typed = new Map(inFile);
  for (const [name, words] of Object.entries(kept.typed)) {
    if (!inFile.has(name)) continue;
    put(live, name, words);
    typed.set(name, words);
  }
  return session({ id, file, live, inFile, typed, keeper, start: { ...kept, base: text } });
}

const loadPictures = () => import("../../pictures/index.ts");

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
  /** Typed at a stretch into one entry, it is one change; in a table each reading is one. */
  readonly goesOn: boolean;
}

function journalled(changes: readonly Change[], { name, before, text, goesOn }: Edit): readonly Change[] {
  const last = changes.at(-1);
  if (!goesOn || last?.name !== name)
    return [...changes.slice(1 - longestJournal), { name, ...spliceOf(before, text) }];
  const begun = spliced(before, backwards(last));
  const rest = changes.slice(0, -1);
  return begun === text ? rest : [...rest, { name, ...spliceOf(begun, text) }];
}

function session({ id, file, live, inFile, typed, keeper, start }: Start): Session {
  let { confirmed, saved, count, changes, undone, aside } = start;
  let isStretch = false;
  /** Compared entry by entry: the file's text is only made when it is saved. */
  const edits = () => Object.fromEntries([...typed].filter(([name, text]) => text !== inFile.get(name)));
  const isChanged = () => [...typed].some(([name, text]) => text !== (saved[name] ?? inFile.get(name)));
  const store = (now = edits()) => {
    const isFileOpenedByHand = id.startsWith("file:");
    count += 1;
    const isAsItCame = [now, saved, confirmed, aside, undone].every((part) => Object.keys(part).length === 0);
    if (isAsItCame && !isFileOpenedByHand) keeper.forget();
    else keeper.keep({ count, base: start.base, typed: now, saved, changes, undone, aside, confirmed });
  };
  const change = (name: string, text: string): void => {
    typed.set(name, text);
    put(live, name, text);
    store();
  };
  const again = (name: string, splice: Splice): Shown => {
    const text = spliced(typed.get(name) ?? "", splice);
    isStretch = false;
    change(name, text);
    return { name, text };
  };
  for (const [name, text] of Object.entries(confirmed)) live.confirm(name, text);
  if (start.count > 0 || id.startsWith("file:")) store();
  return {
    id,
    file,
    live,
    typed: (name) => typed.get(name) ?? "",
    edit: (name, text) => {
      if (keeper.state() === "another tab") return false;
      const before = typed.get(name) ?? "";
      if (before === text) return true;
      changes = journalled(changes, { name, before, text, goesOn: isStretch });
      undone = [];
      isStretch = live.line(givenOfSource(name) ?? name)?.item.kind === "given";
      change(name, text);
      return true;
    },
    endStretch: () => {
      isStretch = false;
    },
    undo: () => {
      const last = changes.at(-1);
      if (!last || keeper.state() === "another tab") return undefined;
      changes = changes.slice(0, -1);
      undone = [...undone, last];
      return again(last.name, backwards(last));
    },
    redo: () => {
      const next = undone.at(-1);
      if (!next || keeper.state() === "another tab") return undefined;
      undone = undone.slice(0, -1);
      changes = [...changes, next];
      return again(next.name, next);
    },
    lastChanged: () => changes.at(-1)?.name,
    lastUndone: () => undone.at(-1)?.name,
    standing: (key) => {
      const given = givenOfSource(key);
      if (given === undefined) return typed.get(key);
      return typed.has(key) ? (live.sourceOf(given) ?? "") : undefined;
    },
    aside: () => aside,
    letGo: (one) => {
      aside = aside.filter((other) => other !== one);
      store();
    },
    isChanged,
    keeping: keeper.state,
    markSaved: () => {
      saved = edits();
      changes = [];
      undone = [];
      store();
    },
    backToFile: () => {
      changes = [];
      undone = [];
      store(saved);
    },
    confirm: (name, text) => {
      confirmed = { ...confirmed, [name]: text };
      live.confirm(name, text);
      store();
    },
    dispose: () => {
      keeper.dispose();
      live.dispose();
    },
  };
}
