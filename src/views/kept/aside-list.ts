// What is kept here and does not stand in the page: named, held against what the page says, and let out. Nothing of it
// is used until a person says so, and nothing goes until a person lets it go.
import "./aside.css";
import type { Page } from "../../document/item.ts";
import { keyColumns } from "../../document/place-words.ts";
import { givenOfSource } from "../../document/source-key.ts";
import { type Difference, withKept } from "../../readings/row-places.ts";
import { counted } from "../../words.ts";
import { type Child, el, replace } from "../dom.ts";
import { saveFile } from "../shell/files.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import { rememberedWho } from "../shell/who.ts";
import { countedEntries, type Entry, entriesOf } from "./entries.ts";
import type { Aside } from "./kept.ts";
import { keptPage } from "./page-file.ts";

export interface AsideView {
  readonly file: string;
  readonly aside: readonly Aside[];
  /** None where the file cannot be opened or is gone. */
  readonly page: Page | undefined;
  readonly now: (key: string) => string | undefined;
  /** Puts a text into the page; none where nothing can be entered. */
  readonly use?: ((key: string, text: string) => void) | undefined;
  readonly letGo?: ((aside: Aside) => void) | undefined;
}

/** Nothing where every entry stands in the page. */
export function asideList(view: AsideView): HTMLElement | undefined {
  const parts = view.aside.flatMap((aside) => {
    const entries = entriesOf(aside, view.page, view.now);
    return entries.length === 0 ? [] : [asidePart(view, aside, entries)];
  });
  if (parts.length === 0) return undefined;
  return el(
    "section",
    { class: "page kept-aside", "aria-labelledby": "kept-aside" },
    el("h2", { id: "kept-aside", tabindex: "-1" }, "Kept on this device, not in the page"),
    ...parts,
  );
}

function asidePart(view: AsideView, aside: Aside, entries: readonly Entry[]): HTMLElement {
  const whole = countedEntries(entries);
  return el(
    "div",
    { class: "kept-part" },
    el("p", {}, `${whole}: ${whyWords(view, aside)}`),
    ...entries.map((entry) => entryPart(view, entry)),
    el(
      "p",
      { class: "tools" },
      tool("Save as page file", () => saveFile(`kept-${view.file}`, keptPage(aside))),
      view.letGo && sureTool(`Let go of ${whole}`, () => view.letGo?.(aside)),
    ),
  );
}

function whyWords({ page }: AsideView, { why }: Aside): string {
  if (!page) return "entered here before. They can be saved, and taken in again once the file opens.";
  return why === "anew"
    ? "entered before the file was opened anew. The page stands as the file has it."
    : "entered before the file was changed. The page stands as the file has it now; choose what is to count.";
}

const mostPlaces = 20;

function entryPart(view: AsideView, entry: Entry): HTMLElement {
  const { label, key, kept, now, item, places } = entry;
  const isGone = view.page !== undefined && now === undefined;
  const rest = (places?.length ?? 0) - mostPlaces;
  const isText = !item || !places;
  return el(
    "section",
    { class: "kept-entry", "aria-label": label },
    el("h3", {}, label),
    isGone && el("p", {}, `The file has no line called ${givenOfSource(key) ?? key} any more.`),
    item &&
      !places &&
      el("p", {}, "Its rows cannot be held against the page line by line; they are kept as typed."),
    !item && heldAgainst(view, [{ place: "", page: now ?? "", kept, use: useText(view, entry) }]),
    item &&
      places &&
      heldAgainst(
        view,
        places.slice(0, mostPlaces).map((one) => ({ ...one, use: usePlaces(view, entry, [one]) })),
      ),
    rest > 0 && el("p", { class: "quiet" }, `and ${rest} more`),
    el(
      "p",
      { class: "tools" },
      item &&
        places &&
        places.length > 1 &&
        asTool(`Use all ${counted(places.length, "place")}`, usePlaces(view, entry, places)),
      item && isText && asTool("Use these rows", useText(view, entry)),
      item && tool("Save as CSV", () => saveFile(`kept-${key}.csv`, kept, "text/csv")),
      "clipboard" in navigator && copyTool(kept),
    ),
  );
}

interface Against {
  readonly place: string;
  readonly page: string;
  readonly kept: string;
  readonly use: (() => void) | undefined;
}

function heldAgainst({ page }: AsideView, rows: readonly Against[]): HTMLElement {
  const hasPlaces = rows.some(({ place }) => place !== "");
  const canUse = rows.some(({ use }) => use);
  const heads = [...(hasPlaces ? ["place"] : []), ...(page ? ["the page says"] : []), "kept here"];
  return scrollTable(
    "the page against what is kept",
    { heads: [...heads, canUse && el("th", {}, el("span", { class: "unseen" }, "choose"))] },
    rows.map((row) =>
      el(
        "tr",
        {},
        hasPlaces && el("th", { scope: "row" }, row.place),
        page && el("td", {}, row.page === "" ? el("span", { class: "quiet" }, "nothing") : row.page),
        el("td", {}, row.kept),
        canUse && el("td", {}, asTool("Use this", row.use, ` at ${row.place}`)),
      ),
    ),
  );
}

function useText({ use }: AsideView, { key, kept, now }: Entry): (() => void) | undefined {
  return use && now !== undefined ? () => use(key, kept) : undefined;
}

/** What the file says stays in the table; the kept reading corrects it, with its reason. */
function usePlaces(
  { use }: AsideView,
  { key, kept, now, item }: Entry,
  places: readonly Difference[],
): (() => void) | undefined {
  if (!use || now === undefined || !item) return undefined;
  if (keyColumns(item).length === 0) return () => use(key, kept);
  return () => {
    const reason = ({ page }: Difference) => `as read here, in place of ${page} in the file`;
    const by = rememberedWho();
    const text = withKept(item, now, places, (one) => ({ reason: reason(one), by }));
    if (text !== undefined) use(key, text);
  };
}

const tool = (words: string, act: () => void): HTMLElement =>
  el("button", { type: "button", class: "tool", onclick: act }, words);

/** `about` is for those who hear the button without its row. */
const asTool = (words: string, act: (() => void) | undefined, about = ""): Child =>
  act &&
  el(
    "button",
    { type: "button", class: "tool", onclick: act },
    words,
    about.trim() !== "at" && el("span", { class: "unseen" }, about),
  );

function copyTool(text: string): HTMLElement {
  const button = tool("Copy", () => {
    void navigator.clipboard.writeText(text).then(
      () => replace(button, "Copied"),
      () => replace(button, "Not copied: save it instead"),
    );
  });
  return button;
}

/** Asked once more in place. */
function sureTool(words: string, act: () => void): HTMLElement {
  let isSure = false;
  const button = tool(words, () => {
    if (isSure) act();
    isSure = true;
    button.textContent = `${words} for good: press again`;
  });
  return button;
}
