// Holds a table still: sums of its rows and of its columns, so that a changed cell breaks one of each and they meet at it.
// The sums were taken from the tables as they stood on 28 November 2026. They say that nothing has moved since; they
// are no evidence that a cell was right. What a cell was compared with stands in the header of its table.
import { expect } from "vitest";

/** Row, column and the number where they meet. */
export type Cell = readonly [row: string, column: string, value: number];

/** Every number of every row, by the name of its field. */
export const cellsOf = <Row extends object>(
  rows: readonly Row[],
  rowName: (row: Row) => string,
  columnName: (field: string, row: Row) => string = (field) => field,
): Cell[] =>
  rows.flatMap((row) =>
    Object.entries(row).flatMap(([field, value]: [string, unknown]) =>
      typeof value === "number" ? [[rowName(row), columnName(field, row), value] as const] : [],
    ),
  );

function sumsBy(cells: readonly Cell[], place: 0 | 1): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const cell of cells) sums[cell[place]] = (sums[cell[place]] ?? 0) + cell[2];
  return Object.fromEntries(Object.entries(sums).map(([name, sum]) => [name, Number(sum.toFixed(6)) + 0]));
}

/** "RC 1 = 4.35 | RC 2 = 5.1", over as many lines as it takes. */
const readSums = (text: string): Record<string, number> =>
  Object.fromEntries(
    text.split("|").map((part) => {
      const [name = "", sum = ""] = part.split(" = ");
      return [name.trim().replace(/\s+/g, " "), Number(sum)];
    }),
  );

export function holdsStill(
  cells: readonly Cell[],
  held: { readonly rows: string; readonly columns: string },
): void {
  expect(sumsBy(cells, 0), "sums of the rows").toEqual(readSums(held.rows));
  expect(sumsBy(cells, 1), "sums of the columns").toEqual(readSums(held.columns));
}
