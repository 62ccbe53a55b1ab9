import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { InputValue, RowValue } from "../../../src/methods/field.ts";
import { selectBolts } from "../../../src/methods/fits/select-bolts.ts";
import { solve } from "../../../src/methods/index.ts";
import { cells, text } from "../cells.ts";
import { boltRow, fitted, holeRow, pairLimits } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const id = "select-bolts";
const good = goodFor(id);

/** Rows of named values, as the good inputs give them. */
function namedRows(value: InputValue | undefined): readonly RowValue[] {
  if (typeof value !== "object" || "si" in value) throw new Error("expected rows");
  return value.map((row) => {
    if (typeof row !== "object" || "si" in row) throw new Error("expected a row of named values");
    return row;
  });
}

describe("limits", () => {
  testLimits(selectBolts, good, {
    'holeUncertainty >= "0 um"': { holeUncertainty: "-3 um" },
    'shankUncertainty >= "0 um"': { shankUncertainty: "-2 um" },
    "tightestAllowed <= loosestAllowed": { loosestAllowed: "-11 um" },
    "tightestOpen == 0": { tightestAllowed: "", targetClearance: "4 um" },
    "loosestOpen == 0": { loosestAllowed: "", targetClearance: "4 um" },
    "unproven == 0": { bolts: [{ tag: "1", largest: "25.016 mm", mean: "25.015 mm" }] },
  });
});

describe("demo (invented readings)", () => {
  const holes = fitted
    .filter((no) => !["3", "8", "13"].includes(no)) // these go to oversize
    .map((no) => holeRow(no, no === "20" ? "after rework" : "found"));
  const bolts = fitted.filter((no) => no !== "15").map(boltRow); // bolt 15 is of the wrong class
  const chosen = (changes: Record<string, string> = {}) =>
    solve(id, { holes, bolts, ...pairLimits, targetClearance: "4 um", ...changes });

  test("9 of 9 proven with 4 moves: 11 takes 13, 15 takes 3, 16 takes 18, 18 takes 8; 11, 15 and 16 are left", () => {
    const result = chosen();
    expect(si(result, "proven")).toBe(9);
    expect(si(result, "unproven")).toBe(0);
    expect(si(result, "moved")).toBe(4);
    const moves = cells(result, "pairs").filter((pair) => pair["moved"] === true);
    expect(moves.map((pair) => `${String(pair["hole"])}<-${String(pair["bolt"])}`)).toEqual([
      "11<-13",
      "15<-3",
      "16<-18",
      "18<-8",
    ]);
    expect(text(result, "leftOver")).toBe("11, 16");
    expect(text(result, "proof")).toBe("no better choice exists (proved)");
  });

  test("the tightest pair is hole 11 at -3.6 um, the loosest hole 18 at 10.9 um", () => {
    const pairs = cells(chosen(), "pairs");
    expectPrinted(Math.min(...pairs.map((pair) => Number(pair["tightest"]))), "-3.6", 1e-6);
    expectPrinted(Math.max(...pairs.map((pair) => Number(pair["loosest"]))), "10.9", 1e-6);
  });

  test("four moves are the least, whatever the target; with the target before the moves more bolts move", () => {
    for (const target of ["-5 um", "0 um", "2.5 um", "8 um"])
      expect(si(chosen({ targetClearance: target }), "moved")).toBe(4);
    const bold = chosen({ wishes: "proven, target, moved" });
    expect(si(bold, "proven")).toBe(9);
    expect(si(bold, "moved")).toBeGreaterThan(4);
  });

  test("the order of the bolts changes neither how many are proven nor how many move", () => {
    const turned = solve(id, {
      holes: holes.toReversed(),
      bolts: bolts.toReversed(),
      ...pairLimits,
      targetClearance: "4 um",
    });
    for (const name of ["proven", "moved", "unproven"]) expect(si(turned, name)).toBe(si(chosen(), name));
  });
});

const um = (n: number) => of("length", 0.025 + n * 1e-6);
const sizes = fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 5 });
const holesOf = (values: readonly number[]) =>
  values.map((n, i) => ({ tag: String(i), smallest: um(n), largestDepthMean: um(n + 1) }));
const boltsOf = (values: readonly number[]) =>
  values.map((n, i) => ({ tag: String(i), largest: um(n), mean: um(n - 1) }));

/** The most proven pairs, then the fewest moves among those, by trying every way with holes left empty. */
function byTrying(holes: readonly number[], bolts: readonly number[]): { proven: number; moved: number } {
  const doubt = Math.hypot(3, 2);
  const proven = (h: number, b: number) => h - b - doubt >= -10 && h - b + 2 + doubt <= 15;
  const unproven = (h: number, b: number) => h - b + doubt >= -10 && h - b + 2 - doubt <= 15;
  let best = { empty: 99, proven: -1, moved: 99 };
  const walk = (
    row: number,
    used: ReadonlySet<number>,
    sum: { empty: number; proven: number; moved: number },
  ) => {
    const hole = holes[row];
    if (hole === undefined) {
      const better = sum.proven - best.proven || best.empty - sum.empty || best.moved - sum.moved;
      if (better > 0) best = sum;
      return;
    }
    walk(row + 1, used, { ...sum, empty: sum.empty + 1 });
    for (const [column, bolt] of bolts.entries())
      if (!used.has(column) && unproven(hole, bolt))
        walk(row + 1, new Set([...used, column]), {
          empty: sum.empty,
          proven: sum.proven + (proven(hole, bolt) ? 1 : 0),
          moved: sum.moved + (column === row ? 0 : 1),
        });
  };
  walk(0, new Set(), { empty: 0, proven: 0, moved: 0 });
  return best;
}

