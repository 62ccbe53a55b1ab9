// Every refusal carries the 1-based column of what is refused.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "../../src/formula/parse.ts";
import { columnOf } from "../../src/formula/refusal.ts";
import { isProblem, sentence } from "../../src/problem.ts";

function refused(text: string): {
  code: string;
  column: number | undefined;
  says: string;
  suggestions: readonly string[];
} {
  const read = parse(text);
  if (!isProblem(read)) throw new Error(`${text} was read`);
  return { code: read.code, column: columnOf(read), says: sentence(read), suggestions: read.suggestions };
}

describe("parse(text) refuses, with the column", () => {
  test.each([
    // products without a sign
    ["2 x", "formula-implicit-product", 3],
    ["2x + 1", "formula-implicit-product", 2],
    ["a b", "formula-implicit-product", 3],
    ["2(3 + a)", "formula-implicit-product", 2],
    ["(a)(b)", "formula-implicit-product", 4],
    ["sin(x)(y)", "formula-implicit-product", 7],
    ["1/2 x", "formula-implicit-product", 5],
    ["3 4", "formula-implicit-product", 3],
    ["5 kN", "formula-implicit-product", 3],
    ['a "5 kN"', "formula-implicit-product", 3],
    ["1e", "formula-implicit-product", 2],
    // marks of other languages
    ["5%", "formula-percent", 2],
    ["x * 5 % + 1", "formula-percent", 7],
    ["a % b", "formula-remainder", 3],
    ["a mod b", "formula-remainder", 3],
    ["3!", "formula-factorial", 2],
    ["a'", "formula-prime", 2],
    ["'5 kN'", "formula-quotes", 1],
    ['"5 kN', "formula-quotes", 1],
    ["a in mm", "formula-conversion", 3],
    ["a to mm", "formula-conversion", 3],
    ["to", "formula-conversion", 1],
    ["a[1]", "formula-index", 2],
    ["[1, 2]", "formula-index", 1],
    ["{a: 1}", "formula-object", 1],
    ["a;b", "formula-separator", 2],
    ["a\nb", "formula-line-break", 2],
    ["(a\n+ b)", "formula-line-break", 3],
    ["# c", "formula-comment", 1],
    ["a # c", "formula-comment", 3],
    ["a and b", "formula-logic", 3],
    ["a or b", "formula-logic", 3],
    ["a xor b", "formula-logic", 3],
    ["not a", "formula-logic", 1],
    ["a & b", "formula-logic", 3],
    ["a || b", "formula-logic", 3],
    ["~a", "formula-logic", 1],
    ["a .* b", "formula-elementwise", 3],
    ["a.^2", "formula-elementwise", 2],
    ["2.*a", "formula-elementwise", 2],
    ["a << 2", "formula-character", 3],
    ["a × b", "formula-character", 3],
    ["a − b", "formula-character", 3],
    ["x²", "formula-character", 2],
    ["π * d", "formula-character", 1],
    ["µ * F", "formula-character", 1],
    ["a $ b", "formula-character", 3],
    // numbers
    ["0x10", "formula-number", 1],
    ["a + 0b11", "formula-number", 5],
    ["1e400", "formula-number-range", 1],
    ["a * 1e-400", "formula-number-range", 5],
    ["1_000", "formula-number", 1],
    ["5.", "formula-number", 1],
    ["a + 1.2.3", "formula-number", 5],
    ["1,5", "formula-comma", 2],
    ["(1, 5)", "formula-comma", 3],
    // comparisons and choices
    ["1 < x < 2", "formula-chained-comparison", 7],
    ["a == b == c", "formula-chained-comparison", 8],
    ["a = 3", "formula-assignment", 3],
    ["a.b = 3", "formula-assignment", 5],
    ["f(x) = x^2", "formula-function-definition", 6],
    ["a ? b", "formula-choice", 3],
    ["max(a > b ? c, d)", "formula-choice", 11],
    ["a > b ? c > d ? e : f : g", "formula-choice", 15],
    ["a : b", "formula-range", 3],
    ["a > b ? c : d : e", "formula-range", 15],
    // words and names
    ["true", "formula-word", 1],
    ["2 * NaN", "formula-word", 5],
    ["Infinity", "formula-word", 1],
    ["end", "formula-word", 1],
    ["a.b.c", "formula-name", 4],
    ["a..b", "formula-name", 2],
    ["a .b", "formula-name", 3],
    ["(a).b", "formula-name", 4],
    ["a?.b", "formula-name", 3],
    // functions
    ["srqt(3)", "formula-unknown-function", 1],
    ["2 * log(x)", "formula-unknown-function", 5],
    ["a (b + c)", "formula-unknown-function", 1],
    ["a.b(3)", "formula-unknown-function", 1],
    ["sin + 1", "formula-arguments", 1],
    ["2 + sin()", "formula-arguments", 9],
    ["max(a)", "formula-arguments", 1],
    ["1 + round(a, b)", "formula-arguments", 5],
    // what is missing or too much
    ["", "formula-empty", 1],
    ["   ", "formula-empty", 1],
    ["a +", "formula-missing-value", 4],
    ["* a", "formula-missing-value", 1],
    ["a ** b", "formula-missing-value", 4],
    ["a -> b", "formula-missing-value", 4],
    ["()", "formula-missing-value", 2],
    ["max(a, )", "formula-missing-value", 8],
    ["+a", "formula-sign", 1],
    ["3 - +a", "formula-sign", 5],
    ["2 * (a + b", "formula-bracket", 5],
    ["a + b)", "formula-bracket", 6],
    // quantities
    ['2 * "5 quux"', undefined, 5],
    ['2 * "word"', undefined, 5],
    ['1 + "5 kN +/- 1 kN"', "formula-spread", 5],
  ])("%j: %s at column %i", (text, code, column) => {
    const found = refused(text);
    expect(found.column).toBe(column);
    if (code !== undefined) expect(found.code).toBe(code);
  });
});

