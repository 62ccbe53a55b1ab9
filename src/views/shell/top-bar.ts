// The bar above the page: pages, units, file, print. It scrolls away with the page.
import { el, replace } from "../dom.ts";

interface PageLink {
  readonly id: string;
  readonly name: string;
  readonly address: string;
  readonly opened: boolean;
}

export interface TopBar {
  readonly element: HTMLElement;
  readonly update: (pages: readonly PageLink[], current: string) => void;
}

export function topBar(actions: {
  readonly openUnits: () => void;
  readonly openFile: () => void;
  readonly save: () => void;
  readonly print: () => void;
}): TopBar {
  const list = el("ul", { class: "pages" });
  const menu = el("div", { id: "pages-menu", class: "menu", popover: "auto" }, list);
  menu.addEventListener("click", (event) => {
    if (event.target instanceof Element && event.target.closest("a")) menu.hidePopover();
  });
  const tool = (words: string, act: () => void, more?: string) =>
    el(
      "button",
      { type: "button", class: "tool", onclick: act },
      words,
      more !== undefined && el("span", { class: "long-word" }, `\u00a0${more}`),
    );
  const units = el("a", { class: "tool", href: "units.html", title: "key: u" }, "Units");
  units.addEventListener("click", (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey) return; // a new tab is a new tab
    event.preventDefault();
    actions.openUnits();
  });
  const element = el(
    "nav",
    { class: "top-bar", "aria-label": "pages and tools" },
    el("span", { class: "mark-name" }, "splitline"),
    el("button", { type: "button", class: "tool", popovertarget: "pages-menu" }, "Pages"),
    menu,
    units,
    el("span", { class: "gap" }),
    tool("Open", actions.openFile, "file"),
    tool("Save", actions.save, "file"),
    tool("Print", actions.print),
  );
  return {
    element,
    update: (pages, current) =>
      replace(
        list,
        ...pages.map(({ id, name, address, opened }) =>
          el(
            "li",
            {},
            el(
              "a",
              { href: address, ...(id === current && { "aria-current": "page" }) },
              name,
              opened && el("span", { class: "quiet" }, " opened from a file"),
            ),
          ),
        ),
      ),
  };
}
