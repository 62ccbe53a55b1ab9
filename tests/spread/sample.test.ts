import { describe, expect, test } from "vitest";
import { parse } from "../../src/formula/parse.ts";
import { isProblem } from "../../src/problem.ts";
import type { Distribution } from "../../src/spread/distributions.ts";
import { firstOrder } from "../../src/spread/first-order.ts";
import { finiteSamples, shortestInterval, summarise, symmetricInterval } from "../../src/spread/quantiles.ts";
import { openSampler, type SpreadJob, sample } from "../../src/spread/sample.ts";
import { answered, caseById, caseCount, numbers } from "./cases.ts";

type Spreads = Readonly<Record<string, Distribution>>;

function job(
  texts: Readonly<Record<string, string>>,
  spreads: Spreads,
  more: Partial<SpreadJob> = {},
): SpreadJob {
  const lines = Object.entries(texts).map(([name, text]) => {
    const tree = parse(text);
    if (isProblem(tree)) throw new Error(`${text}: ${tree.got}`);
    return { name, tree };
  });
  const inputs = Object.entries(spreads).map(([name, distribution]) => ({ name, distribution }));
  return { lines, inputs, keep: Object.keys(texts), seed: 101, samples: 1_000_000, ...more };
}

function columns(wanted: SpreadJob): readonly Float64Array[] {
  const found = sample(wanted);
  if (isProblem(found)) throw new Error(`${found.what} ${found.got}`);
  return found;
}

const only = (wanted: SpreadJob): Float64Array => columns(wanted)[0] ?? new Float64Array(0);

function linear(wanted: SpreadJob) {
  const found = firstOrder(wanted);
  if (isProblem(found)) throw new Error(`${found.what} ${found.got}`);
  return found;
}

const rectangular = (middle: number, half: number): Distribution => ({
  type: "rectangular",
  lower: middle - half,
  upper: middle + half,
});
const normal = (mean: number, deviation: number): Distribution => ({ type: "normal", mean, deviation });
const t = (mean: number, scale: number, degrees: number): Distribution => ({
  type: "t",
  mean,
  scale,
  degrees,
});
const root3 = Math.sqrt(3);

/** Relative, as the clause on numerical tolerance has it for 10^6 trials. */
const close = (got: number, want: number, relative: number): void =>
  expect(Math.abs(got / want - 1)).toBeLessThan(relative);
const within = (got: number | undefined, want: number, distance: number): void =>
  expect(Math.abs((got ?? Number.NaN) - want)).toBeLessThan(distance);

