/* oxlint-disable typescript/no-unsafe-type-assertion -- inputs are made from declarations known only at run time */
// Rule: what is possible and usual belongs to the sort of input. Every input of a sort carries it, and every
// one is judged, in lists too; the bounds are what their texts say and what the tables hold.
import { describe, expect, test } from "vitest";
import type { QuantityField, SiValue } from "../../src/methods/field.ts";
import { isQuantityField } from "../../src/methods/field.ts";
import { type AnyMethod, methods } from "../../src/methods/index.ts";
import { sortOf } from "../../src/methods/plausible.ts";
import { type Bound, type SortOfInput, sorts, unitsOf } from "../../src/methods/sorts.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import { frictionRows } from "../../src/tables/friction.ts";
import { materials } from "../../src/tables/materials.ts";
import { nutFactors } from "../../src/tables/nut-factors.ts";
import { tighteningAccuracies } from "../../src/tables/tightening-accuracy.ts";
import { quantity } from "../../src/units/quantity.ts";
import { goodFor } from "./good-inputs.ts";
import { answer, expectHouseWording, of, refusal } from "./helpers.ts";

interface Taken {
  readonly method: AnyMethod;
  readonly name: string;
  readonly column?: string;
  readonly field: QuantityField;
}

const everyQuantity: readonly Taken[] = [...methods.values()].flatMap((method) =>
  Object.entries(method.inputs).flatMap(([name, field]): Taken[] =>
    field.kind === "list"
      ? Object.entries(field.of).flatMap(([column, part]) =>
          isQuantityField(part) ? [{ method, name, column, field: part }] : [],
        )
      : isQuantityField(field)
        ? [{ method, name, field }]
        : [],
  ),
);

const titled = everyQuantity.map((taken) => ({
  ...taken,
  title: `${taken.method.id} ${[taken.name, taken.column].filter(Boolean).join(".")}`,
  sort: sortOf(taken.field),
}));

/** What a row needs besides: a word for each text. */
function wordsFor(method: AnyMethod, name: string): Readonly<Record<string, string>> {
  const field = method.inputs[name];
  if (field?.kind !== "list") return {};
  return Object.fromEntries(
    Object.entries(field.of).flatMap(([column, part]) =>
      part.kind === "text" && !part.optional ? [[column, "a"]] : [],
    ),
  );
}

/** The method on its good inputs, with this one put in; a list keeps its first row but for that column. */
function solved({ method, name, column }: Taken, value: string | number | SiValue) {
  const good = goodFor(method.id);
  if (column === undefined) return method.solveNamed({ ...good, [name]: value });
  const rows = good[name];
  const [first] = typeof rows === "object" && !("si" in rows) ? rows : [];
  const row = typeof first === "object" && !("si" in first) ? first : wordsFor(method, name);
  return method.solveNamed({ ...good, [name]: [{ ...row, [column]: value }] });
}

describe("inputs that are of a sort by name or words carry it", () => {
  const expected: readonly (readonly [sort: keyof typeof sorts, RegExp, number])[] = [
    ["nut factor", /^nut factor$/, 4],
    ["friction", /friction/, 11],
    ["modulus", /modulus/, 6],
    ["expansion", /expansion/, 7],
    ["poisson", /poisson/i, 3],
    ["loss", /preload lost/, 2],
    ["scatter", /scatter of preload|variation of preload/, 3],
  ];
  test.each(expected)("%s", (sort, words, count) => {
    const found = titled.filter(({ field }) => words.test(field.says) || field.kind === (sort as string));
    expect(found.filter((each) => each.sort !== sorts[sort]).map(({ title }) => title)).toEqual([]);
    expect(found).toHaveLength(count);
  });

  test("every count, by its kind", () => {
    const counts = titled.filter(({ field }) => field.kind === "count");
    expect(counts.every(({ sort }) => sort === sorts.count)).toBe(true);
    expect(counts).toHaveLength(13);
  });
});

const outside = (bound: Bound | undefined, step: number): number[] =>
  bound
    ? [bound.si + step * (bound.si === 0 ? 1e-3 : bound.si * 0.01), ...(bound.open ? [bound.si] : [])]
    : [];

describe("every input of a sort is judged", () => {
  const sorted = titled.flatMap((each) => (each.sort ? [{ ...each, sort: each.sort }] : []));
  test("there are so many", () => expect(sorted).toHaveLength(111));

  test.each(sorted)("$title: outside what is possible there is no answer, and it is named", (taken) => {
    const { sort, field } = taken;
    const bad = [
      ...outside(sort.possible.low, -1),
      ...outside(sort.possible.high, 1),
      ...(sort.whole ? [2.5] : []),
    ];
    expect(bad.length).toBeGreaterThan(0);
    for (const si of bad.filter((value) => !(value === 0 && sort.orZero))) {
      const said = refusal(solved(taken, of(field.kind, si)));
      expect(said.code, `${si}`).toBe("implausible");
      expect(said.what).toBe(field.says);
      expectHouseWording(said);
    }
  });
});

