// A table of readings as typed. A blank is missing and says so; it is never zero.
import type { ReadingItem } from "../../document/item.ts";
import type { Cell, TableValue } from "../../engine/cell.ts";
import { isProblem } from "../../problem.ts";
import { unit, unitLabel } from "../../units/unit.ts";
import { el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, relations } from "../more.ts";
import { problemNote } from "../problem-note.ts";
import { row } from "../row.ts";
import type { ItemView, SheetContext } from "../sheet-context.ts";
import { counted, labelOf } from "../words.ts";

export function readingView(context: SheetContext, cell: Cell, item: ReadingItem): ItemView {
  const { element, body } = row(context, cell.name, item, { wide: true });
  const content = el("div");
  const opened = more("more", labelOf(item));
  body.append(content, opened.element);
  const update = (now: Cell): void => {
    const { value } = now;
    element.classList.toggle("unanswered", isProblem(value));
    if (isProblem(value)) replace(content, problemNote(value, undefined));
    else if (value.type === "table")
      replace(content, table(value, labelOf(item)), el("p", { class: "caption" }, facts(item, value)));
    opened.fill(() => [noteOf(now), nameInFormulas(now), ...relations(now, context)]);
  };
  update(cell);
  return { element, update };
}

function table(value: TableValue, label: string): HTMLElement {
  const head = value.columns.map((column) => el("th", { scope: "col" }, heading(column.name, column.unit)));
  const rows = Array.from({ length: value.rows }, (_, i) =>
    el(
      "tr",
      {},
      ...value.columns.map((column) => {
        const numeric = column.kind !== "tag" && column.kind !== "text";
        const missing = column.values[i] === undefined;
        const attributes = { class: missing ? "missing" : numeric ? "number" : undefined };
        return el("td", attributes, missing ? "missing" : column.typed[i]);
      }),
    ),
  );
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": `readings: ${label}` },
    el("table", { class: "readings" }, el("thead", {}, el("tr", {}, ...head)), el("tbody", {}, ...rows)),
  );
}

/** Column heads as d/mm. */
function heading(name: string, text: string | undefined): string {
  const found = text === undefined ? undefined : unit(text);
  const label = found && !isProblem(found) ? unitLabel(found) : (text ?? "");
  return label === "" ? name : `${name} / ${label}`;
}

function facts(item: ReadingItem, value: TableValue): string {
  const doubt = item.uncertainty
    ? `expanded uncertainty ${Object.entries(item.uncertainty.of)
        .map(([column, text]) => `${column} ${text}`)
        .join(", ")} (k = ${item.uncertainty.k})`
    : undefined;
  const words = [
    counted(value.rows, "row"),
    value.missing > 0 ? `${value.missing} missing` : "none missing",
    doubt,
    item.instrument,
    item.person,
    item.date,
    item.temperature && `read at ${item.temperature}`,
  ];
  return `${words.filter(Boolean).join("; ")}.`;
}
