// A working: a method of the catalogue with the page's own inputs, or a formula of the author's.
import type { FormulaItem, MethodItem } from "../document/item.ts";
import type { InputValue } from "../methods/field.ts";
import { methodNamed } from "../methods/index.ts";
import { isProblem, type Problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import { unit } from "../units/unit.ts";
import type { CellValue } from "./cell.ts";
import { workOut } from "./formula.ts";
import { inputValue } from "./inputs.ts";
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
    if (isProblem(value)) return value.with({ what: `${name} · ${value.what}` });
    inputs[name] = value;
  }
  const solution = found.solveNamed(inputs);
  return isProblem(solution) ? solution : { type: "solution", solution };
}
