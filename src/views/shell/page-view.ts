// The page: title block, exceptions, then every line; only the lines whose value changed are renewed.

import { givenOfSource } from "../../document/source-key.ts";
import { lineName } from "../../engine/opened.ts";
import { namesRead } from "../../engine/uses.ts";
import { changeSentence } from "../../report/change-sentence.ts";
import { el } from "../dom.ts";
import { itemView } from "../sheet/item-view.ts";
import { summary } from "../sheet/summary.ts";
import { titleBlock } from "../sheet/title-block.ts";
import { address } from "./address.ts";
import type { ItemView, PageContext } from "./page-context.ts";
import type { Panels } from "./panels.ts";
import type { Session, Shown } from "./session.ts";
import type { StatusLine } from "./status-line.ts";

export interface PageView {
  readonly element: HTMLElement;
  /** Puts a text into an entry or a reading, as if it were typed. */
  readonly put: (key: string, text: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly refresh: () => void;
  readonly dispose: () => void;
}

const markedFor = 2400;

export function pageView(
  session: Session,
  status: StatusLine,
  panels: Panels,
  onChange: () => void,
): PageView {
  const { live } = session;
  const views = new Map<string, ItemView>();
  let edited: string | undefined;
  const edit = (name: string, text: string): void => {
    edited = givenOfSource(name) ?? name;
    if (!session.edit(name, text)) setText(name, session.typed(name)); // nothing stands that is not kept
    onChange();
  };
  const setText = (key: string, text: string): void => {
    const given = givenOfSource(key);
    if (given === undefined) views.get(key)?.setText?.(text);
    else views.get(given)?.setSource?.(text);
  };
  const put = (key: string, text: string): void => {
    session.endStretch();
    edit(key, text);
    setText(key, session.typed(key));
  };
  /** The line is brought into sight; the focus stays, so that the next step is one press as well. */
  const step = (back: Shown | undefined): void => {
    if (!back) return;
    edited = givenOfSource(back.name) ?? back.name;
    setText(back.name, back.text);
    views.get(edited)?.element.scrollIntoView({ block: "nearest" });
    onChange();
  };
  const undo = () => step(session.undo());
  const redo = () => step(session.redo());
  const context = contextOf(session, panels, { edit, undo, redo });
  const title = titleBlock(session);
  const first = summary(context);
  const element = el("article", { class: "page" }, title.element, first.element);
  element.append(...lines(context, views));
  if (session.keeping() === "another tab") readOnly(element);
  first.update(live.lines());

  const stop = live.subscribe((changed) => {
    const rows = changed.flatMap((name) => {
      const view = views.get(name);
      const line = live.line(name);
      if (!view || !line) return [];
      view.update(line);
      return [view.element];
    });
    mark(rows);
    first.update(live.lines());
    title.update();
    onChange();
    const by = edited === undefined ? undefined : live.line(edited);
    status.say(() => changeSentence(by, changed, live.lines()));
  });
  return {
    element,
    put,
    undo,
    redo,
    refresh: title.update,
    dispose: stop,
  };
}

function contextOf(
  session: Session,
  panels: Panels,
  acts: Pick<PageContext, "edit" | "undo" | "redo">,
): PageContext {
  const { live } = session;
  const { items } = live.page;
  const numbers = new Map(items.map((item, i) => [lineName(item), i + 1]));
  const byName = new Map(items.map((item) => [lineName(item), item]));
  const read = outputsReadBy(session);
  const context: PageContext = {
    ...acts,
    live,
    unitOf: live.unitOf,
    lineNumber: (name) => numbers.get(name),
    itemOf: (name) => byName.get(name),
    address: (name, row) => address(session.id, name, row),
    typed: session.typed,
    lastChanged: session.lastChanged,
    lastUndone: session.lastUndone,
    keeping: session.keeping,
    enterReadings: (name, place) => panels.enterReadings(context, name, place),
    importTable: (name) => panels.importTable(context, name),
    confirm: session.confirm,
    why: (name, output, row) => panels.why(context, name, output, row),
    outputsRead: (name) => read.get(name) ?? new Set(),
  };
  return context;
}

/** Another tab keeps this page: what would be lost cannot be entered. */
function readOnly(element: HTMLElement): void {
  for (const entry of element.querySelectorAll("input")) entry.readOnly = true;
  for (const choice of element.querySelectorAll("select")) choice.disabled = true;
}

/** Every line, with a heading where a stage begins. */
function lines(context: PageContext, views: Map<string, ItemView>): readonly HTMLElement[] {
  let stage: string | undefined;
  return context.live.lines().flatMap((line) => {
    const view = itemView(context, line);
    views.set(line.name, view);
    const begins = line.item.stage !== stage;
    stage = line.item.stage;
    return begins && stage !== undefined
      ? [el("h2", { class: "stage" }, stage), view.element]
      : [view.element];
  });
}

/** Changed values are marked for a moment; a second change shortly after begins the mark again. */
function mark(rows: readonly HTMLElement[]): void {
  for (const row of rows) row.classList.remove("changed");
  requestAnimationFrame(() => {
    for (const row of rows) row.classList.add("changed");
  });
  setTimeout(() => {
    for (const row of rows) row.classList.remove("changed");
  }, markedFor);
}

function outputsReadBy(session: Session): ReadonlyMap<string, ReadonlySet<string>> {
  const known = new Set(session.live.page.items.map(lineName));
  const read = new Map<string, Set<string>>();
  for (const item of session.live.page.items)
    for (const { name, output } of namesRead(item, (found) => known.has(found))) {
      const outputs = read.get(name) ?? new Set();
      if (output !== undefined) outputs.add(output);
      read.set(name, outputs);
    }
  return read;
}
