// Typed numbers in notes that are values of the page are pointed out; facts of the trade are not.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { numbersIn, sharesIn } from "../../src/engine/numbers-in-text.ts";
import { unboundNumbers } from "../../src/engine/unbound-numbers.ts";
import { sentence } from "../../src/problem.ts";
import { check, given, open, reading, settled, working } from "./helpers.ts";

const items = [
  given("torque", "500 N.m"),
  given("arm", "0.6 m"),
  working("force", "torque / arm", { unit: "kN" }),
  working("share", "force / arm * arm / force / 1.25"),
  given("room", "27 degC"),
  reading("gaps", { place: "tag", gap: "length" }, ["place,gap/um", "a,11.4", "b,15", "c,3"]),
  check("strong", "force", { atMost: "1.2 kN" }),
];
const remarks = async (words: string): Promise<readonly string[]> => {
  const page = await settled(...items, `  - note: ${JSON.stringify(words)}`);
  return unboundNumbers(page.lines(), page.unitOf).map(({ found }) => found.what);
};

describe("pointed out", () => {
  test.each([
    ["the nut gets 500 N·m net", ["500 N·m"]],
    ["the nut gets 500 N.m, no more", ["500 N.m"]],
    ["a push of 833 N", ["833 N"]],
    ["**0.83 kN** at the arm", ["0.83 kN"]],
    ["a share of 0.80", ["0.80"]],
    ["at 27 °C it reads large", ["27 °C"]],
    ["gaps of 3.0, 11.4 and 15 µm", ["3.0", "11.4", "15 µm"]],
    ["two of three are wide", ["two of three"]],
    ["2 of the 3 places", ["2 of the 3"]],
    ["set 500 on the scale", ["500"]],
    ["at most 1.2 kN", ["1.2 kN"]],
  ])("%s", async (words, found) => {
    expect(await remarks(words)).toEqual(found);
  });

  test("with the name to write, where the name alone shows it", async () => {
    const page = await settled(...items, "  - note: about 500 N.m");
    expect(unboundNumbers(page.lines(), page.unitOf).map(({ found }) => sentence(found))).toEqual([
      "500 N.m: got a typed number that is torque now; it stays when the value changes; write {torque}",
    ]);
  });
});

test.each([
  "an M24x3 bolt of class 10.9 by ISO 500 at place 3",
  "set {torque}, not `500 N.m`",
  "400 N·m, 27 bolts, 15 N, 12 µm",
  "27 K warmer",
  "[500 N at page](#page=500)".replace("500 N at", "the"),
  "three of nine",
])("left alone: %s", async (words) => {
  expect(await remarks(words)).toEqual([]);
});

test("numbers of a text, with unit and printed digits", () => {
  expect(
    numbersIn("-3.6 µm at 6° where 4.60 mm, 7 % and 12 in the row").map(({ text, value, decimals, unit }) => [
      text,
      value,
      decimals,
      unit?.text,
    ]),
  ).toEqual([
    ["-3.6 µm", -3.6, 1, "um"],
    ["6°", 6, 0, "deg"],
    ["4.60 mm", 4.6, 2, "mm"],
    ["7 %", 7, 0, "%"],
  ]);
  expect(sharesIn("Four of the twelve, 3 of 20, one of a kind").map(({ of }) => of)).toEqual([12, 20]);
});

const notebooks = new URL("../../notebooks/", import.meta.url);
const files = readdirSync(notebooks).filter((name) => name.endsWith(".yaml"));

test.each(files)("%s: no number in a note is a typed copy of a value of the page", async (file) => {
  const page = open(readFileSync(new URL(file, notebooks), "utf8"));
  await page.settle();
  const found = unboundNumbers(page.lines(), page.unitOf);
  expect(found.map((one) => `line ${one.line.item.index + 1} · ${sentence(one.found)}`)).toEqual([]);
});
