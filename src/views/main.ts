// The page entry: bar, page, saving, and the way between pages.
import "./shell/paper.css";
import "./shell/controls.css";
import "./shell/page.css";
import "./sheet/tables.css";
import "./shell/print.css";
import { el, replace } from "./dom.ts";
import { keptOf } from "./kept/keeper.ts";
import { keptIds } from "./kept/kept.ts";
import { lineId, rowId } from "./sheet/row.ts";
import { address, readAddress } from "./shell/address.ts";
import { beside } from "./shell/beside.ts";
import { changedBar } from "./shell/changed-bar.ts";
import { fileField, saveFile } from "./shell/files.ts";
import { lazily } from "./shell/lazily.ts";
import { firstNotebook, notebookIds, notebookName, notebookText } from "./shell/notebooks.ts";
import { type PageView, pageView } from "./shell/page-view.ts";
import { type Panels, panels } from "./shell/panels.ts";
import { openedDetailsOnPaper } from "./shell/paper.ts";
import { openSession, type Session, type Unopened } from "./shell/session.ts";
import { statusLine } from "./shell/status-line.ts";
import { topBar } from "./shell/top-bar.ts";
import { unitPanel } from "./units/unit-panel.ts";

const status = statusLine();
const behind: Panels = panels();
const units = unitPanel();
const holder = el("main", { id: "page" });
const notices = el("div", { class: "notices" });
const aside = beside();
const field = fileField(openByHand);
const opening = lazily(() => import("./kept/open-file.ts"), "soon");
let session: Session | undefined;
let shown: PageView | undefined;

const saved = changedBar({
  undo: () => shown?.undo(),
  redo: () => shown?.redo(),
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
  const { text, left } = session.live.written();
  if (left.length > 0)
    void import("./shell/open-problems.ts").then((made) => replace(notices, made.leftOut(left)));
  saveFile(session.file, text);
  if (left.length === 0) session.markSaved();
  shown?.refresh();
  renewBar();
}

function renewBar(): void {
  saved.update({
    changed: session?.isChanged() ?? false,
    undo: session?.lastChanged() !== undefined,
    redo: session?.lastUndone() !== undefined,
    keeping: session?.keeping() ?? "kept",
  });
  aside.list(session, (key, text) => shown?.put(key, text));
}

/** A file that cannot be opened or is gone: what was entered into it is listed and can be let out. */
function unopened(id: string, file: string, { problems, kept }: Unopened): void {
  leave();
  if (problems.length === 0) notHere(id);
  else
    void import("./shell/open-problems.ts").then((made) =>
      replace(holder, made.openProblems(file, problems)),
    );
  if (kept) aside.only(id, file, kept, () => void show(id));
  bar.update(pages(), id);
}

function sayNotFetched(what: string): void {
  const words = `${what} could not be fetched: the connection is gone. Reload once it is there; what was entered stands.`;
  replace(notices, el("p", { class: "page open-problems", role: "alert" }, words));
}

let asked = 0;

/** Without a signal the page that stands stays, and the address with it. */
async function show(id: string): Promise<void> {
  const before = asked;
  try {
    await fetchAndShow(id);
  } catch (error) {
    if (asked !== before + 1) return; // another page was asked for meanwhile
    if (session) history.replaceState(null, "", address(session.id));
    sayNotFetched(notebookName(id));
    if (navigator.onLine) throw error; // no signal may not be all of it
  }
}

async function fetchAndShow(id: string): Promise<void> {
  asked += 1;
  const mine = asked;
  const opened = id.startsWith("file:");
  const base = opened ? undefined : await notebookText(id);
  if (session?.id === id) leave(); // lets go of what it keeps, so that it can be opened again
  const file = opened ? id.slice("file:".length) : `${id}.yaml`;
  const isGone = base === undefined && !opened;
  const next = isGone
    ? { problems: [], kept: await keptOf(id) }
    : await openSession(id, file, base, renewBar);
  if ("live" in next) await next.live.settle();
  if (mine !== asked) {
    if ("live" in next) next.dispose(); // another page was asked for meanwhile
    return;
  }
  if (!("live" in next)) return unopened(id, file, next);
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
  const words =
    notebookIds.length === 0
      ? "There is no page in this folder yet. Open a page file."
      : `There is no page called ${id} here. Choose one under Pages, or open a file.`;
  replace(holder, el("article", { class: "page empty" }, el("h1", {}, "No page"), el("p", {}, words)));
}

/** A file that cannot be read is answered in place; the page that is open stays as it is. */
function openByHand(name: string, text: string): void {
  opening.use(({ openFile }) =>
    openFile(name, text, {
      current: session?.id,
      notices,
      leave,
      show: (id) => {
        if (readAddress(location.hash).page === id) void show(id);
        else location.hash = address(id);
      },
    }),
  );
}

/** Files opened by hand, and pages of the folder that are gone while something of them is kept. */
const pages = () =>
  [...notebookIds, ...keptIds().filter((id) => !notebookIds.includes(id))].map((id) => ({
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
  if (event.altKey || document.querySelector("dialog[open]")) return;
  const key = event.key.toLowerCase();
  const isCommand = event.ctrlKey || event.metaKey;
  const isRedo = key === "y" || (key === "z" && event.shiftKey);
  const act = isCommand
    ? isRedo
      ? shown?.redo
      : key === "z"
        ? shown?.undo
        : undefined
    : key === "u"
      ? units.open
      : undefined;
  if (!act || isTyping(event.target)) return; // a text entry takes back its own letters
  event.preventDefault();
  act();
});
// Leaving an entry, Enter in it, or typing over all that stands in it begins a change of its own.
for (const ends of ["change", "focusout"]) holder.addEventListener(ends, () => session?.endStretch());
holder.addEventListener("beforeinput", ({ target }) => {
  if (!(target instanceof HTMLInputElement) || target.value === "") return;
  if (target.selectionStart === 0 && target.selectionEnd === target.value.length) session?.endStretch();
});
// What is fetched late and does not come is said, since otherwise nothing happens at a touch.
window.addEventListener("unhandledrejection", ({ reason }) => {
  if (!/module|preload/i.test(String(reason))) return;
  sayNotFetched("A part of the page");
});
window.addEventListener("hashchange", () => void follow());
openedDetailsOnPaper();
document.body.append(
  bar.element,
  field,
  notices,
  aside.element,
  holder,
  saved.element,
  status.element,
  units.element,
);
void follow();
