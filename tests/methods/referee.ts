/* oxlint-disable typescript/no-unsafe-type-assertion -- mathjs takes and gives untyped values */
// A second evaluator for the steps of a method: mathjs reads the same texts and works on SI numbers.
import { all, create, type EvalFunction } from "mathjs";
import type { InputValue } from "../../src/methods/field.ts";
import type { AnyMethod } from "../../src/methods/index.ts";
import type { Insides, Steps } from "../../src/methods/method.ts";
import { isProblem } from "../../src/problem.ts";

// Its comparisons are made exact; by default it calls numbers equal that differ by 1e-12.
const mathjs = create(all ?? {}, { relTol: 1e-300, absTol: 0 });

/** Quantities written in the texts, in SI; worked by hand, so that no unit code of ours is used. */
const quoted: Readonly<Record<string, number>> = {
  "20 degC": 293.15,
  "-100 degC": 173.15,
  "200 degC": 473.15,
  "350 K": 350,
  "1e-4 1/K": 1e-4,
  "90 deg": Math.PI / 2,
  "80 deg": (80 * Math.PI) / 180,
  "60 deg": Math.PI / 3,
  "30 deg": Math.PI / 6,
  "150 mm": 0.15,
  "1 MPa": 1e6,
  "0 kN": 0,
  "0 N": 0,
  "0 N.m": 0,
  "0 mm": 0,
  "0 um": 0,
  "0 deg": 0,
};

const functions = {
  ln: Math.log,
  exp: Math.exp,
  round: (value: number) => (Math.abs(value % 1) === 0.5 ? 2 * Math.round(value / 2) : Math.round(value)), // halves to even
  sum: (values: readonly number[]) => values.reduce((a, b) => a + b, 0),
  count: (values: readonly number[]) => values.length,
  mean: (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length,
  smallest: (values: readonly number[]) => Math.min(...values),
  largest: (values: readonly number[]) => Math.max(...values),
  deviation: (values: readonly number[]) => {
    const middle = values.reduce((a, b) => a + b, 0) / values.length;
    return Math.sqrt(values.reduce((a, b) => a + (b - middle) ** 2, 0) / (values.length - 1));
  },
};

// A method may name an output "largest": calls get a name of their own.
const calls = Object.fromEntries(Object.entries(functions).map(([name, run]) => [`call_${name}`, run]));
const called = new RegExp(`\\b(${Object.keys(functions).join("|")})\\(`, "g");

export type Scope = Record<string, unknown>;

const compiled = new Map<string, EvalFunction>();
export function evaluate(text: string, scope: Scope): unknown {
  let code = compiled.get(text);
  if (!code) {
    // Columns are multiplied and divided row by row, which mathjs writes with a dot.
    const rowwise = text.includes(".") ? text.replace(/ ([*/^]) /g, " .$1 ") : text;
    code = mathjs.compile(
      rowwise.replace(called, "call_$1(").replace(/"([^"]+)"/g, (_, words: string) => {
        const value = quoted[words];
        if (value === undefined) throw new Error(`"${words}" is not among the quantities of this test`);
        return `(${value})`;
      }),
    );
    compiled.set(text, code);
  }
  return code.evaluate({ ...calls, ...scope });
}

const ofMathjs = new Set("pi sqrt abs min max sin cos tan asin acos atan log10 e".split(" "));

/** Names of a text, columns in full. */
const namesOf = (text: string): string[] =>
  [
    ...text
      .replace(/"[^"]*"/g, "")
      .replace(called, "(")
      .matchAll(/[A-Za-z][A-Za-z0-9]*(\.[A-Za-z][A-Za-z0-9]*)?/g),
  ]
    .map(([name]) => name)
    .filter((name) => !ofMathjs.has(name));

export function known(scope: Scope, text: string): boolean {
  return namesOf(text).every((name) => {
    const [base = "", column] = name.split(".");
    const value = scope[base];
    return column === undefined
      ? value !== undefined
      : typeof value === "object" && value !== null && column in value;
  });
}

export function plainInputs(inputs: Readonly<Record<string, InputValue>>): Insides {
  const plain = (value: InputValue): never =>
    (typeof value === "object" && "si" in value
      ? value.si
      : Array.isArray(value)
        ? value.map((row) =>
            Object.fromEntries(
              Object.entries(row).map(([n, v]) => [n, typeof v === "object" ? (v as { si: number }).si : v]),
            ),
          )
        : value) as never;
  return Object.fromEntries(Object.entries(inputs).map(([name, value]) => [name, plain(value)]));
}

export const columnsOf = (rows: readonly Readonly<Record<string, number>>[]): Record<string, number[]> => {
  const columns: Record<string, number[]> = {};
  for (const row of rows)
    for (const [name, value] of Object.entries(row)) columns[name] = [...(columns[name] ?? []), value];
  return columns;
};

/** Every step worked out by mathjs, keyed as the working of a solution names them. */
export function workedByMathjs(
  method: AnyMethod,
  inputs: Readonly<Record<string, InputValue>>,
): Map<string, number> {
  const insides = plainInputs(inputs);
  const found = method.procedure?.run(insides) ?? {};
  if (isProblem(found)) throw new Error("the procedure refused inputs that the method took");
  const values: Record<string, unknown> = { ...insides, ...found };
  const results = new Map<string, number>();
  const keep = (name: string, value: unknown) =>
    results.set(name, typeof value === "boolean" ? Number(value) : (value as number));
  const work = (steps: Steps, scope: Scope) => {
    for (const [name, text] of Object.entries(steps)) {
      if (!known(scope, text)) continue;
      scope[name] = evaluate(text, scope);
      keep(name, scope[name]);
    }
  };
  const rows = new Map(
    Object.entries(values).filter(([, v]) => Array.isArray(v)) as [string, Record<string, number>[]][],
  );
  const scope: Scope = { ...values };
  for (const name of rows.keys()) delete scope[name];
  if (method.variants) work(method.variants.sets[String(values[method.variants.by])] ?? {}, scope);
  for (const [name, given] of rows) {
    const filled = given.map((row, index) => {
      const inside: Scope = { ...scope, ...row };
      for (const [step, text] of Object.entries(method.each?.[name] ?? {})) {
        if (step in row) continue; // given in the row
        inside[step] = evaluate(text, inside);
        keep(`${name} ${index + 1} · ${step}`, inside[step]);
      }
      return inside as Record<string, number>;
    });
    scope[name] = columnsOf(filled);
  }
  work(method.steps ?? {}, scope);
  return results;
}
