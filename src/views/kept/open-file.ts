// A file opened by hand whose name is known here: what was entered into it before is never written over. The person
// says whether to go on with it; a tab that holds the page is not disturbed.
import "./aside.css";
import type { Page } from "../../document/item.ts";
import { readPage } from "../../document/read.ts";
import { el, replace } from "../dom.ts";
import { openProblems } from "../shell/open-problems.ts";
import { countedEntries, type Entry, entriesOf, textIn } from "./entries.ts";
import { beginWith, keptOf, lockOf } from "./keeper.ts";
import { asItCame, type Kept } from "./kept.ts";
import { movedOn, withAside } from "./moved-on.ts";

export interface Opening {
  /** The page that stands on the screen. */
  readonly current: string | undefined;
  readonly notices: HTMLElement;
  /** Lets go of the page on the screen. */
  readonly leave: () => void;
  readonly show: (id: string) => void;
}

export async function openFile(name: string, text: string, opening: Opening): Promise<void> {
  const { notices, current, show } = opening;
  const close = () => replace(notices);
  close();
  const { page, problems } = readPage(text, name);
  if (!page || problems.length > 0) return notice(notices, openProblems(name, problems, close));
  const id = `file:${name}`;
  const letGo = current === id ? () => undefined : await lockOf(id);
  if (!letGo)
    return notice(
      notices,
      elsewhere(name, () => show(id), close),
    );
  const kept = await keptOf(id);
  const begun = await beginning(kept, { name, text, page });
  if (begun) {
    if (current === id) opening.leave();
    await beginWith(id, { ...begun, count: (kept?.count ?? 0) + 1 });
  }
  letGo();
  if (!begun) return;
  show(id);
  window.scrollTo(0, 0); // the page begins with what is to be chosen
}

function notice(notices: HTMLElement, element: HTMLElement): void {
  replace(notices, element);
  element.querySelector("h2")?.focus();
}

interface File {
  readonly name: string;
  readonly text: string;
  readonly page: Page;
}

/** What the page is to begin with; none when it is not to be opened. */
async function beginning(kept: Kept | undefined, { name, text, page }: File): Promise<Kept | undefined> {
  if (!kept) return asItCame(text);
  const entries = entriesOf(kept, page, (key) => textIn(page, key));
  const anew = { ...asItCame(text), aside: kept.aside };
  if (entries.length === 0) return anew;
  const goesOn = kept.base === text ? kept : movedOn(kept, page, text);
  const answer = await asked(name, entries, goesOn.aside.length - kept.aside.length > 0);
  if (answer === "go on") return goesOn;
  const { base, typed } = kept;
  return answer === "anew"
    ? { ...anew, aside: withAside(kept.aside, { why: "anew", base, typed }) }
    : undefined;
}

type Answer = "go on" | "anew" | "leave";

function asked(name: string, entries: readonly Entry[], isOpen: boolean): Promise<Answer> {
  const words = countedEntries(entries);
  const one = /^1 \w+$/.test(words);
  return new Promise((answer) => {
    let given: Answer = "leave";
    const choice = (says: string, what: Answer, style = "") =>
      el(
        "button",
        {
          type: "button",
          class: `tool ${style}`,
          onclick: () => {
            given = what;
            dialog.close();
          },
        },
        says,
      );
    const dialog = el(
      "dialog",
      { class: "panel ask", "aria-labelledby": "ask-title" },
      el("h2", { id: "ask-title" }, `Go on with ${words}, or start anew?`),
      el("p", {}, `${words} entered on this device ${one ? "is" : "are"} not in this ${name}.`),
      isOpen &&
        el(
          "p",
          {},
          "Where the file now says something else, the file stands, and both are listed for you to choose.",
        ),
      el("p", {}, "Start anew opens the file as it is. What was entered stays listed, and can be saved."),
      el(
        "div",
        { class: "ask-choices" },
        choice(`Go on with ${words}`, "go on", "strong"),
        choice("Start anew", "anew"),
        choice("Do not open", "leave"),
      ),
    );
    dialog.addEventListener("close", () => {
      dialog.remove();
      answer(given);
    });
    document.body.append(dialog);
    dialog.showModal();
  });
}

const elsewhere = (name: string, look: () => void, close: () => void): HTMLElement =>
  el(
    "section",
    { class: "page open-problems", "aria-label": `${name} is open in another tab` },
    el("h2", { tabindex: "-1" }, `${name} is open in another tab`),
    el(
      "p",
      {},
      "That tab keeps what is entered there, so the file is not opened over it. Close that tab, then open the file again.",
    ),
    el(
      "p",
      { class: "tools" },
      el("button", { type: "button", class: "tool", onclick: look }, "Look at it here, without entering"),
      el("button", { type: "button", class: "tool", onclick: close }, "Close this note"),
    ),
  );