describe("sample(job) on JCGM 101 clause 9", () => {
  const four = { y: "a + b + c + d" };

  test("9.2.2: four normal inputs", () => {
    const y = only(job(four, { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1), d: normal(0, 1) }));
    close(summarise(y).deviation, 2, 3e-3);
    const half = Number(caseById("S1-9.2.2").recomputed["halfWidth"]);
    const [low, high] = answered(symmetricInterval(y, 0.95));
    within(low, -half, 0.02 * half);
    within(high, half, 0.02 * half);
  });

  test("9.2.3: four equal rectangles are narrower than the first order says", () => {
    const wanted = job(four, {
      a: rectangular(0, root3),
      b: rectangular(0, root3),
      c: rectangular(0, root3),
      d: rectangular(0, root3),
    });
    const half = Number(caseById("S1-9.2.3").recomputed["analyticHalfWidth"]);
    const y = only(wanted);
    const [low, high] = answered(symmetricInterval(y, 0.95));
    within(low, -half, 0.02);
    within(high, half, 0.02);
    // the shortest interval of a symmetric density may sit a little to either side; its width may not
    const [from, to] = answered(shortestInterval(y, 0.95));
    within((to - from) / 2, half, 0.02);
    within(linear(wanted)[0]?.uncertainty, 2, 1e-12);
  });

  test("9.2.4: one rectangle ten times wider than the rest", () => {
    const wanted = job(four, {
      a: rectangular(0, root3),
      b: rectangular(0, root3),
      c: rectangular(0, root3),
      d: rectangular(0, 10 * root3),
    });
    const { recomputed } = caseById("S1-9.2.4");
    const y = only(wanted);
    const half = Number(recomputed["exactHalfWidth"]);
    const [low, high] = answered(symmetricInterval(y, 0.95));
    within(low, -half, 0.1);
    within(high, half, 0.1);
    within(linear(wanted)[0]?.uncertainty, Number(recomputed["u"]), 1e-12);
  });

  test("9.3: mass calibration, where the first order misses a third of the uncertainty", () => {
    const text = "(mRc + dmRc) * (1 + (ra - 1.2) * (1/rW - 1/rR)) - 100000";
    const wanted = job(
      { y: text },
      {
        mRc: normal(100000, 0.05),
        dmRc: normal(1.234, 0.02),
        ra: rectangular(1.2, 0.1),
        rW: rectangular(8000, 1000),
        rR: rectangular(8000, 50),
      },
    );
    const y = only(wanted);
    within(summarise(y).mean, 1.234, 0.0005);
    within(summarise(y).deviation, 0.075465, 0.0002);
    const [low, high] = answered(shortestInterval(y, 0.95));
    within(low, 1.08427, 0.0015);
    within(high, 1.38338, 0.0015);
    within(linear(wanted)[0]?.uncertainty, 0.0538516, 1e-7);
  });

  test.each(["S1-9.4-x0.000", "S1-9.4-x0.050"])("9.4: comparison loss near zero, %s", (id) => {
    const { inputs, expected } = caseById(id);
    const wanted = job(
      { y: "x1^2 + x2^2" },
      { x1: normal(Number(inputs["x1"]), 0.005), x2: normal(0, 0.005) },
    );
    const y = only(wanted);
    const exact = JSON.parse(JSON.stringify(expected["exact"]));
    close(summarise(y).mean, Number(exact.mean), 3e-3);
    close(summarise(y).deviation, Number(exact.u), 1e-2);
    close(answered(symmetricInterval(y, 0.9))[1], Number(exact.quantile95oneSided), 1e-2);
    const first = JSON.parse(JSON.stringify(expected["firstOrder"]));
    within(linear(wanted)[0]?.value, Number(first.y), 1e-15);
    within(linear(wanted)[0]?.uncertainty, Number(first.u), 1e-15);
  });

  test("9.5: gauge block, limits that are themselves not well known drawn from two inputs each", () => {
    // a limit known to d only: a rectangle whose half-width is drawn from (a - d, a + d)
    const wanted = job(
      {
        da: "daHalf * daPart",
        dt: "dtHalf * dtPart",
        y: "Ls + D + d1 + d2 - Ls * (da * (t0 + Delta) + aS * dt) - 50000000",
      },
      {
        Ls: t(50000623, 25, 18),
        D: t(215, 6, 24),
        d1: t(0, 4, 5),
        d2: t(0, 7, 8),
        aS: rectangular(11.5e-6, 2e-6),
        t0: normal(-0.1, 0.2),
        Delta: { type: "arcsine", lower: -0.5, upper: 0.5 },
        daHalf: rectangular(1e-6, 0.1e-6),
        daPart: rectangular(0, 1),
        dtHalf: rectangular(0.05, 0.025),
        dtPart: rectangular(0, 1),
      },
      { keep: ["y"] },
    );
    const y = only(wanted);
    const { recomputed } = caseById("S1-9.5");
    const monteCarlo = JSON.parse(JSON.stringify(recomputed["MCM_4e6"]));
    within(summarise(y).mean, 838, 0.2);
    close(summarise(y).deviation, Number(monteCarlo.u), 3e-3);
    const [low, high] = answered(symmetricInterval(y, 0.99));
    within(low, numbers(monteCarlo.sym99)[0] ?? 0, 1);
    within(high, numbers(monteCarlo.sym99)[1] ?? 0, 1);
  });
});

