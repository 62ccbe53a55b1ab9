// A list that a method gives, as a table: one row each, one unit in each head.

import { inWords } from "../../document/place-words.ts";
import type { OutputValue } from "../../methods/field.ts";
import { methods } from "../../methods/register.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { numberText, outputText } from "../../report/figure-text.ts";
import { saysOf } from "../../report/step-words.ts";
import { capital } from "../../words.ts";
import { el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import { type AnswerColumn, answerHead } from "./answer-columns.ts";

type Rows = Extract<OutputValue, { kind: "list" }>["rows"];
type Field = Rows[number][string];

export function listTable(method: string, name: string, rows: Rows, context: PageContext): HTMLElement {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const says = saysOf(method, name);
  const heads = columns.map((column) => answerHead(columnOf(method, name, rows, column, context.unitOf)));
  return scrollTable(
    says,
    { style: "list-output", caption: capital(says), heads },
    rows.map((row) => el("tr", {}, ...columns.map((column) => cell(row[column], context.unitOf)))),
  );
}

function columnOf(
  method: string,
  list: string,
  rows: Rows,
  column: string,
  unitOf: UnitChoice,
): AnswerColumn {
  const output = methods.get(method)?.outputs[list];
  const like = rows.find((row) => row[column] !== undefined)?.[column];
  return {
    output: undefined,
    says: (output?.kind === "list" && output.of[column]?.says) || inWords(column),
    unit: like !== undefined && "si" in like ? unitOf(like.kind) : undefined,
  };
}

function cell(value: Field | undefined, unitOf: UnitChoice): HTMLElement {
  if (value === undefined) return el("td", { class: "quiet" }, "–");
  if (!("si" in value)) return el("td", {}, outputText(value, unitOf));
  return el("td", { class: "answer-number" }, numberText(value.si, value.kind, unitOf(value.kind)));
}
