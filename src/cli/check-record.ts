// A checked page as data for --json. A value that has no answer is null, never a stale number.

import { isFormulaItem } from "../document/item.ts";
import type { Cell, FormulaValue, TableValue } from "../engine/cell.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import { inUnit } from "../units/in-unit.ts";
import { unit } from "../units/unit.ts";
import {
  type CheckedPage,
  isCheck,
  labelOf,
  limitText,
  missingInputs,
  stateOf,
  whyNoAnswer,
} from "./checked-page.ts";
import { type ProblemRecord, problemRecord, worded } from "./outcome.ts";
import { numberRecord, type ValueRecord, valueRecord } from "./values.ts";

export const pageRecord = (page: CheckedPage) => ({
  file: page.file,
  title: page.title,
  checks: page.cells.filter(isCheck).map((cell) => checkRecord(cell, page.unitOf)),
  cells: page.cells.filter((cell) => !isCheck(cell)).flatMap((cell) => cellRecords(cell, page.unitOf)),
  ...(page.problems.length > 0 && { problems: page.problems.map((p) => problemRecord(p)) }),
});

function checkRecord(cell: Cell, unitOf: UnitChoice) {
  const start = { name: cell.name, says: labelOf(cell.item), state: stateOf(cell) };
  const { value } = cell;
  if (isProblem(value) || value.type !== "check")
    return { ...start, value: null, unit: "", limit: null, why: whyNoAnswer(cell) };
  const limit = limitText(value, unitOf) || null;
  if (value.yes !== undefined) return { ...start, value: value.yes, unit: "", limit, why: value.why };
  const shown = numberRecord(value.si, value.kind ?? "ratio", unitOf);
  return { ...start, value: shown.value, unit: shown.unit, limit, why: value.why };
}

interface CellRecord {
  readonly name: string;
  readonly kind: string | null;
  readonly value: ValueRecord["value"] | readonly (number | string | null)[];
  readonly unit: string;
  readonly text: string;
  readonly problem?: ProblemRecord;
}

const flat = (name: string, kind: string | null, { value, unit, text }: ValueRecord): CellRecord => ({
  name,
  kind,
  value,
  unit,
  text,
});

const noAnswer = (name: string, p: Problem, text = worded(root(p))): CellRecord => ({
  name,
  kind: null,
  value: null,
  unit: "",
  text: "no answer",
  problem: problemRecord(p, text),
});

/** One entry per value: a working with several outputs, or a table, gives "name.output" for each. */
export function cellRecords(cell: Cell, unitOf: UnitChoice): readonly CellRecord[] {
  const { name, value } = cell;
  if (isProblem(value)) return [noAnswer(name, value, whyNoAnswer(cell))];
  switch (value.type) {
    case "quantity":
      return [flat(name, value.kind ?? null, numberIn(value.si, value.kind, value.typed.unit, unitOf))];
    case "text":
      return [flat(name, "text", valueRecord({ kind: "text", text: value.text }, unitOf))];
    case "formula":
      return [formulaRecord(cell, value, unitOf)];
    case "solution": {
      const outputs = Object.entries(value.solution.outputs);
      return outputs.map(([output, found]) =>
        flat(outputs.length === 1 ? name : `${name}.${output}`, found.kind, valueRecord(found, unitOf)),
      );
    }
    case "table":
      return tableRecords(name, value);
    case "picture":
      return missingInputs(cell)
        .slice(0, 1)
        .map((p) => noAnswer(name, p));
    default:
      return [];
  }
}

/** A quantity without a kind of its own is shown in the unit it was typed in. */
const numberIn = (
  si: number,
  kind: Parameters<UnitChoice>[0] | undefined,
  typed: ReturnType<UnitChoice>,
  unitOf: UnitChoice,
): ValueRecord => numberRecord(si, kind ?? "ratio", kind === undefined ? () => typed : unitOf);

function formulaRecord(cell: Cell, value: FormulaValue, unitOf: UnitChoice): CellRecord {
  if (value.kind === "yes/no")
    return flat(cell.name, "yes/no", valueRecord({ kind: "yes/no", yes: value.si === 1 }, unitOf));
  const own = isFormulaItem(cell.item) && cell.item.unit ? unit(cell.item.unit, value.kind) : undefined;
  const choice: UnitChoice = own && !isProblem(own) ? () => own : unitOf;
  return flat(cell.name, value.kind, numberRecord(value.si, value.kind, choice));
}

const tableRecords = (name: string, table: TableValue): CellRecord[] =>
  table.columns.map((column) => {
    const shown = column.unit === undefined ? undefined : unit(column.unit);
    const scale = shown && !isProblem(shown) ? shown : undefined;
    const values = column.values.map((v) =>
      v === undefined ? null : typeof v === "number" && scale ? inUnit(v, scale) : v,
    );
    const text = column.values.map((v) =>
      v === undefined ? "missing" : typeof v === "number" && scale ? formatIn(v, scale) : `${v}`,
    );
    return {
      name: `${name}.${column.name}`,
      kind: column.kind,
      value: values,
      unit: scale?.text ?? "",
      text: text.join(", "),
    };
  });
