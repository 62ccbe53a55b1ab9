// Parts of the views that need no page: words, places, addresses.
import { describe, expect, test } from "vitest";
import { readPage } from "../../src/document/read.ts";
import { namesRead } from "../../src/engine/uses.ts";
import { isProblem } from "../../src/problem.ts";
import { cautions } from "../../src/report/cautions.ts";
import { figureText, forReading, setText } from "../../src/report/figure-text.ts";
import { quantity } from "../../src/units/quantity.ts";
import { unit } from "../../src/units/unit.ts";
import { onWrenchStep } from "../../src/units/wrench-step.ts";
import { placeOnBar } from "../../src/views/sheet/margin-bar.ts";
import { breadth } from "../../src/views/sheet/mathml.ts";
import { address, readAddress } from "../../src/views/shell/address.ts";

function asked(text: string) {
  const found = quantity(text, "torque");
  if (isProblem(found)) throw new Error(found.what);
  return found;
}

function unitNamed(text: string) {
  const found = unit(text);
  if (isProblem(found)) throw new Error(found.what);
  return found;
}

describe("the number to set on a wrench with steps", () => {
  test.each([
    ["140 lbf.in", "1 N.m", "set 16 N·m, 1.2 % high"], // 140 lbf.in = 15.817 876 ... N.m
    ["500 N.m", "1 N.m", "set 500 N·m, exact"],
    ["457.7 N.m", "5 N.m", "set 460 N·m, 0.5 % high"],
    ["100 N.m", "1 lbf.ft", "set 74 lbf·ft, 0.3 % high"],
    ["10.004 N.m", "0.01 N.m", "set 10 N·m, under 0.1 % low"],
    ["0.5 N.m", "1 N.m", "below the first step of this wrench"],
    ["1.5 N.m", "1 N.m", "the step is too coarse: 1 N·m, 33.3 % low; 2 N·m, 33.3 % high"],
    ["13 N.m", "5 N.m", "the step is too coarse: 10 N·m, 23.1 % low; 15 N·m, 15.4 % high"],
    ["0.2 N.m", "1 N.m", "below the first step of this wrench"],
    ["5 N.m", "0 N.m", "the step of a wrench is a torque above zero"],
  ])("%s on a step of %s: %s", (wanted, step, words) => {
    expect(onWrenchStep(asked(wanted), asked(step))).toBe(words);
  });
});

describe("the margin bar", () => {
  test("puts a value on its limit at the limit's place, whichever side the limit is on", () => {
    const places = [
      placeOnBar(0.9, { atMost: 0.9 }),
      placeOnBar(1.2, { atLeast: 1.2 }),
      placeOnBar(5, { atLeast: 1, atMost: 5 }),
    ];
    expect(new Set(places.map(({ at }) => at)).size).toBe(1);
  });
  test("puts inside to the left and outside to the right", () => {
    const { at: limit } = placeOnBar(1, { atMost: 1 });
    expect(placeOnBar(0.8, { atMost: 1 }).at).toBeLessThan(limit);
    expect(placeOnBar(1.2, { atMost: 1 }).at).toBeGreaterThan(limit);
    expect(placeOnBar(1.2, { atLeast: 1 }).at).toBeLessThan(limit);
    expect(placeOnBar(0.8, { atLeast: 1 }).at).toBeGreaterThan(limit);
  });
  test("keeps a far value at the end and says that it lies beyond", () => {
    expect(placeOnBar(100, { atMost: 1 })).toEqual({ at: 98.5, beyond: true });
  });
  test("knows a limit of zero", () => {
    expect(placeOnBar(0, { atMost: 0 }).beyond).toBe(false);
  });
});

describe("figures", () => {
  const newtonMetre = unitNamed("N.m");
  test("have four digits, lengths to the place a gauge resolves", () => {
    expect(figureText(705.033, "torque", newtonMetre)).toBe("705.0 N·m");
    expect(figureText(0.025011, "length", unitNamed("mm"))).toBe("25.011 mm");
    expect(figureText(-2.44703e-6, "length", unitNamed("mm"))).toBe("−0.0024 mm");
    expect(figureText(0.024, "length", unitNamed("mm"))).toBe("24 mm");
  });
  test("that a person set keep the digits they have", () => {
    expect(setText(480.25, "torque", newtonMetre)).toBe("480.25 N·m");
    expect(setText(0.14, "ratio", unitNamed("1"))).toBe("0.14");
  });
  test("have a true minus and powers of ten as written by hand", () => {
    expect(forReading("-1.15e-5")).toBe("−1.15×10⁻⁵");
  });
});

test("an address names page and line and is read back", () => {
  expect(readAddress(address("file:my page.yaml", "netTorque"))).toEqual({
    page: "file:my page.yaml",
    line: "netTorque",
  });
  expect(readAddress("")).toEqual({ page: undefined, line: undefined });
});

test("the names an item reads are found in formulas, rows and limits, not in quoted quantities", () => {
  const { page } = readPage(
    `splitline: 1
title: t
page:
  - working: a
    by: bolt-stiffness
    of: { segments: [{ length: long.part, diameter: d }], modulus: "205 GPa" }
  - check: c
    that: a.stiffness * d / "5 mm"
    atMost: limit
`,
    "t.yaml",
  );
  const [working, check] = page?.items ?? [];
  if (!working || !check) throw new Error("the page did not open");
  const all = () => true;
  expect(namesRead(working, all)).toEqual([
    { name: "long", output: "part" },
    { name: "d", output: undefined },
  ]);
  expect(namesRead(check, (name) => name !== "mm").map(({ name }) => name)).toEqual(["a", "d", "limit"]);
});

test("a fraction is as broad as its broader half", () => {
  const number = (text: string) => ({ type: "number", text }) as const;
  expect(breadth({ type: "fraction", top: number("12345"), bottom: number("1") })).toBe(6);
});

test("every standing caution is worded and sends the reader to the maker and the rules", () => {
  expect(Object.keys(cautions)).toEqual(["C1", "C2", "C3", "C4", "C5", "C6", "C7", "C8"]);
  for (const { text } of Object.values(cautions)) {
    expect(text).toMatch(/maker's instructions.*first\.$/);
    expect(text).not.toMatch(/\bsafe\b|approved|!/i);
  }
});
