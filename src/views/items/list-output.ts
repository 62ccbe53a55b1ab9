// A list that a method gives, as a table: one row each, one unit in each head.
import type { OutputValue } from "../../methods/field.ts";
import { methods } from "../../methods/register.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { unitLabel } from "../../units/unit.ts";
import { el } from "../dom.ts";
import { numberText, outputText } from "../figure.ts";
import { inWords } from "../readings/place-words.ts";
import type { SheetContext } from "../sheet-context.ts";
import { capital } from "../words.ts";
import { saysOf } from "./says-of.ts";

type Rows = Extract<OutputValue, { kind: "list" }>["rows"];
type Field = Rows[number][string];

export function listTable(method: string, name: string, rows: Rows, context: SheetContext): HTMLElement {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const kindOf = (column: string) => rows.find((row) => row[column] !== undefined)?.[column];
  const says = saysOf(method, name);
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": says },
    el(
      "table",
      { class: "readings list-output" },
      el("caption", {}, capital(says)),
      el(
        "thead",
        {},
        el("tr", {}, ...columns.map((column) => head(method, name, column, kindOf(column), context.unitOf))),
      ),
      el(
        "tbody",
        {},
        ...rows.map((row) => el("tr", {}, ...columns.map((column) => cell(row[column], context.unitOf)))),
      ),
    ),
  );
}

function head(
  method: string,
  list: string,
  column: string,
  like: Field | undefined,
  unitOf: UnitChoice,
): HTMLElement {
  const output = methods.get(method)?.outputs[list];
  const label = like !== undefined && "si" in like ? unitLabel(unitOf(like.kind)) : "";
  const words = (output?.kind === "list" && output.of[column]?.says) || inWords(column);
  return el(
    "th",
    { scope: "col", class: like !== undefined && "si" in like ? "number-head" : undefined },
    capital(words),
    label !== "" && el("span", { class: "head-unit" }, ` / ${label}`),
  );
}

function cell(value: Field | undefined, unitOf: UnitChoice): HTMLElement {
  if (value === undefined) return el("td", { class: "quiet" }, "–");
  if (!("si" in value)) return el("td", {}, outputText(value, unitOf));
  return el("td", { class: "answer-number" }, numberText(value.si, value.kind, unitOf(value.kind)));
}
