// The inputs of a method as a page writes them: names, formulas, quantities, texts, rows, tables of readings.
import type { InputText, RowText } from "../document/item.ts";
import {
  type InputField,
  type InputValue,
  isQuantityField,
  type ListField,
  type ListRow,
  type SiValue,
} from "../methods/field.ts";
import type { Leaf } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import type { TableValue } from "./cell.ts";
import { formulaTree, isLiteral, looksLikeQuantity, workOut } from "./formula.ts";
import { type Results, unknownName, upstream } from "./scope.ts";

/** One input of a method: a text stays a text, everything else is a quantity or a formula over the page. */
export function inputValue(
  field: InputField | undefined,
  text: InputText,
  results: Results,
): InputValue | Problem {
  if (field === undefined)
    return typeof text === "string"
      ? text
      : problem({ code: "unknown-input", what: "input", got: "a list", must: "be an input of the method" });
  if (field.kind === "text")
    return typeof text === "string"
      ? textInput(text, results)
      : problem({ code: "not-a-text", what: field.says, got: "a list", must: "be a text" });
  if (field.kind === "list") return listInput(field, text, results);
  return typeof text === "string"
    ? quantityInput(field.kind, text, results)
    : problem({ code: "not-a-quantity", what: field.says, got: "a list", must: `be a ${field.kind}` });
}

const isList = (text: InputText): text is readonly string[] | readonly RowText[] => Array.isArray(text);

/** Rows written in the page, or the name of a table of readings ("holes"), or of one of its columns ("trial.stretch"). */
function listInput(field: ListField, text: InputText, results: Results): readonly ListRow[] | Problem {
  if (isList(text)) return rowsInput(field, text, results);
  if (typeof text !== "string")
    return problem({ code: "not-a-list", what: field.says, got: "one record", must: "be a list of rows" });
  const [name = "", column] = text.split(".");
  const cell = results.get(name);
  if (cell === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(cell)) return upstream(text, cell);
  if (cell.type !== "table")
    return problem({
      code: "not-a-list",
      what: text,
      got: `a ${cell.type}`,
      must: "be a table of readings or a list of rows",
    });
  return tableRows(field, cell, column);
}

/** Columns of a table go to the fields of the same name; a blank reading is left out of its row. */
function tableRows(
  field: ListField,
  table: TableValue,
  only: string | undefined,
): readonly ListRow[] | Problem {
  const [single] = Object.keys(field.of);
  const rows: Record<string, string | SiValue>[] = Array.from({ length: table.rows }, () => ({}));
  for (const column of table.columns) {
    const target = only === undefined ? column.name : column.name === only ? (single ?? only) : undefined;
    if (target === undefined || !Object.hasOwn(field.of, target)) continue;
    for (const [i, value] of column.values.entries()) {
      const row = rows[i];
      if (!row || value === undefined) continue;
      if (typeof value === "string") row[target] = value;
      else if (column.kind !== "tag" && column.kind !== "text")
        row[target] = { si: value, dimension: kinds[column.kind].dimension, kind: column.kind };
    }
  }
  return only === undefined ? rows : rows.filter((row) => Object.keys(row).length > 0);
}

/** A text input may name a given that holds a text; anything else is taken as written. */
function textInput(text: string, results: Results): string | Problem {
  const named = results.get(text);
  if (named === undefined) return text;
  if (isProblem(named))
    return problem({
      code: "no-answer-upstream",
      what: text,
      why: "has no answer",
      cause: named.cause ?? named,
    });
  if (named.type === "text") return named.text;
  return named.type === "quantity"
    ? named.typed.text
    : problem({ code: "not-a-text", what: text, got: `a ${named.type}`, must: "be a text" });
}

function quantityInput(kind: Kind, text: string, results: Results): string | SiValue | Problem {
  const tree = formulaTree(text);
  const literal = !isProblem(tree) && isLiteral(tree);
  if (looksLikeQuantity(text)) {
    const read = quantity(text, kind);
    if (!isProblem(read)) return text;
    if (isProblem(tree) || literal) return read;
  }
  const worked = workOut("input", undefined, text, results);
  if (isProblem(worked)) return worked;
  if (worked.kind === "yes/no")
    return problem({ code: "wrong-kind", what: text, got: "a yes or no", must: `be a ${kind}` });
  const typed = worked.step.tree.type === "name" ? typedUnit(text, results) : undefined;
  return { si: worked.si, dimension: worked.dimension, kind: worked.named.typed.kind, unit: typed };
}

const typedUnit = (name: string, results: Results): Leaf["unit"] => {
  const cell = results.get(name);
  return cell && !isProblem(cell) && cell.type === "quantity" ? cell.typed.unit : undefined;
};

function rowsInput(
  { of }: ListField,
  rows: readonly (string | RowText)[],
  results: Results,
): readonly ListRow[] | Problem {
  const read: ListRow[] = [];
  const columns = Object.values(of);
  for (const [index, row] of rows.entries()) {
    const only = columns.length === 1 ? columns[0] : undefined;
    if (typeof row === "string" && only && isQuantityField(only)) {
      const value = quantityInput(only.kind, row, results);
      if (isProblem(value)) return value.with({ what: `row ${index + 1} · ${value.what}` });
      read.push(value);
      continue;
    }
    if (typeof row === "string")
      return problem({
        code: "not-a-row",
        what: `row ${index + 1}`,
        got: row,
        must: "be a row of named values",
      });
    const values: Record<string, string | SiValue> = {};
    for (const [column, text] of Object.entries(row)) {
      const field = of[column];
      const value =
        field && isQuantityField(field) ? quantityInput(field.kind, text, results) : textInput(text, results);
      if (isProblem(value)) return value.with({ what: `row ${index + 1} · ${column} · ${value.what}` });
      values[column] = value;
    }
    read.push(values);
  }
  return read;
}