describe("a refusal says what to write instead", () => {
  test.each([
    ["20%", '"20 %"'],
    ["1_000", "1000"],
    ["srqt(3)", "sqrt"],
    ["a × b", "*"],
    ["a ** b", "^"],
  ])("%s suggests %s", (text, suggestion) => {
    expect(refused(text).suggestions).toEqual([suggestion]);
  });

  test("in one sentence in the house wording", () => {
    expect(refused("a + 20%").says).toBe('formula, column 7: got 20%, must stand in quotes; write "20 %"');
    expect(refused("1 < x < 2").says).toBe(
      'formula, column 7: got a second comparison "<", must compare two values; make two checks, or one check with between',
    );
    expect(refused("average(x)").says).toMatch(/did you mean mean$/);
  });
});

describe("long and deep texts are refused and never overflow", () => {
  test.each([
    ["brackets", `${"(".repeat(250)}a${")".repeat(250)}`, "formula-too-deep"],
    ["calls", `${"sin(".repeat(150)}a${")".repeat(150)}`, "formula-too-deep"],
    ["brackets and parts", `${"(".repeat(900)}a${")".repeat(900)}`, "formula-too-long"],
    ["characters", "a".repeat(2001), "formula-too-long"],
    ["parts", `a${"+a".repeat(400)}`, "formula-too-long"],
    ["signs", `${"-".repeat(1500)}a`, "formula-too-long"],
  ])("too many %s", (_, text, code) => {
    expect(refused(text).code).toBe(code);
  });

  test.each([
    ["signs", `${"-".repeat(599)}a`],
    ["powers", `a${"^a".repeat(299)}`],
    ["choices", `${"a>a?a:".repeat(99)}a`],
    ["brackets", `${"(".repeat(50)}a${")".repeat(50)}`],
  ])("the most %s allowed are read", (_, text) => {
    expect(isProblem(parse(text))).toBe(false);
  });

  test("any text at all gives a tree or a problem with a column", () => {
    const single = "ab1.5e+-*/^()<>=!?:,\"' %[]{};#&|~\n√²".split("");
    const marks = fc.constantFrom(...single, "sin(", "max(", " in ", "0x", "pi");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(marks, { maxLength: 25 }).map((parts) => parts.join("")),
        ),
        (text) => {
          const read = parse(text);
          if (isProblem(read)) {
            expect(columnOf(read)).toBeGreaterThanOrEqual(1);
            expect(columnOf(read)).toBeLessThanOrEqual(text.length + 1);
            expect(read.code, text).not.toBe("formula-unreadable");
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});

test("another statistic is never taken for the mean", () => {
  const found = parse("median(holes.diameter)");
  expect(isProblem(found) && found.hint).toBe("there is no median here");
  expect(isProblem(found) && found.suggestions).toEqual([]);
});
