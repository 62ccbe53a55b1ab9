import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import { convert, inUnit } from "../../src/units/convert.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import { equal, fromDecimal, multiply, rational } from "../../src/units/rational.ts";
import { scan } from "../../src/units/scan.ts";
import { unit } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

const anyKind = fc.constantFrom(...Object.values(kinds).map((info) => info.kind));
const kindWithUnits = anyKind.chain((kind) => {
  const names = [...kinds[kind].usual, kinds[kind].si];
  return fc.tuple(fc.constant(kind), fc.constantFrom(...names), fc.constantFrom(...names));
});
const decimal = fc
  .tuple(fc.integer({ min: 1, max: 99_999_999 }), fc.integer({ min: 0, max: 6 }))
  .map(([digits, places]) =>
    places === 0 ? String(digits) : `${digits}.${String(digits % 10 ** places).padStart(places, "0")}`,
  );

describe("laws", () => {
  test("there and back is the same exact number, whatever the kind and units", () => {
    fc.assert(
      fc.property(decimal, kindWithUnits, (number, [kind, from, to]) => {
        const q = answered(quantity(`${number} ${from}`.replace(/ 1$/, ""), kind));
        const there = answered(convert(q, to));
        const si = multiply(there.exact, there.unit.factor);
        const again = there.unit.offset ? undefined : si;
        if (again) expect(equal(again, q.exact)).toBe(true);
        const back = answered(convert(q, from));
        expect(equal(back.exact, fromDecimal(number) ?? rational(0))).toBe(true);
        expect(inUnit(q.si, there.unit)).toBeCloseTo(
          there.value,
          6 - Math.ceil(Math.log10(Math.abs(there.value) + 1)),
        );
      }),
    );
  });
  test("ten times the number is ten times the quantity", () => {
    fc.assert(
      fc.property(decimal, kindWithUnits, (number, [kind, from]) => {
        if (kind === "temperature" || from === "1") return;
        const [one, ten] = [
          answered(quantity(`${number} ${from}`, kind)),
          answered(quantity(`${number}e1 ${from}`, kind)),
        ];
        expect(equal(multiply(one.exact, rational(10)), ten.exact)).toBe(true);
      }),
    );
  });
  test("the text is kept and what is read back from readAs is the same quantity", () => {
    fc.assert(
      fc.property(decimal, kindWithUnits, (number, [kind, from]) => {
        const text = `  ${number} ${from}`.replace(/ 1$/, "");
        const found = scan(text, kind);
        expect(found.text).toBe(text);
        expect(found.quantity?.text).toBe(text);
        const echoed = found.readAs?.slice(kind.length + 2) ?? "";
        expect(scan(echoed, kind).quantity?.exact).toEqual(found.quantity?.exact);
      }),
    );
  });
  test("a unit's canonical text reads back as the same unit", () => {
    const names = [
      "N",
      "kN",
      "lbf",
      "kgf",
      "mm",
      "in",
      "um",
      "ft",
      "m",
      "K",
      "degF",
      "deg",
      "rad",
      "s",
      "min",
      "bar",
      "psi",
    ];
    const part = fc
      .tuple(fc.constantFrom(...names), fc.integer({ min: 1, max: 4 }))
      .map(([name, e]) => name + (e === 1 ? "" : e));
    const side = fc.array(part, { minLength: 1, maxLength: 3 }).map((parts) => parts.join("."));
    fc.assert(
      fc.property(side, fc.option(side), (top, bottom) => {
        const first = unit(bottom === null ? top : `${top}/(${bottom})`);
        if (isProblem(first)) return;
        const again = answered(unit(first.text));
        expect(again).toEqual(first);
      }),
    );
  });
});

describe("garbage", () => {
  const pieces = [
    ...Array.from("0123456789.,-+/*^()'\"°%±=eEx×·−µ² \u2009\u202f#;"),
    "mm",
    "lb",
    "in",
    "kg",
    "N.m",
    "deg",
    "1/4",
    "+/-",
    " to ",
    "UNF",
    "M24",
    "1e",
    "ft-lb",
  ];
  test("anything at all gives one of five outcomes and never throws", () => {
    const outcomes = ["accept", "note", "warn", "refuse", "designation"];
    const check = (text: string, kind: Kind | undefined): void => {
      const found = scan(text, kind);
      expect(outcomes).toContain(found.outcome);
      expect(found.text).toBe(text);
      expect(found.quantity === undefined).toBe(
        found.outcome === "refuse" || found.outcome === "designation",
      );
      expect(found.problem === undefined).toBe(found.outcome !== "refuse" && found.outcome !== "warn");
      if (found.quantity)
        expect(Number.isFinite(found.quantity.si) && Number.isFinite(found.quantity.value)).toBe(true);
      if (found.outcome === "note" || found.outcome === "warn") expect(found.readAs).toBeTruthy();
    };
    fc.assert(
      fc.property(
        fc.string({ unit: "binary", maxLength: 250 }),
        fc.option(anyKind, { nil: undefined }),
        check,
      ),
    );
    const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 60 }).map((parts) => parts.join(""));
    fc.assert(fc.property(likely, fc.option(anyKind, { nil: undefined }), check), { numRuns: 3000 });
  });
  test("long repeated pieces, the usual way to make a pattern run wild, come back refused", () => {
    for (const piece of pieces) {
      for (const length of [50, 199, 100_000]) {
        const text = piece.repeat(Math.ceil(length / piece.length)).slice(0, length);
        const before = scan(`1 ${text}`, "length");
        expect(before.text).toHaveLength(length + 2);
      }
    }
    expect(scan("1 mm".padEnd(100_000, " mm")).outcome).toBe("refuse");
  });
  test("what a question suggests is never refused", () => {
    const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((parts) => parts.join(""));
    fc.assert(
      fc.property(likely, fc.option(anyKind, { nil: undefined }), (text, kind) => {
        const found = scan(text, kind);
        if (found.outcome !== "warn") return;
        for (const suggestion of found.problem?.suggestions ?? [])
          expect(scan(suggestion, kind).outcome, suggestion).not.toBe("refuse");
      }),
      { numRuns: 3000 },
    );
  });
});