describe("bounds", () => {
  const all: readonly (readonly [string, SortOfInput])[] = Object.entries(sorts);
  test.each(all)("%s: texts are the numbers, usual lies inside possible, the units are known", (_, sort) => {
    for (const bound of [sort.possible.low, sort.possible.high, sort.usual?.low, sort.usual?.high]) {
      if (!bound) continue;
      const read = quantity(bound.at, sort.kind);
      expect(isProblem(read) ? sentence(read) : read.si).toBeCloseTo(bound.si, 15);
    }
    const { possible, usual } = sort;
    if (usual?.low && possible.low) expect(usual.low.si).toBeGreaterThanOrEqual(possible.low.si);
    if (usual?.high && possible.high) expect(usual.high.si).toBeLessThanOrEqual(possible.high.si);
    expect(unitsOf(sort)).toHaveLength(sort.units.length);
  });

  const spanOf = (rows: readonly { low?: number; typical?: number; high?: number }[]) => {
    const numbers = rows.flatMap(({ low, typical, high }) =>
      [low, typical, high].filter((n) => n !== undefined),
    );
    return [Math.min(...numbers), Math.max(...numbers)];
  };
  test("nut factors and friction are usual as far as the tables go", () => {
    expect(spanOf(nutFactors())).toEqual([
      sorts["nut factor"].usual.low.si,
      sorts["nut factor"].usual.high.si,
    ]);
    expect(spanOf(frictionRows())).toEqual([sorts.friction.usual.low.si, sorts.friction.usual.high.si]);
  });
  test("materials and ways of tightening in the tables are usual", () => {
    const si = { GPa: 1e9, Mpsi: 6.894757e9, "1e-6/K": 1e-6, "1e-6/degF": 1.8e-6 } as const;
    for (const row of materials()) {
      const found = [
        [sorts.modulus, row.modulus && row.modulusUnit && row.modulus * si[row.modulusUnit]],
        [sorts.expansion, row.expansion && row.expansionUnit && row.expansion * si[row.expansionUnit]],
        [sorts.poisson, row.poisson],
      ] as const;
      for (const [sort, value] of found) {
        if (value === undefined) continue;
        expect(value).toBeGreaterThanOrEqual(sort.usual.low.si);
        expect(value).toBeLessThanOrEqual(sort.usual.high.si);
      }
    }
    for (const { least, most } of tighteningAccuracies()) {
      expect(least).toBeGreaterThanOrEqual(sorts.scatter.usual.low.si);
      expect(most).toBeLessThanOrEqual(sorts.scatter.usual.high.si);
    }
  });
});

describe("slips of a unit are asked about by name, with what was meant to tap", () => {
  const slips: readonly (readonly [
    sort: keyof typeof sorts,
    typed: string,
    meant: string,
    asItStands: string,
  ])[] = [
    ["nut factor", "0.2 %", "0.2", ""],
    ["nut factor", "0.14 %", "0.14", ""],
    ["nut factor", "14", "14 %", ""],
    ["friction", "0.12 %", "0.12", "0.0012"],
    ["friction", "12", "12 %", ""],
    ["modulus", "205 MPa", "205 GPa", "0.205 GPa"],
    ["modulus", "205000 GPa", "205000 MPa", ""],
    ["poisson", "0.29 %", "0.29", "0.0029"],
    ["loss", "8", "8 %", ""],
    ["scatter", "0.25 %", "0.25", "0.0025"],
    ["share", "90", "90 %", ""],
    ["bolt diameter", "24 in", "24 mm", "609.6 mm"],
    ["bolt diameter", "24 m", "24 mm", ""],
    ["fit diameter", "25 in", "25 mm", "635 mm"],
    ["fit diameter", "25.01 m", "25.01 mm", ""],
    ["pitch", "3 m", "3 mm", ""],
    ["wrench length", "650 m", "650 mm", ""],
    ["adapter length", "60 in", "60 mm", "1524 mm"],
  ];
  test.each(slips)("%s %s", (sort, typed, meant, asItStands) => {
    const taken = titled.filter((each) => each.sort === sorts[sort]);
    expect(taken.length).toBeGreaterThan(0);
    for (const each of taken) {
      const said = refusal(solved(each, typed));
      expect(said.what, each.title).toBe(each.field.says);
      expect(said.suggestions, each.title).toContain(meant);
      if (asItStands === "") expect(said.code).toBe("implausible");
      else {
        expect(said.code).toBe("which-unit");
        const again = solved(each, asItStands);
        if (isProblem(again)) expect(again.code, sentence(again)).not.toMatch(/which-unit|implausible/);
        else expect(answer(again).warnings.some(({ code }) => code === "unusual")).toBe(true);
      }
      expectHouseWording(said);
    }
  });

  test("negative expansion and none are refused", () => {
    for (const each of titled.filter(({ field }) => field.kind === "expansion"))
      for (const value of ["-11e-6 1/K", "0 1/K"])
        expect(refusal(solved(each, value))).toMatchObject({ code: "implausible", what: each.field.says });
  });
});
