// The one row that a question is about, followed through lines that have an answer for each key.
import type { Line, TableValue } from "../engine/line.ts";
import { isProblem } from "../problem.ts";
import { type Child, el } from "./dom.ts";
import { readingsTable } from "./readings/readings-table.ts";

type Tags = Readonly<Record<string, string>>;

export interface OfRow {
  /** The line as that row alone has it. */
  readonly line: Line;
  /** "position 18" */
  readonly key: string | undefined;
  /** What the row says of itself: by it the rows of other lines and tables are found. */
  readonly tags: Tags | undefined;
}

export function ofRow(line: Line, tags: Tags | undefined, asked: string | undefined): OfRow {
  const { value } = line;
  if (isProblem(value) || (value.type !== "rows" && value.type !== "checks"))
    return { line, key: undefined, tags };
  const key = asked ?? tags?.[value.key];
  const row = value.rows.find((one) => one.key === key);
  if (!row) return { line, key: undefined, tags };
  return {
    line: { ...line, value: row.value },
    key: `${value.key} ${row.key}`,
    tags: { ...tags, ...row.tags },
  };
}

/** Readings of this row alone, as they stand in the table. */
export function readingsOfRow(table: TableValue, tags: Tags | undefined, label: string): Child {
  const [key] = table.key;
  const wanted = key === undefined ? undefined : tags?.[key];
  if (wanted === undefined) return undefined;
  const column = table.columns.find((one) => one.name === key);
  const rows = table.states.flatMap((_, row) => (column?.typed[row] === wanted ? [row] : []));
  return (
    rows.length > 0 && el("div", { class: "why-readings" }, readingsTable(table, `${label}, ${wanted}`, rows))
  );
}
