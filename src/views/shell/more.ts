// The part of a line that opens: all steps, sources, remarks, and where the value goes.
import type { Line } from "../../engine/line.ts";
import { labelOf } from "../../report/labels.ts";
import { type Child, el } from "../dom.ts";
import { prose } from "../sheet/prose.ts";
import type { PageContext } from "./page-context.ts";

export interface More {
  readonly element: HTMLDetailsElement;
  /** What it holds; made when it is opened, printed, or when the page is idle. */
  readonly fill: (make: () => readonly Child[]) => void;
}

const unfilled = new Set<() => void>();
let waiting = false;

/** Everything that is behind its line, made now: for paper. */
export function fillAll(): void {
  for (const render of unfilled) render();
}

/** An edit paints first; closed parts follow a few at a time. */
function fillWhenIdle(): void {
  if (waiting) return;
  waiting = true;
  const some = (): void => {
    const until = performance.now() + 8;
    for (const render of unfilled) {
      render();
      if (performance.now() > until) break;
    }
    waiting = false;
    if (unfilled.size > 0) fillWhenIdle();
  };
  if ("requestIdleCallback" in globalThis) requestIdleCallback(some, { timeout: 1000 });
  else setTimeout(some, 200);
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
  let make: () => readonly Child[] = () => [];
  const render = (): void => {
    if (!unfilled.delete(render)) return;
    content.replaceChildren(el("div", {}, ...make()));
  };
  element.addEventListener("toggle", render);
  return {
    element,
    fill: (next) => {
      make = next;
      unfilled.add(render);
      if (element.open) render();
      else fillWhenIdle();
    },
  };
}

export const part = (title: string, ...children: readonly Child[]): HTMLElement =>
  el("section", { class: "part" }, el("h4", {}, title), ...children);

export const list = (texts: readonly Child[]): HTMLElement =>
  el("ul", {}, ...texts.map((text) => el("li", {}, text)));

export const noteOf = ({ note }: Line): Child => note && el("div", { class: "serif" }, ...prose(note));

/** "used by line 12, Share of proof": links both ways. */
export function relations(line: Line, context: PageContext): readonly Child[] {
  const links = (title: string, names: readonly string[]): Child =>
    names.length > 0 &&
    onScreen(part(title, el("p", { class: "links" }, ...names.map((name) => lineLink(name, context)))));
  return [links("uses", line.uses), links("used by", line.usedBy)];
}

export function lineLink(name: string, context: PageContext): HTMLElement {
  const item = context.itemOf(name);
  return el(
    "a",
    { href: context.address(name) },
    el("span", { class: "line-number" }, `${context.lineNumber(name) ?? ""}`),
    item ? labelOf(item) : name,
  );
}

export const nameInFormulas = (line: Line): Child =>
  !line.name.startsWith("#") && onScreen(part("name in formulas", el("p", {}, el("code", {}, line.name))));

/** Ways around the page are of no use on paper. */
function onScreen(section: HTMLElement): HTMLElement {
  section.classList.add("nav-only");
  return section;
}
