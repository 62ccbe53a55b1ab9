import { describe, expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { convert, inUnit } from "../../src/units/convert.ts";
import { formatIn } from "../../src/units/format.ts";
import type { Kind } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import { rational, toDecimal } from "../../src/units/rational.ts";
import { unit } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

const converted = (text: string, to: string, kind?: Kind) =>
  answered(convert(answered(quantity(text, kind)), to));

describe("convert(quantity, to)", () => {
  test.each([
    ["140 in lb", "N.m", "15.82 N.m"],
    ["140 in lb", "lbf.ft", "11.67 lbf.ft"],
    ["140 in lb", "kgf.m", "1.613 kgf.m"],
    ["68 degF", "degC", "20.00 degC"],
    ["520 lbf.ft", "N.m", "705.0 N.m"],
    ["500 N.m", "lbf.ft", "368.8 lbf.ft"],
    ["500 N.m", "kgf.m", "50.99 kgf.m"],
    ["12 thou", "mm", "0.3048 mm"],
    ["3.25 MPa", "psi", "471.4 psi"],
    ["1-1/4 in", "in", "1.250 in"],
    ["142857 N", "kN", "142.9 kN"],
    ["50 degF difference", "K", "27.78 K"],
    ["6.5e-6 /degF", "1/K", "1.170e-5 1/K"],
    ["140 in lb", "ft-lb", "11.67 lbf.ft"],
    ["0.001 mm/mm", "um/mm", "1.000 um/mm"],
  ])("%s to %s is %s", (text, to, answer) => expect(converted(text, to).text).toBe(answer));

  test("220 lbf.in is 24.8567 N.m at six significant digits, 24.857 at five", () => {
    const { exact } = converted("220 lbf.in", "N.m");
    expect(toDecimal(exact, 6)).toBe("24.8567");
    expect(toDecimal(exact, 5)).toBe("24.857");
  });
  test("a 50 degF difference is 27.78 K, and 50 degF as a reading is 10 degC", () => {
    expect(converted("50 degF", "K", "temperature difference").text).toBe("27.78 K");
    expect(converted("50 degF", "degC", "temperature").value).toBe(10);
  });
  test("a difference never becomes a reading", () => {
    expect(converted("20 degC", "K", "temperature difference").exact).toEqual(rational(20));
    expect(converted("20 degC", "degF", "temperature difference").exact).toEqual(rational(36));
    expect(isProblem(convert(answered(quantity("20 degC", "temperature")), "delta_degF"))).toBe(true);
  });
  test("a torque is not given in joules, an energy is, and ft.lbf of no stated kind can be either", () => {
    const refused = convert(answered(quantity("18 ft-lb", "torque")), "J");
    expect(isProblem(refused) && sentence(refused)).toContain("a torque has the dimension of energy");
    expect(converted("18 ft-lb", "J", "energy").text).toBe("24.40 J");
    expect(converted("1 ft.lbf", "J").text).toBe("1.356 J");
  });
  test("another dimension is refused by name", () => {
    const refused = convert(answered(quantity("2 MPa")), "N.m");
    expect(isProblem(refused) && sentence(refused)).toContain("MPa, a stress");
    expect(isProblem(refused) && refused.must).toContain("torque");
  });
  test("combinations without a name of their own convert among themselves", () => {
    expect(converted("1 in/degF", "mm/K").exact).toEqual(rational(1143, 25));
    expect(isProblem(convert(answered(quantity("1 in/degF")), "mm"))).toBe(true);
  });
  test("a unit that has to be confirmed is refused as a target, with the plain form", () => {
    const refused = convert(answered(quantity("5 N.m")), "kg-m");
    expect(isProblem(refused) && refused.suggestions).toEqual(["kgf.m"]);
  });
  test("nm can be asked for from a length", () => expect(converted("0.03 um", "nm").text).toBe("30.00 nm"));
});

describe("inUnit(si, unit)", () => {
  test("respects the offset of a reading and not that of a difference", () => {
    expect(inUnit(293.15, answered(unit("degC", "temperature")))).toBe(20);
    expect(inUnit(20, answered(unit("degC", "temperature difference")))).toBe(20);
  });
  test("formatIn(si, unit) shows it", () => {
    expect(formatIn(24.8567, answered(unit("N.m")))).toBe("24.86 N.m");
    expect(formatIn(24.8567, answered(unit("N.m")), { label: true })).toBe("24.86 N·m");
    expect(formatIn(Math.PI / 2, answered(unit("deg")), { significant: 3, label: true })).toBe("90.0°");
    expect(formatIn(293.15, answered(unit("degC")), { decimals: 1, label: true })).toBe("20.0 °C");
    expect(formatIn(0.14, answered(unit("1")))).toBe("0.1400");
  });
});
