import { describe, expect, test } from "vitest";
import { recommendedTorque } from "../../../src/methods/torque/recommended-torque.ts";
import { sentence } from "../../../src/problem.ts";
import { answer, deepFreeze, expectClose, expectHouseWording, refusal, si } from "../helpers.ts";

const lbfInch = 4.4482216152605 * 0.0254;
const read = (standard: string, designation: string, column: string) =>
  recommendedTorque.solve({ standard, designation, column });

describe("hand reading", () => {
  test("AC 43.13-1B: a 3/8-24 tension nut takes 160 to 190 lbf.in, 390 at most", () => {
    const found = read("AC 43.13-1B", "3/8-24", "tension nut");
    expectClose(si(found, "minimum"), 160 * lbfInch);
    expectClose(si(found, "maximum"), 190 * lbfInch);
    const most = read("AC 43.13-1B", "3/8-24", "max tension nut");
    expectClose(si(most, "maximum"), 390 * lbfInch);
    expect(answer(most).outputs["minimum"]).toBeUndefined();
  });

  test("a table with one torque gives it as both ends", () => {
    const found = read("ASME PCC-1-2013", "1-1/4", "coated");
    expectClose(si(found, "minimum"), 800 * 12 * lbfInch);
    expectClose(si(found, "maximum"), 800 * 12 * lbfInch);
    expect(answer(found).notes[0]).toContain("one torque, 800 lbf.ft");
  });
});

test("the ways a thread is written lead to one row", () => {
  for (const [a, b] of [
    ["10-32", "#10-32 UNF"],
    ["3/8-24", "3/8-24unf"],
    ["1-14", "1 - 14"],
  ] as const)
    expect(answer(read("AC 43.13-1B", a, "shear nut")).outputs).toEqual(
      answer(read("AC 43.13-1B", b, "shear nut")).outputs,
    );
  expect(answer(read("ASME PCC-1-2013", "1-1/8", "coated")).outputs).toEqual(
    answer(read("ASME PCC-1-2013", "1 1/8-8 UN", "Coated")).outputs,
  );
});

test("the condition of the table and doubts about a figure are told", () => {
  const notes = answer(read("AC 43.13-1B", "5/8-18", "shear nut")).notes.join("; ");
  expect(notes).toContain("cadmium-plated");
  expect(notes).toContain("660");
});

test("the slip of NAVEDTRA 14119 is refused and explained, its neighbours are not", () => {
  const said = refusal(read("NAVEDTRA 14119", "1-3/8", "25 ksi"));
  expectHouseWording(said);
  expect(sentence(said)).toContain("567 lbf.ft in print");
  expect(sentence(said)).toContain("537");
  expectClose(si(read("NAVEDTRA 14119", "1-3/8", "30 ksi"), "maximum"), 645 * 12 * lbfInch);
  expectClose(si(read("NAVEDTRA 14119", "1-1/2", "25 ksi"), "maximum"), 667 * 12 * lbfInch);
});

test.each([
  ["AC 43.13-1B", "3/8-20", "tension nut", "3/8-24"],
  ["AC 43.13-1B", "M10", "tension nut", "3/8-24"],
  ["AC 43.13-1B", "3/8", "tension nut", "between its rows"],
  ["AC 43.13-1B", "3/8-24", "coated", "shear nut"],
  ["ASME PCC-1-2013", "1-1/16", "coated", "1-1/8"],
  ["NAVEDTRA 14119", "1", "20 ksi", "25 ksi"],
])("%s, %s, %s is refused in words that help", (standard, designation, column, words) => {
  const said = refusal(read(standard, designation, column));
  expectHouseWording(said);
  expect(said.where).toBe("recommended-torque");
  expect(sentence(said)).toContain(words);
});

test("inputs are left as they were", () => {
  answer(recommendedTorque.solve(deepFreeze({ designation: "1/2-20", column: "tension nut" })));
});
