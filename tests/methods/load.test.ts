// Every method loads, names its sources, keeps its public names and has its evidence.
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { allIds, familyOf } from "../../src/methods/families.ts";
import { methodNamed, methods, solve } from "../../src/methods/index.ts";
import { loadMethods } from "../../src/methods/load.ts";
import { preparedOf } from "../../src/methods/run.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import { cite } from "../../src/source.ts";
import { catalogue, catalogueRows } from "./catalogue.ts";
import { goodFor } from "./good-inputs.ts";
import { answer, refusal, solveAccepted } from "./helpers.ts";
import { outputsAsked, published } from "./published.ts";

const root = new URL("../../", import.meta.url);

test("the register holds at least the methods of the catalogue", () => {
  expect(Object.keys(catalogue).filter((id) => !methods.has(id))).toEqual([]);
});

test("a method younger than that list keeps its names by its evidence: every figure stands in a row", () => {
  for (const [id, method] of methods) {
    if (catalogue[id]) continue;
    const given = published(id);
    const asked = new Set(outputsAsked(id));
    expect(Object.keys(method.inputs).filter((name) => !given.some((row) => name in row))).toEqual([]);
    const figures = Object.keys(method.outputs).filter((name) => method.outputs[name]?.kind !== "text");
    expect(figures.filter((name) => !asked.has(name))).toEqual([]);
  }
});

for (const [id, method] of methods)
  describe(id, () => {
    test("loads: every step and limit parses, fits its dimension and knows its names", () => {
      expect(preparedOf(method).problems).toEqual([]);
    });

    test("its id is kebab-case and its question ends in a question mark", () => {
      expect(id).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
      expect(method.question).toMatch(/^[A-Z].*\?$/);
    });

    test("its file is where its name says and exports it", () => {
      const name = id.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
      const index = readFileSync(new URL(`src/methods/${familyOf(id)}/index.ts`, root), "utf8");
      expect(index).toContain(`import { ${name} } from "./${id}.ts"`);
    });

    test("every step has a source with words in it", () => {
      const plan = preparedOf(method);
      const steps = [
        ...plan.steps,
        ...plan.each.flatMap((e) => e.steps),
        ...Object.values(plan.variants).flat(),
      ];
      for (const step of steps)
        expect(step.source && cite(step.source).length, `${id} ${step.name}`).toBeGreaterThan(10);
      if (method.procedure) expect(cite(method.procedure.source).length).toBeGreaterThan(10);
    });

    test("keeps the input and output names of the catalogue", () => {
      const names = catalogue[id] ?? { inputs: [], outputs: [] };
      expect(names.inputs.filter((name) => !method.inputs[name])).toEqual([]);
      expect(names.outputs.filter((name) => !method.outputs[name])).toEqual([]);
      for (const [list, columns] of Object.entries(catalogueRows[id] ?? {})) {
        const field = method.inputs[list] ?? method.outputs[list];
        expect(field?.kind === "list" && columns.filter((column) => !field.of[column])).toEqual([]);
      }
    });

    test("has evidence: reference-checks/<id> with README.md and at least one case", () => {
      const folder = new URL(`reference-checks/${id}/`, root);
      expect(existsSync(new URL("README.md", folder)), "README.md").toBe(true);
      const lines = readFileSync(new URL("cases.csv", folder), "utf8")
        .split("\n")
        .filter((line) => line.trim() !== "" && !line.startsWith("#"));
      expect(lines.length, "header and at least one row").toBeGreaterThanOrEqual(2);
    });

    test("every input and output says what it is in words", () => {
      for (const [name, field] of Object.entries(method.inputs)) expect(field.says, name).toMatch(/\w/);
      for (const [name, field] of Object.entries(method.outputs)) expect(field.says, name).toMatch(/\w/);
    });

    test("answers its good inputs with every output that is not optional, and cites its sources", () => {
      const solution = answer(solveAccepted(method, goodFor(id)));
      const missing = Object.keys(method.outputs).filter(
        (name) => method.outputs[name]?.optional !== true && !solution.outputs[name],
      );
      expect(missing).toEqual([]);
      expect(solution.method).toBe(id);
      expect(solution.sources.length).toBeGreaterThan(0);
      expect(solution.warnings.map(sentence)).toEqual([]);
    });
  });

test("solve by a misspelt id suggests the nearest method", () => {
  const said = refusal(solve("preload-from-torqe", {}));
  expect(said.code).toBe("unknown-method");
  expect(said.suggestions).toContain("preload-from-torque");
  expect(isProblem(methodNamed("nothing like it at all"))).toBe(true);
});

test("the ids known without loading are those of the methods that are loaded", () => {
  expect(allIds.toSorted()).toEqual([...methods.keys()].toSorted());
});

test("a browser can load every method on its own", async () => {
  await loadMethods(allIds);
  for (const id of allIds) expect(methods.get(id)?.id).toBe(id);
});
