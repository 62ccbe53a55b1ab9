// A reading item as columns; blanks stay missing.
import type { ReadingItem } from "../document/item.ts";
import { readingTable } from "../document/reading-table.ts";
import type { Problem } from "../problem.ts";
import type { CellValue, TableColumn } from "./cell.ts";

export function readingValue(item: ReadingItem, file: string): CellValue | Problem {
  const table = readingTable(item, file);
  const first = table.problems[0];
  if (first) return first;
  const columns = Object.values(table.columns).map(
    (column): TableColumn => ({
      name: column.name,
      kind: column.kind,
      unit: column.unit?.text,
      values: column.values ?? column.texts,
      typed: column.texts.map((text) => text ?? ""),
    }),
  );
  const missing = columns.reduce(
    (sum, column) => sum + column.values.filter((value) => value === undefined).length,
    0,
  );
  return { type: "table", columns, rows: table.lines.length, missing };
}
