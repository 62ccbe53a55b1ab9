// What each heading of the file fills and in which unit, with both open to change.
import { kindOfQuantity } from "../../document/column-heading.ts";
import { inWords } from "../../document/place-words.ts";
import type { ImportColumn } from "../../readings/import-columns.ts";
import { allColumns } from "../../readings/remarks.ts";
import { headWords } from "../../readings/row-words.ts";
import { kinds } from "../../units/kind.ts";
import { type Child, el } from "../dom.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import type { PlanView } from "./plan-parts.ts";

export function mapping({ item, plan, answers, answer }: PlanView): HTMLElement {
  const row = (column: ImportColumn): HTMLElement => {
    const { heading } = column;
    const at = `import-${column.at}`;
    const fills = el(
      "select",
      { id: `${at}-column`, "aria-label": `column that ${heading} fills` },
      el("option", { value: "" }, "left out"),
      ...Object.keys(allColumns(item)).map((name) => el("option", { value: name }, inWords(name))),
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
  return scrollTable(
    "headings of the file",
    { style: "mapping", heads: ["heading of the file", "fills", "unit"] },
    plan.columns.map(row),
  );
}

function unitChoice(column: ImportColumn, at: string, choose: (text: string) => void): Child {
  const { unit, heading } = column;
  const kind = kindOfQuantity(column.kind);
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
