// Worked examples as published, and own closed forms; how each is known stands beside it.
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import raw from "./uncertainty-cases.json";

export interface Case {
  readonly id: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly recomputed: Readonly<Record<string, unknown>>;
}

const cases: readonly Case[] = raw.cases;

export function caseById(id: string): Case {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
}

export const caseCount = cases.length;

export const numbers = (list: unknown): readonly number[] => (Array.isArray(list) ? list.map(Number) : []);

export function answered<T>(found: T | Problem): T {
  if (isProblem(found)) throw new Error(sentence(found));
  return found;
}
