import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthForms, holeForm } from "../../../src/methods/fits/hole-form.ts";
import { solve } from "../../../src/methods/index.ts";
import { cells, text } from "../cells.ts";
import { depths, directions, fitted, holeReadings, readingRows } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const id = "hole-form";
const good = goodFor(id);
const um = 1e-6;

describe("limits", () => {
  testLimits(holeForm, good, {});
});

describe("demo (invented readings), at 20 degC", () => {
  const form = (no: string) => solve(id, { readings: readingRows(holeReadings(no)) });

  test("hole 8 is oval by 21.0 um along, though its mean looks fine", () => {
    expectPrinted(si(form("8"), "ovality"), "21.0", um);
    expect(text(form("8"), "ovalDirection")).toBe("along");
    expect(text(form("8"), "ovalDepth")).toBe("up_split");
    expectPrinted(si(form("8"), "mean"), "25.0145", 1e-3);
  });

  test("hole 13 opens by 16.5 um toward the split line", () => {
    expectPrinted(si(form("13"), "taper"), "16.5", um);
    const widest = cells(form("13"), "depths").toSorted((a, b) => Number(b["mean"]) - Number(a["mean"]))[0];
    expect(widest?.["depth"]).toBe("up_split");
  });

  test("every other hole keeps to 2.0 um of oval and 1.5 um of taper", () => {
    for (const no of fitted.filter((each) => each !== "8" && each !== "13")) {
      expect(si(form(no), "ovality")).toBeLessThan(2.05 * um);
      expect(si(form(no), "taper")).toBeLessThan(1.55 * um);
    }
  });
});

const reading = fc.integer({ min: 24_900, max: 25_100 }).map((n) => n * um);
const bore = fc.array(reading, { minLength: 8, maxLength: 8 });
const asReadings = (values: readonly number[]) =>
  depths.flatMap((depth, level) =>
    directions.map((direction, way) => ({ depth, direction, value: values[2 * level + way] ?? Number.NaN })),
  );
const formOf = (values: readonly number[]) => solve(id, { readings: readingRows(asReadings(values)) });

describe("laws", () => {
  test("every figure equals a plain working of the table", () => {
    fc.assert(
      fc.property(bore, (values) => {
        const pairs = depths.map((_, level) => [values[2 * level] ?? 0, values[2 * level + 1] ?? 0] as const);
        const means = pairs.map(([a, b]) => (a + b) / 2);
        const form = formOf(values);
        expect(si(form, "smallest")).toBe(Math.min(...values));
        expect(si(form, "largest")).toBe(Math.max(...values));
        expect(si(form, "ovality")).toBeCloseTo(Math.max(...pairs.map(([a, b]) => Math.abs(a - b))), 15);
        expect(si(form, "taper")).toBeCloseTo(Math.max(...means) - Math.min(...means), 15);
        expect(si(form, "largestDepthMean")).toBeCloseTo(Math.max(...means), 15);
        expect(si(form, "mean")).toBeCloseTo(values.reduce((sum, v) => sum + v, 0) / 8, 15);
      }),
    );
  });

  test("neither the order of the rows nor the temperature of the whole bore changes oval and taper", () => {
    fc.assert(
      fc.property(
        bore,
        fc.integer({ min: -20, max: 20 }),
        fc.integer({ min: 0, max: 7 }),
        (values, shift, cut) => {
          const here = formOf(values);
          const rows = asReadings(values.map((v) => v + shift * um));
          const there = solve(id, { readings: readingRows([...rows.slice(cut), ...rows.slice(0, cut)]) });
          for (const name of ["ovality", "taper"]) expect(si(there, name)).toBeCloseTo(si(here, name), 15);
          expect(si(there, "mean")).toBeCloseTo(si(here, "mean") + shift * um, 14);
        },
      ),
    );
  });

  test("exchanging the directions turns the ellipse", () => {
    const [along, across] = [25.02, 25.01].map((mm) => ({ kind: "length" as const, mm }));
    const form = (first: number, second: number) =>
      solve(id, {
        readings: [
          { depth: "a", direction: "along", value: `${first} mm` },
          { depth: "a", direction: "across", value: `${second} mm` },
        ],
      });
    expect(text(form(along?.mm ?? 0, across?.mm ?? 0), "ovalDirection")).toBe("along");
    expect(text(form(across?.mm ?? 0, along?.mm ?? 0), "ovalDirection")).toBe("across");
  });
});

describe("edges", () => {
  test("a round bore has no direction of oval", () => {
    expect(text(formOf(Array.from({ length: 8 }, () => 0.025)), "ovalDirection")).toBe("round");
  });

  test("one direction at one depth: no ovality at all, and the depth is named", () => {
    const rows = asReadings([25, 25.02, 25, 25, 25, 25, 25, 25].map((mm) => mm / 1000));
    const form = answer(solve(id, { readings: readingRows(rows.slice(0, -1)) }));
    expect(form.outputs["ovality"]).toBeUndefined();
    expect(form.outputs["ovalDirection"]).toBeUndefined();
    expect(form.notes).toContain("no ovality: one direction only at lo_outer");
    expect(form.outputs["taper"]).toBeDefined();
  });

  test("one depth: no taper, never 0", () => {
    const form = answer(solve(id, { readings: readingRows(asReadings([0.025, 0.0251]).slice(0, 2)) }));
    expect(form.outputs["taper"]).toBeUndefined();
    expect(form.notes).toContain("no taper: read at one depth only");
  });

  test("a blank reading gives no answer that names its row", () => {
    const readings = [
      ...readingRows(holeReadings("1")),
      { depth: "lo_outer", direction: "along", value: "" },
    ];
    const said = refusal(solve(id, { readings }));
    expect(said.code).toBe("missing-input");
    expect(said.where).toContain("readings 9");
  });

  test("a place read twice is refused by name, unless the repeats are numbered; then their difference shows", () => {
    const at = (value: string, repeat?: string) => ({
      depth: "outer",
      direction: "along",
      value,
      ...(repeat !== undefined && { repeat }),
    });
    const across = { depth: "outer", direction: "across", value: "25.012 mm" };
    const said = refusal(solve(id, { readings: [at("25.010 mm"), across, at("25.020 mm")] }));
    expect([said.code, said.got]).toEqual(["reading-twice", "outer · along twice"]);
    expect(said.hint).toBe("number repeats in the column repeat");
    const again = solve(id, { readings: [at("25.010 mm", "1"), across, at("25.020 mm", "2")] });
    expectPrinted(si(again, "repeatSpread"), "10.0", um);
    expectPrinted(si(again, "ovality"), "3.0", um);
    expect(refusal(solve(id, { readings: [at("25.010 mm", "1"), at("25.020 mm", "1")] })).got).toBe(
      "outer · along · 1 twice",
    );
    expect(answer(solve(id, good)).outputs["repeatSpread"]).toBeUndefined();
  });

  test("readings repeated in one direction are averaged first", () => {
    const [form] = depthForms([
      { depth: "a", direction: "along", value: 10 },
      { depth: "a", direction: "along", value: 12 },
      { depth: "a", direction: "across", value: 9 },
    ]);
    expect(form).toEqual({ depth: "a", mean: 10, ovality: 2, direction: "along" });
  });

  test("inputs are not changed", () => {
    answer(
      solve(
        id,
        deepFreeze({
          readings: [
            ...readingRows(holeReadings("8")),
            { depth: "x", direction: "y", value: of("length", 0.025) },
          ],
        }),
      ),
    );
  });
});
