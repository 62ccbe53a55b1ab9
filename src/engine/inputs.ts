// The inputs of a method as a page writes them: names, formulas, quantities, texts, rows, tables of readings.
import type { InputText, RowText } from "../document/item.ts";
import {
  type InputField,
  type InputValue,
  isQuantityField,
  type ListField,
  type ListRow,
  type ScalarOutput,
  type SiValue,
} from "../methods/field.ts";
import type { Leaf } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import { asList, tableRow } from "./as-list.ts";
import type { CellValue } from "./cell.ts";
import { rowByRow } from "./contexts.ts";
import { formulaTree, isLiteral, looksLikeQuantity, workOut } from "./formula.ts";
import { type Results, type RowContext, rowsAtHand, unknownName, upstream } from "./scope.ts";

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
      ? textInput(text, results, field.choices)
      : problem({ code: "not-a-text", what: field.says, got: "a list", must: "be a text" });
  if (field.kind === "list") return listInput(field, text, results);
  return typeof text === "string"
    ? quantityInput(field.kind, text, results)
    : problem({ code: "not-a-quantity", what: field.says, got: "a list", must: `be a ${field.kind}` });
}

const isList = (text: InputText): text is readonly string[] | readonly RowText[] => Array.isArray(text);

/**
 * Rows written in the page; the name of a table ("holes"), of one of its columns ("trial.stretch") or of
 * a list that a method gives ("selection.pairs"); or one record with `each`: a row for each row of that table.
 */
function listInput(field: ListField, text: InputText, results: Results): readonly ListRow[] | Problem {
  if (isList(text)) return rowsInput(field, text, results);
  if (typeof text !== "string")
    return "each" in text ? builtRows(field, text, results) : rowsInput(field, [text], results);
  const [name = "", part] = text.split(".");
  const cell = results.get(name);
  if (cell === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(cell)) return upstream(text, cell);
  const rows = listed(cell, part, results.row);
  if (!rows)
    return problem({
      code: "not-a-list",
      what: text,
      got: `a ${cell.type}`,
      must: "be a table of readings, a list, or a list of rows",
    });
  return rows.flatMap((row) =>
    fitted(field, row, cell.type === "table" || cell.type === "rows" ? part : undefined),
  );
}

type Listed = readonly Readonly<Record<string, ScalarOutput>>[];

function listed(cell: CellValue, part: string | undefined, row: RowContext | undefined): Listed | undefined {
  if (cell.type === "table") return rowsAtHand(cell, row).map((i) => tableRow(cell, i));
  if (cell.type === "rows") return asList(cell)?.rows;
  const output = cell.type === "solution" && part !== undefined ? cell.solution.outputs[part] : undefined;
  return output?.kind === "list" ? output.rows : undefined;
}

/** Columns go to the fields of the same name; `only` is one column for a list of plain values. */
function fitted(
  field: ListField,
  row: Readonly<Record<string, ScalarOutput>>,
  only: string | undefined,
): ListRow[] {
  const [single] = Object.keys(field.of);
  const values: Record<string, string | SiValue> = {};
  for (const [name, value] of Object.entries(row)) {
    const target = only === undefined ? name : name === only ? (single ?? only) : undefined;
    if (target === undefined || !Object.hasOwn(field.of, target)) continue;
    if (value.kind === "text") values[target] = value.text;
    else if (value.kind === "yes/no") values[target] = value.yes ? "yes" : "no";
    else values[target] = { si: value.si, dimension: kinds[value.kind].dimension, kind: value.kind };
  }
  return only !== undefined && Object.keys(values).length === 0 ? [] : [values];
}

/** `{ each: toSelect, tag: position, smallest: hole.smallest }`: one row for each row of that table. */
function builtRows(field: ListField, record: RowText, results: Results): readonly ListRow[] | Problem {
  const { each = "", ...columns } = record;
  const contexts = rowByRow(each, results);
  if (isProblem(contexts)) return contexts;
  const rows: ListRow[] = [];
  for (const row of contexts) {
    if (row.problem) return row.problem;
    const built = rowsInput(field, [columns], { get: results.get, keys: results.keys, row });
    if (isProblem(built)) return built.with({ what: `${each} ${row.value} · ${built.what}` });
    rows.push(...built);
  }
  return rows;
}

/** One of the choices is meant as such; else a text may name a given that holds a text; else it is taken as written. */
function textInput(text: string, results: Results, choices: readonly string[] = []): string | Problem {
  if (choices.some((choice) => choice.toLowerCase() === text.toLowerCase())) return text;
  const tag = results.row?.tags[text];
  if (tag !== undefined) return tag;
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
