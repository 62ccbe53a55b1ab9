// Where a given comes from, in the margin. A changed value leaves the old source behind, struck through,
// and asks for its own: who says so, and from where.
import type { GivenItem } from "../../document/item.ts";
import { sourceKey } from "../../document/source-key.ts";
import type { SourceState } from "../../engine/line.ts";
import { el, replace } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { lineId } from "./row.ts";

export interface SourceEntry {
  /** The field under the value. */
  readonly element: HTMLElement;
  readonly update: (state: SourceState) => void;
  readonly setText: (text: string) => void;
}

/** `margin` is the reference field of the line. */
export function sourceEntry(context: PageContext, item: GivenItem, margin: HTMLElement): SourceEntry {
  const key = sourceKey(item.name);
  const id = `${lineId(item.name)}-source`;
  const found = margin.querySelector(".source");
  const shown = found ?? el("span", { class: "source" });
  if (!found) margin.append(shown);
  const entry = el("input", { id, type: "text", autocomplete: "off", maxlength: 500, enterkeyhint: "done" });
  entry.value = context.typed(key);
  entry.addEventListener("input", () => context.edit(key, entry.value));
  const element = el(
    "div",
    { class: "source-entry", hidden: true },
    el("label", { for: id }, "Source of this value: who says so, and from where"),
    entry,
  );
  return {
    element,
    update: (state) => {
      const now = context.live.sourceOf(item.name);
      element.hidden = state === "stated" && entry.value === "";
      element.classList.toggle("asks", state !== "stated");
      if (state === "stated") replace(shown, now ?? "");
      else if (state === "not stated") replace(shown, el("em", {}, "source not stated"));
      else
        replace(shown, el("s", {}, item.source ?? ""), el("em", {}, ` for ${item.value}; none stated now`));
    },
    setText: (text) => {
      entry.value = text;
    },
  };
}
