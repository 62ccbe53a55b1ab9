// What every table shares: its header record (title, unit per column, sources), rows kept as
// compact comma-separated text that is read on first use, and the wording of a failed look-up.
// A look-up gives a row as printed or a Problem; nothing here interpolates or extrapolates.

import { type Problem, problem } from "../problem.ts";
import type { Source } from "../source.ts";

export interface TableInfo {
  readonly title: string;
  /** Unit of each column; "" for text, "1" for a pure number. */
  readonly units: Readonly<Record<string, string>>;
  readonly sources: readonly Source[];
  /** What was compared with what, and where copies are known to be wrong. */
  readonly checked?: string;
}

export interface Cells {
  readonly text: (column: string) => string;
  /** A number that must be there. */
  readonly number: (column: string) => number;
  /** A number, or undefined where the table leaves the cell empty. */
  readonly optional: (column: string) => number | undefined;
}

/** Runs `make` once, on first use, so that importing a table costs nothing. */
export function once<T extends object>(make: () => T): () => T {
  let kept: T | undefined;
  return () => {
    kept ??= make();
    return kept;
  };
}

/** Splits one line; a cell in double quotes may hold commas. */
export function splitLine(line: string): readonly string[] {
  const cells: string[] = [];
  let cell = "";
  let quoted = false;
  for (const character of line) {
    if (character === '"') quoted = !quoted;
    else if (character === "," && !quoted) {
      cells.push(cell);
      cell = "";
    } else cell += character;
  }
  return [...cells, cell];
}

/** First line names the columns. A wrong column name is a programmer's mistake and throws. */
export function readRows<Row>(text: string, read: (cells: Cells) => Row): readonly Row[] {
  const [head = "", ...lines] = text.trim().split("\n");
  const columns = splitLine(head);
  return lines.map((line) => read(cellsOf(columns, splitLine(line))));
}

function cellsOf(columns: readonly string[], values: readonly string[]): Cells {
  if (values.length !== columns.length)
    throw new Error(`table row has ${values.length} cells, ${columns.length} named: ${values[0]}`);
  const text = (column: string): string => {
    const value = values[columns.indexOf(column)];
    if (value === undefined) throw new Error(`table has no column "${column}"`);
    return value;
  };
  const optional = (column: string): number | undefined =>
    text(column) === "" ? undefined : Number(text(column));
  const number = (column: string): number => {
    const value = optional(column);
    if (value === undefined || Number.isNaN(value)) throw new Error(`table cell ${column} is not a number`);
    return value;
  };
  return { text, optional, number };
}

type Given<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** Only the fields that have a value: an empty cell is an absent field. */
export function given<T extends Record<string, unknown>>(fields: T): Given<T>;
export function given(fields: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined && value !== ""),
  );
}

/** The source a row names by key; a wrong key is a programmer's mistake. */
export function sourceNamed(sources: Readonly<Record<string, Source>>, key: string): Source {
  const found = Object.hasOwn(sources, key) ? sources[key] : undefined;
  if (!found) throw new Error(`table has no source "${key}"`);
  return found;
}

/** The choices closest to what was asked for, closest first. */
export function nearestTo<T>(
  rows: readonly T[],
  wanted: number,
  amountOf: (row: T) => number,
  count = 3,
): readonly T[] {
  return [...rows]
    .sort((a, b) => Math.abs(amountOf(a) - wanted) - Math.abs(amountOf(b) - wanted))
    .slice(0, count);
}

/** The one wording of a look-up that found no row. */
export function notInTable(fields: {
  readonly code: string;
  readonly what: string;
  readonly got: string;
  readonly choices: readonly string[];
  readonly why?: string;
  readonly hint?: string;
}): Problem {
  const { choices, ...rest } = fields;
  const must =
    choices.length === 0
      ? undefined
      : choices.length === 1
        ? `be ${choices[0]}`
        : `be one of ${choices.join(", ")}`;
  return problem({ ...rest, must, suggestions: choices });
}

/** Case, spaces and the multiplication sign do not tell two designations apart. */
export const plainKey = (text: string): string =>
  text.toLowerCase().replace(/[×✕]/g, "x").replace(/\s+/g, "");
