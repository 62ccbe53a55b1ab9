import { describe, expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import type { Kind } from "../../src/units/kind.ts";
import { halfWidthOf, oneValue, quantity } from "../../src/units/quantity.ts";
import { fromDecimal } from "../../src/units/rational.ts";
import { scan } from "../../src/units/scan.ts";
import { answered } from "./helpers.ts";

/** Half-width, standard uncertainty, or both limits, in SI and exact. */
function spreadOf(text: string, kind?: Kind): { form: string; exact: readonly unknown[] } | undefined {
  const { spread } = scan(text, kind);
  if (spread?.form === "plusMinus") return { form: spread.form, exact: [spread.halfWidth.exact] };
  if (spread?.form === "standard") return { form: spread.form, exact: [spread.u.exact] };
  return spread && { form: spread.form, exact: [spread.lower.exact, spread.upper.exact] };
}

describe("a spread typed with the value", () => {
  test.each([
    ["12.0005 mm ± 0.0005 mm", "plusMinus", ["5e-7"], "accept"],
    ["12.0005 mm +/- 0.0005 mm", "plusMinus", ["5e-7"], "accept"],
    ["12.0005 ± 0.0005 mm", "plusMinus", ["5e-7"], "note"],
    ["(63.2 ± 0.1) m", "plusMinus", ["0.1"], "accept"],
    ["63.2 m ± 0.1 m", "plusMinus", ["0.1"], "accept"],
    ["63.2 ± 0.1 m", "plusMinus", ["0.1"], "note"],
    ["12 mm ± 0.1", "plusMinus", ["0.0001"], "note"],
    ["12 mm ± 5 um", "plusMinus", ["5e-6"], "accept"],
    ["45.0 ± 0.1 mm2", "plusMinus", ["1e-7"], "note"],
    ["30 N m ± 4 %", "plusMinus", ["1.2"], "accept"],
    ["12 +0.018/0 mm", "limits", ["0.012", "0.012018"], "accept"],
    ["12 -0.006/-0.017 mm", "limits", ["0.011983", "0.011994"], "accept"],
    ["12 0/-0.018 mm", "limits", ["0.011982", "0.012"], "accept"],
    ["12 mm +0.018/-0.005 mm", "limits", ["0.011995", "0.012018"], "accept"],
    ["12 +0.018 -0.005 mm", "limits", ["0.011995", "0.012018"], "accept"],
    ["12.0000/12.0010 mm", "limits", ["0.012", "0.012001"], "note"],
    ["12.0000 mm to 12.0010 mm", "limits", ["0.012", "0.012001"], "note"],
    ["12.0005(5) mm", "standard", ["5e-7"], "accept"],
    ["100.021\u200947(35) g", "standard", ["3.5e-7"], "accept"],
    ["12.0005 mm, U = 0.0008 mm, k = 2", "standard", ["4e-7"], "accept"],
    ["100.02147 g, u = 0.35 mg", "standard", ["3.5e-7"], "accept"],
    ["1.2(3)e-5 1/K", "standard", ["3e-6"], "accept"],
  ])('"%s" has the form %s with %j in SI (%s)', (text, form, exact, outcome) => {
    expect(scan(text).outcome).toBe(outcome);
    expect(spreadOf(text)).toEqual({ form, exact: exact.map((value) => fromDecimal(value)) });
  });

  test("the value of limits alone is their middle, and the note says so", () => {
    const found = scan("12.0000/12.0010 mm");
    expect(found.quantity?.exact).toEqual(fromDecimal("0.0120005"));
    expect(found.readAs).toBe("length, 12.0005 mm, limits 12 mm to 12.001 mm");
  });
  test("the spread of a temperature reading is a difference", () => {
    const { spread, quantity } = scan("20 degC ± 2 degC", "temperature");
    expect(quantity?.si).toBe(293.15);
    expect(spread?.form === "plusMinus" && [spread.halfWidth.kind, spread.halfWidth.si]).toEqual([
      "temperature difference",
      2,
    ]);
    expect(spreadOf("(68 ± 9) degF")?.exact).toEqual([fromDecimal("5")]);
    expect(scan("20 degC ± 10 %").outcome).toBe("refuse");
  });
  test("a percentage of a bare ratio is read as a share of it, and shown", () => {
    const found = scan("0.14 ± 20 %", "ratio");
    expect(found.outcome).toBe("note");
    expect(found.readAs).toBe("ratio, 0.14 ± 0.028");
    expect(scan("20 % ± 2 %", "ratio").readAs).toBe("ratio, 20 % ± 2 %");
  });
  test.each([
    "12 ± mm",
    "± 5 mm",
    "12 mm ± 1 mm ± 2 mm",
    "12 mm ± -1 mm",
    "12 mm ± 1 N",
    "12 ± 0.1",
    "12 mm, U = 1 mm",
    "12 mm, U = 1 mm, k = 0",
  ])('"%s" is refused', (text) => expect(scan(text).outcome).toBe("refuse"));
  test("-1/4 in, 1-1/4 in and 3/8 in are fractions and no limits", () => {
    for (const text of ["-1/4 in", "1-1/4 in", "3/8 in", "1 1/4 in"])
      expect(scan(text).spread).toBeUndefined();
  });
});

describe("the half-width of a spread says what it means", () => {
  test.each([
    ["500 N.m ± 20 N.m", 20, "limits", 1],
    ["12 +0.018/0 mm", 1.8e-5, "limits", 1],
    ["12.0005(5) mm", 5e-7, "standard", 1],
    ["100 g, u = 0.5 g", 5e-4, "standard", 1],
    ["12 mm, U = 0.008 mm, k = 2", 8e-6, "expanded", 2],
  ] as const)("%s", (text, halfWidth, meaning, k) => {
    const found = halfWidthOf(answered(quantity(text)));
    expect(found).toMatchObject({ meaning, k });
    expect(found?.halfWidth).toBeCloseTo(halfWidth, 12);
  });
  test("none where none was typed", () => expect(halfWidthOf(answered(quantity("5 mm")))).toBeUndefined());
  test("a place that cannot carry one refuses it", () => {
    expect(answered(oneValue("5 mm")).si).toBe(0.005);
    expect(isProblem(oneValue("5 mm ± 1 mm"))).toBe(true);
  });
});
