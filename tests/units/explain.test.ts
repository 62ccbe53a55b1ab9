import { describe, expect, test } from "vitest";
import { rule, usualAnswers, wouldMean } from "../../src/units/explain.ts";
import { quantity } from "../../src/units/quantity.ts";
import { unit } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

describe("rule(unit)", () => {
  test.each([
    ["lbf.in", "1 lbf.in = 0.112 984 829 027 616 7 N.m (exact)"],
    ["lbf.ft", "1 lbf.ft = 1.355 817 948 331 400 4 N.m (exact)"],
    ["in", "1 in = 0.0254 m (exact)"],
    ["kN/mm", "1 kN/mm = 1 000 000 N/m (exact)"],
    ["um", "1 um = 1e-6 m (exact)"],
    ["psi", "1 psi = 6894.757 293 168 361 Pa (rounded; exactly 8 896 443 230 521/1 290 320 000 Pa)"],
    ["deg", "1 deg = 0.017 453 292 519 943 30 rad (rounded; exactly pi/180 rad)"],
    ["rev", "1 rev = 6.283 185 307 179 586 rad (rounded; exactly 2 pi rad)"],
    ["degF", "T/K = (t/degF + 459.67)/1.8 (exact)"],
    ["degC", "T/K = t/degC + 273.15 (exact)"],
    ["delta_degF", "1 delta_degF = 0.555 555 555 555 555 6 K (rounded; exactly 5/9 K)"],
    ["in/degF", "1 in/degF = 0.045 72 m/K (exact)"],
    ["%", "1 % = 0.01 (exact)"],
  ])("for %s is: %s", (text, words) => expect(rule(answered(unit(text)))).toBe(words));
});

describe("usualAnswers(quantity)", () => {
  const texts = (text: string) => usualAnswers(answered(quantity(text))).map((answer) => answer.text);
  test("140 in lb is answered in N.m, lbf.ft and kgf.m, not in its own unit", () =>
    expect(texts("140 in lb")).toEqual(["15.82 N.m", "11.67 lbf.ft", "1.613 kgf.m"]));
  test("68 degF is answered as a reading", () => expect(texts("68 degF")).toEqual(["20.00 degC", "293.2 K"]));
  test("3.25 MPa is answered as a stress", () =>
    expect(texts("3.25 MPa")).toEqual(["0.4714 ksi", "471.4 psi", "32.50 bar"]));
  test("a combination without a kind has no usual units", () => expect(texts("1 in/degF")).toEqual([]));
});

describe("wouldMean(number)", () => {
  test("140 is shown as what it would mean in each usual unit", () => {
    const meanings = wouldMean("140");
    expect(meanings.map((meaning) => meaning.text)).toContain("140 lbf.ft = 189.8 N.m");
    expect(meanings.map((meaning) => meaning.text)).toContain("140 lbf.in = 15.82 N.m");
    expect(new Set(meanings.map((meaning) => meaning.kind)).size).toBe(5);
  });
  test("text that is no number means nothing", () => expect(wouldMean("12 mm")).toEqual([]));
});
