// Random SI inputs for every method, wide but mostly inside the limits. No unit text is involved.
import * as fc from "fast-check";
import type { InputValue } from "../../src/methods/field.ts";
import type { AnyMethod } from "../../src/methods/index.ts";
import type { Kind } from "../../src/units/kind.ts";
import { of } from "./helpers.ts";

type Range = readonly [low: number, high: number];

const byKind: Partial<Record<Kind, Range>> = {
  ratio: [0.01, 0.49],
  count: [1, 40],
  angle: [0.35, 0.9],
  length: [0.002, 0.5],
  area: [1e-5, 2e-3],
  force: [1e3, 5e5],
  torque: [1, 2e3],
  stress: [1e8, 1e9],
  temperature: [250, 400],
  "temperature difference": [-80, 120],
  expansion: [8e-6, 2.5e-5],
  stiffness: [1e8, 5e9],
  compliance: [1e-11, 1e-9],
};

/** Fields whose name says more than their kind. */
const byName: Readonly<Record<string, Range>> = {
  modulus: [7e10, 2.2e11],
  outerModulus: [7e10, 2.2e11],
  innerModulus: [7e10, 2.2e11],
  interference: [0, 5e-5],
  embedding: [0, 3e-5],
  handling: [0, 3e-5],
  diameter: [0.005, 0.06],
  outerDiameter: [0.061, 0.2],
  boreDiameter: [0, 0.0049],
  innerDiameter: [0.001, 0.06],
  holeDiameter: [0.004, 0.05],
  faceDiameter: [0.0501, 0.12],
  pitch: [0.0005, 0.006],
  pitchDiameter: [0.004, 0.06],
  factorOfSafety: [1, 3],
  separationFactor: [1, 2],
  tripFactor: [1, 2],
  tighteningFactor: [1, 4],
  size: [0.0011, 0.49],
  reading: [0.01, 0.2],
  nominal: [0.01, 0.2],
};

const designations: Readonly<Record<string, readonly string[]>> = {
  "metric-thread": ["M24x3", "M8", "M10x1.25", "M64", "M3"],
  "unified-thread": ["3/8-24 UNF", "1/2-13", "1-8 UNC", "1/4-28 UNF"],
  "bolt-strength": ["M24", "M8", "M16", "M30"],
};

const texts: Readonly<Record<string, readonly string[]>> = {
  standard: ["ISO 898-1"],
  grade: ["8.8", "10.9", "4.6"],
  hole: ["H7", "H8", "K7", "P7", "N6", "JS7"],
  shaft: ["k6", "h6", "g6", "s6", "f7", "m5"],
};

const number = ([min, max]: Range) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

type Field = AnyMethod["inputs"][string];

function valueOf(method: string, name: string, field: Field): fc.Arbitrary<InputValue> {
  if (field.kind === "text") {
    const choices = field.choices ?? (name === "designation" ? designations[method] : texts[name]);
    if (!choices) throw new Error(`no texts for ${method} ${name}`);
    return fc.constantFrom(...choices);
  }
  if (field.kind === "list")
    return fc.array(
      fc.record(
        Object.fromEntries(
          Object.entries(field.of).map(([column, part]) => [column, valueOf(method, column, part)]),
        ),
      ) as fc.Arbitrary<Record<string, never>>,
      { minLength: 1, maxLength: 5 },
    );
  const range = byName[name] ?? byKind[field.kind];
  if (!range) throw new Error(`no range for ${method} ${name} of kind ${field.kind}`);
  return number(range).map((value) => of(field.kind as Kind, value));
}

/** Every input of the method; an optional one is left out now and then. */
export function randomInputs(method: AnyMethod): fc.Arbitrary<Record<string, InputValue>> {
  const entries = Object.entries(method.inputs);
  const all = Object.fromEntries(entries.map(([name, field]) => [name, valueOf(method.id, name, field)]));
  const mayMiss = new Set(entries.filter(([, field]) => "optional" in field && field.optional).map(([name]) => name));
  const required = entries.map(([name]) => name).filter((name) => !mayMiss.has(name));
  return fc.record(all, { requiredKeys: required }) as fc.Arbitrary<Record<string, InputValue>>;
}
