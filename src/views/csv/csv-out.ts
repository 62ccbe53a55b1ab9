// A table out of the page as CSV: the same bytes each time, units in the heads, every row with its state and reason.
import type { ReadingItem } from "../../document/item.ts";
import { writeCsv } from "../../document/write-csv.ts";
import type { Line, TableColumn, TableValue } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { saveFile } from "../files.ts";
import { isRemark } from "../readings/places.ts";

export function saveReading(item: ReadingItem, line: Line | undefined): void {
  const value = line?.value;
  if (!value || isProblem(value) || value.type !== "table") return;
  saveFile(`${item.name}.csv`, readingCsv(value), "text/csv");
}

const headOf = ({ name, unit }: TableColumn): string => (unit === undefined ? name : `${name}/${unit}`);

/** Fields as typed; a state that the page worked out, as odd or corrected, stands in the column of states. */
export function readingCsv(table: TableValue): string {
  const columns = table.columns.filter(({ name }) => !isRemark(name));
  const withStates = table.states.some((state) => state !== "entered") || hasColumn(table, "state");
  const said = table.columns.filter(({ name }) => name === "reason" || name === "by");
  const heads = [...columns.map(headOf), ...(withStates ? ["state"] : []), ...said.map(({ name }) => name)];
  const rows = table.states.map((state, row) => [
    ...columns.map((column) => column.typed[row] ?? ""),
    ...(withStates ? [state === "entered" ? "" : state] : []),
    ...said.map((column) => column.typed[row] ?? ""),
  ]);
  return writeCsv(heads, rows);
}

const hasColumn = (table: TableValue, wanted: string): boolean =>
  table.columns.some(({ name }) => name === wanted);
