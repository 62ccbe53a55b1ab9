import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  add,
  compare,
  divide,
  equal,
  exactDecimal,
  fromDecimal,
  multiply,
  negate,
  power,
  rational,
  subtract,
  terminates,
  toDecimal,
  toNumber,
} from "../../src/units/rational.ts";

const small = fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n });
const anyRational = fc.tuple(small, fc.bigInt({ min: 1n, max: 10n ** 30n })).map(([n, d]) => rational(n, d));

describe("fromDecimal", () => {
  test("reads decimals, exponents and fractions exactly", () => {
    expect(fromDecimal("4.448")).toEqual(rational(556, 125));
    expect(fromDecimal("1e-3")).toEqual(rational(1, 1000));
    expect(fromDecimal("-1/4")).toEqual(rational(-1, 4));
    expect(fromDecimal(".5")).toEqual(rational(1, 2));
  });
  test.each(["", " ", ".", "0x10", "1,234", "1e", "Infinity", "NaN", "1/0", "--1", "1e99999"])(
    "refuses %j, which Number or parseFloat would let through or blow up on",
    (text) => expect(fromDecimal(text)).toBeUndefined(),
  );
});

describe("arithmetic", () => {
  test("a ring and its inverses: (a + b) - b = a, (a b) / b = a, a - a = 0", () => {
    fc.assert(
      fc.property(anyRational, anyRational, (a, b) => {
        expect(equal(subtract(add(a, b), b), a)).toBe(true);
        if (b.n !== 0n) expect(equal(divide(multiply(a, b), b), a)).toBe(true);
        expect(add(a, negate(a))).toEqual(rational(0));
      }),
    );
  });
  test("power(r, -2) is 1/(r r)", () => {
    expect(power(rational(2, 3), -2)).toEqual(rational(9, 4));
    expect(power(rational(1, 2, 1), 2)).toEqual(rational(1, 4, 2));
  });
  test("compare(a, b) knows that 22/7 lies above pi and 333/106 below", () => {
    expect(compare(rational(22, 7), rational(1, 1, 1))).toBe(1);
    expect(compare(rational(333, 106), rational(1, 1, 1))).toBe(-1);
    expect(compare(rational(1, 1, 1), rational(1, 1, 1))).toBe(0);
  });
});

describe("toNumber", () => {
  test("gives back the double that a decimal text means to the engine", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (x) => {
        const text = String(x);
        const read = fromDecimal(text);
        expect(read && toNumber(read)).toBe(x === 0 ? 0 : x);
      }),
      {
        examples: [[5e-324], [2.2250738585072014e-308], [1.7976931348623157e308], [0.1]],
      },
    );
  });
  test("is Math.PI for pi, and 2 pi / 360 for a degree", () => {
    expect(toNumber(rational(1, 1, 1))).toBe(Math.PI);
    expect(toNumber(rational(1, 180, 1))).toBe(Math.PI / 180);
  });
  test("the 99 decimals of pi follow from Machin's formula", () => {
    const scale = 10n ** 110n;
    const arctan = (inverse: bigint): bigint => {
      let [sum, term] = [0n, scale / inverse];
      for (let k = 1n; term !== 0n; k += 2n) {
        sum += (k % 4n === 1n ? term : -term) / k;
        term /= inverse * inverse;
      }
      return sum;
    };
    const pi = (16n * arctan(5n) - 4n * arctan(239n)).toString();
    expect(toDecimal(rational(1, 1, 1), 95).replace(".", "")).toBe(roundTo(pi, 95));
  });
});

const roundTo = (digits: string, keep: number): string =>
  ((BigInt(digits.slice(0, keep + 1)) + 5n) / 10n).toString();

describe("toDecimal", () => {
  test("rounds half to even from the exact value", () => {
    expect(toDecimal(rational(1625, 1000), 3)).toBe("1.62");
    expect(toDecimal(rational(1655, 1000), 3)).toBe("1.66");
    expect(toDecimal(rational(69749515n, 10_000_000n), 7)).toBe("6.974952");
    expect(toDecimal(rational(69749505n, 10_000_000n), 7)).toBe("6.974950");
    expect(toDecimal(rational(999_96, 10_000), 4)).toBe("10.00");
  });
  test("a hair above the half rounds up: 1.625 and 1e-30 more is 1.63", () => {
    expect(toDecimal(add(rational(13, 8), rational(1, 10n ** 30n)), 3)).toBe("1.63");
  });
});

test("terminates(r) is true for 1/8 and false for 1/3 and pi", () => {
  expect(terminates(rational(1, 8))).toBe(true);
  expect(terminates(rational(1, 3))).toBe(false);
  expect(terminates(rational(1, 1, 1))).toBe(false);
});

test("exactDecimal(r) writes all digits or none", () => {
  expect(exactDecimal(rational(127, 5000))).toBe("0.0254");
  expect(exactDecimal(rational(1, 3))).toBeUndefined();
  expect(exactDecimal(rational(1, 2n ** 90n))).toBeUndefined();
  expect(exactDecimal(rational(-1500))).toBe("-1500");
});
