import { describe, expect, test } from "vitest";
import {
  chiSquareQuantile,
  lnGamma,
  lowerGamma,
  normalHalfWidth,
} from "../../../src/methods/torque/chi-square.ts";
import { expectClose, expectPrinted } from "../helpers.ts";

describe("published quantiles", () => {
  // Tables of the chi-square distribution as every statistics text prints them.
  test.each([
    [0.05, 1, "0.00393"],
    [0.05, 2, "0.1026"],
    [0.05, 5, "1.1455"],
    [0.05, 9, "3.3251"],
    [0.05, 19, "10.1170"],
    [0.05, 29, "17.7084"],
    [0.01, 5, "0.5543"],
    [0.1, 9, "4.1682"],
    [0.95, 1, "3.8415"],
    [0.95, 10, "18.3070"],
    [0.99, 1, "6.6349"],
    [0.5, 4, "3.3567"],
  ])("the share %s with %i degrees of freedom lies below %s", (p, freedom, printed) => {
    expectPrinted(chiSquareQuantile(p, freedom), printed);
  });

  test("a normal population holds 95 and 99 % within 1.959964 and 2.575829 standard deviations", () => {
    expectPrinted(normalHalfWidth(0.95), "1.959964");
    expectPrinted(normalHalfWidth(0.99), "2.575829");
    expectPrinted(normalHalfWidth(0.6826894921370859), "1.0000000000");
  });
});

describe("closed forms", () => {
  test("two degrees of freedom are an exponential distribution", () => {
    for (const p of [1e-6, 0.01, 0.05, 0.5, 0.9, 0.999])
      expectClose(chiSquareQuantile(p, 2), -2 * Math.log1p(-p), 1e-12);
  });

  test("four degrees of freedom: P(x) = 1 - exp(-x/2)(1 + x/2)", () => {
    for (const x of [0.01, 0.5, 1, 3, 8, 30])
      expectClose(lowerGamma(2, x / 2), 1 - Math.exp(-x / 2) * (1 + x / 2), 1e-11);
  });

  test("ln Γ is the logarithm of a factorial, and Γ(1/2) is the root of pi", () => {
    let factorial = 1;
    for (let n = 1; n < 20; n += 1) {
      factorial *= n;
      expect(Math.abs(lnGamma(n + 1) - Math.log(factorial))).toBeLessThan(1e-13 * (1 + Math.log(factorial)));
    }
    expect(Math.abs(lnGamma(0.5) - Math.log(Math.sqrt(Math.PI)))).toBeLessThan(1e-14);
  });
});

/** Γ(k/2) by its recurrence from 1 and √π, sharing nothing with the library. */
const gammaHalf = (k: number): number =>
  k === 1 ? Math.sqrt(Math.PI) : k === 2 ? 1 : (k / 2 - 1) * gammaHalf(k - 2);

/** Simpson's rule on the chi density with u = √x, which is smooth from 0 on. */
function integrated(x: number, freedom: number): number {
  const [end, steps] = [Math.sqrt(x), 4000];
  const density = (u: number) => u ** (freedom - 1) * Math.exp((-u * u) / 2);
  let sum = density(0) + density(end);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 0 ? 2 : 4) * density((end * i) / steps);
  return ((end / steps / 3) * sum) / (2 ** (freedom / 2 - 1) * gammaHalf(freedom));
}

test("numeric integration up to a quantile gives its share back", () => {
  for (const freedom of [1, 2, 3, 5, 9, 14, 30])
    for (const p of [0.01, 0.05, 0.3, 0.5, 0.9, 0.99])
      expectClose(integrated(chiSquareQuantile(p, freedom), freedom), p, 1e-10);
});

test("a larger share and more freedom lie further out", () => {
  for (const freedom of [1, 2, 5, 20, 200]) {
    const shares = [0.001, 0.05, 0.5, 0.95, 0.999].map((p) => chiSquareQuantile(p, freedom));
    expect(shares.toSorted((a, b) => a - b)).toEqual(shares);
    expect(chiSquareQuantile(0.05, freedom + 1)).toBeGreaterThan(chiSquareQuantile(0.05, freedom));
  }
});
