// A table that scrolls in its own frame when it is broader than the page: named, and reached by keyboard.
import { type Child, el } from "../dom.ts";

export interface Headed {
  readonly style?: string;
  readonly caption?: string;
  /** Heads as they stand, or as words alone. */
  readonly heads: readonly Child[];
}

export function scrollTable(
  label: string,
  { style = "", caption, heads }: Headed,
  rows: readonly HTMLElement[],
  ...below: readonly Child[]
): HTMLElement {
  const head = (one: Child) => (typeof one === "string" ? el("th", { scope: "col" }, one) : one);
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": label },
    el(
      "table",
      { class: `readings ${style}`.trim() },
      caption !== undefined && el("caption", {}, caption),
      el("thead", {}, el("tr", {}, ...heads.map(head))),
      el("tbody", {}, ...rows),
    ),
    ...below,
  );
}
