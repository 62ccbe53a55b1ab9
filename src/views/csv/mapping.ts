// What each heading of the file fills and in which unit, with both open to change.

import { inWords } from "../../document/place-words.ts";
import { withRemarkColumns } from "../../document/remark-columns.ts";
import { remarks } from "../../document/rows-text.ts";
import { kinds } from "../../units/kind.ts";
import { type Child, el } from "../dom.ts";
import { headWords } from "../readings/reading-words.ts";
import type { ImportColumn } from "./import-columns.ts";
import type { PlanView } from "./plan-parts.ts";

export function mapping({ item, plan, answers, answer }: PlanView): HTMLElement {
  const row = (column: ImportColumn): HTMLElement => {
    const { heading } = column;
    const at = `import-${column.at}`;
    const fills = el(
      "select",
      { id: `${at}-column`, "aria-label": `column that ${heading} fills` },
      el("option", { value: "" }, "left out"),
      ...Object.keys(withRemarkColumns(item, remarks).columns).map((name) =>
        el("option", { value: name }, inWords(name)),
      ),
    );
    fills.value = column.column ?? "";
    fills.addEventListener("change", () =>
      answer({ columns: { ...answers.columns, [heading]: fills.value } }),
    );
    return el(
      "tr",
      {},
      el("th", { scope: "row" }, heading),
      el(
        "td",
        {},
        fills,
        column.place && el("span", { class: "quiet" }, ` at ${Object.values(column.place).join(", ")}`),
      ),
      el(
        "td",
        {},
        unitChoice(column, at, (text) => answer({ units: { ...answers.units, [heading]: text } })),
      ),
    );
  };
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": "headings of the file" },
    el(
      "table",
      { class: "readings mapping" },
      el(
        "thead",
        {},
        el(
          "tr",
          {},
          ...["heading of the file", "fills", "unit"].map((text) => el("th", { scope: "col" }, text)),
        ),
      ),
      el("tbody", {}, ...plan.columns.map(row)),
    ),
  );
}

function unitChoice(column: ImportColumn, at: string, choose: (text: string) => void): Child {
  const { kind, unit, heading } = column;
  if (kind === undefined || kind === "ratio" || kind === "count") return undefined;
  const { usual } = kinds[kind];
  const choices = unit === undefined || usual.includes(unit) ? usual : [unit, ...usual];
  const field = el(
    "select",
    { id: `${at}-unit`, "aria-label": `unit of ${heading}` },
    unit === undefined && el("option", { value: "" }, "choose"),
    ...choices.map((text) => el("option", { value: text }, headWords("", text).replace(/^ \/ /, ""))),
  );
  field.value = unit ?? "";
  field.addEventListener("change", () => choose(field.value));
  return field;
}
