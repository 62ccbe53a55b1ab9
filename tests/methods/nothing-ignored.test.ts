// Rule: nothing given is ignored. Every input of every method, in every variant that has an example, is
// changed alone; the answer, a warning, a remark or a refusal has to change with it.
import { afterAll, describe, expect, test } from "vitest";
import type { InputField, InputValue, QuantityField, SiValue, TextField } from "../../src/methods/field.ts";
import { type AnyMethod, methods } from "../../src/methods/index.ts";
import type { Solution } from "../../src/methods/solution.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { quantity } from "../../src/units/quantity.ts";
import { goodFor } from "./good-inputs.ts";
import { acceptedBy, type Inputs, of } from "./helpers.ts";
import { moreInputs } from "./more-inputs.ts";
import { published } from "./published.ts";

type Set = Readonly<Record<string, InputValue>>;
type Cell = string | number;
type NamedCells = Readonly<Record<string, Cell>>;
type Rows = readonly (Cell | NamedCells)[];

const isCell = (value: unknown): value is Cell => typeof value === "string" || typeof value === "number";
const isNamedCells = (value: unknown): value is NamedCells =>
  typeof value === "object" &&
  value !== null &&
  !Array.isArray(value) &&
  Object.values(value).every((cell) => isCell(cell));
const isRows = (value: unknown): value is Rows =>
  Array.isArray(value) && value.every((row) => isCell(row) || isNamedCells(row));

/** Rows as given or as their text; anything else is a mistake in the example. */
function rowsOf(value: InputValue): Rows {
  const rows: unknown = typeof value === "string" ? JSON.parse(value) : value;
  if (!isRows(rows)) throw new Error(`no rows: ${JSON.stringify(value)}`);
  return rows;
}

const written = (value: InputValue): string =>
  typeof value === "object" ? JSON.stringify(value) : String(value);

const hasChoices = (field: InputField | undefined): field is TextField =>
  field?.kind === "text" && field.choices !== undefined;

/** An input may be without effect on one set of numbers, such as an arm of no force; not in a whole variant. */
const choicesIn = (method: AnyMethod, set: Set): readonly string[] =>
  Object.entries(set)
    .filter(([name]) => hasChoices(method.inputs[name]))
    .map(([name, value]) => `${name}=${written(value)}`);

/** Sets that differ in which inputs they give, or in a choice: one of each is enough. */
function likeness(method: AnyMethod, set: Set): string {
  const columns = (value: InputValue) =>
    Array.isArray(value)
      ? [...new Set(rowsOf(value).flatMap((row) => (typeof row === "object" ? Object.keys(row) : [])))].join()
      : "";
  return Object.entries(set)
    .map(([name, value]) =>
      hasChoices(method.inputs[name]) ? `${name}=${written(value)}` : name + columns(value),
    )
    .toSorted()
    .join(" ");
}

function setsOf(method: AnyMethod): readonly Set[] {
  const good = goodFor(method.id);
  const defaults = Object.fromEntries(
    Object.entries(method.inputs).flatMap(([name, field]) =>
      "default" in field && field.default !== undefined ? [[name, field.default]] : [],
    ),
  );
  const bases: readonly Inputs[] = [good, { ...defaults, ...good }, ...(moreInputs[method.id] ?? [])];
  const chosen = bases.flatMap((base) =>
    Object.entries(method.inputs).flatMap(([name, field]) =>
      hasChoices(field) ? (field.choices ?? []).map((choice) => ({ ...base, [name]: choice })) : [],
    ),
  );
  const unlike = new Map<string, Set>();
  for (const set of [...chosen, ...published(method.id)])
    if (!unlike.has(likeness(method, set))) unlike.set(likeness(method, set), set);
  return [...bases, ...unlike.values()];
}

/** What a person sees, without what other variants would have given. */
function seen(result: Solution | Problem): string {
  if (isProblem(result)) return `${result.code} ${sentence(result)}`;
  const own = result.notes.filter((note) => !/^\w+ .* would give /.test(note));
  return JSON.stringify([result.outputs, result.warnings.map((warning) => sentence(warning)), own]);
}

const counts = { methods: 0, sets: 0, changed: 0, refusedByName: 0 };
const untouched: string[] = [];
afterAll(() => console.log(JSON.stringify(counts)));

const factors = [1.07, 0.93, 1.5, 0.5, 3, 0.1, 10, -1, 1.001, 0.999];

/** Other values of a quantity, the mildest first. */
function otherQuantities(field: QuantityField, value: Cell): readonly SiValue[] {
  const read = quantity(String(value), field.kind);
  if (isProblem(read)) return [];
  const near =
    field.kind === "count"
      ? [read.si + 1, read.si - 1, read.si + 5]
      : factors.map((factor) => read.si * factor);
  return (read.si === 0 ? [1e-6, 1e-3, 0.05, 1, 1e3] : near).map((si) => of(field.kind, si));
}

