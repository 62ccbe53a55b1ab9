// Every number that the lines of a page show, with the unit it is shown in.
import type { OutputValue } from "../methods/field.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import type { Kind } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import type { CheckValue, FormulaValue, Line, SolutionValue, TableColumn } from "./line.ts";

export interface PageNumber {
  /** "torque", "tension.preload", "fit 13.tightest". */
  readonly name: string;
  readonly kind: Kind | undefined;
  readonly si: number;
  readonly shown: Unit;
  /** The name alone, between braces, shows this number. */
  readonly bindable: boolean;
}

export const pageNumbers = (lines: readonly Line[], unitOf: UnitChoice): readonly PageNumber[] =>
  lines.flatMap((line) => numbersOf(line, unitOf)).filter(({ si }) => Number.isFinite(si));

function numbersOf({ name, value }: Line, unitOf: UnitChoice): readonly PageNumber[] {
  if (isProblem(value)) return [];
  switch (value.type) {
    case "quantity":
      return [{ name, kind: value.kind, si: value.si, shown: value.typed.unit, bindable: true }];
    case "formula":
    case "solution":
      return answerNumbers(name, value, unitOf, true);
    case "rows":
      return value.rows.flatMap((row) =>
        isProblem(row.value) ? [] : answerNumbers(`${name} ${row.key}`, row.value, unitOf, false),
      );
    case "table":
      return value.columns.flatMap((column) => columnNumbers(name, column, unitOf));
    case "check":
      return checkNumbers(name, value);
    case "checks":
      return value.rows.flatMap((row) =>
        isProblem(row.value) ? [] : checkNumbers(`${name} ${row.key}`, row.value),
      );
    default:
      return [];
  }
}

function answerNumbers(
  name: string,
  value: FormulaValue | SolutionValue,
  unitOf: UnitChoice,
  bindable: boolean,
): readonly PageNumber[] {
  if (value.type === "formula") {
    if (value.kind === "yes/no" || value.kind === undefined) return [];
    return [{ name, kind: value.kind, si: value.si, shown: value.unit ?? unitOf(value.kind), bindable }];
  }
  const outputs = Object.entries(value.solution.outputs);
  return outputs.flatMap(([output, found]) =>
    outputNumbers(outputs.length === 1 ? name : `${name}.${output}`, found, unitOf, bindable),
  );
}

function outputNumbers(
  name: string,
  output: OutputValue,
  unitOf: UnitChoice,
  bindable: boolean,
): readonly PageNumber[] {
  if (output.kind === "list")
    return output.rows.flatMap((row) =>
      Object.values(row).flatMap((found) => outputNumbers(name, found, unitOf, false)),
    );
  return "si" in output
    ? [{ name, kind: output.kind, si: output.si, shown: unitOf(output.kind), bindable }]
    : [];
}

function columnNumbers(
  table: string,
  { name, kind, unit: head, values }: TableColumn,
  unitOf: UnitChoice,
): readonly PageNumber[] {
  if (kind === "tag" || kind === "text") return [];
  const asked = head === undefined ? undefined : unit(head, kind);
  const shown = asked === undefined || isProblem(asked) ? unitOf(kind) : asked;
  return values.flatMap((si) =>
    typeof si === "number" ? [{ name: `${table}.${name}`, kind, si, shown, bindable: false }] : [],
  );
}

/** Value and limits; the name of a check shows its state. */
function checkNumbers(
  name: string,
  { kind, si, unit: shown, limits, uncertainty }: CheckValue,
): readonly PageNumber[] {
  if (!shown) return [];
  return [si, limits.atLeast, limits.atMost, uncertainty].flatMap((one) =>
    one === undefined || one === 0 ? [] : [{ name, kind, si: one, shown, bindable: false }],
  );
}

/** How many rows the tables, answers and checks of a page have, and which has so many. */
export function rowCounts(lines: readonly Line[]): ReadonlyMap<number, string> {
  const counts = new Map<number, string>();
  for (const { name, value } of lines) {
    if (isProblem(value)) continue;
    const rows = value.type === "table" ? value.rows : "rows" in value ? value.rows.length : 0;
    if (rows > 1 && !counts.has(rows)) counts.set(rows, name);
  }
  return counts;
}
