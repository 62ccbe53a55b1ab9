// What is known about a value besides its number. It travels with the value from line to line, to the
// word that people sign. Everything here is in SI; a doubt is that of one value, to first order.
import { type Problem, problem, sentence } from "./problem.ts";

/** How far one cause moves a value. */
export interface Contribution {
  /** What is in doubt: the name of a given, one reading of a column. */
  readonly root: string;
  /** One instrument. The root of the same name stands for all its readings off together. */
  readonly group: string;
  /** What a person calls it; the group where not said. */
  readonly says?: string;
  /** Limits are met at their worst; expanded uncertainties (k = 2) are added as squares. */
  readonly meaning: "limits" | "expanded";
  /** Changes of the value when the root goes up and down by its half-width, SI. */
  readonly up: number;
  readonly down: number;
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
  const groups = new Map<string, { together: number; alone: Contribution[] }>();
  for (const part of merged(doubt)) {
    if (part.meaning === "limits") limits += size(part);
    else {
      const sums = groups.get(part.group) ?? { together: 0, alone: [] };
      if (part.root === part.group) sums.together = size(part);
      else sums.alone.push(part);
      groups.set(part.group, sums);
    }
  }
  let squares = 0;
  for (const { together, alone } of groups.values()) squares += Math.max(together, oneByOne(alone)) ** 2;
  return limits + Math.sqrt(squares);
}

const size = ({ up, down }: Contribution): number => Math.max(Math.abs(up), Math.abs(down));

/**
 * Readings each off by itself. What goes up with one end and down with the other is added as squares. A
 * largest, a smallest or an absolute difference of readings alike moves one way only: there two readings
 * count at a time, however many stand level, so that the two largest of these are added.
 */
function oneByOne(parts: readonly Contribution[]): number {
  const isBent = ({ up, down }: Contribution): boolean => 2 * Math.abs(up + down) >= Math.abs(up - down);
  const square = ({ up, down }: Contribution): number => (up * up + down * down) / 2;
  const straight = parts.filter((part) => !isBent(part)).map(square);
  const bent = parts
    .filter(isBent)
    .map(square)
    .sort((a, b) => b - a);
  return Math.sqrt([...straight, ...bent.slice(0, 2)].reduce((a, b) => a + b, 0));
}

/** One contribution for each root. */
export function merged(doubt: readonly Contribution[]): readonly Contribution[] {
  const roots = new Map<string, Contribution>();
  for (const part of doubt) {
    const before = roots.get(part.root);
    roots.set(part.root, before ? { ...part, up: before.up + part.up, down: before.down + part.down } : part);
  }
  return roots.size === doubt.length ? doubt : [...roots.values()];
}

/** The doubt of one value less that of another: what both share falls out. */
export const differenceOf = (
  doubt: readonly Contribution[],
  less: readonly Contribution[],
): readonly Contribution[] =>
  less.length === 0
    ? doubt
    : merged([...doubt, ...less.map((part) => ({ ...part, up: -part.up, down: -part.down }))]);

/** What a root comes to in another value. */
export function moved(root: Contribution, up: number, down: number): Contribution {
  const { applies: _, ...plain } = root;
  return { ...plain, up, down };
}

/** Every root of several doubts, once; its own change means nothing here. */
function rootsOf(doubts: Iterable<readonly Contribution[]>): readonly Contribution[] {
  const found = new Map<string, Contribution>();
  for (const doubt of doubts) for (const part of doubt) if (!found.has(part.root)) found.set(part.root, part);
  return [...found.values()];
}

/** Most causes followed one by one; more would take too long at each key. */
const mostRoots = 400;

/**
 * Causes to follow. Above the bound the readings of an instrument are followed together only, and what
 * that leaves out, as the doubt of a difference between two of them, is a reason why nothing is proven.
 */
export function followed(doubts: Iterable<readonly Contribution[]>): {
  readonly roots: readonly Contribution[];
  readonly left: readonly Problem[];
} {
  const roots = rootsOf(doubts);
  if (roots.length <= mostRoots) return { roots, left: [] };
  const kept = roots.filter((root) => root.root === root.group);
  const left = problem({
    code: "doubt-not-counted",
    what: `${roots.length} causes of doubt`,
    must: `be ${mostRoots} or fewer to be counted one by one`,
    why: "readings are counted as off together only, and a difference between them as exact",
    hint: "work on one hole or one group of readings at a time",
  });
  return { roots: kept, left: [left] };
}

/** How far a root moves a value at one of its ends. */
export function changeBy(doubt: readonly Contribution[], root: string, end: "up" | "down"): number {
  let sum = 0;
  for (const part of doubt) if (part.root === root) sum += part[end];
  return sum;
}

/** A root that moves its own value by its half-width. */
export const own = (half: number): Pick<Contribution, "up" | "down"> => ({ up: half, down: -half });
