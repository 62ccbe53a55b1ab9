// What lies behind a check and bears on it: warnings, readings that were set aside, readings far from their group.
import type { Line, LineValue } from "../engine/line.ts";
import { closure } from "../engine/waves.ts";
import { grouped } from "../grouped.ts";
import { isProblem, type Problem } from "../problem.ts";
import { type OddReading, oddReadings, type SetAsideWords, setAsidesOf } from "./set-asides.ts";
import { type Warning, warningsOf } from "./warnings.ts";

/** One finding with the line it stands at. */
export type At<T> = T & { readonly line: Line };

export interface Bearing {
  readonly warnings: readonly At<Warning>[];
  readonly odd: readonly At<OddReading>[];
  readonly setAside: readonly At<SetAsideWords>[];
}

const ofEach = <T extends object>(
  lines: readonly Line[],
  of: (line: Line) => readonly T[],
): readonly At<T>[] => lines.flatMap((line) => of(line).map((found) => ({ line, ...found })));

/** All that a page has of them. */
export const bearingOf = (lines: readonly Line[]): Bearing => ({
  warnings: ofEach(lines, warningsOf),
  odd: ofEach(lines, oddReadings),
  setAside: ofEach(lines, setAsidesOf),
});

const where = (all: Bearing, is: (found: At<object>) => boolean): Bearing => ({
  warnings: all.warnings.filter(is),
  odd: all.odd.filter(is),
  setAside: all.setAside.filter(is),
});

/** For the line of this name what it rests on, itself among it. */
export function bearingOn(all: Bearing, lines: readonly Line[]): (name: string) => Bearing {
  const uses = new Map(lines.map((line) => [line.name, line.uses]));
  return (name) => {
    const behind = closure(name, uses);
    return where(all, ({ line }) => behind.has(line.name));
  };
}

/** Of these what belongs to one row of a check, by the key of that row. */
export function bearingByRow(all: Bearing, key: string): (row: string) => Bearing {
  const warnings = grouped(all.warnings, ({ line, row }) => (hasKey(line.value, key) ? row : undefined));
  const odd = grouped(all.odd, ({ line, row }) => keyAt(line.value, key, row));
  const setAside = grouped(all.setAside, ({ line, row }) => keyAt(line.value, key, row));
  return (row) => ({
    warnings: warnings.get(row) ?? [],
    odd: odd.get(row) ?? [],
    setAside: setAside.get(row) ?? [],
  });
}

const hasKey = (value: LineValue | Problem, key: string): boolean =>
  !isProblem(value) && value.type === "rows" && value.key === key;

const keyAt = (value: LineValue | Problem, key: string, row: number): string | undefined =>
  isProblem(value) || value.type !== "table"
    ? undefined
    : value.columns.find(({ name }) => name === key)?.typed[row];
