import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "../../src/formula/parse.ts";
import { plain, type Shown, show, symbolOf } from "../../src/formula/show.ts";
import { evaluator } from "../../src/formula/value.ts";
import { isProblem } from "../../src/problem.ts";
import { formulaText, inputNames, inputValues } from "./random-formula.ts";

const symbols: Readonly<Record<string, string>> = {
  torque: "T",
  nutFactor: "K",
  diameter: "d",
  axialStress: "σ",
  shearStress: "τ",
  preload: "F_M",
};

function shown(
  text: string,
  leaf: (name: string) => Shown = (name) => symbolOf(symbols[name] ?? name),
): Shown {
  const tree = parse(text);
  if (isProblem(tree)) throw new Error(`${text}: ${tree.got}`);
  return show(tree, leaf);
}

describe("plain(show(tree)) is one line with as few brackets as reading needs", () => {
  test.each([
    ["torque / (nutFactor * diameter)", "T / (K · d)"],
    ["sqrt(axialStress^2 + 3 * shearStress^2)", "√(σ² + 3 · τ²)"],
    ["preload / 2", "F_M / 2"],
    ["pi * diameter^2 / 4", "π · d² / 4"],
    ["-x^2", "−x²"],
    ["(-x)^2", "(−x)²"],
    ["a - (b - c)", "a − (b − c)"],
    ["(a - b) - c", "a − b − c"],
    ["a + (b + c)", "a + b + c"],
    ["a * (b * c)", "a · b · c"],
    ["a * (b + c)", "a · (b + c)"],
    ["(a + b) / (c - d)", "(a + b) / (c − d)"],
    ["a / (b / c)", "a / (b / c)"],
    ["a / b / c", "(a / b) / c"],
    ["a / b * c", "a / b · c"],
    ["(a / b)^2", "(a / b)²"],
    ["a^(b + 1)", "a^(b + 1)"],
    ["a^b^c", "a^(b^c)"],
    ["(a^b)^c", "(a^b)^c"],
    ["x^-2", "x⁻²"],
    ["x^(1/3)", "x^(1 / 3)"],
    ["sqrt(x)^2", "(√x)²"],
    ["sin(x)^2", "sin(x)²"],
    ["a * -b", "a · (−b)"],
    ["-a * b", "−a · b"],
    ["a - -b", "a − (−b)"],
    ["a + -b * c", "a + (−b · c)"],
    ["-(a + b)", "−(a + b)"],
    ["1 / (1/a + 1/b)", "1 / (1 / a + 1 / b)"],
    ["sum(1 / frusta.stiffness)", "sum(1 / frusta.stiffness)"],
    ["max(0, a - b)", "max(0, a − b)"],
    ["a + b <= c * d", "a + b ≤ c · d"],
    ["a == b", "a = b"],
    ["a != b", "a ≠ b"],
    ["a > b ? c : d > e ? f : g", "{ c if a > b; f if d > e; g otherwise }"],
    ["2 * (a > b ? c : d)", "2 · { c if a > b; d otherwise }"],
    ["1.50 * x", "1.50 · x"],
    ["1.2e-5^2", "(1.2e-5)²"],
    ['"5.0 kN" / "3 mm"', "5.0 kN / (3 mm)"],
    ['"24 mm"^2 * "2 N.m"', "(24 mm)² · 2 N·m"],
  ])("%s reads %s", (text, want) => {
    expect(plain(shown(text))).toBe(want);
  });
});

describe("show(tree, leaf) with numbers put in", () => {
  const numbers: Readonly<Record<string, Shown>> = {
    a: { type: "number", text: "-5" },
    b: { type: "number", text: "3", unit: "mm" },
    c: { type: "number", text: "−2", unit: "kN" },
  };
  const leaf = (name: string): Shown => numbers[name] ?? { type: "symbol", text: name };

  test.each([
    ["a + x", "-5 + x"],
    ["x + a", "x + (-5)"],
    ["x - a", "x − (-5)"],
    ["x * a", "x · (-5)"],
    ["a * x", "-5 · x"],
    ["a^2", "(-5)²"],
    ["-a", "−(-5)"],
    ["b^2", "(3 mm)²"],
    ["x / b", "x / (3 mm)"],
    ["b / x", "3 mm / x"],
    ["x * b", "x · 3 mm"],
    ["sqrt(b)", "√(3 mm)"],
    ["x - c * b", "x − (−2 kN · 3 mm)"],
  ])("%s reads %s", (text, want) => {
    expect(plain(shown(text, leaf))).toBe(want);
  });
});

describe("show(tree, leaf) is a tree of fractions, powers and roots", () => {
  test("a division is a fraction without brackets", () => {
    expect(shown("(a + b) / (c * d)")).toEqual({
      type: "fraction",
      top: { type: "row", parts: [symbolOf("a"), { type: "operator", text: "+" }, symbolOf("b")] },
      bottom: { type: "row", parts: [symbolOf("c"), { type: "operator", text: "·" }, symbolOf("d")] },
    });
  });

  test("a quantity keeps the digits as typed and labels its unit", () => {
    expect(shown('"5.00 N.m"')).toEqual({ type: "number", text: "5.00", unit: "N·m" });
  });

  test("a choice has one row per case", () => {
    const rows = [
      { value: symbolOf("c"), when: shown("a > b") },
      { value: symbolOf("d"), when: symbolOf("otherwise") },
    ];
    expect(shown("a > b ? c : d")).toEqual({ type: "cases", rows });
  });
});

test.each([
  ["F_M", { type: "symbol", text: "F", sub: "M" }],
  ["σ_eq", { type: "symbol", text: "σ", sub: "eq" }],
  ["d_w_1", { type: "symbol", text: "d", sub: "w_1" }],
  ["K", { type: "symbol", text: "K" }],
  ["_x", { type: "symbol", text: "_x" }],
  ["x_", { type: "symbol", text: "x_" }],
])("symbolOf(%j) splits at the first underscore", (text, want) => {
  expect(symbolOf(text)).toEqual(want);
});

/** The line read back as a formula. */
function readBack(line: string): string {
  const digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  return line
    .replaceAll("−", "-")
    .replaceAll("·", "*")
    .replaceAll("π", "pi")
    .replace(
      /[⁰¹²³⁴⁵⁶⁷⁸⁹⁻]+/g,
      (raised) =>
        `^(${raised
          .split("")
          .map((c) => (c === "⁻" ? "-" : digits.indexOf(c)))
          .join("")})`,
    )
    .replace(/√(?!\()([\w.]+)/g, "sqrt($1)")
    .replaceAll("√", "sqrt");
}

test("read back as a formula, the line has the same value: no bracket is missing", () => {
  fc.assert(
    fc.property(formulaText({ stepped: false }), inputValues, (text, values) => {
      const lookup = (name: string): number => values[inputNames.indexOf(name)] ?? 0;
      const tree = parse(text);
      if (isProblem(tree)) throw new Error(text);
      const back = parse(readBack(plain(shown(text, (name) => ({ type: "symbol", text: name })))));
      if (isProblem(back)) throw new Error(`${text}: ${back.got}`);
      const want = evaluator(tree)(lookup);
      if (typeof want !== "number" || Math.abs(want) > 1e100) return;
      const got = evaluator(back)(lookup);
      // brackets left out of a + (b + c) and a · (b / c) change the rounding, so only inputs without cancelling count
      const size = Math.max(1e-6, ...values.map(Math.abs));
      if (typeof got === "number" && Math.abs(want) > 1e-3 * size && Math.abs(want) < 1e6) {
        expect(Math.abs(got / want - 1)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 500 },
  );
});
