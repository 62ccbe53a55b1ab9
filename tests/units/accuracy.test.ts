// Every unit of the list, with every prefix it takes: 1e-12 relative both ways, and the identities that hold exactly.
import { describe, expect, test } from "vitest";
import { convert, inUnit } from "../../src/units/convert.ts";
import { type Atom, atoms, prefixes } from "../../src/units/definitions.ts";
import { kinds } from "../../src/units/kind.ts";
import { quantity, quantityOf } from "../../src/units/quantity.ts";
import { divide, equal, fromDecimal, multiply, rational, toNumber } from "../../src/units/rational.ts";
import { unit } from "../../src/units/unit.ts";
import { answered, relativeError } from "./helpers.ts";

/** mercury and water only serve definitions; they are no units a person can type. */
const listed = Object.entries(atoms)
  .filter(([name]) => name !== "mercury" && name !== "water")
  .flatMap(([name, atom]: [string, Atom]) => [
    name,
    ...(atom.prefixes?.split(" ") ?? []).map((prefix) => prefix + name),
  ])
  .filter((text) => text !== "nm");

test("the list has 79 units, 126 with prefixes, and each can be typed by its own name", () => {
  const readable = listed.filter((text) => answered(unit(text)).text === text);
  expect(readable).toEqual(listed);
  expect(Object.keys(atoms)).toHaveLength(79 + 2);
  expect(listed).toHaveLength(126 - 1);
  expect(Object.keys(prefixes)).toHaveLength(10);
});

test("to SI and back is within 1e-12 of the exact rational for every unit", () => {
  let worst = { text: "", error: 0 };
  const number = fromDecimal("123.456789") ?? rational(0);
  for (const text of listed) {
    const u = answered(unit(text));
    const q = quantityOf(text, number, u);
    const error = Math.max(relativeError(q.si, q.exact), relativeError(inUnit(q.si, u), number));
    if (error > worst.error) worst = { text, error };
  }
  console.log(`units both ways: worst ${worst.text} ${worst.error.toExponential(2)}`);
  expect(worst.error).toBeLessThan(1e-12);
});

test("nm is a nanometre only where a length is expected", () => {
  expect(answered(unit("nm", "length")).factor).toEqual(rational(1, 1_000_000_000));
});

describe("exact identities", () => {
  test.each([
    ["lbf.ft", "lbf.in", "12"],
    ["lbf.in", "ozf.in", "16"],
    ["ft", "in", "12"],
    ["lb", "oz", "16"],
    ["kip", "lbf", "1000"],
    ["ksi", "psi", "1000"],
    ["psi", "lbf/in2", "1"],
    ["MPa", "N/mm2", "1"],
    ["at", "kgf/cm2", "1"],
    ["thou", "uin", "1000"],
    ["tonf", "lbf", "2000"],
    ["Mlbf/in", "lbf/in", "1000000"],
    ["MN/m", "kN/mm", "1"],
    ["GPa", "MPa", "1000"],
    ["rev", "deg", "360"],
    ["1/degF", "1/K", "9/5"],
    ["hp", "lbf.ft/s", "550"],
    ["slug", "lb", "196133/6096"],
    ["lbf.in", "N.m", "0.1129848290276167"],
    ["lbf.ft", "N.m", "1.3558179483314004"],
    ["lbf", "N", "4.4482216152605"],
    ["in3", "m3", "1.6387064e-5"],
  ])("1 %s = %s × %s", (from, to, factor) => {
    const expected = fromDecimal(factor) ?? rational(0);
    expect(equal(divide(answered(unit(from)).factor, answered(unit(to)).factor), expected)).toBe(true);
    const there = answered(convert(answered(quantity(`1 ${from}`)), to));
    expect(there.exact).toEqual(expected);
    expect(there.value).toBe(toNumber(expected));
  });
});

test("every kind's SI unit has factor 1 and its usual units have its kind", () => {
  for (const info of Object.values(kinds)) {
    expect(answered(unit(info.si, info.kind)).factor, info.kind).toEqual(rational(1));
    for (const name of info.usual) {
      const u = answered(unit(name, info.kind));
      expect(u.text, info.kind).toBe(name);
      expect(u.dimension, info.kind).toEqual(info.dimension);
    }
  }
  expect(Object.keys(kinds)).toHaveLength(30);
});

test("only base constants carry a source, and every one of them does", () => {
  const numbers = Object.entries(atoms).filter(([, atom]: [string, Atom]) => atom.source !== undefined);
  expect(numbers.map(([name]) => name)).toEqual([
    "in",
    "lb",
    "gn",
    "atm",
    "deg",
    "mercury",
    "water",
    "degC",
    "degF",
  ]);
});

test("the pound-force is the pound times standard gravity", () => {
  const [lb, gn, lbf] = [unit("lb"), unit("gn"), unit("lbf")].map((u) => answered(u).factor);
  expect(lb && gn && lbf && equal(multiply(lb, gn), lbf)).toBe(true);
});
