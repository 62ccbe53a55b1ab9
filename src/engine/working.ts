// A working: a method of the catalogue with the page's own inputs, or a formula of the author's.
import type { FormulaItem, MethodItem } from "../document/item.ts";
import type { InputValue } from "../methods/field.ts";
import { methodNamed } from "../methods/register.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { cite } from "../source.ts";
import { clear, joined, type Standing } from "../standing.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { type Unit, unit } from "../units/unit.ts";
import { workOut } from "./formula.ts";
import { fromMemory } from "./given.ts";
import { type Into, inPart, inputValue } from "./inputs.ts";
import type { FormulaValue, LineValue } from "./line.ts";
import type { Results } from "./scope.ts";
import { solved } from "./solved.ts";

export function formulaWorking(item: FormulaItem, results: Results): LineValue | Problem {
  const memory = fromMemory(item.source) ? [`${item.says ?? item.name}: ${item.source ?? ""}`] : [];
  const own: Standing = memory.length === 0 ? clear : { ...clear, memory };
  const shown = item.unit === undefined ? undefined : unit(item.unit);
  if (isProblem(shown)) return shown;
  const worked = workOut(item.name, item.says, item.formula, results, shown, own);
  if (isProblem(worked) || shown === undefined || worked.kind === "yes/no") return worked;
  const fits = fitting(item.unit ?? "", shown, worked);
  return isProblem(fits) ? fits : worked;
}

/** A unit of another kind says both kinds; where no kind has the dimension, that has to agree. */
function fitting(text: string, shown: Unit, { kind, dimension }: FormulaValue): Unit | Problem {
  if (kind !== undefined && kind !== "yes/no") return unit(text, kind);
  if (sameDimension(shown.dimension, dimension)) return shown;
  return problem({
    code: "dimension",
    what: "unit",
    got: text,
    must: `be a unit of ${dimensionWords(dimension)}`,
  });
}

export function methodWorking(item: MethodItem, results: Results): LineValue | Problem {
  const found = methodNamed(item.by);
  if (!("solveNamed" in found)) return found;
  const inputs: Record<string, InputValue> = {};
  const standings: Standing[] = [];
  const into: Into = { name: item.name, take: (standing) => void standings.push(standing) };
  for (const [name, text] of Object.entries(item.of)) {
    const value = inputValue(found.inputs[name], text, results, into);
    if (isProblem(value)) return inPart(value, name);
    inputs[name] = value;
  }
  const solution = solved(item, results.row?.value ?? "", inputs, () => found.solveNamed(inputs));
  if (isProblem(solution)) return solution;
  const memory = solution.sources.filter(({ known }) => known === "memory").map(cite);
  const own: Standing = memory.length === 0 ? clear : { ...clear, memory };
  const all = joined([...standings, own]);
  const reservations = found.countsMissing
    ? all.reservations.filter(({ code }) => code !== "readings-missing")
    : all.reservations;
  return { type: "solution", solution, standing: { ...all, reservations } };
}
