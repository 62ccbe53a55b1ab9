// Shared by the tests of the methods: reading an answer, breaking a limit, comparing numbers.
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { InputValue, SiValue } from "../../src/methods/field.ts";
import type { AnyMethod } from "../../src/methods/index.ts";
import type { Solution } from "../../src/methods/solution.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";

export type Inputs = Readonly<Record<string, InputValue>>;

export function answer(result: Solution | Problem): Solution {
  if (isProblem(result)) throw new Error(`expected an answer: ${sentence(result)}`);
  return result;
}

export function refusal(result: Solution | Problem): Problem {
  if (!isProblem(result)) throw new Error(`expected a problem from ${result.method}`);
  return result;
}

/** The inputs without those that this method refuses beside the others, each by name; undefined where it refuses more. */
export function acceptedBy(method: AnyMethod, inputs: Inputs): Inputs | undefined {
  const result = method.solveNamed(inputs);
  if (!isProblem(result)) return inputs;
  const name = result.code === "not-used" ? /^(\w+)/.exec(result.got ?? "")?.[1] : undefined;
  if (name === undefined || !Object.hasOwn(inputs, name)) return undefined;
  const { [name]: _, ...rest } = inputs;
  return acceptedBy(method, rest);
}

/** Solved with what it does not refuse by name. */
export const solveAccepted = (method: AnyMethod, inputs: Inputs): Solution | Problem =>
  method.solveNamed(acceptedBy(method, inputs) ?? inputs);

/** SI number of an output. */
export function si(result: Solution | Problem, output: string): number {
  const found = answer(result).outputs[output];
  if (!found || !("si" in found)) throw new Error(`no number ${output}`);
  return found.si;
}

export function yes(result: Solution | Problem, output: string): boolean {
  const found = answer(result).outputs[output];
  if (found?.kind !== "yes/no") throw new Error(`no yes or no ${output}`);
  return found.yes;
}

/** Numbers of a list, row by row; texts are left out. */
export function rows(
  result: Solution | Problem,
  output: string,
): readonly Readonly<Record<string, number>>[] {
  const found = answer(result).outputs[output];
  if (found?.kind !== "list") throw new Error(`no list ${output}`);
  return found.rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).flatMap(([name, value]) => ("si" in value ? [[name, value.si]] : [])),
    ),
  );
}

/** SI number of a step between the inputs and the outputs. */
export function step(result: Solution | Problem, name: string): number {
  const found = answer(result).working.find((worked) => worked.name === name);
  if (!found) throw new Error(`no step ${name}`);
  return found.si;
}

/** An SI number as an input, without a typed text. */
export const of = (kind: Kind, value: number): SiValue => ({
  si: value,
  dimension: kinds[kind].dimension,
  kind,
});

export function deviation(found: number, expected: number): number {
  return found === expected ? 0 : Math.abs(found - expected) / Math.max(Math.abs(found), Math.abs(expected));
}

/** Equal but for rounding in double precision. */
export function expectClose(found: number, expected: number, relative = 1e-12): void {
  if (deviation(found, expected) > relative)
    expect.fail(`${found} is not within ${relative} of ${expected}: off by ${deviation(found, expected)}`);
}

/** A number printed in a source: within half of its last digit. */
export function expectPrinted(found: number, printed: string, factor = 1): void {
  const decimals = printed.split(".")[1]?.length ?? 0;
  const half = 0.5 * 10 ** -decimals;
  expect(
    Math.abs(found / factor - Number(printed)),
    `${found / factor} printed ${printed}`,
  ).toBeLessThanOrEqual(half * (1 + 1e-9));
}

export function deepFreeze<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    for (const part of Object.values(value)) deepFreeze(part);
    Object.freeze(value);
  }
  return value;
}

/**
 * One bad value for every limit the method declares, under the text of the limit.
 * A limit added later has none, so its first test fails until it gets one.
 */
export function testLimits(method: AnyMethod, good: Inputs, broken: Readonly<Record<string, Inputs>>): void {
  test("every declared limit has a value here that breaks it", () => {
    expect(Object.keys(broken).toSorted()).toEqual(method.limits.map((limit) => limit.that).toSorted());
  });
  for (const limit of method.limits) {
    const change = broken[limit.that];
    if (!change) continue;
    const title = limit.warn
      ? `outside ${limit.that} the answer stands and carries a warning`
      : `outside ${limit.that} there is no answer but a sentence`;
    test(title, () => {
      const result = solveAccepted(method, { ...good, ...change });
      const said = limit.warn
        ? answer(result).warnings.find((warning) => warning.why?.startsWith(limit.else))
        : refusal(result);
      if (!said) throw new Error("no warning was given");
      expect(said.code).toBe(limit.code ?? (limit.warn ? "limit-warning" : "limit"));
      expect(said.where).toBe(method.id);
      expect(said.why).toContain(limit.else);
      expect(said.must).toMatch(/^(be|keep to|differ from) \S/);
      expectNamed(method, limit.that, said);
      expectHouseWording(said);
    });
  }
}

/** The sentence says which input, or which step, it is about: in words or by name. */
function expectNamed(method: AnyMethod, limit: string, said: Problem): void {
  const words = sentence(said);
  const used = [...limit.matchAll(/[A-Za-z]+(\.[A-Za-z]+)?/g)].map(([name]) => name);
  const labels = used.flatMap((name) => [
    name,
    method.inputs[name]?.says ?? name,
    method.outputs[name]?.says ?? name,
    method.between?.[name]?.says ?? name,
    columnWords(method, name),
    method.procedure?.gives?.[name]?.says ?? name,
  ]);
  expect(
    labels.some((label) => words.includes(label)),
    words,
  ).toBe(true);
}

/** What a column such as segments.area is called, where it is taken in, found or given out. */
function columnWords(method: AnyMethod, name: string): string {
  const [list = "", column = ""] = name.split(".");
  for (const field of [method.inputs[list], method.outputs[list]]) {
    const says = field?.kind === "list" ? field.of[column]?.says : undefined;
    if (says) return says;
  }
  return method.procedure?.givesRows?.[list]?.[column]?.says ?? name;
}

/** Where · what: lower case, no full stop, no exclamation mark, nothing undefined. */
export function expectHouseWording(said: Problem): void {
  const words = sentence(said);
  expect(words).toMatch(/^\S.* · .+/);
  expect(words).not.toMatch(/undefined|NaN|\[object|Infinity/);
  expect(words).not.toMatch(/[.!]$/);
}

/** Numbers of a usual size: no NaN, no infinity, and 0 in place of what is too small to keep its digits. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc
    .double({ min, max, noNaN: true, noDefaultInfinity: true })
    .map((value) => (Math.abs(value) < 1e-9 * Math.max(Math.abs(min), Math.abs(max)) ? 0 : value))
    .filter((value) => value >= min);

/** A number with a few figures, as people type one. */
export const typedNumber = (min: number, max: number, decimals = 2): fc.Arbitrary<string> =>
  fc
    .integer({ min: Math.ceil(min * 10 ** decimals), max: Math.floor(max * 10 ** decimals) })
    .map((digits) => (digits / 10 ** decimals).toFixed(decimals));
