// What a method computes with: SI numbers, texts, truths, and rows of them. Names in formulas
// are looked up here; "segments.length" is the column of the rows called segments.
import type { Value } from "../formula/value.ts";
import { type Problem, problem } from "../problem.ts";

export type RowCell = number | string | boolean;
export type Row = Readonly<Record<string, RowCell>>;
export type Inside = RowCell | readonly Row[];
export type Insides = Readonly<Record<string, Inside>>;

export const isRows = (value: Inside | undefined): value is readonly Row[] => typeof value === "object";

/** Numbers of one column; a row without the number gives NaN, which no formula lets pass. */
export const columnNumbers = (rows: readonly Row[], column: string): number[] =>
  rows.map((row) => {
    const cell = row[column];
    return typeof cell === "number" ? cell : Number.NaN;
  });

/** What a procedure reads from its inputs; an absent optional one is undefined. */
export const textOf = (inputs: Insides, name: string): string | undefined => {
  const value = inputs[name];
  return typeof value === "string" ? value : undefined;
};

export const numberOf = (inputs: Insides, name: string): number | undefined => {
  const value = inputs[name];
  return typeof value === "number" ? value : undefined;
};

export const rowsOf = (inputs: Insides, name: string): readonly Row[] => {
  const value = inputs[name];
  return isRows(value) ? value : [];
};

export const cellNumber = (row: Row, column: string): number | undefined => {
  const cell = row[column];
  return typeof cell === "number" ? cell : undefined;
};

export const cellText = (row: Row, column: string): string | undefined => {
  const cell = row[column];
  return cell === undefined ? undefined : String(cell);
};

function split(name: string): readonly [string, string] | undefined {
  const dot = name.indexOf(".");
  return dot < 0 ? undefined : [name.slice(0, dot), name.slice(dot + 1)];
}

export function lookIn(values: ReadonlyMap<string, Inside>): (name: string) => Value | Problem {
  return (name) => {
    const value = values.get(name);
    if (typeof value === "number" || typeof value === "boolean") return value;
    const parts = split(name);
    const rows = parts && values.get(parts[0]);
    if (parts && isRows(rows)) return columnNumbers(rows, parts[1]);
    return problem({ code: "no-value", what: name, must: "have a value" });
  };
}

/** For limits: a column that only some rows have is judged over those. */
export function lookInPresent(values: ReadonlyMap<string, Inside>): (name: string) => Value | Problem {
  const look = lookIn(values);
  return (name) => {
    const found = look(name);
    return Array.isArray(found) ? found.filter((value: number) => !Number.isNaN(value)) : found;
  };
}

export function isPartlyKnown(values: ReadonlyMap<string, Inside>, name: string): boolean {
  if (values.has(name)) return true;
  const parts = split(name);
  const rows = parts && values.get(parts[0]);
  return parts !== undefined && isRows(rows) && rows.some((row) => Object.hasOwn(row, parts[1]));
}

export function isKnown(values: ReadonlyMap<string, Inside>, name: string): boolean {
  if (values.has(name)) return true;
  const parts = split(name);
  const rows = parts && values.get(parts[0]);
  return parts !== undefined && isRows(rows) && rows.every((row) => Object.hasOwn(row, parts[1]));
}
