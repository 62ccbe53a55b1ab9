import { describe, expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { rational } from "../../src/units/rational.ts";
import { unit, unitLabel } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

describe("unit(text, expected)", () => {
  test.each([
    ["N·m", "N.m"],
    ["in-lbf", "lbf.in"],
    ["mm^2", "mm2"],
    ["mm²", "mm2"],
    ["um/m/K", "um/(m.K)"],
    ["/K", "1/K"],
    ["K^-1", "1/K"],
    ["K⁻¹", "1/K"],
    ["µm", "um"],
    ["°C", "degC"],
    ["microinch", "uin"],
    ["N.mm.mm", "N.mm2"],
    ["kilonewtons per millimetre", "kN/mm"],
    ["pounds per square inch", "psi"],
    ["square millimetres", "mm2"],
    ["ton (long)", "long ton"],
    ["1", "1"],
  ])("%s is written %s", (text, canonical) => expect(answered(unit(text)).text).toBe(canonical));

  test("kinds tell torque from energy and a reading from a difference", () => {
    expect(answered(unit("N.m")).kinds).toEqual(["torque", "energy"]);
    expect(answered(unit("J")).kinds).toEqual(["energy"]);
    expect(answered(unit("N.m", "torque")).kinds).toEqual(["torque"]);
    expect(answered(unit("degF", "temperature difference")).offset).toBeUndefined();
    expect(answered(unit("degF")).offset).toEqual(rational(45967, 180));
    expect(answered(unit("rad/s")).kinds).toEqual(["rotation speed"]);
    expect(answered(unit("1/s")).kinds).toEqual([]);
    expect(answered(unit("lbf.in/in")).kinds).toEqual(["moment per length"]);
    expect(answered(unit("lbf/lb")).kinds).toEqual(["specific force"]);
  });
  test("an energy in inch units is written length first, a torque force first", () => {
    expect(answered(unit("lbf.ft", "energy")).text).toBe("ft.lbf");
    expect(answered(unit("ft.lbf", "torque")).text).toBe("lbf.ft");
  });
  test.each([
    ["W/m.K", "in brackets"],
    ["kg-m", "kgf.m"],
    ["tons", "three tons"],
    ["", "empty"],
    ["mm2x", "x"],
    ["mercury", "not a known unit"],
    ["N/(m", "bracket"],
  ])('"%s" is refused: …%s…', (text, part) => {
    const refused = unit(text);
    expect(isProblem(refused) && `${sentence(refused)} ${refused.suggestions.join(" ")}`).toContain(part);
  });
  test("kg.cm2 and the like are refused as units when they would need a question", () => {
    const refused = unit("kg/cm2", "pressure");
    expect(isProblem(refused) && refused.suggestions).toEqual(["kgf/cm2"]);
  });
});

test.each([
  ["N.m", "N·m"],
  ["mm2", "mm²"],
  ["um", "µm"],
  ["uin", "µin"],
  ["degC", "°C"],
  ["deg", "°"],
  ["1/K", "1/K"],
  ["um/(m.K)", "µm/(m·K)"],
  ["mmH2O", "mmH₂O"],
  ["kg.m/s2", "kg·m/s²"],
  ["long ton", "long ton"],
  ["1", ""],
])("unitLabel of %s is %j", (text, label) => expect(unitLabel(answered(unit(text)))).toBe(label));
