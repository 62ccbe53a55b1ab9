// What the methods share that read a row of a table: how it is found, what it gives, where it comes from.
import { isProblem, type Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import type { TableInfo } from "../tables/table.ts";
import type { Insides, Procedure } from "./method.ts";

export interface PrintedRow {
  readonly source: Source;
  readonly note?: string;
}

export function lookUp<Row extends PrintedRow>(
  table: TableInfo,
  says: string,
  find: (inputs: Insides) => readonly Row[] | Problem,
  give: (rows: readonly Row[]) => Insides,
): Procedure {
  const found = (inputs: Insides): readonly Row[] => {
    const rows = find(inputs);
    return isProblem(rows) ? [] : rows;
  };
  return {
    says,
    source: { title: `${table.title}; the answer names the source of its row`, known: "second-hand" },
    run: (inputs) => {
      const rows = find(inputs);
      return isProblem(rows) ? rows : give(rows);
    },
    sourcesOf: (inputs) => found(inputs).map((row) => row.source),
    remarks: (inputs) => found(inputs).flatMap(({ note }) => note ?? []),
  };
}

/** The one row of a look-up that gives one. */
export const one = <Row>(row: Row | Problem): readonly Row[] | Problem => (isProblem(row) ? row : [row]);
