import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { roundDecimal } from "../../src/units/format.ts";

describe("roundDecimal(value, how)", () => {
  test.each([
    [1.625, { decimals: 2 }, "1.62"],
    [1.655, { decimals: 2 }, "1.66"],
    [6.9749515, { significant: 7 }, "6.974952"],
    [6.9749505, { significant: 7 }, "6.974950"],
    [2.5, { decimals: 0 }, "2"],
    [0.5, { decimals: 0 }, "0"],
    [0.6, { decimals: 0 }, "1"],
    [9.99, { decimals: 1 }, "10.0"],
    [99.95, { significant: 3 }, "100"],
    [0.05, { decimals: 1 }, "0.0"],
    [-0.04, { decimals: 1 }, "0.0"],
    [-1.25, { decimals: 1 }, "-1.2"],
    [0.00001, { decimals: 2 }, "0.00"],
    [0, { decimals: 2 }, "0.00"],
    [1e21, { decimals: 1 }, "1000000000000000000000.0"],
    [123.456, { decimals: 5 }, "123.45600"],
  ])("rounds %d half to even from its decimal text, %o: %s", (value, how, text) =>
    expect(roundDecimal(value, how)).toBe(text),
  );

  test("gives 4 significant digits when not told otherwise; a tie goes to the even digit", () => {
    expect(roundDecimal(142857)).toBe("142900");
    expect(roundDecimal(142.857)).toBe("142.9");
    expect(roundDecimal(705.0253)).toBe("705.0");
    expect(roundDecimal(12345)).toBe("12340");
    expect(roundDecimal(12355)).toBe("12360");
    expect(roundDecimal(0)).toBe("0");
  });
  test("uses no exponent from 1e-4 up to 1e9", () => {
    expect(roundDecimal(0.0001)).toBe("0.0001000");
    expect(roundDecimal(999_900_000)).toBe("999900000");
    expect(roundDecimal(0.0000117)).toBe("1.170e-5");
    expect(roundDecimal(1.7e11)).toBe("1.700e11");
  });
  test("parts groups of three with thin spaces only when asked, and never with a comma", () => {
    expect(roundDecimal(1234567.25, { decimals: 4, groups: true })).toBe("1\u2009234\u2009567.2500");
    expect(roundDecimal(1234.5, { decimals: 1, groups: true })).toBe("1234.5");
    expect(roundDecimal(1.23456, { significant: 6, groups: true, comma: true })).toBe("1,234\u200956");
  });
  test("a number that is not finite has no answer", () => {
    expect(roundDecimal(Number.NaN)).toBe("no answer");
    expect(roundDecimal(Number.POSITIVE_INFINITY)).toBe("no answer");
  });
  test("agrees with Intl.NumberFormat, half to even on the decimal text", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -99_999_999, max: 99_999_999 }),
        fc.integer({ min: 0, max: 4 }),
        (n, decimals) => {
          const value = n / 100_000;
          const formatter = new Intl.NumberFormat("en", {
            minimumFractionDigits: decimals,
            maximumFractionDigits: decimals,
            useGrouping: false,
            roundingMode: "halfEven",
          });
          const other = formatter.format(`${value}`).replace(/^-(0(\.0+)?)$/, "$1");
          expect(roundDecimal(value, { decimals })).toBe(other);
        },
      ),
    );
  });
});
