// A checked page as data for --json. A value that has no answer is null, never a stale number.

import { reservationWords, whyAlone } from "../engine/check-parts.ts";
import type {
  CheckValue,
  FormulaValue,
  Line,
  ProseValue,
  QuantityValue,
  RowsValue,
  TableColumn,
  TableValue,
} from "../engine/line.ts";
import { toldPictures } from "../engine/picture.ts";
import { plainText } from "../engine/prose.ts";
import { oddReadings, setAsidesOf } from "../engine/set-asides.ts";
import { formatShort, formatValue, type Solution, type UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { inUnit } from "../units/in-unit.ts";
import { type Unit, unit } from "../units/unit.ts";
import {
  type CheckedPage,
  isCheck,
  labelOf,
  limitText,
  missingParts,
  noteName,
  placed,
  rowState,
  stateOf,
  unsourcedNames,
  whyNoAnswer,
} from "./checked-page.ts";
import { type ProblemRecord, problemRecord, worded } from "./outcome.ts";
import { numberRecord, type ValueRecord, valueRecord } from "./values.ts";

export const pageRecord = (page: CheckedPage) => ({
  file: page.file,
  title: page.title,
  setAside: page.lines.flatMap(asideRecords),
  odd: page.lines.flatMap((line) => oddReadings(line).map((one) => ({ reading: line.name, ...one }))),
  checks: page.lines.filter(isCheck).map((line) => checkRecord(page, line)),
  lines: page.lines.filter((line) => !isCheck(line)).flatMap((line) => lineRecords(line, page)),
  pictures: toldPictures(page.lines).map(({ line, value, told }) => ({
    name: line.name,
    picture: told.picture,
    says: labelOf(line.item),
    sentence: told.sentence,
    mayNotHold: reservationWords(value.reservations),
  })),
  warnings: page.lines.flatMap((line) => warningRecords(page, line)),
  sourceNotStated: unsourcedNames(page.lines),
  ...(page.remarks.length > 0 && {
    remarks: page.remarks.map(({ line, found }) => problemRecord(found.at(noteName(line)))),
  }),
  ...(page.problems.length > 0 && { problems: page.problems.map((p) => problemRecord(p)) }),
});

function checkRecord(page: CheckedPage, line: Line) {
  const { unitOf } = page;
  const start = { name: line.name, says: labelOf(line.item), state: stateOf(line) };
  const { value } = line;
  if (isProblem(value)) {
    const why = whyNoAnswer(page, line);
    return { ...start, ...nothing, why, problem: problemRecord(placed(page, line, value), why) };
  }
  if (value.type === "check") return { ...start, ...judged(value, unitOf) };
  if (value.type !== "checks") return { ...start, ...nothing, why: "" };
  const rows = value.rows.map((row) => ({
    [value.key]: row.key,
    state: rowState(row),
    ...(isProblem(row.value)
      ? { ...nothing, why: worded(placed(page, line, row.value)) }
      : judged(row.value, unitOf)),
  }));
  return {
    ...start,
    ...nothing,
    why: whyAlone(value),
    mayNotHold: reservationWords(value.reservations),
    rows,
  };
}

const nothing = { value: null, unit: "", limit: null, limits: null, doubt: null, mayNotHold: [] };

function judged(value: CheckValue, unitOf: UnitChoice) {
  const limit = limitText(value) || null;
  const stood = {
    why: whyAlone(value),
    ...(value.because && { code: value.because.code }),
    mayNotHold: reservationWords(value.reservations),
    fromMemory: value.memory,
    sourceNotStated: value.unsourced,
    ...(value.waived && { waived: value.waived, withoutWaiver: value.judged }),
  };
  if (value.yes !== undefined)
    return { value: value.yes, unit: "", limit, limits: null, doubt: null, ...stood };
  const shown = value.unit ?? unitOf(value.kind ?? "ratio");
  const { value: number, unit } = numberRecord(value.si, shown, "");
  const inShown = (si: number | undefined) => (si === undefined ? null : inUnit(si, shown));
  const { atLeast, atMost } = value.limits;
  return {
    value: number,
    unit,
    limit,
    limits: { atLeast: inShown(atLeast), atMost: inShown(atMost), unit },
    doubt: doubtRecord(value, shown, unit),
    ...stood,
  };
}

/** The half-width that judged, and what it comes from; none where nothing is stated. */
function doubtRecord({ uncertainty, carried }: CheckValue, shown: Unit, unit: string) {
  const { offset: _, ...width } = shown; // a half-width is a difference
  return uncertainty > 0 ? { halfWidth: inUnit(uncertainty, width), unit, from: carried.from } : null;
}

function asideRecords(line: Line) {
  return setAsidesOf(line).map(({ place, value, why, by, when, now }) => ({
    reading: line.name,
    place,
    value,
    why,
    by: by || null,
    when: when || null,
    now,
  }));
}

/** Every warning: of a method with the outputs that it spoils, of a given whose reading a person should confirm. */
function warningRecords(page: CheckedPage, line: Line) {
  const { name, value } = line;
  const record = (at: string, warning: Problem, spoils: readonly string[]) => ({
    name: at,
    ...problemRecord(placed(page, line, warning), worded(root(warning))),
    spoils,
  });
  const of = (solution: Solution, at: string) =>
    solution.warnings.map((warning) =>
      record(
        at,
        warning,
        Object.entries(solution.spoilt).flatMap(([output, by]) =>
          by.some((one) => one.code === warning.code && one.what === warning.what) ? [output] : [],
        ),
      ),
    );
  if (isProblem(value)) return [];
  if (value.type === "quantity") return value.confirm ? [record(name, value.confirm, [])] : [];
  if (value.type === "solution") return of(value.solution, name);
  if (value.type !== "rows") return [];
  return value.rows.flatMap((row) =>
    !isProblem(row.value) && row.value.type === "solution"
      ? of(row.value.solution, `${name} ${row.key}`)
      : [],
  );
}

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
      return missingParts(line)
        .slice(0, 1)
        .map((p) => noAnswer(name, at(p)));
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
      unit: scale === undefined || scale.text === "1" ? "" : scale.text,
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
