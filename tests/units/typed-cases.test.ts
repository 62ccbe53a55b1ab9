// What people type on a torque card, at a gauge or from a drawing, and how each text comes out.
import { describe, expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { conversionRequest } from "../../src/units/conversion-request.ts";
import { convert } from "../../src/units/convert.ts";
import { usualAnswers } from "../../src/units/explain.ts";
import type { Kind } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import { fromDecimal } from "../../src/units/rational.ts";
import { scan } from "../../src/units/scan.ts";
import { scanFor } from "../../src/units/scan-for.ts";
import { unit } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

type Read = readonly [text: string, kind: Kind | undefined, outcome: string, readAs: string];
type Refused = readonly [text: string, kind: Kind | undefined, says: string, suggestions: readonly string[]];

const reads = (rows: readonly Read[]): void =>
  test.each(rows)('"%s" as %s: %s, %s', (text, kind, outcome, readAs) => {
    const found = scan(text, kind);
    expect(found.problem && found.outcome === "refuse" ? sentence(found.problem) : found.outcome).toBe(
      outcome,
    );
    expect(found.readAs).toBe(readAs);
  });

/** Each suggestion has to be readable in the same field. */
const refuses = (rows: readonly Refused[]): void =>
  test.each(rows)('"%s" as %s is refused, %s: %j', (text, kind, says, suggestions) => {
    const found = scan(text, kind);
    expect(found.outcome).toBe("refuse");
    expect(found.problem && sentence(found.problem)).toContain(says);
    expect(found.problem?.suggestions).toEqual(suggestions);
    for (const suggestion of suggestions)
      expect(["accept", "note"], suggestion).toContain(scan(suggestion, kind).outcome);
    const read = quantity(text, kind);
    expect(isProblem(read) && read.code).toBe(found.problem?.code);
  });

describe("a sign before a nought", () => {
  reads([
    ["-0°30'", undefined, "accept", "angle, -0.5 deg"],
    ["−0° 30' 36\"", "angle", "accept", "angle, -0.51 deg"],
    ["-0 ft 6 in", undefined, "accept", "length, -0.5 ft"],
    ["-0'-6\"", "length", "accept", "length, -0.5 ft"],
    ["-0 lb 8 oz", undefined, "accept", "mass, -0.5 lb"],
    ["-0 h 30 min", undefined, "accept", "time, -0.5 h"],
    ["-0 1/2 in", undefined, "note", "length, -0.5 in"],
  ]);
});

describe("a plus before a number is a tolerance or a sum", () => {
  refuses([
    [
      "300 Nm +30 Nm",
      "torque",
      "a sum or a tolerance",
      ["300 N.m ± 30 N.m", "300 N.m +30/0 N.m", "300 N.m + 30 N.m"],
    ],
    ["90° +10°", "angle", "a sum or a tolerance", ["90 deg ± 10 deg", "90 deg +10/0 deg", "90 deg + 10 deg"]],
    ["90°+10°", "angle", "a sum or a tolerance", ["90 deg ± 10 deg", "90 deg +10/0 deg", "90 deg + 10 deg"]],
    ["12 mm +5 um", undefined, "a sum or a tolerance", ["12 mm ± 5 um", "12 mm + 5 um"]],
  ]);
  reads([
    ["300 Nm + 30 Nm", undefined, "note", "torque, 330 N.m"],
    ["18 ft-lb + 6 in-lb", undefined, "note", "torque, 18.5 lbf.ft"],
    ["3 ft + 6 in", undefined, "note", "length, 3.5 ft"],
    ["3ft+6in", undefined, "note", "length, 3.5 ft"],
    ["300 Nm +30/-10 Nm", undefined, "accept", "torque, 300 N.m, limits 290 N.m to 330 N.m"],
  ]);
});

describe("a torque is no quotient and no force", () => {
  const slash = "with a slash this is no torque; is lbf.ft meant?";
  refuses([
    ["35 ft/lbs", "torque", slash, ["35 lbf.ft"]],
    ["35 ft/lbs", undefined, slash, ["35 lbf.ft", "35 ft/lbf"]],
    ["100 ft./lbs.", "torque", slash, ["100 lbf.ft"]],
    ["100 lb/ft", "torque", slash, ["100 lbf.ft"]],
    ["100 lbf/ft", "torque", slash, ["100 lbf.ft"]],
    ["8 in/oz", "torque", "is ozf.in meant?", ["8 ozf.in"]],
    ["5 kg/m", "torque", "is kgf.m meant?", ["5 kgf.m"]],
    ["5 N/m", "torque", "is N.m meant?", ["5 N.m"]],
    ["140 lb", "torque", "a force times a lever", ["140 lbf.ft", "140 lbf.in"]],
    ["140 lbs", "torque", "a force times a lever", ["140 lbf.ft", "140 lbf.in"]],
    ["50#", "torque", "a force times a lever", ["50 lbf.ft", "50 lbf.in"]],
    ["6 kg", "torque", "a force times a lever", ["6 kgf.m", "6 kgf.cm"]],
    ["30 N", "torque", "a force times a lever", ["30 N.m"]],
  ]);
});

describe("a part that its larger unit should hold", () => {
  refuses([
    ["45° 61'", undefined, "no more than 60 arcmin", ["45 deg + 61 arcmin"]],
    ["1 ft 14 in", undefined, "no more than 12 in", ["1 ft + 14 in"]],
    ["-1 ft 14 in", undefined, "no more than 12 in", ["-1 ft + -14 in"]],
    ["2 lb 17 oz", "mass", "no more than 16 oz", ["2 lb + 17 oz"]],
    ["3.5 ft 6 in", undefined, "whole ft", ["3.5 ft + 6 in"]],
  ]);
  reads([["59°59'60\"", undefined, "accept", "angle, 60 deg"]]);
});

describe("an apostrophe between groups of digits", () => {
  refuses([
    ["1'500 N", undefined, "without an apostrophe", ["1500 N"]],
    ["1’500 N", "force", "without an apostrophe", ["1500 N"]],
    ["-1'234'567.5 N", undefined, "without an apostrophe", ["-1234567.5 N"]],
  ]);
  reads([["5'6\"", undefined, "accept", "length, 5.5 ft"]]);
});

describe("capitals and points", () => {
  refuses([
    ["140 n.m", "torque", "not a known unit", ["140 N.m"]],
    ["5 Mpa", "stress", "not a known unit", ["5 MPa", "5 mPa"]],
    ["5 mpa", "stress", "not a known unit", ["5 mPa", "5 MPa"]],
    ["3 blips", undefined, 'got "3 blips", not a known unit', []],
  ]);
  reads([
    ["100 P.S.I.", undefined, "note", "pressure, 100 psi"],
    ["100 p.s.i.", "pressure", "note", "pressure, 100 psi"],
    ["30 mm Hg", undefined, "accept", "pressure, 30 mmHg"],
    ["29.9 in. Hg", undefined, "accept", "pressure, 29.9 inHg"],
    ["5 in H2O", undefined, "accept", "pressure, 5 inH2O"],
  ]);
});

describe("words of the shop", () => {
  reads([
    ["14 thou 5 tenths", undefined, "note", "length, 14.5 thou"],
    ["50#", undefined, "warn", "mass, 50 lb"],
    ["50 #", "force", "warn", "force, 50 lbf"],
    ["8 in#", "torque", "warn", "torque, 8 lbf.in"],
    ["2 flats", "angle", "warn", "angle, 120 deg"],
    ["1 flat", undefined, "warn", "angle, 60 deg"],
    ["50 F difference", undefined, "accept", "temperature difference, 50 delta_degF"],
    ["50 degF step", undefined, "accept", "temperature difference, 50 delta_degF"],
    ["50 °F rise", "temperature difference", "accept", "temperature difference, 50 delta_degF"],
    ["30 K change", undefined, "accept", "temperature difference, 30 delta_K"],
    ["36 mm AF", undefined, "note", "length across flats, 36 mm"],
    ["1-1/2 in A/F", "length", "note", "length across flats, 1.5 in"],
  ]);
  refuses([
    ["3 hundredths", "length", "of a millimetre or of an inch", ["0.03 mm", "0.03 in"]],
    ["3 hundredths of a mm", undefined, "say of what", ["0.03 mm"]],
    ["5 thousandths", undefined, "of a millimetre or of an inch", ["0.005 mm", "0.005 in"]],
  ]);
});

describe("units in other letters are read and shown", () => {
  reads([
    ["30 Н·м", "torque", "note", "torque, 30 N.m"],
    ["12 кН", undefined, "note", "force, 12 kN"],
    ["25 мм", undefined, "note", "length, 25 mm"],
    ["5 мкм", undefined, "note", "length, 5 um"],
    ["50 кгс·м", undefined, "note", "torque, 50 kgf.m"],
    ["5 МПа", undefined, "note", "stress, 5 MPa"],
    ["60 кгс/см²", "pressure", "note", "pressure, 60 kgf/cm2"],
    ["5 Ν·m", undefined, "note", "torque, 5 N.m"],
    ["−5 μm", undefined, "accept", "length, -5 um"],
  ]);
});

describe("one value stated twice", () => {
  reads([
    ["20 Nm (2.0 kgf-m)", "torque", "note", "torque, 20 N.m, also stated as 2 kgf.m"],
    ["520 lbf.ft [705 N.m]", undefined, "note", "torque, 520 lbf.ft, also stated as 705 N.m"],
    ["100 psi (690 kPa)", undefined, "note", "pressure, 100 psi, also stated as 690 kPa"],
    [
      "20 ± 1 Nm (14.8 ± 0.7 lbf.ft)",
      undefined,
      "note",
      "torque, 20 N.m ± 1 N.m, also stated as 14.8 lbf.ft",
    ],
    ["20 Nm (2.5 kgf-m)", undefined, "warn", "torque, 20 N.m, not 2.5 kgf.m"],
    ["9.525 mm (3/8 in)", undefined, "note", "length, 9.525 mm, also stated as 0.375 in"],
  ]);
  test("where they do not agree, either can be chosen", () =>
    expect(scan("20 Nm (2.5 kgf-m)").problem?.suggestions).toEqual(["20 N.m", "2.5 kgf.m"]));
});

describe("a range is its middle with half of it as limits", () => {
  test.each([
    "210-260 kPa",
    "210 - 260 kPa",
    "210–260 kPa",
    "210 to 260 kPa",
    "210…260 kPa",
    "210...260 kPa",
  ])("%s", (text) => {
    const found = scan(text, "pressure");
    expect(found.outcome).toBe("note");
    expect(found.readAs).toBe("pressure, 235 kPa, limits 210 kPa to 260 kPa");
    expect(found.quantity?.si).toBe(235_000);
    expect(found.spread).toMatchObject({ lower: { si: 210_000 }, upper: { si: 260_000 } });
  });
  reads([["0.12-0.16", "ratio", "note", "ratio, 0.14, limits 0.12 to 0.16"]]);
  refuses([
    ["260-210 kPa", undefined, "the smaller number of a range first", []],
    ["5 - 3", "ratio", "a difference is not worked out here", []],
  ]);
  test("both ends convert, and inward", () => {
    const psi = answered(convert(answered(quantity("210-260 kPa")), "psi"));
    expect(psi.spread).toBe("30.46 psi to 37.70 psi"); // 260 kPa is 37.7098 psi
    const inch = answered(convert(answered(quantity("12.0000/12.0010 mm")), "in"));
    expect(inch.spread).toBe("0.472441 in to 0.472480 in");
    expect(answered(convert(answered(quantity("500 N.m ± 20 N.m")), "lbf.ft")).spread).toBe("± 14.75 lbf.ft");
  });
});

describe("a text that asks for a conversion", () => {
  refuses([
    ["520 lbf.ft to N.m", "torque", "type 520 lbf.ft", ["520 lbf.ft"]],
    ["520 lbf.ft -> N.m", undefined, "type 520 lbf.ft", ["520 lbf.ft"]],
  ]);
  test("is read as one where it can be answered", () => {
    expect(conversionRequest("520 lbf.ft to N.m")).toEqual({ text: "520 lbf.ft", to: "N.m" });
    expect(conversionRequest("10 to 12 mm")).toBeUndefined();
  });
  test("is read as what the unit asked for can be: 1 lb/ft2 to kg/m2 is no pressure", () => {
    const { quantity: q } = scanFor("1 lb/ft2", "kg/m2");
    expect(q && answered(convert(q, "kg/m2")).text).toBe("4.882 kg/m2");
  });
});

describe("typed digits are kept in every unit", () => {
  test.each([
    ["25.012 mm", "in", "0.98472 in"],
    ["25.012 mm", "um", "25012 um"],
    ["25.012 mm", "thou", "984.72 thou"],
    ["25.012 mm", "m", "0.025012 m"],
    ["99.999 mm", "in", "3.93697 in"],
    ["0.98472 in", "mm", "25.0119 mm"],
    ["300 mm", "in", "11.81 in"],
    ["1 mm", "in", "0.03937 in"],
    ["500 N.m", "lbf.ft", "368.8 lbf.ft"],
  ])("%s to %s is %s", (text, to, shown) =>
    expect(answered(convert(answered(quantity(text)), to)).text).toBe(shown),
  );
  test("a size is answered in mm and in, a deviation in um and thou too", () => {
    const texts = (text: string) => usualAnswers(answered(quantity(text))).map((answer) => answer.text);
    expect(texts("25.012 mm")).toEqual(["0.98472 in"]);
    expect(texts("12 thou")).toEqual(["0.3048 mm", "0.01200 in", "304.8 um"]);
  });
});

test("a/(b/c) is a·c/b, in brackets and out of them", () => {
  const factor = (text: string) => answered(unit(text)).factor;
  expect(factor("kN/(mm/um)")).toEqual(factor("kN.um/mm"));
  expect(factor("N/(m/(s/m))")).toEqual(factor("N.s/m2"));
  expect(factor("J/(N/(m3))")).toEqual(factor("J.m3/N"));
  expect(factor("N/(m/s)/K")).toEqual(factor("N.s/(m.K)"));
  expect(answered(quantity("3 N/(mm/um)")).exact).toEqual(fromDecimal("0.003"));
});
