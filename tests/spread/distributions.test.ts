import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import {
  centreOf,
  type Distribution,
  distributionFault,
  transformOf,
  uncertaintyOf,
} from "../../src/spread/distributions.ts";
import { normalQuantile } from "../../src/spread/normal.ts";
import { studentFromNormal, studentQuantile } from "../../src/spread/student.ts";
import { caseById, numbers } from "./cases.ts";

const shapes: readonly Distribution[] = [
  { type: "rectangular", lower: 2, upper: 5 },
  { type: "triangular", lower: 2, upper: 5 },
  { type: "arcsine", lower: 2, upper: 5 },
  { type: "trapezoid", lower: 2, upper: 5, top: 0 },
  { type: "trapezoid", lower: 2, upper: 5, top: 0.33 },
  { type: "trapezoid", lower: 2, upper: 5, top: 1 },
  { type: "normal", mean: 3.5, deviation: 0.2 },
];

/** n evenly spaced probabilities turned into numbers: moments without chance. */
function spaced(d: Distribution, n: number): Float64Array {
  const numbers = Float64Array.from({ length: n }, (_, i) => (i + 0.5) / n);
  transformOf(d)(numbers, n);
  return numbers;
}

describe("transformOf(distribution)", () => {
  test.each(shapes)("has the mean and the uncertainty it states: %j", (d) => {
    const numbers = spaced(d, 200_000);
    const mean = numbers.reduce((a, b) => a + b) / numbers.length;
    const variance = numbers.reduce((sum, x) => sum + (x - mean) ** 2, 0) / numbers.length;
    expect(Math.abs(mean / centreOf(d) - 1)).toBeLessThan(1e-9);
    expect(Math.abs(Math.sqrt(variance) / uncertaintyOf(d) - 1)).toBeLessThan(2e-5);
  });

  test.each(shapes)("rises with the probability and stays inside the limits: %j", (d) => {
    const numbers = spaced(d, 10_001);
    for (let i = 1; i < numbers.length; i++) expect((numbers[i] ?? 0) >= (numbers[i - 1] ?? 0)).toBe(true);
    if ("lower" in d)
      expect([(numbers[0] ?? 0) >= d.lower, (numbers.at(-1) ?? 0) <= d.upper]).toEqual([true, true]);
  });

  test("a trapezoid goes from triangle to rectangle", () => {
    const ends = { lower: -1, upper: 1 };
    const close = (a: Distribution, b: Distribution): void => {
      const [one, other] = [spaced(a, 999), spaced(b, 999)];
      for (const [i, x] of one.entries()) expect(Math.abs(x - (other[i] ?? 9))).toBeLessThan(1e-12);
    };
    close({ type: "trapezoid", ...ends, top: 0 }, { type: "triangular", ...ends });
    close({ type: "trapezoid", ...ends, top: 1 }, { type: "rectangular", ...ends });
  });

  test("limits that are equal give that number", () => {
    for (const type of ["rectangular", "triangular", "arcsine"] as const) {
      expect(new Set(spaced({ type, lower: 3, upper: 3 }, 9))).toEqual(new Set([3]));
    }
  });

  test("a t distribution has the deviation of its degrees of freedom", () => {
    const numbers = spaced({ type: "t", mean: 0, scale: 2, degrees: 18 }, 400_000);
    const variance = numbers.reduce((sum, x) => sum + x * x, 0) / numbers.length;
    expect(Math.abs(Math.sqrt(variance) / (2 * Math.sqrt(18 / 16)) - 1)).toBeLessThan(1e-4);
  });
});

