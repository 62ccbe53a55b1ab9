// Wrong and impossible inputs, as a person would type them to splitline solve: each gives a sentence
// that names the input, never a silent number. One part is a table of cases, the other goes through
// every input of every method.
import { describe, expect, it } from "vitest";
import type { InputField } from "../../src/methods/field.ts";
import { methods } from "../../src/methods/index.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";
import { goodFor } from "../methods/good-inputs.ts";
import type { Inputs } from "../methods/helpers.ts";
import { splitline } from "./built.ts";
import { solved, words } from "./in-process.ts";

type Case = readonly [what: string, id: string, change: Inputs, says: RegExp];

const point = { x: "75 mm", y: "60 mm" };

const cases: readonly Case[] = [
  ["hole larger than the washer", "bearing-pressure", { innerDiameter: "40 mm" }, /larger than the washer/],
  ["hole as large as the washer", "bearing-pressure", { innerDiameter: "33.25 mm" }, /nothing is left/],
  [
    "hole larger than the face",
    "clamped-stiffness-cone",
    { holeDiameter: "37 mm" },
    /larger than the washer/,
  ],
  ["hole as large as the face", "clamped-stiffness-cone", { holeDiameter: "36 mm" }, /nothing is left/],
  ["friction above 1", "torque-from-friction", { threadFriction: "1.2" }, /below 1; .*percentage/],
  ["friction as a percentage", "torque-from-friction", { bearingFriction: "120 %" }, /below 1/],
  ["friction of 12", "preload-from-friction", { threadFriction: "12" }, /below 1/],
  ["friction above 1 off", "loosening-torque", { bearingFriction: "1.5" }, /below 1/],
  ["friction above 1 at a share", "assembly-preload-limit", { threadFriction: "1.1" }, /below 1/],
  ["friction above 1 in a fit", "press-fit", { friction: "1.2" }, /below 1/],
  ["friction above 1 of a dowel", "dowel-jam", { friction: "1.01" }, /below 1/],
  ["friction above 1 of faces", "side-load-share", { friction: "1.01" }, /below 1/],
  ["bolts at one point", "bolt-group-shear", { bolts: [point, point, point] }, /at one point.*no arm/],
  ["one bolt against a moment", "bolt-group-shear", { bolts: [point] }, /no arm/],
  ["a circle of no radius", "bolt-circle-tension", { circleRadius: "0 mm" }, /no arm/],
  ["no bolt stiffness", "load-share", { boltStiffness: "0 kN/mm" }, /a joint needs a bolt/],
  ["no clamped stiffness", "load-share", { clampedStiffness: "0 kN/mm" }, /without stiffness/],
  ["no stiffness, warm", "thermal-preload-change", { clampedStiffness: "0 N/mm" }, /without stiffness/],
  ["no stiffness, bedding", "embedding-loss", { boltStiffness: "0 kN/mm" }, /a joint needs a bolt/],
  ["no stiffness, stretch", "stretch-from-preload", { boltStiffness: "0 kN/mm" }, /no stretch/],
  ["no stiffness, turn", "turn-for-preload", { clampedStiffness: "0 kN/mm" }, /above 0/],
  ["preload above yield", "stop-torque", { preload: "240 kN" }, /preload alone is at yield/],
  ["preload at yield", "stop-torque", { preload: "232.65 kN" }, /preload alone is at yield/],
  ["scatter of 100 %", "preload-bounds", { scatter: "100 %" }, /least preload would be none/],
  ["scatter of 25", "preload-bounds", { scatter: "25" }, /below 1.*is 25 % meant/],
  ["scatter of 100 % in the window", "preload-window", { scatter: "100 %" }, /least preload would be none/],
  ["all of it relaxed", "preload-window", { relaxation: "100 %" }, /nothing would be left/],
  ["a torque tolerance of 100 %", "preload-bounds", { torqueTolerance: "100 %" }, /below 1/],
  ["a preload above proof and breaking", "bolt-fatigue", { preload: "210 kN" }, /at proof|breaks the bolt/],
  [
    "a layer of negative thickness",
    "clamped-stiffness-cone",
    { layers: [{ thickness: "-5 mm", modulus: "205 GPa" }] },
    /not clamped/,
  ],
  [
    "a segment of negative length",
    "bolt-stiffness",
    { segments: [{ length: "-97 mm", area: "490 mm2" }] },
    /carries no stretch/,
  ],
  ["a negative wrench", "wrench-setting", { wrenchLength: "-650 mm" }, /no wrench is so short/],
  ["a negative grip", "thermal-preload-change", { grip: "-108 mm" }, /nothing is clamped/],
  ["5 mm for a torque", "preload-from-torque", { torque: "5 mm" }, /got 5 mm, a length, must be a torque/],
  ["5 N.m for a length", "preload-from-torque", { diameter: "5 N.m" }, /must be a length/],
  ["a torque in joules", "preload-from-torque", { torque: "500 J" }, /torque/],
  ["a bare number", "preload-from-torque", { torque: "500" }, /without a unit/],
  ["a nut factor of 14", "preload-from-torque", { nutFactor: "14" }, /below 1/],
  ["NaN", "preload-from-torque", { torque: "NaN" }, /number and a unit/],
  ["NaN N.m", "preload-from-torque", { torque: "NaN N.m" }, /number and a unit/],
  ["Infinity N.m", "preload-from-torque", { torque: "Infinity N.m" }, /number and a unit/],
  ["1e400 N.m", "preload-from-torque", { torque: "1e400 N.m" }, /between 1e-300 and 1e300/],
  ["1e-400", "preload-from-torque", { nutFactor: "1e-400" }, /between 1e-300 and 1e300/],
  [
    "an answer beyond all bounds",
    "preload-from-torque",
    { torque: "1e299 N.m", diameter: "1e-299 mm" },
    /must stay below 1.8e308/,
  ],
];

