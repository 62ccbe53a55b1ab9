// One conversion for each unit of the list, both ways and exactly. The factors are written out here by themselves,
// worked out in fractions from the inch, the pound, g, the litre and the densities of mercury and water, apart from
// definitions.ts: a wrong digit there is found here.
import { describe, expect, test } from "vitest";
import { type Atom, type AtomName, atoms } from "../../src/units/definitions.ts";
import {
  divide,
  equal,
  exactDecimal,
  fromDecimal,
  multiply,
  type Rational,
  rational,
} from "../../src/units/rational.ts";
import { scan } from "../../src/units/scan.ts";
import { unit } from "../../src/units/unit.ts";
import { answered } from "./helpers.ts";

type Typable = Exclude<AtomName, "mercury" | "water">;

/** One of the unit in SI; "pi" multiplies. */
const factors = {
  "1": "1",
  m: "1",
  kg: "1",
  s: "1",
  K: "1",
  rad: "1",
  in: "0.0254",
  lb: "0.45359237",
  gn: "9.80665",
  atm: "101325",
  deg: "1/180 pi",
  degC: "1",
  degF: "5/9",
  ft: "0.3048",
  yd: "0.9144",
  mi: "1609.344",
  thou: "0.0000254",
  tenth: "0.00000254",
  uin: "0.0000000254",
  "circular mil": "0.00000000016129 pi",
  L: "0.001",
  gal: "0.003785411784",
  g: "0.001",
  lbm: "0.45359237",
  t: "1000",
  oz: "0.028349523125",
  gr: "0.00006479891",
  "troy oz": "0.0311034768",
  "short cwt": "45.359237",
  "long cwt": "50.80234544",
  "short ton": "907.18474",
  "long ton": "1016.0469088",
  slug: "8896443230521/609600000000",
  N: "1",
  dyn: "0.00001",
  kgf: "9.80665",
  gf: "0.00980665",
  kp: "9.80665",
  tf: "9806.65",
  lbf: "4.4482216152605",
  ozf: "0.27801385095378125",
  kip: "4448.2216152605",
  tonf: "8896.443230521",
  poundal: "0.138254954376",
  Pa: "1",
  bar: "100000",
  psi: "8896443230521/1290320000",
  ksi: "8896443230521/1290320",
  at: "98066.5",
  torr: "20265/152",
  mmHg: "133.322387415",
  cmHg: "1333.22387415",
  inHg: "3386.388640341",
  mmH2O: "9.80665",
  cmH2O: "98.0665",
  inH2O: "249.08891",
  ftH2O: "2989.06692",
  J: "1",
  erg: "0.0000001",
  W: "1",
  hp: "745.69987158227022",
  "metric hp": "735.49875",
  min: "60",
  h: "3600",
  arcmin: "1/10800 pi",
  arcsec: "1/648000 pi",
  rev: "2 pi",
  flat: "1/3 pi",
  gon: "1/200 pi",
  "angular mil": "1/3200 pi",
  rpm: "1/30 pi",
  degR: "5/9",
  delta_K: "1",
  delta_degC: "1",
  delta_degF: "5/9",
  delta_degR: "5/9",
  "%": "0.01",
  "‰": "0.001",
  ppm: "0.000001",
} as const satisfies Readonly<Record<Typable, string>>;

const factorOf = (name: string): Rational =>
  written(Object.entries(factors).find(([other]) => other === name)?.[1] ?? "0");

/** Kelvin of a reading of 0 and of 100, for the units whose nought is not that of the kelvin. */
const readings: readonly (readonly [unit: string, at0: string, at100: string])[] = [
  ["degC", "273.15", "373.15"],
  ["degF", "45967/180", "55967/180"],
];

const prefixes: Readonly<Record<string, string>> = {
  n: "0.000000001",
  u: "0.000001",
  m: "0.001",
  c: "0.01",
  d: "0.1",
  da: "10",
  h: "100",
  k: "1000",
  M: "1000000",
  G: "1000000000",
};

function written(text: string): Rational {
  const [number = "", pi] = text.split(" ");
  return multiply(fromDecimal(number) ?? rational(0), rational(1, 1, pi === "pi" ? 1 : 0));
}

const typed = (name: string) => (name === "nm" ? unit("nm", "length") : unit(name));

/** From the unit to SI and from SI to the unit, through the text a person types. */
function expectFactor(name: string, factor: Rational): void {
  const u = answered(typed(name));
  const kind = name === "nm" ? "length" : name === "1" ? "ratio" : undefined;
  const nought = scan(name === "1" ? "0" : `0 ${name}`, kind).quantity;
  const seven = scan(name === "1" ? "7" : `7 ${name}`, kind).quantity;
  if (!nought || !seven) throw new Error(`7 ${name} is not read`);
  const step = {
    n: seven.exact.n * nought.exact.d - nought.exact.n * seven.exact.d,
    d: seven.exact.d * nought.exact.d,
  };
  const there = multiply(rational(step.n, step.d), rational(1, 1, seven.exact.pi));
  expect(equal(there, multiply(rational(7), factor)), `7 ${name} in SI`).toBe(true);
  expect(equal(divide(there, u.factor), rational(7)), `and back to ${name}`).toBe(true);
}

test("the list here and the list of units are the same", () => {
  const listed = Object.keys(atoms).filter((name) => name !== "mercury" && name !== "water");
  expect(Object.keys(factors).toSorted()).toEqual(listed.toSorted());
  console.log(`units held by a factor of their own: ${listed.length}`);
});

describe("each unit", () => {
  test.each(Object.entries(factors))("1 %s is %s in SI, and back", (name, factor) =>
    expectFactor(name, written(factor)),
  );
  test.each(readings)("0 and 100 %s are %s and %s K", (name, at0, at100) => {
    const kelvin = (number: string) => scan(`${number} ${name}`, "temperature").quantity?.exact;
    expect(kelvin("0")).toEqual(written(at0));
    expect(kelvin("100")).toEqual(written(at100));
  });
});

const prefixed = Object.entries(atoms).flatMap(([name, atom]: [string, Atom]) =>
  (atom.prefixes?.split(" ") ?? []).map((prefix) => [prefix + name, prefix, name] as const),
);

describe("each prefix of each unit", () => {
  test("there are 47", () => expect(prefixed).toHaveLength(47));
  test.each(prefixed)("%s", (text, prefix, name) =>
    expectFactor(text, multiply(written(prefixes[prefix] ?? "0"), factorOf(name))),
  );
});

test("the conventional densities behind mmHg and mmH2O", () => {
  const density = (hg: string, length: string) =>
    exactDecimal(divide(factorOf(hg), multiply(written("9.80665"), written(length))));
  expect(density("mmHg", "0.001")).toBe("13595.1");
  expect(density("ftH2O", "0.3048")).toBe("1000");
});