describe("uncertaintyOf(distribution)", () => {
  test("of limits 96 and 104 (JCGM 100 4.4.5)", () => {
    const { recomputed } = caseById("GUM-4.4.5");
    expect(uncertaintyOf({ type: "rectangular", lower: 96, upper: 104 })).toBeCloseTo(
      Number(recomputed["u"]),
      6,
    );
  });

  test("of an expansion coefficient (JCGM 100 4.3.7)", () => {
    const a = 4e-7;
    const u = uncertaintyOf({ type: "rectangular", lower: 1.652e-5 - a, upper: 1.652e-5 + a });
    expect(Math.abs(u / Number(caseById("GUM-4.3.7").recomputed["u"]) - 1)).toBeLessThan(1e-6);
  });

  test("of a digital indication (JCGM 100 F.2.2.1)", () => {
    expect(uncertaintyOf({ type: "rectangular", lower: -0.5, upper: 0.5 })).toBeCloseTo(
      Number(caseById("GUM-F2.2.1").recomputed["u"]),
      6,
    );
  });
});

describe("studentQuantile(p, degrees)", () => {
  test("gives JCGM 100 table G.2", () => {
    const { inputs, recomputed } = caseById("GUM-TableG2");
    const degrees = numbers(inputs["nu"]);
    let rows = 0;
    for (const [column, coverage] of [
      ["t95", 0.95],
      ["t99", 0.99],
    ] as const) {
      numbers(recomputed[column]).forEach((want, i) => {
        rows++;
        expect(Math.abs(studentQuantile((1 + coverage) / 2, degrees[i] ?? 0) - want)).toBeLessThan(6e-7);
      });
    }
    expect(rows).toBe(24);
  });

  test.each([1e-12, 1e-6, 0.01, 0.2, 0.5, 0.7, 0.975, 0.999999])(
    "has the closed forms of 1, 2 and 4 degrees at %d",
    (p) => {
      const a = 4 * p * (1 - p);
      const q = Math.cos(Math.acos(Math.sqrt(a)) / 3) / Math.sqrt(a);
      // the tangent loses digits far out, where its argument is close to a right angle
      const one = p < 0.5 ? -1 / Math.tan(Math.PI * p) : Math.tan(Math.PI * (p - 0.5));
      const four = Math.sign(p - 0.5) * 2 * Math.sqrt(Math.max(0, q - 1));
      const near = (degrees: number, want: number, tolerance: number): void =>
        expect(Math.abs(studentQuantile(p, degrees) - want)).toBeLessThanOrEqual(
          tolerance * Math.max(1, Math.abs(want)),
        );
      near(1, one, 1e-9);
      near(2, (2 * p - 1) * Math.sqrt(2 / a), 1e-9);
      near(4, four, p > 0.4 && p < 0.6 ? 1e-7 : 1e-9);
    },
  );

  test("nears the normal quantile, and needs no whole number of degrees", () => {
    for (const p of [0.001, 0.3, 0.975]) {
      expect(studentQuantile(p, 1e12)).toBeCloseTo(normalQuantile(p), 9);
      const [low, middle, high] = [
        studentQuantile(p, 9),
        studentQuantile(p, 9.5),
        studentQuantile(p, 10),
      ].map(Math.abs);
      expect((low ?? 0) > (middle ?? 0) && (middle ?? 0) > (high ?? 0)).toBe(true);
    }
  });

  test("is odd", () => {
    const t = studentFromNormal(5);
    for (const z of [0, 0.1, 1, 5, 8.2]) expect(t(-z)).toBe(-t(z) + 0);
  });
});

test.each<[Distribution, RegExp]>([
  [{ type: "rectangular", lower: 5, upper: 2 }, /lower limit first/],
  [{ type: "trapezoid", lower: 1, upper: 2, top: 1.5 }, /from 0 to 1/],
  [{ type: "normal", mean: 1, deviation: -1 }, /0 or more/],
  [{ type: "normal", mean: Number.NaN, deviation: 1 }, /finite/],
  [{ type: "t", mean: 1, scale: 1, degrees: 0.5 }, /1 or more/],
])("distributionFault(%j) says what must change", (d, words) => {
  const fault = distributionFault(d, "torque");
  expect(fault && sentence(fault)).toMatch(words);
  expect(fault?.what).toBe("spread of torque");
});