describe("firstOrder(job) on JCGM 100 annex H", () => {
  const endGauge = job(
    { d: "d0 + d1 + d2", theta: "thetaBar + Delta", l: "lS + d - lS * (da * theta + aS * dth)" },
    {
      lS: normal(50000623, 25),
      d0: normal(215, 5.8),
      d1: normal(0, 3.9),
      d2: normal(0, 6.7),
      aS: rectangular(1.15e-5, 2e-6),
      da: rectangular(0, 1e-6),
      dth: rectangular(0, 0.05),
      thetaBar: normal(-0.1, 0.2),
      Delta: { type: "arcsine", lower: -0.5, upper: 0.5 },
    },
    { keep: ["l", "d"] },
  );
  const degrees: Readonly<Record<string, number>> = { lS: 18, d0: 24, d1: 5, d2: 8, da: 50, dth: 2 };
  const stated = {
    ...endGauge,
    inputs: endGauge.inputs.map((input) => ({
      ...input,
      ...(degrees[input.name] ? { degrees: degrees[input.name] ?? 0 } : {}),
    })),
  };

  test("H.1: end gauge, with every component and the degrees of freedom", () => {
    const { expected, recomputed } = caseById("GUM-H1");
    const [length, comparison] = linear(stated);
    expect(length?.value).toBe(Number(expected["l_nm"]));
    within(length?.uncertainty, Number(recomputed["uc"]), 1e-4);
    within(comparison?.degrees, Number(recomputed["nu_d"]), 1e-4);
    within(length?.degrees, Number(recomputed["nuEff"]), 2e-3);
    const components = JSON.parse(JSON.stringify(expected["components"]));
    expect(length?.parts.map(({ name }) => name).toSorted()).toEqual(Object.keys(components).toSorted());
    for (const { name, contribution } of length?.parts ?? [])
      within(Math.abs(contribution), Number(components[name]), 6e-4);
  });

  test("H.1.7: Monte Carlo finds the products that the first order leaves out", () => {
    close(summarise(only(endGauge)).deviation, Number(caseById("GUM-H1-2").recomputed["uc"]), 3e-3);
  });

  test("H.2: three correlated readings", () => {
    const { inputs, recomputed } = caseById("GUM-H2");
    const readings = { V: numbers(inputs["V"]), I: numbers(inputs["I"]), phi: numbers(inputs["phi"]) };
    const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / x.length;
    const product = (x: readonly number[], y: readonly number[]): number =>
      x.reduce((sum, value, i) => sum + (value - mean(x)) * ((y[i] ?? 0) - mean(y)), 0);
    const r = (x: readonly number[], y: readonly number[]): number =>
      product(x, y) / Math.sqrt(product(x, x) * product(y, y));
    const spreads = Object.fromEntries(
      Object.entries(readings).map(([name, x]) => [
        name,
        normal(mean(x), Math.sqrt(product(x, x) / (x.length * (x.length - 1)))),
      ]),
    );
    const wanted = job({ R: "V / I * cos(phi)", X: "V / I * sin(phi)", Z: "V / I" }, spreads, {
      correlations: [
        { between: ["V", "I"], r: r(readings.V, readings.I) },
        { between: ["phi", "V"], r: r(readings.V, readings.phi) },
        { between: ["I", "phi"], r: r(readings.I, readings.phi) },
      ],
      samples: 200_000,
    });
    const [R, X, Z] = linear(wanted);
    within(R?.value, Number(recomputed["R"]), 1e-5);
    within(R?.uncertainty, Number(recomputed["uR"]), 1e-6);
    within(X?.uncertainty, Number(recomputed["uX"]), 1e-6);
    within(Z?.uncertainty, Number(recomputed["uZ"]), 1e-6);
    for (const [i, column] of columns(wanted).entries()) {
      close(summarise(column).deviation, [R, X, Z][i]?.uncertainty ?? 0, 1e-2);
    }
  });
});

