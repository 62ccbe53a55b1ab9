// A declaration that does not hold together never runs: it throws at load, naming the step.
import { expect, test } from "vitest";
import { type Declaration, method } from "../../src/methods/method.ts";
import { preparedOf } from "../../src/methods/run.ts";
import { practice } from "../../src/source.ts";

const known = practice("for this test");

const declared = (changes: Partial<Declaration>): Declaration =>
  method({
    id: "sample",
    question: "Does this load?",
    inputs: {
      force: { kind: "force", says: "force" },
      arm: { kind: "length", says: "arm" },
      layers: {
        kind: "list",
        says: "layers",
        optional: true,
        of: { thickness: { kind: "length", says: "t" } },
      },
    },
    steps: { torque: "force * arm" },
    outputs: { torque: { kind: "torque", says: "torque" } },
    limits: [],
    sources: { "*": known },
    ...changes,
  });

const loading = (changes: Partial<Declaration>) => () => preparedOf(declared(changes));

test("a declaration that holds together loads", () => {
  expect(preparedOf(declared({})).problems).toEqual([]);
});

test.each<[string, Partial<Declaration>, RegExp]>([
  [
    "a step whose dimension is not that of its output",
    { steps: { torque: "force / arm" } },
    /torque.*must be a torque/,
  ],
  ["a sum of unlike dimensions", { steps: { torque: "force + arm" } }, /torque/],
  ["a step that names something unknown", { steps: { torque: "force * lever" } }, /lever/],
  [
    "a step that names a later step",
    { steps: { torque: "force * lever", lever: "2 * arm" } },
    /lever.*must be an input or a step above/,
  ],
  ["a loop of two steps", { steps: { torque: "half * 2", half: "torque / 2" } }, /half/],
  ["a step that does not parse", { steps: { torque: "force * " } }, /torque/],
  ["a step with an implied product", { steps: { torque: "2 force" } }, /torque/],
  ["a step without a source", { sources: { other: known } }, /torque.*must have a source/],
  ["an output without a step", { steps: { moment: "force * arm" } }, /torque.*must come from a step/],
  ["a limit that names something unknown", { limits: [{ that: "lever > 0", else: "no" }] }, /lever/],
  [
    "a limit that compares unlike dimensions",
    { limits: [{ that: 'force > "1 mm"', else: "no" }] },
    /limit "force > "1 mm""/,
  ],
  ["a limit that does not parse", { limits: [{ that: "force >", else: "no" }] }, /limit "force >"/],
  [
    "a row formula of a list that is not declared",
    { each: { plates: { half: "thickness / 2" } } },
    /thickness/,
  ],
  ["a column used where one number is meant", { steps: { torque: "force * layers.thickness" } }, /torque/],
  ["a sine of a length", { steps: { torque: "force * arm * sin(arm)" } }, /torque/],
])("%s fails to load", (_, changes, words) => {
  expect(loading(changes)).toThrow(words);
});

test("a limit that is a number and not a comparison fails to load", () => {
  expect(loading({ limits: [{ that: "force", else: "no" }] })).toThrow(/limit "force"/);
});

test("an output declared as a number that a comparison answers fails to load", () => {
  expect(loading({ steps: { torque: "force * arm > force * arm" } })).toThrow(/torque/);
});

test("variants chosen by something that is no text input fail to load", () => {
  expect(loading({ variants: { by: "form", sets: { a: { torque: "force * arm" } } }, steps: {} })).toThrow(
    /form/,
  );
});

test("a choice that no variant answers fails to load", () => {
  expect(
    loading({
      inputs: {
        force: { kind: "force", says: "force" },
        arm: { kind: "length", says: "arm" },
        form: { kind: "text", says: "form", choices: ["long", "short"] },
      },
      variants: { by: "form", sets: { long: { torque: "force * arm" } } },
      steps: {},
    }),
  ).toThrow(/short/);
});

test("a default that cannot be read fails to load", () => {
  expect(
    loading({
      inputs: {
        force: { kind: "force", says: "force", default: "5 mm" },
        arm: { kind: "length", says: "arm" },
      },
    }),
  ).toThrow(/force/);
});

test("method() refuses a declaration without any source or any output at once", () => {
  expect(() => declared({ sources: {} })).toThrow(/needs a source/);
  expect(() => declared({ outputs: {} })).toThrow(/needs an output/);
});

test("parsing waits until first use: declaring a method with a bad step does not throw", () => {
  expect(() => declared({ steps: { torque: "force /" } })).not.toThrow();
});
