/* oxlint-disable typescript/no-unsafe-type-assertion -- inputs are made from declarations known only at run time */
// Random SI inputs for every method, wide but mostly inside the limits. No unit text is involved.
import * as fc from "fast-check";
import type { InputValue } from "../../src/methods/field.ts";
import { type AnyMethod, methods } from "../../src/methods/index.ts";
import { isProblem } from "../../src/problem.ts";
import type { Kind } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import { goodFor } from "./good-inputs.ts";
import { of } from "./helpers.ts";
import { published } from "./published.ts";

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
  pressure: [1e5, 1e7],
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
  reading: [0.0249, 0.0251],
  nominal: [0.0249, 0.0251],
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

/** Texts and ranges that only one method takes, under "method name". */
const textsOfMethod: Readonly<Record<string, readonly string[]>> = {
  "nut-strength standard": ["ISO 898-2"],
  "nut-strength grade": ["6", "8", "10"],
  "nut-strength designation": ["M24", "M8", "M16", "M30"],
  "thread-limits designation": ["M24x3", "M8", "M10x1.25", "M64", "M3"],
  "thread-limits toleranceClass": ["6g", "6H", "6h", "6G", "6e", "5g6g", "4H5H", "8g"],
  "thread-stripping externalDesignation": ["M24x3", "M8", "M10x1.25", "M3"],
  "thread-stripping externalClass": ["6g", "6h", "4h"],
  "thread-stripping internalClass": ["6H", "6G", "5H"],
  "clearance-hole designation": ["M12", "M24", "M8x1"],
  "clearance-hole series": ["fine", "medium", "coarse"],
  "clearance-hole standard": ["ISO 273"],
  "fit-limits-inch fit": ["LN 2", "RC4", "LT 1", "LC 5", "FN 2"],
  "recommended-torque standard": ["AC 43.13-1B"],
  "recommended-torque designation": ["3/8-24", "1/2-13", "10-32"],
  "recommended-torque column": ["tension nut", "shear nut", "max tension nut", "max shear nut"],
};
const rangeOfMethod: Readonly<Record<string, Range>> = {
  "fit-limits-inch size": [0.001, 0.08],
  "multiplier-input ratio": [1, 30],
  "assembly-preload-limit minorDiameterExternal": [0.004, 0.02],
  "assembly-preload-limit pitchDiameter": [0.0201, 0.06],
  "assembly-preload-limit torsionFactor": [1.5, 2],
  "sling-legs span": [0.5, 4],
  "sling-legs centreOffset": [0, 0.2],
  "stop-torque preload": [1e3, 5e4],
  "stop-torque stressArea": [1e-4, 2e-3],
  "stop-torque yieldStress": [5.1e8, 1e9],
  "bolts-required preload": [1e3, 5e4],
  "bolts-required stressArea": [6e-4, 2e-3],
};

/** Optional inputs that are never given here, and those that always are. */
const leftOut: Readonly<Record<string, readonly string[]>> = {
  "thread-stripping": ["limits"],
  "nut-factor-trial": ["preloads"],
};
const alwaysGiven: Readonly<Record<string, readonly string[]>> = {
  "nut-factor-trial": ["stretches", "boltStiffness"],
};

/** Columns of which a row gives one: both would be twice the same. */
const eitherColumn: Readonly<Record<string, readonly string[]>> = {
  "bolt-stiffness segments": ["area", "diameter"],
};

const number = ([min, max]: Range) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

type Field = AnyMethod["inputs"][string];

function inputOf(method: string, name: string, field: Field): fc.Arbitrary<InputValue> {
  if (field.kind === "text") {
    const choices =
      textsOfMethod[`${method} ${name}`] ??
      field.choices ??
      (name === "designation" ? designations[method] : texts[name]) ??
      published(method).flatMap((row) => (typeof row[name] === "string" ? [row[name]] : []));
    return fc.constantFrom(...choices);
  }
  if (field.kind === "list") {
    const row = (left?: string) =>
      fc.record(
        Object.fromEntries(
          Object.entries(field.of)
            .filter(([column]) => column !== left)
            .map(([column, part]) => [column, inputOf(method, column, part)]),
        ),
      ) as fc.Arbitrary<Record<string, never>>;
    const lefts = eitherColumn[`${method} ${name}`];
    return fc.array(lefts ? fc.oneof(...lefts.map(row)) : row(), { minLength: 1, maxLength: 5 });
  }
  const { kind } = field;
  const range = rangeOfMethod[`${method} ${name}`] ?? byName[name] ?? byKind[field.kind];
  if (!range) throw new Error(`no range for ${method} ${name} of kind ${field.kind}`);
  const value = field.kind === "count" ? fc.integer({ min: range[0], max: range[1] }) : number(range);
  return value.map((v) => of(kind, v));
}

/** Methods that take rows of texts, such as tags and findings, run on their one set of good inputs. */
const readsTextRows = (method: AnyMethod): boolean =>
  Object.values(method.inputs).some(
    (field) => field.kind === "list" && Object.values(field.of).some((part) => part.kind === "text"),
  ) || method.id === "gap-plane"; // random corners seldom span a plane

export const randomIn = (id: string): boolean => {
  const method = methods.get(id);
  return method !== undefined && !readsTextRows(method);
};

/** A typed input as SI numbers; the oracle needs those, and reading units is not what it tests. */
function toSi(field: Field | undefined, value: InputValue): InputValue {
  if (!field || field.kind === "text" || (typeof value === "object" && "si" in value)) return value;
  if (field.kind === "list")
    return Array.isArray(value)
      ? value
          .map((given) => (typeof given === "object" ? given : { [Object.keys(field.of)[0] ?? ""]: given }))
          .map(
            (row) =>
              Object.fromEntries(
                Object.entries(row).map(([n, v]) => [n, toSi(field.of[n], v as InputValue)]),
              ) as never,
          )
      : value;
  const text = typeof value === "object" ? "a list" : String(value);
  const read = quantity(text, field.kind);
  if (isProblem(read)) throw new Error(`good inputs hold "${text}"`);
  return of(field.kind, read.si);
}

const defaults = (method: AnyMethod): Record<string, string> =>
  Object.fromEntries(
    Object.entries(method.inputs).flatMap(([name, field]) =>
      "default" in field && field.default !== undefined ? [[name, field.default]] : [],
    ),
  );

/** Every input of the method; an optional one is left out now and then. */
export function randomInputs(method: AnyMethod): fc.Arbitrary<Record<string, InputValue>> {
  if (!randomIn(method.id))
    return fc.constant(
      Object.fromEntries(
        Object.entries({ ...defaults(method), ...goodFor(method.id) }).map(([name, value]) => [
          name,
          toSi(method.inputs[name], value),
        ]),
      ),
    );
  const entries = Object.entries(method.inputs).filter(([name]) => !leftOut[method.id]?.includes(name));
  const all = Object.fromEntries(entries.map(([name, field]) => [name, inputOf(method.id, name, field)]));
  const mayMiss = new Set(
    entries.filter(([, field]) => "optional" in field && field.optional).map(([name]) => name),
  );
  const required = entries
    .map(([name]) => name)
    .filter((name) => !mayMiss.has(name) || alwaysGiven[method.id]?.includes(name));
  return fc.record(all, { requiredKeys: required }) as fc.Arbitrary<Record<string, InputValue>>;
}
