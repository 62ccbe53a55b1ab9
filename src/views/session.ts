// One page being worked on: its live values, what was changed here, and the way back.
import { type LivePage, openPage } from "../engine/live-page.ts";
import type { Problem } from "../problem.ts";
import { forget, type Kept, keep, readKept } from "./kept.ts";

export interface Session {
  readonly id: string;
  readonly file: string;
  readonly live: LivePage;
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

/** `base` is the file's text; what was kept from last time goes before it. */
export function openSession(id: string, file: string, base: string): Session | readonly Problem[] {
  const kept = readKept(id);
  const live = openPage(kept?.text ?? base, file);
  return "settle" in live
    ? session(id, file, live, kept ?? { text: base, base, changes: [], confirmed: {} })
    : live;
}

function session(id: string, file: string, live: LivePage, start: Kept): Session {
  const typed = new Map<string, string>(
    live.page.items.flatMap((item) => (item.kind === "given" ? [[item.name, item.value]] : [])),
  );
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