function otherTexts(field: TextField, value: Cell, beside: readonly Cell[]): readonly string[] {
  const choices = field.choices ?? [`${value}x`, "9", "M12", "6g", ...beside.map(String)];
  return choices.filter((choice) => choice.toLowerCase() !== String(value).toLowerCase());
}

/** `beside` is what other rows hold in this column: a name may only show where it is another row's too. */
const others = (
  field: QuantityField | TextField,
  value: Cell,
  beside: readonly Cell[] = [],
): readonly (string | SiValue)[] =>
  field.kind === "text" ? otherTexts(field, value, beside) : otherQuantities(field, value);

/** Refused for what was typed alone, whatever the method then does with it: that shows no use. */
function refusedAlone(method: AnyMethod, said: Problem): boolean {
  if (/implausible|which-unit/.test(said.code)) return true;
  const limit = method.limits.find(({ else: otherwise }) => said.why?.startsWith(otherwise));
  const names = limit?.that.replaceAll(/"[^"]*"|\b\w+\(/g, "").match(/[a-z]\w*(\.\w+)?/gi) ?? [];
  return (
    said.code === "limit" &&
    new Set(names).size === 1 &&
    Object.hasOwn(method.inputs, (names[0] ?? "").split(".")[0] ?? "")
  );
}

const shows = (method: AnyMethod, set: Set, before: string): boolean => {
  const result = method.solveNamed(set);
  return !(isProblem(result) && refusedAlone(method, result)) && seen(result) !== before;
};

interface Change {
  readonly path: string;
  readonly sets: readonly Set[];
}

/** Every single change of one set: an input, or one cell of a list. */
function changesOf(method: AnyMethod, set: Set): readonly Change[] {
  return Object.entries(set).flatMap(([name, value]): Change[] => {
    const field = method.inputs[name];
    if (!field) return [];
    if (field.kind !== "list") {
      const typed = typeof value === "object" ? "" : value;
      return [{ path: name, sets: others(field, typed).map((other) => ({ ...set, [name]: other })) }];
    }
    const rows = rowsOf(value);
    const [only = ""] = Object.keys(field.of);
    const named = rows.map((row) => (typeof row === "object" ? row : { [only]: row }));
    const picked = new Set([0, 1, 2, named.length - 1].filter((index) => index < named.length));
    return [...picked].flatMap((index) =>
      Object.entries(named[index] ?? {}).map(([column, cell]) => ({
        path: `${name}.${column}`,
        sets: (field.of[column]
          ? others(
              field.of[column],
              cell,
              named.flatMap((row) => (column in row ? [row[column] ?? ""] : [])),
            )
          : []
        ).map((other) => ({
          ...set,
          [name]: named.map((row, at) => (at === index ? { ...row, [column]: other } : row)),
        })),
      })),
    );
  });
}

const pathsOf = (method: AnyMethod): readonly string[] =>
  Object.entries(method.inputs).flatMap(([name, field]) =>
    field.kind === "list" ? Object.keys(field.of).map((column) => `${name}.${column}`) : [name],
  );

/** Still ignored; each line goes when its method refuses or uses the input. */
const stillOpen: Readonly<Record<string, readonly string[]>> = {
  "tightening-order": [
    "fittedFirst arrangement=split line fittedFirst=yes",
    "positions.kind arrangement=split line fittedFirst=no",
    "positions.side arrangement=circle fittedFirst=yes",
    "positions.side arrangement=split line fittedFirst=yes",
    "positions.x arrangement=circle",
    "positions.x arrangement=circle fittedFirst=yes",
    "positions.y arrangement=circle",
  ],
  "record-findings": ["plan.set"],
};

describe("a change of any input given shows", () => {
  for (const [id, method] of methods)
    test(id, () => {
      const tried = new Set<string>();
      const [shown, silent] = [new Set<string>(), new Map<string, string>()];
      for (const set of setsOf(method)) {
        const taken = acceptedBy(method, set);
        if (!taken) continue;
        counts.refusedByName += Object.keys(set).length - Object.keys(taken).length;
        counts.sets += 1;
        const before = seen(method.solveNamed(taken));
        for (const { path, sets } of changesOf(method, taken)) {
          tried.add(path);
          counts.changed += 1;
          const key = [path, ...choicesIn(method, taken)].join(" ");
          if (sets.some((changed) => shows(method, changed, before))) shown.add(key);
          else silent.set(key, JSON.stringify(taken));
        }
      }
      const ignored = [...silent.keys()].filter((key) => !shown.has(key));
      counts.methods += 1;
      untouched.push(
        ...pathsOf(method)
          .filter((path) => !tried.has(path))
          .map((path) => `${id} ${path}`),
      );
      expect(ignored.toSorted()).toEqual(stillOpen[id] ?? []);
    });

  test("no input is left out of it", () => {
    expect(untouched).toEqual([]);
    expect(counts).toMatchObject({ methods: methods.size });
    expect(counts.sets).toBeGreaterThan(300);
    expect(counts.changed).toBeGreaterThan(2300);
  });
});
