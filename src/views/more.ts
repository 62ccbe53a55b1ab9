// The part of a line that opens: all steps, sources, remarks, and where the value goes.
import type { Cell } from "../engine/cell.ts";
import { type Child, el } from "./dom.ts";
import { prose } from "./prose.ts";
import type { SheetContext } from "./sheet-context.ts";
import { labelOf } from "./words.ts";

export interface More {
  readonly element: HTMLDetailsElement;
  readonly fill: (...parts: readonly Child[]) => void;
}

/** Stays open or closed while its content is renewed. */
export function more(words: string, about: string): More {
  const content = el("div", { class: "more-content" });
  const element = el(
    "details",
    { class: "more" },
    el("summary", {}, words, el("span", { class: "unseen" }, ` about ${about}`)),
    content,
  );
  return { element, fill: (...parts) => content.replaceChildren(el("div", {}, ...parts)) };
}

export const part = (title: string, ...children: readonly Child[]): HTMLElement =>
  el("section", { class: "part" }, el("h4", {}, title), ...children);

export const list = (texts: readonly Child[]): HTMLElement =>
  el("ul", {}, ...texts.map((text) => el("li", {}, text)));

export function noteOf(cell: Cell): Child {
  const { item } = cell;
  return "note" in item && item.note !== undefined && el("div", { class: "serif" }, ...prose(item.note));
}

/** "used by line 12, Share of proof": links both ways. */
export function relations(cell: Cell, context: SheetContext): readonly Child[] {
  const links = (title: string, names: readonly string[]): Child =>
    names.length > 0 &&
    onScreen(part(title, el("p", { class: "links" }, ...names.map((name) => lineLink(name, context)))));
  return [links("uses", cell.uses), links("used by", cell.usedBy)];
}

export function lineLink(name: string, context: SheetContext): HTMLElement {
  const item = context.itemOf(name);
  return el(
    "a",
    { href: context.address(name) },
    el("span", { class: "line-number" }, `${context.lineNumber(name) ?? ""}`),
    item ? labelOf(item) : name,
  );
}

export const nameInFormulas = (cell: Cell): Child =>
  !cell.name.startsWith("#") && onScreen(part("name in formulas", el("p", {}, el("code", {}, cell.name))));

/** Ways around the page are of no use on paper. */
function onScreen(section: HTMLElement): HTMLElement {
  section.classList.add("nav-only");
  return section;
}