describe("laws", () => {
  test("proven and moved are those of trying every way, up to five holes and bolts", () => {
    fc.assert(
      fc.property(sizes, sizes, (holes, bolts) => {
        const result = solve(id, { holes: holesOf(holes), bolts: boltsOf(bolts), ...pairLimits });
        const best = byTrying(holes, bolts);
        expect(si(result, "proven")).toBe(best.proven);
        expect(si(result, "moved")).toBe(best.moved);
        expect(si(result, "unproven")).toBe(holes.length - best.proven);
      }),
      { numRuns: 200 },
    );
  });

  test("no bolt stands twice, and none in a hole where it fails", () => {
    fc.assert(
      fc.property(sizes, sizes, (holes, bolts) => {
        const pairs = cells(
          solve(id, { holes: holesOf(holes), bolts: boltsOf(bolts), ...pairLimits }),
          "pairs",
        );
        const used = pairs.map((pair) => pair["bolt"]).filter((bolt) => bolt !== "none");
        expect(new Set(used).size).toBe(used.length);
        for (const pair of pairs) expect(["proven", "unproven", "no answer"]).toContain(pair["state"]);
      }),
    );
  });

  test("the potentials bound every cost: they add up to it", () => {
    const result = answer(solve(id, good));
    const figures = cells(result, "potentials");
    const cost = figures.find((row) => row["part"] === "all");
    const sum = figures
      .filter((row) => row !== cost)
      .reduce((total, row) => total + Number(row["potential"]), 0);
    expect(cost?.["potential"]).toBe(sum);
  });
});

describe("edges", () => {
  test("no bolt fits: the hole stays empty, is unproven, and no figure is invented", () => {
    const bolts = [{ tag: "9", largest: "26 mm", mean: "26 mm" }];
    const [first] = cells(solve(id, { ...good, bolts }), "pairs");
    expect(first).toEqual({ hole: "1", bolt: "none", state: "no answer", moved: false });
    expect(text(solve(id, { ...good, bolts }), "leftOver")).toBe("9");
  });

  test("equal bolts stay where they are; a hole may name the bolt that is in it", () => {
    const holes = [
      { tag: "A", bolt: "2", smallest: "25.010 mm", largestDepthMean: "25.012 mm" },
      { tag: "B", bolt: "1", smallest: "25.010 mm", largestDepthMean: "25.012 mm" },
    ];
    const bolts = ["1", "2"].map((tag) => ({ tag, largest: "25.007 mm", mean: "25.006 mm" }));
    const pairs = cells(solve(id, { ...good, holes, bolts }), "pairs");
    expect(pairs.map((pair) => pair["bolt"])).toEqual(["2", "1"]);
    expect(si(solve(id, { ...good, holes, bolts }), "moved")).toBe(0);
  });

  test("a tag that stands twice is refused, and so is a missing target", () => {
    const bolt = { tag: "1", largest: "25.007 mm", mean: "25.006 mm" };
    expect(refusal(solve(id, { ...good, bolts: [bolt, bolt] })).code).toBe("given-twice");
    const { tightestAllowed: _, ...one } = good;
    expect(refusal(solve(id, one)).must).toContain("targetClearance");
  });

  test("limits so wide that sums would round are still solved exactly, in coarser steps", () => {
    const holes = Array.from({ length: 40 }, (_, i) => ({
      tag: String(i),
      smallest: um(500 * i),
      largestDepthMean: um(500 * i),
    }));
    const bolts = Array.from({ length: 40 }, (_, i) => ({
      tag: String(i),
      largest: um(-480 * i),
      mean: um(-480 * i),
    }));
    const wide = solve(id, { ...good, holes, bolts, tightestAllowed: "-90 mm", loosestAllowed: "90 mm" });
    expect(si(wide, "moved")).toBe(0);
    const off = 40 * 0.0195; // m, at most, from the target: in steps of 0.1 um a square is 6e13
    expect(cells(wide, "potentials")[0]?.["potential"]).toBeLessThan((off / 1e-6) ** 2);
  });

  test.each<[string, Record<string, string>, Record<string, string>, string]>([
    ["25.030 mm above its mean", { smallest: "25.030 mm" }, {}, "hole 1"],
    ["24.980 mm below its mean", {}, { largest: "24.980 mm", mean: "25.008 mm" }, "bolt 3"],
    ["metres for millimetres in one figure", { largestDepthMean: "25.010 m" }, {}, "holes 1"],
    ["metres in both figures", { smallest: "25.010 m", largestDepthMean: "25.012 m" }, {}, "holes 1"],
    ["inches for millimetres", {}, { largest: "25.016 in", mean: "25.015 in" }, "bolts 2"],
    ["a huge size", { smallest: "1e150 mm", largestDepthMean: "1e150 mm" }, {}, "holes 1"],
    ["a huge smallest", { smallest: "1e150 mm" }, {}, "holes 1"],
  ])("a slip in a size is refused by the tag of its part: %s", (_, hole, bolt, tag) => {
    const { holes, bolts, ...rest } = good;
    const [first, ...others] = namedRows(holes);
    const [one] = namedRows(bolts);
    const third = { tag: "3", largest: "25.006 mm", mean: "25.005 mm", ...bolt };
    const said = refusal(
      solve(id, {
        ...rest,
        holes: [{ ...first, ...hole }, ...others],
        bolts: [{ ...one }, third],
      }),
    );
    expect(["swapped-sizes", "sizes-apart", "implausible", "which-unit"]).toContain(said.code);
    expect(`${said.where} ${said.what}`).toContain(tag);
  });

  test("a choice too large for exact sums is refused and not searched for ever", () => {
    const far = solve(id, {
      ...good,
      targetClearance: "1e150 mm",
      loosestAllowed: "15 um",
    });
    expect(refusal(far).code).toBe("too-large");
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze(structuredClone(good))));
  });
});
