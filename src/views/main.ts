// The page entry: bar, page, saving, and the way between pages.
import "./paper.css";
import "./controls.css";
import "./page.css";
import "./pictures.css";
import "./tables.css";
import "./print.css";
import { readPage } from "../document/read.ts";
import { address, readAddress } from "./address.ts";
import { changedBar } from "./changed-bar.ts";
import { el, replace } from "./dom.ts";
import { fileField, saveFile } from "./files.ts";
import { beginAnew } from "./keeper.ts";
import { keptIds } from "./kept.ts";
import { firstNotebook, notebookIds, notebookName, notebookText } from "./notebooks.ts";
import { openProblems } from "./open-problems.ts";
import { type PageView, pageView } from "./page-view.ts";
import { type Panels, panels } from "./panels.ts";
import { openedDetailsOnPaper } from "./paper.ts";
import { lineId, rowId } from "./row.ts";
import { openSession, type Session } from "./session.ts";
import { givenOfSource } from "./source-key.ts";
import { statusLine } from "./status-line.ts";
import { topBar } from "./top-bar.ts";
import { unitPanel } from "./units/unit-panel.ts";

const status = statusLine();
const behind: Panels = panels();
const units = unitPanel();
const holder = el("main", { id: "page" });
const notices = el("div", { class: "notices" });
const field = fileField(openByHand);
let session: Session | undefined;
let shown: PageView | undefined;

const saved = changedBar({
  undo: () => {
    const back = session?.undo();
    if (!back) return;
    shown?.setText(back.name, back.text);
    renewBar();
    const given = givenOfSource(back.name);
    document.getElementById(given ? `${lineId(given)}-source` : `${lineId(back.name)}-entry`)?.focus();
  },
  save,
  backToFile: () => {
    if (!session) return;
    session.backToFile();
    void show(session.id);
  },
});

const bar = topBar({
  openUnits: units.open,
  openFile: () => field.click(),
  save,
  print: () => window.print(),
});

function save(): void {
  if (!session) return;
  saveFile(session.file, session.live.text());
  session.markSaved();
  shown?.refresh();
  renewBar();
}

function renewBar(): void {
  saved.update(
    session?.isChanged() ?? false,
    session?.lastChanged() !== undefined,
    session?.keeping() ?? "kept",
  );
}

let asked = 0;

async function show(id: string): Promise<void> {
  asked += 1;
  const mine = asked;
  const opened = id.startsWith("file:");
  const base = opened ? undefined : await notebookText(id);
  if (base === undefined && !opened) return notHere(id);
  if (session?.id === id) leave(); // lets go of what it keeps, so that it can be opened again
  const file = opened ? id.slice("file:".length) : `${id}.yaml`;
  const next = await openSession(id, file, base, renewBar);
  if (next && "live" in next) await next.live.settle();
  if (mine !== asked) {
    if (next && "live" in next) next.dispose(); // another page was asked for meanwhile
    return;
  }
  if (!next) return notHere(id);
  if (!("live" in next)) {
    leave();
    replace(holder, openProblems(file, next));
    return bar.update(pages(), id);
  }
  leave();
  session = next;
  shown = pageView(next, status, behind, renewBar);
  replace(holder, shown.element);
  document.title = `${next.live.page.title} · Splitline`;
  bar.update(pages(), id);
  renewBar();
}

function leave(): void {
  // What stands over a page goes with it, as when somebody presses Back in the middle of entry.
  for (const over of document.querySelectorAll<HTMLDialogElement>("dialog[open]")) over.close();
  shown?.dispose();
  session?.dispose();
  shown = undefined;
  session = undefined;
  replace(notices);
  renewBar();
}

function notHere(id: string): void {
  leave();
  const words =
    notebookIds.length === 0
      ? "There is no page in this folder yet. Open a page file."
      : `There is no page called ${id} here. Choose one under Pages, or open a file.`;
  replace(holder, el("article", { class: "page empty" }, el("h1", {}, "No page"), el("p", {}, words)));
  bar.update(pages(), id);
}

/** A file that cannot be read is answered in place; the page that is open stays as it is. */
function openByHand(name: string, text: string): void {
  const { page, problems } = readPage(text, name);
  if (!page || problems.length > 0) {
    replace(
      notices,
      openProblems(name, problems, () => replace(notices)),
    );
    notices.querySelector("h2")?.focus();
    return;
  }
  const id = `file:${name}`;
  if (session?.id === id) leave();
  void beginAnew(id, text).then(() => {
    if (readAddress(location.hash).page === id) void show(id);
    else location.hash = address(id);
  });
}

const pages = () =>
  [...notebookIds, ...keptIds().filter((id) => id.startsWith("file:"))].map((id) => ({
    id,
    name: notebookName(id),
    address: address(id),
    opened: id.startsWith("file:"),
  }));

async function follow(): Promise<void> {
  const { page, line, row: key } = readAddress(location.hash);
  const id = page ?? firstNotebook ?? "";
  if (session?.id !== id) {
    await show(id);
    if (line === undefined) window.scrollTo(0, 0);
  }
  if (line !== undefined) {
    const row =
      (key === undefined ? undefined : document.getElementById(rowId(line, key))) ??
      document.getElementById(lineId(line));
    const closed = row?.closest("details:not([open])");
    if (closed instanceof HTMLDetailsElement) closed.open = true;
    row?.scrollIntoView({ block: "center" });
    row?.focus({ preventScroll: true });
  }
}

const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.matches("input, textarea, select") || target.isContentEditable);

document.addEventListener("keydown", (event) => {
  if (event.key !== "u" || event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return;
  if (document.querySelector("dialog[open]")) return;
  event.preventDefault();
  units.open();
});
window.addEventListener("hashchange", () => void follow());
openedDetailsOnPaper();
document.body.append(bar.element, field, notices, holder, saved.element, status.element, units.element);
void follow();
