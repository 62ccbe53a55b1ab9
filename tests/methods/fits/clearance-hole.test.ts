import { describe, expect, test } from "vitest";
import { clearanceHole } from "../../../src/methods/fits/clearance-hole.ts";
import { sentence } from "../../../src/problem.ts";
import { answer, deepFreeze, expectClose, expectHouseWording, refusal, si } from "../helpers.ts";

const hole = (designation: string, series = "medium", standard = "ISO 273") =>
  si(clearanceHole.solve({ designation, series, standard }), "holeDiameter");

describe("hand reading", () => {
  test("M12 medium is 13.5 mm in ISO 273 and 14 mm in BS 4186", () => {
    expectClose(hole("M12"), 0.0135);
    expectClose(hole("M12", "medium", "BS 4186"), 0.014);
    expectClose(si(clearanceHole.solve({ designation: "M12" }), "clearance"), 0.0015, 1e-12);
  });

  test("M24: 25, 26 and 28 mm", () => {
    expect(["fine", "medium", "coarse"].map((series) => Math.round(hole("M24", series) * 1e4))).toEqual([
      250, 260, 280,
    ]);
  });
});

test("the pitch does not matter", () => {
  expect(hole("M12x1.25")).toBe(hole("M12"));
  expect(hole("M 8x1")).toBe(hole("m8"));
});

test("the row, its tolerance class and how it is known are told", () => {
  const seen = answer(clearanceHole.solve({ designation: "M12" })).notes.join("; ");
  expect(seen).toContain("H13");
  expect(seen).toContain("quoted in another document");
  expect(answer(clearanceHole.solve({ designation: "M24" })).notes.join("; ")).toContain("from memory");
});

test.each([
  [{ designation: "M12", series: "free" }, "fine, medium and coarse"],
  [{ designation: "M12", series: "coarse", standard: "BS 4186" }, "free"],
  [{ designation: "M12", series: "loose" }, "medium"],
  [{ designation: "M90" }, "M64"],
  [{ designation: "1/2-13" }, "metric"],
  [{ designation: "M12x7" }, "M12"],
])("%o is refused in words that help", (inputs, words) => {
  const said = refusal(clearanceHole.solveNamed(inputs));
  expectHouseWording(said);
  expect(said.where).toBe("clearance-hole");
  expect(sentence(said)).toContain(words);
});

test("inputs are left as they were", () => {
  answer(clearanceHole.solve(deepFreeze({ designation: "M12" })));
});
