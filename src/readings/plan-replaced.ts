// A file in place of all rows of a reading. What changes and what goes is named by line before it is written.
import { grouped } from "../grouped.ts";
import type { Unit } from "../units/unit.ts";
import { lineOf, linesNow, newLine } from "./edited.ts";
import { type File, type Met, twiceInFile } from "./plan-added.ts";
import type { PlannedRow } from "./plan-import.ts";
import { isSetAside } from "./remarks.ts";
import { rowFault } from "./row-faults.ts";
import { idOf, isAlike, rowName } from "./same-reading.ts";
import { type Column, columnNamed, columnOf, headingOf, type Row, type Table } from "./table.ts";

export function planReplaced({ item, rows: own }: Table, file: File): Met {
  const left = grouped(own, (row) => idOf(item, file.names, row));
  const first = new Map<string, Row>();
  const rows = file.rows.map((row): PlannedRow => {
    const id = idOf(item, file.names, row);
    const there = left.get(id) ?? [];
    const same = there.find((one) => isAlike(row, one));
    const meets = same ?? there[0];
    const before = first.get(id);
    const isTwice = before && !isSetAside(row.texts) && (row.texts["reason"] ?? "") === "";
    const problem =
      (same ? undefined : rowFault(item, row, file)) ??
      (isTwice ? twiceInFile(rowName(item, row), row.line, before.line) : undefined);
    if (meets) there.splice(there.indexOf(meets), 1);
    if (item.key && !isSetAside(row.texts)) first.set(id, row);
    return { row, meets, problem, fate: problem ? "refused" : same ? "same" : meets ? "changed" : "new" };
  });
  const gone = [...left.values()].flat().toSorted((a, b) => a.index - b.index);
  return { rows, skipped: [], gone };
}

/** Headings take the units of the file, so that no number is converted. */
export const withUnitsOf = (
  columns: readonly Column[],
  units: ReadonlyMap<string, Unit>,
): readonly Column[] =>
  columns.map((column) => {
    const unit = units.get(column.name) ?? column.unit;
    return unit === column.unit ? column : columnOf({ ...column, unit });
  });

/** Rows that are the same keep their bytes. `to` are the columns in the units that they are to have. */
export function replacedText(own: Table, rows: readonly PlannedRow[], to: readonly Column[]): string {
  const { csv, columns } = own;
  const inUnits = columns.map((column) => ({
    ...column,
    unit: columnNamed({ columns: to }, column.name)?.unit,
  }));
  const headsStay = inUnits.every(({ unit }, i) => unit?.text === columns[i]?.unit?.text);
  const isSame = ({ fate, meets }: PlannedRow, i: number) => fate === "same" && meets?.index === i;
  if (headsStay && rows.length === own.rows.length && rows.every(isSame)) return own.text;
  const now = linesNow(own);
  const heads = csv.headings.map((_, at) => inUnits.find((column) => column.at === at));
  const head = headsStay
    ? now.head
    : lineOf(
        heads.map((column) => (column ? headingOf(column) : "")),
        csv.delimiter,
      );
  const lines = rows.map(({ row, fate, meets }) =>
    headsStay && fate === "same" && meets
      ? (now.rows[meets.index] ?? "")
      : newLine(
          own,
          heads.map((column) => column?.name),
          row.texts,
        ),
  );
  return [head, ...lines].map((line) => line + csv.newline).join("");
}
