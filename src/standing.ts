// What is known about a value besides its number. It travels with the value from line to line, to the
// word that people sign. Everything here is in SI; a doubt is that of one value, to first order.
import { type Problem, sentence } from "./problem.ts";

/** How far one cause moves a value. */
export interface Contribution {
  /** What is in doubt: the name of a given, one reading of a column. */
  readonly root: string;
  /** Roots read with one instrument may all be off together. */
  readonly group: string;
  /** Limits are met at their worst; expanded uncertainties (k = 2) are added as squares. */
  readonly meaning: "limits" | "expanded";
  /** Change of the value when the root goes up by its half-width, SI. */
  readonly change: number;
  /** The doubt belongs to an output of this name, as a scatter of preload stated at a nut factor. */
  readonly applies?: { readonly output: string; readonly share: number };
}

export interface Standing {
  readonly doubt: readonly Contribution[];
  /** Why the number may not hold: nothing is proven by it. */
  readonly reservations: readonly Problem[];
  /** Sources behind it that were recalled and not seen. */
  readonly memory: readonly string[];
  /** Givens behind it of which no source is stated. */
  readonly unsourced: readonly string[];
}

export const clear: Standing = { doubt: [], reservations: [], memory: [], unsourced: [] };

/** What several values hand on besides their doubt, each said once. */
export function joined(parts: readonly Standing[], doubt: readonly Contribution[] = []): Standing {
  const carried = parts.filter((part) => part !== clear);
  if (carried.length === 0) return doubt.length === 0 ? clear : { ...clear, doubt };
  return {
    doubt,
    reservations: once(carried.flatMap((part) => part.reservations)),
    memory: [...new Set(carried.flatMap((part) => part.memory))],
    unsourced: [...new Set(carried.flatMap((part) => part.unsourced))],
  };
}

function once(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length < 2) return problems;
  return [...new Map(problems.map((p) => [sentence(p), p])).values()];
}

/** The same value with a further reason why it may not hold. */
export const reserved = (standing: Standing, ...more: readonly Problem[]): Standing =>
  more.length === 0 ? standing : { ...standing, reservations: once([...standing.reservations, ...more]) };

/**
 * Half-width that the contributions come to, SI. Limits are added at their worst. Within one instrument
 * its readings may be off together or each by itself: the larger of the two counts. Expanded uncertainties
 * of different instruments are added as squares (JCGM 100, from memory), and the two sums are added.
 */
export function halfWidth(doubt: readonly Contribution[]): number {
  let limits = 0;
  const groups = new Map<string, { together: number; squares: number }>();
  for (const { meaning, change, group } of merged(doubt)) {
    if (meaning === "limits") limits += Math.abs(change);
    else {
      const sums = groups.get(group) ?? { together: 0, squares: 0 };
      sums.together += change;
      sums.squares += change * change;
      groups.set(group, sums);
    }
  }
  let squares = 0;
  for (const { together, squares: alone } of groups.values()) squares += Math.max(together * together, alone);
  return limits + Math.sqrt(squares);
}

/** One contribution for each root. */
export function merged(doubt: readonly Contribution[]): readonly Contribution[] {
  const roots = new Map<string, Contribution>();
  for (const part of doubt) {
    const before = roots.get(part.root);
    roots.set(part.root, before ? { ...part, change: before.change + part.change } : part);
  }
  return roots.size === doubt.length ? doubt : [...roots.values()];
}

/** The doubt of one value less that of another: what both share falls out. */
export const differenceOf = (
  doubt: readonly Contribution[],
  less: readonly Contribution[],
): readonly Contribution[] =>
  less.length === 0 ? doubt : merged([...doubt, ...less.map((part) => ({ ...part, change: -part.change }))]);

/** The larger of the two moves stands for a root, with the sign of its upward one. */
export function moved(root: Contribution, up: number, down: number): Contribution {
  const { applies: _, ...plain } = root;
  const size = Math.max(Math.abs(up), Math.abs(down));
  return { ...plain, change: up < 0 || (up === 0 && down > 0) ? -size : size };
}

/** Every root of several doubts, once; its own change means nothing here. */
export function rootsOf(doubts: Iterable<readonly Contribution[]>): readonly Contribution[] {
  const found = new Map<string, Contribution>();
  for (const doubt of doubts) for (const part of doubt) if (!found.has(part.root)) found.set(part.root, part);
  return [...found.values()];
}

/** How far a root moves a value. */
export const changeBy = (doubt: readonly Contribution[], root: string): number => {
  let sum = 0;
  for (const part of doubt) if (part.root === root) sum += part.change;
  return sum;
};
