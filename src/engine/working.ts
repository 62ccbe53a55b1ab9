// A working: a method of the catalogue with the page's own inputs, or a formula of the author's.
import type { FormulaItem, MethodItem } from "../document/item.ts";
import type { InputValue } from "../methods/field.ts";
import { methodNamed } from "../methods/register.ts";
import { isProblem, type Problem } from "../problem.ts";
import { unit } from "../units/unit.ts";
import type { CellValue } from "./cell.ts";
import { workOut } from "./formula.ts";
import { inputValue } from "./inputs.ts";
import type { Results } from "./scope.ts";

export function formulaWorking(item: FormulaItem, results: Results): CellValue | Problem {
  if (item.unit === undefined) return workOut(item.name, item.says, item.formula, results);
  const shown = unit(item.unit);
  if (isProblem(shown)) return shown;
  const worked = workOut(item.name, item.says, item.formula, results, shown);
  if (isProblem(worked) || worked.kind === "yes/no") return worked;
  const fits = unit(item.unit, worked.kind); // says both kinds where they differ
  return isProblem(fits) ? fits : worked;
}

export function methodWorking(item: MethodItem, results: Results): CellValue | Problem {
  const found = methodNamed(item.by);
  if (!("solveNamed" in found)) return found;
  const inputs: Record<string, InputValue> = {};
  for (const [name, text] of Object.entries(item.of)) {
    const value = inputValue(found.inputs[name], text, results);
    if (isProblem(value)) return value.with({ what: `${name} · ${value.what}` });
    inputs[name] = value;
  }
  const solution = found.solveNamed(inputs);
  return isProblem(solution) ? solution : { type: "solution", solution };
}
