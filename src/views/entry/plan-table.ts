// Readings of one quantity over several keys as a plan: one line for each group, its places side by side.
import type { ReadingItem } from "../../document/item.ts";
import { inWords, keyColumns } from "../../document/place-words.ts";
import type { TableValue } from "../../engine/line.ts";
import { grouped } from "../../grouped.ts";
import { askedColumns, type Step } from "../../readings/places.ts";
import { isRemark } from "../../readings/remarks.ts";
import { headWords } from "../../readings/row-words.ts";
import { el } from "../dom.ts";
import { stateMark } from "../sheet/state-mark.ts";
import { scrollTable } from "../shell/scroll-table.ts";

/** A table reads as a plan when one quantity is read at places that have at least two keys. */
export function isPlan(item: ReadingItem, table: TableValue): boolean {
  const others = table.columns.filter(({ name, kind }) => kind === "text" && !isRemark(name));
  return askedColumns(item).length === 1 && keyColumns(item).length > 1 && others.length === 0;
}

const most = 12;

export function planTable(
  item: ReadingItem,
  steps: readonly Step[],
  label: string,
  enter: (step: Step) => void,
): HTMLElement | undefined {
  const rest = (step: Step) =>
    step.place
      .slice(1)
      .map(([, value]) => value)
      .join("·");
  const places = [...new Map(steps.map((step) => [rest(step), step])).values()];
  if (places.length > most) return undefined;
  const [first] = steps;
  const head = headWords(first?.column ?? "", first?.unit);
  const groups = grouped(steps, (step) => step.place[0]?.[1] ?? "");
  const heads = places.map((step) =>
    el(
      "th",
      { scope: "col", class: "number-head" },
      ...step.place.slice(1).flatMap(([, value], i) => [i > 0 && el("br"), value]),
    ),
  );
  return scrollTable(
    `readings: ${label}`,
    { style: "plan", caption: head, heads: [inWords(keyColumns(item)[0] ?? ""), ...heads] },
    [...groups].map(([group, members]) =>
      el(
        "tr",
        {},
        el("th", { scope: "row" }, group),
        ...places.map((place) =>
          planCell(
            members.find((step) => rest(step) === rest(place)),
            enter,
          ),
        ),
      ),
    ),
  );
}

function planCell(step: Step | undefined, enter: (step: Step) => void): HTMLElement {
  if (!step) return el("td", { class: "quiet" }, "–");
  // A tap is the short way; by keyboard the entry screen walks to the place.
  const tap = { onclick: () => enter(step), title: step.words };
  if (step.state === "missing")
    return el("td", { class: "missing", ...tap }, step.reason === "" ? "missing" : "not read");
  if (step.state === "set aside") return el("td", { class: "number aside", ...tap }, el("s", {}, step.text));
  if (step.state === "odd")
    return el(
      "td",
      { class: "number odd", ...tap },
      stateMark("odd"),
      el("span", { class: "unseen" }, "odd "),
      step.text,
    );
  return el("td", { class: "number", ...tap }, step.text);
}
