// A working: a method of the catalogue with the page's own inputs, or a formula of the author's.
import type { FormulaItem, InputText, MethodItem } from "../document/item.ts";
import {
  type InputField,
  type InputValue,
  isQuantityField,
  type RowValue,
  type SiValue,
} from "../methods/field.ts";
import { methodNamed } from "../methods/index.ts";
import type { Leaf } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import type { Kind } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import { unit } from "../units/unit.ts";
import type { CellValue } from "./cell.ts";
import { formulaTree, looksLikeQuantity, workOut } from "./formula.ts";
import type { Results } from "./scope.ts";

export function formulaWorking(item: FormulaItem, results: Results): CellValue | Problem {
  const worked = workOut(item.name, item.says, item.formula, results);
  if (isProblem(worked) || item.unit === undefined || worked.kind === "yes/no") return worked;
  const shown = unit(item.unit, worked.kind);
  if (isProblem(shown)) return shown;
  return {
    ...worked,
    unit: shown,
    step: { ...worked.step, result: () => formatIn(worked.si, shown, { label: true }) },
  };
}

export function methodWorking(item: MethodItem, results: Results): CellValue | Problem {
  const found = methodNamed(item.by);
  if (!("solveNamed" in found)) return found;
  const inputs: Record<string, InputValue> = {};
  for (const [name, text] of Object.entries(item.of)) {
    const value = inputValue(found.inputs[name], text, results);
    if (isProblem(value)) return problem({ ...value, what: `${name} · ${value.what}` });
    inputs[name] = value;
  }
  const solution = found.solveNamed(inputs);
  return isProblem(solution) ? solution : { type: "solution", solution };
}

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
  if (field.kind === "list") {
    if (!Array.isArray(text))
      return problem({ code: "not-a-list", what: field.says, got: "one value", must: "be a list of rows" });
    return rowsInput(field.of, text as readonly (string | Readonly<Record<string, string>>)[], results);
  }
  return typeof text === "string"
    ? quantityInput(field.kind, text, results)
    : problem({ code: "not-a-quantity", what: field.says, got: "a list", must: `be a ${field.kind}` });
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
  if (looksLikeQuantity(text)) {
    const read = quantity(text, kind);
    if (!isProblem(read)) return text;
    if (isProblem(formulaTree(text))) return read;
  }
  const worked = workOut("input", undefined, text, results);
  if (isProblem(worked)) return worked;
  if (worked.kind === "yes/no")
    return problem({ code: "wrong-kind", what: text, got: "a yes or no", must: `be a ${kind}` });
  const leafUnit = worked.step.tree.type === "name" ? typedUnit(text, results) : undefined;
  return {
    si: worked.si,
    dimension: worked.dimension,
    kind: kindOf(worked.step.tree.type === "name", worked.kind, kind),
    unit: leafUnit,
  };
}

/** A kind is binding where a cell states it; a formula such as a product only has a dimension. */
const kindOf = (named: boolean, found: Kind, wanted: Kind): Kind => (named ? found : wanted);

const typedUnit = (name: string, results: Results): Leaf["unit"] => {
  const cell = results.get(name);
  return cell && !isProblem(cell) && cell.type === "quantity" ? cell.typed.unit : undefined;
};

function rowsInput(
  of: Readonly<Record<string, InputField>>,
  rows: readonly (string | Readonly<Record<string, string>>)[],
  results: Results,
): readonly RowValue[] | Problem {
  const read: RowValue[] = [];
  for (const [index, row] of rows.entries()) {
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
      if (isProblem(value))
        return problem({ ...value, what: `row ${index + 1} · ${column} · ${value.what}` });
      values[column] = value;
    }
    read.push(values);
  }
  return read;
}
