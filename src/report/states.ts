// States of lines and rows, and the order they are told in: the worst first.
import type { Line, LineValue, ReadingState } from "../engine/line.ts";
import { isProblem, type Problem } from "../problem.ts";
import { type State, states } from "../verdict.ts";

/** A state of a check, a state of a reading that has to be looked at, or a warning. */
export type Mark = State | Exclude<ReadingState, "entered"> | "warning";

interface Valued {
  readonly value: LineValue | Problem;
}

export const isCheck = ({ item }: Line): boolean => item.kind === "check";

/** Of a check or of one of its rows; the worst row stands for a check that is asked row by row. */
export const stateOf = ({ value }: Valued): State =>
  isProblem(value) || !("state" in value) ? "no answer" : value.state;

export const worstFirst = <T extends Valued>(all: readonly T[]): readonly T[] =>
  states.flatMap((state) => all.filter((one) => stateOf(one) === state));

/** Every judgement of a check, row by row where it has rows; a list that must stay empty is one. */
export function judgements(line: Line): readonly State[] {
  const { value } = line;
  if (!isCheck(line)) return [];
  const isOne = isProblem(value) || value.type !== "checks" || value.key === "finding";
  return isOne || value.rows.length === 0 ? [stateOf(line)] : value.rows.map(stateOf);
}

/** "2 fails, 1 unproven"; empty where there is none. */
export const stateCounts = (found: readonly State[]): string =>
  states
    .map((state) => [found.filter((one) => one === state).length, state] as const)
    .filter(([n]) => n > 0)
    .map(([n, state]) => `${n} ${state}`)
    .join(", ");