function expectRefused(outcome: { exit: number; out?: string; err?: string }, id: string): string {
  const { exit, out = "", err = "" } = outcome;
  expect({ exit, out }).toEqual({ exit: 2, out: "" });
  expect(err.trim().split("\n")).toHaveLength(1);
  expect(err.startsWith(`${id} · `), err).toBe(true);
  expect(err).not.toMatch(/undefined|\[object|[.!]\n$/);
  return err;
}

describe("a limit message, never a silent number", () => {
  it.each(cases)("%s: %s", (_, id, change, says) => {
    expect(expectRefused(solved(id, { ...goodFor(id), ...change }), id)).toMatch(says);
  });

  it("the built command line says the same", async () => {
    for (const [, id, change] of cases.slice(0, 3)) {
      const inputs = { ...goodFor(id), ...change };
      expect(await splitline("solve", id, ...words(inputs))).toEqual({ ...solved(id, inputs), out: "" });
    }
  });
});

type Place = readonly [name: string, kind: Kind, set: (text: string) => Inputs];

const isRows = (value: unknown): value is readonly (string | Readonly<Record<string, string>>)[] =>
  Array.isArray(value);
const isNumber = (field: InputField): field is InputField & { kind: Kind } =>
  Object.hasOwn(kinds, field.kind);

/** Every number a good example holds; of a list the first row. */
function placesOf(id: string): Place[] {
  const good = goodFor(id);
  return Object.entries(methods.get(id)?.inputs ?? {}).flatMap(([name, field]): Place[] => {
    if (isNumber(field)) return [[name, field.kind, (text) => ({ ...good, [name]: text })]];
    const rows = good[name];
    if (field.kind !== "list" || !isRows(rows)) return [];
    const [first, ...rest] = rows;
    return Object.entries(field.of).flatMap(([column, of]): Place[] => {
      if (!isNumber(of)) return [];
      const row = (text: string) => (typeof first === "string" ? text : { ...first, [column]: text });
      return [[`${name}.${column}`, of.kind, (text) => ({ ...good, [name]: [row(text), ...rest] })]];
    });
  });
}

const placesIn = (wanted: (kind: Kind, name: string) => boolean): (readonly [string, string, Place])[] =>
  [...methods.keys()].flatMap((id) =>
    placesOf(id).flatMap((place) => (wanted(place[1], place[0]) ? [[id, place[0], place] as const] : [])),
  );

/** Lengths whose sign says something: places in a plane, gaps and changes, clearance against interference. */
const signed = new Set([
  "bolt-group-shear bolts.x",
  "bolt-group-shear bolts.y",
  "bolt-group-shear at.x",
  "bolt-group-shear at.y",
  "gap-plane stations.x",
  "gap-plane stations.y",
  "gap-plane stations.gap",
  "change-since before",
  "change-since after",
  "fit-after-soak interference",
  "fit-of-pair tightestAllowed",
  "fit-of-pair loosestAllowed",
  "select-bolts tightestAllowed",
  "select-bolts loosestAllowed",
  "select-bolts targetClearance",
  "shank-contraction interference",
  "side-load-share bolts.clearance",
]);

describe("every number of every method", () => {
  const numbers = placesIn(() => true);

  it.each(numbers)(
    "%s %s refuses a unit of another kind, no number and one beyond all bounds",
    (id, _, place) => {
      const [, kind, set] = place;
      const usual = kinds[kind].usual[0];
      const unitText = usual === undefined || usual === "1" ? "" : ` ${usual}`;
      for (const text of [kind === "length" ? "5 N.m" : "5 mm", "NaN", `1e400${unitText}`, `--5${unitText}`])
        expectRefused(solved(id, set(text)), id);
    },
  );

  const lengths = placesIn((kind) => kind === "length").filter(([id, name]) => !signed.has(`${id} ${name}`));
  it.each(lengths)("%s %s refuses a negative length", (id, _, [, , set]) => {
    expectRefused(solved(id, set("-7 mm")), id);
  });

  it.each(placesIn((kind) => kind === "stiffness"))("%s %s refuses no stiffness", (id, _, [, , set]) => {
    expectRefused(solved(id, set("0 kN/mm")), id);
    expectRefused(solved(id, set("-5 kN/mm")), id);
  });

  it.each(placesIn((kind, name) => kind === "ratio" && /friction|nutFactor$/i.test(name)))(
    "%s %s refuses 1.2, 120 % and less than nothing",
    (id, _, [, , set]) => {
      for (const text of ["1.2", "120 %", "-0.1"]) expectRefused(solved(id, set(text)), id);
    },
  );
});
