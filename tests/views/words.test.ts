// What a person reads on the page: sentences of the trade, each thing called by one name.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { openPage } from "../../src/engine/open-page.ts";
import "../../src/methods/index.ts";
import { problem } from "../../src/problem.ts";
import { exceptions } from "../../src/report/exceptions.ts";
import { readWords } from "../../src/report/given-words.ts";
import { asked } from "../../src/report/labels.ts";
import { inPlace, problemSentence } from "../../src/report/problem-words.ts";

describe("a problem on the page", () => {
  test.each([
    [
      { what: "nut factor", got: "14", must: "be below 1", why: "was a percentage entered?" },
      "Nut factor: 14, but it must be below 1. Was a percentage entered?",
    ],
    [
      {
        what: "table",
        got: "1.234 on line 2",
        must: "be clear about the point",
        why: "it may mark decimals or thousands",
        hint: "write thousands without a mark",
      },
      "Table: 1.234 on line 2, but it must be clear about the point. It may mark decimals or thousands. Write thousands without a mark.",
    ],
    [
      { what: "column d of holes", must: "be named under columns" },
      "Column d of holes must be named under columns.",
    ],
    [
      { what: "hole 15, bottom, round", why: "not measured yet" },
      "Hole 15, bottom, round: not measured yet.",
    ],
    [{ what: "gauge", got: "nothing" }, "Gauge: nothing."],
  ])("%o", (fields, words) => {
    expect(inPlace(problem({ code: "c", where: "somewhere", ...fields }))).toBe(words);
  });

  test("of a file keeps the place as it is spelt", () => {
    const found = problem({ code: "c", where: "page.yaml:5:1", what: "name", got: "A", must: "be small" });
    expect(problemSentence(found)).toBe("page.yaml:5:1 · name: A, but it must be small.");
  });
});

describe("how a given was read", () => {
  test.each([
    ["count", "24", "24", ""],
    ["ratio", "0.14", "0.14", ""],
    ["ratio", "25 %", "0.25", "25 % = 0.25"],
    ["count", "1 1/2", "1.5", "a number, 1.5"],
    ["torque", "520 lbf.ft", "705.0 N·m", "read as torque, 705.0 N·m"],
    ["torque", "500 N.m", "500 N·m", "read as torque"],
    ["ratio", "0.14", "0.14 ± 0.035", "a number, 0.14 ± 0.035"],
  ] as const)("%s %s shown as %s: %j", (kind, typed, shown, words) => {
    expect(readWords(kind, typed, shown)).toBe(words);
  });
});

test("a row without an answer says what it waits for", async () => {
  const file = new URL("../../notebooks/cover-16-as-found.yaml", import.meta.url);
  const live = openPage(readFileSync(file, "utf8"), "cover-16-as-found.yaml");
  if (!("lines" in live)) throw new Error("the page did not open");
  await live.settle();
  const found = exceptions(live.lines());
  const oval = found.find(({ name, mark }) => name === "oval" && mark === "no answer");
  expect(oval?.words).toBe("1 of 8 has no answer:");
  expect(oval?.rows?.map(({ says, words }) => `${says} ${words}`)).toEqual(["hole 15 waits for a reading"]);
  live.dispose();
});

test("a question needs no colon behind it", () => {
  expect([asked("Hole is round?"), asked("Clearance")]).toEqual(["Hole is round?", "Clearance:"]);
});