describe("sample(job) and firstOrder(job) side by side", () => {
  test("a sum of limits and standard uncertainties (EA-4/02 S2)", () => {
    const limits = (a: number): Distribution => rectangular(0, a);
    const wanted = job(
      { mX: "mS + dmD + dm + dmC + dB" },
      {
        mS: normal(10000.005, 0.0225),
        dmD: limits(0.015),
        dm: normal(0.02, 0.025 / root3),
        dmC: limits(0.01),
        dB: limits(0.01),
      },
      { samples: 200_000 },
    );
    const { recomputed } = caseById("EA-S2");
    within(linear(wanted)[0]?.value, 10000.025, 1e-9);
    within(linear(wanted)[0]?.uncertainty, Number(recomputed["u"]), 1e-8);
    close(summarise(only(wanted)).deviation, Number(recomputed["u"]), 1e-2);
  });

  test("two dominant rectangles: the coverage factor is 1.83, not 2 (EA-4/02 S10)", () => {
    const wanted = job(
      { E: "lIX - lS + dlS + thermal + mechanical + resolution" },
      {
        dlS: normal(0, 0.00046),
        thermal: normal(0, 0.002),
        mechanical: rectangular(0, 0.05),
        resolution: rectangular(0, 0.025),
      },
      { constants: { lIX: 150.1, lS: 150 } },
    );
    const { recomputed } = caseById("EA-S10");
    within(linear(wanted)[0]?.uncertainty, Number(recomputed["u"]), 6e-6);
    const y = only(wanted);
    const [low, high] = answered(symmetricInterval(y, 0.95));
    close((high - low) / 2 / summarise(y).deviation, Number(recomputed["k"]), 1e-2);
  });

  test("clearance of a fitted bolt has a closed form", () => {
    const wanted = job(
      { clearance: "hole - shank" },
      { hole: rectangular(12.0105, 0.0005), shank: rectangular(12.0005, 0.0005) },
    );
    const { expected } = caseById("FIT-1");
    within(linear(wanted)[0]?.uncertainty, Number(expected["u"]), 1e-12);
    const interval = numbers(expected["interval95"]);
    for (const [i, end] of answered(symmetricInterval(only(wanted), 0.95)).entries()) {
      within(end, interval[i] ?? 0, 0.02 * 0.00078);
    }
  });

  test("preload from torque: the mean lies above the first-order value, 1/K being bent", () => {
    const wanted = job(
      { F: "T / (K * d)" },
      { T: normal(30, 0.9), K: normal(0.2, 0.02) },
      { constants: { d: 0.012 } },
    );
    const { expected } = caseById("PRELOAD-1");
    const [first] = linear(wanted);
    within((first?.uncertainty ?? 0) / (first?.value ?? 1), Number(expected["relU"]), 1e-12);
    close(summarise(only(wanted)).mean, 12500 * 1.0103, 1e-3);
  });

  test("every case of the file is used here or in distributions.test.ts", () => {
    expect(caseCount).toBe(18);
  });
});

describe("sample(job) can be made again", () => {
  const texts = { y: "a * b + sin(c)", z: "y / b" };
  const spreads = { a: normal(5, 1), b: rectangular(3, 1), c: t(0, 1, 4) };
  const small = (more: Partial<SpreadJob> = {}, extra: Spreads = {}): SpreadJob =>
    job(texts, { ...spreads, ...extra }, { samples: 5000, ...more });

  test("the same seed gives the same bits", () => {
    expect(columns(small())).toEqual(columns(small()));
  });

  test("another seed gives other numbers", () => {
    expect(only(small({ seed: 102 }))[0]).not.toBe(only(small())[0]);
  });

  test("a further input, and another order of inputs, moves no other", () => {
    const more = job(
      { ...texts, w: "y + extra" },
      { extra: normal(0, 1), c: spreads.c, b: spreads.b, a: spreads.a },
      { samples: 5000, keep: ["y", "z"] },
    );
    expect(columns(more)).toEqual(columns(small()));
  });

  test("other settings of one input leave the draws of the rest", () => {
    const keep = ["a", "c"];
    expect(columns(small({ keep }, { b: normal(1, 1) }))).toEqual(columns(small({ keep })));
  });

  test("any block can be made alone, and blocks joined by number are the whole", () => {
    const whole = columns(small());
    const sampler = openSampler(small());
    if (isProblem(sampler)) throw new Error(sampler.what);
    expect(sampler.blocks).toBe(5);
    for (const [first, end] of [
      [3, 5],
      [0, 2],
      [2, 3],
    ] as const) {
      const part = sampler.run(first, end);
      for (const [i, column] of part.entries()) {
        expect(column).toEqual(whole[i]?.slice(first * 1024, Math.min(end * 1024, 5000)));
      }
    }
    expect(sampler.run(5, 9).map((column) => column.length)).toEqual([0, 0]);
  });

  test("fewer samples are the first of more", () => {
    expect(only(small({ samples: 1500 }))).toEqual(only(small()).slice(0, 1500));
  });

  test("what is kept changes no number", () => {
    expect(only(small({ keep: ["z"] }))).toEqual(columns(small())[1]);
  });
});

