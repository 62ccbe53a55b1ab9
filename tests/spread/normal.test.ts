import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { normalQuantile, toNormal } from "../../src/spread/normal.ts";

/** erfc by its continued fraction (large x) or series (small x), written from DLMF 7.6.1 and 7.9.1; exact to a few 1e-16. */
function lowerTail(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  let half: number;
  if (x < 2.5) {
    let term = x;
    let sum = x;
    for (let k = 1; k < 200; k++) {
      term *= (2 * x * x) / (2 * k + 1);
      sum += term;
    }
    half = 0.5 - (Math.exp(-x * x) * sum) / Math.sqrt(Math.PI);
  } else {
    let fraction = x;
    for (let k = 400; k >= 1; k--) fraction = x + k / 2 / fraction;
    half = Math.exp(-x * x) / fraction / Math.sqrt(Math.PI) / 2;
  }
  return z <= 0 ? half : 1 - half;
}

test("normalQuantile(p) turns back into p", () => {
  for (const p of [
    1e-300, 1e-100, 1e-16, 1e-12, 1e-11, 1e-6, 0.01, 0.0749, 0.0751, 0.2, 0.4, 0.5, 0.7, 0.9249, 0.9251, 0.99,
  ]) {
    expect(Math.abs(lowerTail(normalQuantile(p)) / p - 1), `at ${p}`).toBeLessThan(p < 1e-15 ? 3e-13 : 3e-14);
  }
});

test.each([
  [0.5, 0],
  [0.975, 1.959963984540054],
  [0.995, 2.5758293035489],
  [0.84134474606854293, 1],
  [2 ** -53, -8.209536151601386],
])("normalQuantile(%d) is %d", (p, want) => {
  expect(Math.abs(normalQuantile(p) - want)).toBeLessThan(2e-15 * Math.max(1, Math.abs(want)));
});

test("normalQuantile(1 - p) is the opposite of normalQuantile(p), and the ends are infinite", () => {
  for (const p of [2 ** -53, 2 ** -30, 0.0625, 0.25]) expect(normalQuantile(1 - p)).toBe(-normalQuantile(p));
  expect([normalQuantile(0), normalQuantile(1)]).toEqual([
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  ]);
  expect(normalQuantile(Number.NaN)).toBeNaN();
});

test("the coefficients add up to the check sums printed with the algorithm", () => {
  const text = readFileSync(new URL("../../src/spread/normal.ts", import.meta.url), "utf8");
  const sums = ["middle", "flank", "tail"].map((name) => {
    const body = text.slice(text.indexOf(`function ${name}(`)).split("\n}")[0] ?? "";
    const digits = [...body.matchAll(/(?:= |\+ )(\d+\.\d+(?:e-\d+)?);/g)]
      .map(([, number = ""]) => number)
      .filter((number) => number.length > 10);
    expect(digits.length).toBe(15);
    // mantissas with 22 decimals, as whole numbers
    const total = digits.reduce((sum, number) => {
      const all = (number.split("e")[0] ?? "").replace(".", "").replace(/^0+/, "");
      return sum + BigInt(all.padEnd(23, "0"));
    }, 0n);
    return total.toString();
  });
  expect(sums.map((sum) => `${sum.slice(0, 2)}.${sum.slice(2, 21)}`)).toEqual([
    "55.8831928806149014439",
    "49.3320650330161028903",
    "47.5258331754928967162",
  ]);
});

test("toNormal(numbers, n) leaves what stands behind the first n", () => {
  const numbers = Float64Array.of(0.5, 0.975, 0.3);
  toNormal(numbers, 2);
  expect([...numbers]).toEqual([0, normalQuantile(0.975), 0.3]);
});
