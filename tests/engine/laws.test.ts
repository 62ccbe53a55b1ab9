// Random pages under random changes: after settling, a page always shows what a fresh page with its text shows.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { check, given, lineAt, open, pageText, settled, shown, working } from "./helpers.ts";

const texts = fc.constantFrom(
  "1 kN",
  "2 kN",
  "2000 N",
  "2.0 kN",
  "3 kN",
  "450 lbf",
  "0 kN",
  "-1 kN",
  "",
  "5 kNN",
  "7 mm",
);
const formulas: readonly ((x: string, y: string) => string)[] = [
  (x, y) => `${x} + ${y}`,
  (x, y) => `max(${x}, ${y})`,
  (x, y) => `min(${x}, ${y})`,
  (x, y) => `${x} < ${y} ? ${x} : ${y}`,
  (x, y) => `${x} * ${y} / (${y} + "1 kN")`,
  (x) => `abs(${x}) / 2`,
  (x) => x,
];

interface Sketch {
  readonly givens: readonly string[];
  readonly lines: readonly { readonly form: number; readonly x: number; readonly y: number }[];
  readonly order: readonly number[];
}

const sketch: fc.Arbitrary<Sketch> = fc.record({
  givens: fc.array(texts, { minLength: 2, maxLength: 4 }),
  lines: fc.array(fc.record({ form: fc.nat(formulas.length - 1), x: fc.nat(99), y: fc.nat(99) }), {
    minLength: 1,
    maxLength: 12,
  }),
  order: fc.array(fc.nat(99), { minLength: 16, maxLength: 16 }),
});

/** Each line reads two earlier ones; the items are listed in any order. */
function itemsOf({ givens, lines, order }: Sketch, typed: readonly string[] = givens): string[] {
  const names = givens.map((_, i) => `g${i}`);
  const items = typed.map((text, i) => given(`g${i}`, text, { as: "force" }));
  for (const [i, { form, x, y }] of lines.entries()) {
    const pick = (n: number) => names[n % names.length] ?? "g0";
    items.push(working(`c${i}`, (formulas[form] ?? ((n) => n))(pick(x), pick(y))));
    if (i % 3 === 2) items.push(check(`k${i}`, pick(x), { atMost: pick(y) }));
    names.push(`c${i}`);
  }
  return items
    .map((item, i) => ({ item, rank: (order[i % order.length] ?? 0) + i / 1000 }))
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ item }) => item);
}

type Act = { readonly given: number; readonly text: string } | "settle" | number;
const acts: fc.Arbitrary<Act[]> = fc.array(
  fc.oneof(
    { weight: 4, arbitrary: fc.record({ given: fc.nat(9), text: texts }) },
    { weight: 1, arbitrary: fc.constant("settle" as const) },
    { weight: 2, arbitrary: fc.nat(40) },
  ),
  { minLength: 1, maxLength: 12 },
);

describe("a page under changes", () => {
  test("shows what a fresh page with the same texts shows, whenever the changes came", {
    timeout: 60_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(sketch, acts, async (drawn, plan) => {
        const page = open(pageText(...itemsOf(drawn)));
        const typed = [...drawn.givens];
        for (const act of plan)
          if (act === "settle") await page.settle();
          else if (typeof act === "number") for (let i = 0; i < act; i++) await Promise.resolve();
          else {
            const which = act.given % typed.length;
            typed[which] = act.text;
            page.change(`g${which}`, act.text);
          }
        await page.settle();
        expect(shown(page)).toEqual(shown(await settled(...itemsOf(drawn, typed))));
      }),
      { numRuns: 120 },
    );
  });

  test("reopens from its own text to what it shows", { timeout: 60_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(sketch, fc.array(texts, { minLength: 4, maxLength: 4 }), async (drawn, after) => {
        const page = await settled(...itemsOf(drawn));
        for (const [i] of drawn.givens.entries()) page.change(`g${i}`, after[i] ?? "1 kN");
        await page.settle();
        const again = open(page.text());
        await again.settle();
        expect(shown(again)).toEqual(shown(page));
      }),
      { numRuns: 60 },
    );
  });

  test("runs nothing outside the reach of the given that changed, and each line once", {
    timeout: 60_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(sketch, texts, async (drawn, text) => {
        const page = await settled(...itemsOf(drawn));
        const reach = new Set(["g0"]);
        for (const name of reach) for (const next of lineAt(page, name).usedBy) reach.add(next);
        page.change("g0", text);
        const { ran } = await page.settle();
        expect(ran.filter((name) => !reach.has(name))).toEqual([]);
        expect(new Set(ran).size).toBe(ran.length);
      }),
      { numRuns: 60 },
    );
  });
});