describe("sample(job)", () => {
  test("marks samples outside the domain of a formula, and only those", () => {
    const y = only(job({ y: "sqrt(x)" }, { x: rectangular(0, 1) }, { samples: 20_000 }));
    const { faults, count } = summarise(y);
    expect(faults + count).toBe(20_000);
    within(faults, 10_000, 400);
    expect(finiteSamples(y).every((value) => value >= 0)).toBe(true);
  });

  test("says in what share of samples a limit is kept", () => {
    close(summarise(only(job({ open: "x > 0.2" }, { x: rectangular(0.5, 0.5) }))).mean, 0.8, 3e-3);
  });

  test("draws correlated inputs with the correlation they state", () => {
    const correlations = [
      { between: ["a", "b"], r: -0.6 },
      { between: ["b", "c"], r: 0.3 },
    ] as const;
    const wanted = job(
      { ab: "(a - 1) * (b - 2)", bc: "(b - 2) * c", ac: "(a - 1) * c" },
      { a: normal(1, 2), b: normal(2, 0.5), c: normal(0, 1) },
      { correlations },
    );
    const [ab, bc, ac] = columns(wanted).map((column) => summarise(column).mean);
    within(ab, -0.6, 0.006);
    within(bc, 0.15, 0.003);
    within(ac, 0, 0.008);
    const [a = new Float64Array(0)] = columns({ ...wanted, keep: ["a"] });
    close(summarise(a).deviation, 2, 3e-3);
  });

  test("full correlation makes one input of two", () => {
    const y = only(
      job(
        { y: "a - 2 * b" },
        { a: normal(0, 2), b: normal(0, 1) },
        { correlations: [{ between: ["a", "b"], r: 1 }], samples: 3000 },
      ),
    );
    expect(summarise(y).largest).toBeLessThan(1e-12);
  });

  test.each<[string, Partial<SpreadJob>, string]>([
    ["no samples", { samples: 0 }, "number of samples"],
    ["a broken number of samples", { samples: 10.5 }, "number of samples"],
    ["a seed that is no whole number", { seed: 1.5 }, "seed"],
    [
      "correlation with an input that is not normal",
      { correlations: [{ between: ["a", "b"], r: 0.5 }] },
      "correlation of a and b",
    ],
    ["correlation beyond 1", { correlations: [{ between: ["a", "c"], r: 1.2 }] }, "correlation of a and c"],
    ["an unknown name to keep", { keep: ["q"] }, "q"],
    [
      "limits the wrong way round",
      { inputs: [{ name: "a", distribution: { type: "rectangular", lower: 2, upper: 1 } }] },
      "spread of a",
    ],
  ])("has no answer for %s", (_, more, what) => {
    const found = sample(
      job(
        { y: "a + b + c" },
        { a: normal(0, 1), b: rectangular(0, 1), c: normal(0, 1) },
        { samples: 10, ...more },
      ),
    );
    expect(isProblem(found) && found.what).toBe(what);
  });

  test("correlations that contradict each other have no answer", () => {
    const correlations = [
      { between: ["a", "b"], r: 0.9 },
      { between: ["b", "c"], r: 0.9 },
      { between: ["a", "c"], r: -0.9 },
    ] as const;
    const found = sample(
      job(
        { y: "a + b + c" },
        { a: normal(0, 1), b: normal(0, 1), c: normal(0, 1) },
        { correlations, samples: 10 },
      ),
    );
    expect(found).toMatchObject({ code: "correlation" });
  });
});

describe("firstOrder(job)", () => {
  test("passes through lines, choices and column functions", () => {
    const wanted = job(
      { half: "x / 2", y: "half > 1 ? sum(rows.length * half) : 0" },
      { x: normal(4, 0.1) },
      { columns: { "rows.length": [1, 2, 3] } },
    );
    expect(linear({ ...wanted, keep: ["y"] })[0]).toMatchObject({
      value: 12,
      parts: [{ name: "x", sensitivity: 3 }],
    });
  });

  test("has no answer where a formula has no slope, or a column holds inputs", () => {
    expect(firstOrder(job({ y: "round(x)" }, { x: normal(0, 1) }))).toMatchObject({
      code: "formula-no-derivative",
    });
    const rows = job({ y: "sum(rows)" }, { x: normal(0, 1) }, { columns: { rows: [1, "x"] } });
    expect(firstOrder(rows)).toMatchObject({ code: "unknown-name", what: "rows" });
  });
});
