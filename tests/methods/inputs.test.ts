// What every method does with its inputs, good and bad.
import { describe, expect, test } from "vitest";
import type { InputField, InputValue } from "../../src/methods/field.ts";
import { methods } from "../../src/methods/index.ts";
import type { Solution } from "../../src/methods/solution.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";
import { goodFor } from "./good-inputs.ts";
import { acceptedBy, answer, deepFreeze, expectHouseWording, of, refusal } from "./helpers.ts";

const quantityNames = (inputs: Readonly<Record<string, InputField>>) =>
  Object.entries(inputs).flatMap(([name, field]) =>
    field.kind === "text" || field.kind === "list" ? [] : [{ name, kind: field.kind, says: field.says }],
  );

/** A unit of another dimension than the kind's own. */
const foreignUnit = (kind: Kind): string =>
  kinds[kind].dimension.mass === 1 && kind === "force" ? "mm" : "kN";

for (const [id, method] of methods)
  describe(id, () => {
    const good = acceptedBy(method, goodFor(id)) ?? {};
    const solve = (change: Readonly<Record<string, unknown>>) =>
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- values of wrong types are the point
      method.solveNamed({ ...good, ...change } as Readonly<Record<string, InputValue | undefined>>);

    test("frozen inputs are untouched and give the same answer twice", () => {
      const frozen = deepFreeze(structuredClone(good) as Record<string, InputValue>);
      const before = JSON.stringify(frozen);
      const first = answer(method.solveNamed(frozen));
      expect(JSON.stringify(frozen)).toBe(before);
      expect(answer(method.solveNamed(frozen)).outputs).toEqual(first.outputs);
    });

    test("a solution does not change when a later one is worked out", () => {
      const first = answer(method.solveNamed(good));
      const shown = first.working.map(
        (step) => `${step.name} ${step.result()} ${JSON.stringify(step.numbers())}`,
      );
      method.solveNamed(good);
      expect(
        first.working.map((step) => `${step.name} ${step.result()} ${JSON.stringify(step.numbers())}`),
      ).toEqual(shown);
    });

    test("an input name with a letter missing is refused and suggests the nearest", () => {
      for (const name of Object.keys(method.inputs)) {
        const said = refusal(solve({ [name.slice(0, -1)]: "1" }));
        expect(said.code).toBe("unknown-input");
        expect(said.suggestions, `${name.slice(0, -1)} of ${id}`).toContain(name);
        expectHouseWording(said);
      }
    });

    test("names that every object has are not inputs", () => {
      for (const name of ["toString", "constructor", "__proto__x"])
        expect(refusal(solve({ [name]: "1" })).code).toBe("unknown-input");
    });

    test("a required input left out is asked for by name with an example", () => {
      for (const [name, field] of Object.entries(method.inputs)) {
        const needed =
          !("optional" in field && field.optional) && !("default" in field && field.default !== undefined);
        if (!needed) continue;
        for (const nothing of [undefined, ""]) {
          const said = refusal(solve({ [name]: nothing }));
          expect(said.code).toBe("missing-input");
          expect(said.must).toBe(`be given as ${name}`);
          expect(said.hint).toMatch(/^for example /);
          expectHouseWording(said);
        }
      }
    });

    test("a quantity of another kind is refused and both kinds are named", () => {
      for (const { name, kind } of quantityNames(method.inputs)) {
        const said = refusal(solve({ [name]: `5 ${foreignUnit(kind)}` }));
        const words = sentence(said);
        expect(words, words).toContain(kind);
        expect(words, words).toContain(foreignUnit(kind) === "mm" ? "length" : "force");
        expectHouseWording(said);
      }
    });

    test("an SI value of another dimension is refused and both kinds are named", () => {
      for (const { name, kind, says } of quantityNames(method.inputs)) {
        const said = refusal(solve({ [name]: of("power", 5) }));
        expect(said).toMatchObject({ code: "wrong-kind", what: says });
        expect(sentence(said)).toMatch(/power/);
        expect(sentence(said)).toContain(kind);
      }
    });

    test("NaN and infinity are refused, as numbers, as texts and as SI values", () => {
      for (const { name, kind, says } of quantityNames(method.inputs))
        for (const bad of [
          Number.NaN,
          Number.POSITIVE_INFINITY,
          Number.NEGATIVE_INFINITY,
          "NaN",
          "Infinity",
          `1e400 ${kinds[kind].si}`,
          of(kind, Number.NaN),
          of(kind, Number.POSITIVE_INFINITY),
        ]) {
          const said = refusal(solve({ [name]: bad }));
          expect(said.where).toBe(id);
          expect(said.what).toBe(says);
        }
    });

    test("a bare number is a ratio or a count; elsewhere it is refused for want of a unit", () => {
      for (const { name, kind } of quantityNames(method.inputs)) {
        if (kind === "ratio" || kind === "count") continue;
        expect(refusal(solve({ [name]: "12.5" })).code, name).toBe("no-unit");
      }
    });

    test("a list where one value is meant, null and a truth are refused and do not throw", () => {
      for (const { name } of quantityNames(method.inputs))
        for (const bad of [[], [{ a: "1 mm" }], null, true, {}])
          expect(refusal(solve({ [name]: bad })).where).toBe(id);
    });

    test("a text with choices is taken in any case and refused with the choices otherwise", () => {
      for (const [name, field] of Object.entries(method.inputs)) {
        if (field.kind !== "text" || !field.choices) continue;
        const said = refusal(solve({ [name]: "nonsense" }));
        expect(said.code).toBe("not-a-choice");
        for (const choice of field.choices) expect(said.must).toContain(choice);
        const [first = ""] = field.choices;
        const taken = acceptedBy(method, { ...goodFor(id), [name]: first }) ?? {};
        if (!Object.hasOwn(taken, name)) continue; // refused beside the others, by name
        const { [name]: _, ...rest } = taken;
        const outputs = (choice: string) => answer(method.solveNamed({ ...rest, [name]: choice })).outputs;
        expect(outputs(first.toUpperCase())).toEqual(outputs(first));
      }
    });

    test("rows: an unknown column, a missing value and a foreign unit are refused, each naming the row", () => {
      for (const [name, field] of Object.entries(method.inputs)) {
        if (field.kind !== "list" || !Array.isArray(good[name])) continue;
        const [first] = good[name] as readonly (string | Record<string, string>)[];
        const row = typeof first === "object" ? first : { [Object.keys(field.of)[0] ?? ""]: first ?? "" };
        const second = (change: Record<string, unknown>) =>
          refusal(solve({ [name]: [row, { ...row, ...change }] }));
        for (const column of Object.keys(row)) {
          expect(second({ [`${column}s`]: "1 mm" })).toMatchObject({ code: "unknown-input" });
          if (field.of[column]?.kind !== "text")
            expect(second({ [column]: "5 degC" }).where).toContain(`${name} 2`);
        }
        for (const [column, part] of Object.entries(field.of)) {
          if ("optional" in part && part.optional) continue;
          const said = second({ [column]: undefined });
          expect(said).toMatchObject({ code: "missing-input", must: `be given as ${column}` });
          expect(said.where).toContain(`${name} 2`);
        }
      }
    });

    test("an assumed default is said once, as a warning where it matters, a given one is not", () => {
      for (const [name, field] of Object.entries(method.inputs)) {
        if (!("default" in field) || field.default === undefined) continue;
        const said = (result: Solution | Problem) => {
          const { notes, warnings } = answer(result);
          const warned = warnings.filter(({ code, what }) => code === "assumed" && what === field.says);
          return field.matters === undefined
            ? notes.filter((note) => note === `${field.says} taken as ${field.default}: not given`)
            : warned.map(({ why }) => why);
        };
        const { [name]: _, ...rest } = good;
        const given = solve({ [name]: field.default });
        if (isProblem(given)) expect(given.code, "only what is not used is not said").toBe("not-used");
        else expect(said(given)).toEqual([]);
        expect(said(method.solveNamed(rest))).toHaveLength(isProblem(given) ? 0 : 1);
      }
    });

    test("every step of the working shows its equation, its numbers and its result", () => {
      for (const step of answer(method.solveNamed(good)).working) {
        expect(JSON.stringify(step.symbols())).not.toMatch(/undefined|NaN/);
        expect(JSON.stringify(step.numbers())).not.toMatch(/undefined|NaN/);
        expect(step.result()).not.toMatch(/undefined|NaN|^$/);
      }
    });
  });
