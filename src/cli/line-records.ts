// Every value of a checked page as data for --json. A value that has no answer is null, never a stale number.
import type {
  FormulaValue,
  Line,
  ProseValue,
  QuantityValue,
  RowsValue,
  TableColumn,
  TableValue,
} from "../engine/line.ts";
import { plainText } from "../engine/prose.ts";
import { formatShort, formatValue, type Solution, type UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { numberRecord, unitText, type ValueRecord, valueRecord } from "../report/values.ts";
import { missingParts } from "../report/without-answer.ts";
import { inUnit } from "../units/in-unit.ts";
import { type Unit, unit } from "../units/unit.ts";
import { type CheckedPage, placed, whyNoAnswer } from "./checked-page.ts";
import { type ProblemRecord, problemRecord, worded } from "./outcome.ts";

interface LineRecord {
  readonly name: string;
  readonly kind: string | null;
  readonly value: ValueRecord["value"] | readonly (number | string | null)[];
  readonly unit: string;
  readonly text: string;
  readonly problem?: ProblemRecord;
}

const flat = (name: string, kind: string | null, { value, unit, text }: ValueRecord): LineRecord => ({
  name,
  kind,
  value,
  unit,
  text,
});

const noAnswer = (name: string, p: Problem, text = worded(root(p))): LineRecord => ({
  name,
  kind: null,
  value: null,
  unit: "",
  text: "no answer",
  problem: problemRecord(p, text),
});

/** One entry per value: a working with several outputs, or a table, gives "name.output" for each. */
export function lineRecords(line: Line, page: CheckedPage): readonly LineRecord[] {
  const { note } = line;
  return [...valueRecords(line, page), ...(note ? noteRecords(`note of ${line.name}`, note) : [])];
}

/** Only notes that hold values of the page; the others say what the file says. */
function noteRecords(name: string, prose: ProseValue): readonly LineRecord[] {
  const bound = Object.values(prose.bound);
  if (bound.length === 0) return [];
  const missing = bound.find(({ problem }) => problem)?.problem;
  const text = plainText(prose);
  return [
    {
      ...flat(name, "text", { value: text, unit: "", si: null, text }),
      ...(missing && { problem: problemRecord(missing, worded(root(missing))) }),
    },
  ];
}

function valueRecords(line: Line, page: CheckedPage): readonly LineRecord[] {
  const { name, value } = line;
  const { unitOf } = page;
  const at = (p: Problem): Problem => placed(page, line, p);
  if (isProblem(value)) return [noAnswer(name, at(value), whyNoAnswer(page, line))];
  switch (value.type) {
    case "quantity":
      return [flat(name, value.kind ?? null, quantityRecord(value, unitOf))];
    case "text":
      return [flat(name, "text", valueRecord({ kind: "text", text: value.text }, unitOf))];
    case "formula":
      return [formulaRecord(name, value, unitOf)];
    case "solution":
      return solutionRecords(name, value.solution.outputs, unitOf);
    case "table":
      return tableRecords(name, value, unitOf);
    case "rows":
      return rowsRecords(name, value, unitOf, at);
    case "picture":
      return missingParts(line, () => undefined).map((p) => noAnswer(name, at(p)));
    case "prose":
      return noteRecords(name, value);
    default:
      return [];
  }
}

function solutionRecords(name: string, outputs: Solution["outputs"], unitOf: UnitChoice): LineRecord[] {
  const entries = Object.entries(outputs);
  return entries.map(([output, found]) =>
    flat(entries.length === 1 ? name : `${name}.${output}`, found.kind, valueRecord(found, unitOf)),
  );
}

/** What was typed keeps its digits; without a kind of its own it stays in the unit it was typed in. */
function quantityRecord(value: QuantityValue, unitOf: UnitChoice): ValueRecord {
  const shown = value.kind === undefined ? value.typed.unit : unitOf(value.kind);
  return numberRecord(value.si, shown, formatShort(value.si, shown));
}

function formulaRecord(name: string, value: FormulaValue, unitOf: UnitChoice): LineRecord {
  if (value.kind === "yes/no")
    return flat(name, "yes/no", valueRecord({ kind: "yes/no", yes: value.si === 1 }, unitOf));
  const shown = value.unit ?? unitOf(value.kind ?? "ratio");
  return flat(
    name,
    value.kind ?? null,
    numberRecord(value.si, shown, formatValue(value.si, value.kind, shown)),
  );
}

const tableRecords = (name: string, table: TableValue, unitOf: UnitChoice): LineRecord[] =>
  table.columns.map((column) => {
    const scale = columnUnit(column, unitOf);
    const inScale = (v: number | string): number | string =>
      typeof v === "number" && scale ? inUnit(v, scale) : v;
    const shown = (v: number | string): string =>
      typeof v === "number" && scale ? formatShort(v, scale) : `${v}`;
    return {
      name: `${name}.${column.name}`,
      kind: column.kind,
      value: column.values.map((v) => (v === undefined ? null : inScale(v))),
      unit: unitText(scale?.text ?? "1"),
      text: column.values.map((v) => (v === undefined ? "missing" : shown(v))).join(", "),
    };
  });

/** One entry per key: "form 13.ovality", or "shankLargest 13" where there is one answer. */
const rowsRecords = (
  name: string,
  { rows }: RowsValue,
  unitOf: UnitChoice,
  placedAt: (p: Problem) => Problem,
): LineRecord[] =>
  rows.flatMap(({ key, value }) => {
    const at = `${name} ${key}`;
    if (isProblem(value)) return [noAnswer(at, placedAt(value))];
    return value.type === "formula"
      ? [formulaRecord(at, value, unitOf)]
      : solutionRecords(at, value.solution.outputs, unitOf);
  });

function columnUnit({ kind, unit: head }: TableColumn, unitOf: UnitChoice): Unit | undefined {
  if (kind === "tag" || kind === "text") return undefined;
  const found = head === undefined ? undefined : unit(head, kind);
  return found === undefined || isProblem(found) ? unitOf(kind) : found;
}
