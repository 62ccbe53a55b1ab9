// Loops, unknown names and answers that are not there.
import { describe, expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import {
  change,
  check,
  given,
  lineAt,
  method,
  problemAt,
  reading,
  rootAt,
  settled,
  siAt,
  stateAt,
  working,
} from "./helpers.ts";

test("a whole column is no number: refused where it stands alone, never shown as 0", async () => {
  const page = await settled(
    reading("gaps", { place: "tag", gap: "length" }, ["place,gap/um", "a,5", "b,15"]),
    working("all", "gaps.gap"),
    check("small", "gaps.gap", { atMost: "1 um" }),
  );
  expect(problemAt(page, "all").code).toBe("formula-whole-column");
  expect(problemAt(page, "small").hint).toContain("largest(gaps.gap)");
});

describe("loops are named and never hang", () => {
  test("a → b → a, in both lines, and the line behind them", async () => {
    const page = await settled(
      working("a", "b * 2"),
      working("b", "a / 2"),
      working("c", "a + 1"),
      given("free", "2 mm"),
    );
    expect(problemAt(page, "a")).toMatchObject({
      code: "loop",
      got: expect.stringMatching(/a → b → a|b → a → b/),
    });
    expect(problemAt(page, "b").code).toBe("loop");
    expect(rootAt(page, "c").code).toBe("loop");
    expect(["a", "b"]).toContain(lineAt(page, "c").guilty);
    expect(siAt(page, "free")).toBe(0.002);
  });

  test("a line that names itself: a → a", async () => {
    const page = await settled(working("a", "a * 2"));
    expect(problemAt(page, "a").got).toContain("a → a");
  });

  test("a loop of five through a method is named in full", async () => {
    const page = await settled(
      working("a", "e"),
      working("b", "a"),
      method("c", "set-torque", { netTorque: "b", runOnTorque: "1 N.m" }),
      working("d", "c"),
      working("e", "d"),
    );
    const words = problemAt(page, "a").got ?? "";
    for (const name of ["a", "b", "c", "d", "e"]) expect(words).toContain(name);
    expect(words.split("→")).toHaveLength(6);
  });

  test("two loops that share nothing are named apart", async () => {
    const page = await settled(working("a", "b"), working("b", "a"), working("x", "y"), working("y", "x"));
    expect(problemAt(page, "a").got).not.toContain("x");
    expect(problemAt(page, "x").got).not.toContain("a →");
  });

  test("two loops through the same line: no member is left to hang", async () => {
    const page = await settled(
      working("a", "b + c"),
      working("b", "a"),
      working("c", "a"),
      working("d", "c"),
    );
    for (const name of ["a", "b", "c"]) expect(problemAt(page, name).code).toBe("loop");
    expect(rootAt(page, "d").code).toBe("loop");
  });

  test("a loop does not stop a change elsewhere on the page", async () => {
    const page = await settled(
      working("a", "b"),
      working("b", "a"),
      given("load", "1 kN"),
      working("twice", "2 * load"),
    );
    const { ran } = await change(page, { load: "2 kN" });
    expect(ran).toEqual(["load", "twice"]);
  });

  test("a line that mixes a loop and a given keeps the loop as its cause after the given changes", async () => {
    const page = await settled(working("a", "b"), working("b", "a"), given("n", "3"), working("c", "n * a"));
    await change(page, { n: "4" });
    expect(rootAt(page, "c").code).toBe("loop");
  });
});

describe("names", () => {
  test("a name no item has suggests the nearest one of the page", async () => {
    const page = await settled(
      given("netTorque", "500 N.m"),
      given("nutFactor", "0.2"),
      working("twice", "2 * netTorqe"),
    );
    const said = problemAt(page, "twice");
    expect(said).toMatchObject({ code: "unknown-name", what: "netTorqe" });
    expect(said.suggestions).toEqual(["netTorque"]);
    expect(said.hint).toContain("did you mean netTorque?");
    expect(lineAt(page, "twice").guilty).toBe("twice");
  });

  test("the same in the input of a method and in a check", async () => {
    const page = await settled(
      given("netTorque", "500 N.m"),
      method("set", "set-torque", { netTorque: "netTorqe", runOnTorque: "1 N.m" }),
      check("enough", "nettorque", { atLeast: "1 N.m" }),
    );
    expect(problemAt(page, "set").suggestions).toEqual(["netTorque"]);
    expect(problemAt(page, "enough").suggestions).toEqual(["netTorque"]);
  });

  test("a note, a picture and a sign-off have no name that a formula could read", async () => {
    const page = await settled("  - note: |\n      words", working("a", "note1 * 2"));
    expect(problemAt(page, "a").suggestions).toEqual([]);
  });

  test("a misspelt output suggests the nearest output", async () => {
    const page = await settled(
      method("bolt", "metric-thread", { designation: "M24" }),
      working("a", "bolt.majorDiametr"),
    );
    expect(problemAt(page, "a")).toMatchObject({ code: "no-such-output" });
    expect(problemAt(page, "a").suggestions).toContain("bolt.majorDiameter");
  });

  test("an unknown method suggests the nearest method", async () => {
    const page = await settled(method("a", "metric-tread", { designation: "M24" }));
    expect(problemAt(page, "a").suggestions).toContain("metric-thread");
  });
});

describe("no answer", () => {
  const chain = [
    given("load", "10 kN"),
    working("one", "load * 2"),
    working("two", "one + load"),
    working("three", "two / 3"),
    check("limit", "three", { atMost: "100 kN" }),
  ];

  test("names the guilty line through three levels and shows no stale number", async () => {
    const page = await settled(...chain);
    expect(siAt(page, "three")).toBe(10_000);
    await change(page, { load: "10 kNN" });
    for (const name of ["one", "two", "three", "limit"]) {
      expect(isProblem(lineAt(page, name).value), name).toBe(true);
      expect(lineAt(page, name).guilty).toBe("load");
      expect(rootAt(page, name)).toBe(problemAt(page, "load"));
      expect(sentence(problemAt(page, name))).toContain("has no answer");
    }
    expect(JSON.stringify(page.lines().map((c) => c.value))).not.toContain("10000");
  });

  test("comes back when the given can be read again", async () => {
    const page = await settled(...chain);
    await change(page, { load: "" });
    expect(stateAt(page, "limit")).toBe("no answer");
    await change(page, { load: "20 kN" });
    expect(siAt(page, "three")).toBe(20_000);
    expect(lineAt(page, "three").guilty).toBeUndefined();
    expect(stateAt(page, "limit")).toBe("proven");
  });

  test("a formula that fails in the middle is the guilty one, not the given before it", async () => {
    const page = await settled(
      given("a", "3"),
      working("b", "1 / (a - 3)"),
      working("c", "b + 1"),
      working("d", "c * 2"),
    );
    expect(lineAt(page, "d").guilty).toBe("b");
    expect(rootAt(page, "d").code).toMatch(/division/);
    expect(problemAt(page, "b")).toBe(rootAt(page, "d"));
  });

  test.each([
    ["square root of a negative", "sqrt(a - 5)"],
    ["division by zero", "1 / (a - 3)"],
    ["logarithm of zero", "ln(a - 3)"],
    ["overflow", "exp(1000 * a)"],
    ["zero over zero", "(a - 3) / (a - 3)"],
    ["arc sine above one", "asin(a)"],
    ["broken power", "(a - 11)^0.5"],
  ])("%s has no answer, names the operation and is never a number", async (_, formula) => {
    const page = await settled(given("a", "3"), working("b", formula), check("c", "b", { atMost: "1" }));
    expect(problemAt(page, "b").code).toBeTruthy();
    expect(stateAt(page, "c")).toBe("no answer");
    expect(lineAt(page, "c").guilty).toBe("b");
  });

  test("a limit of a method that is broken by a given names the method's line as guilty", async () => {
    const page = await settled(
      given("k", "14"),
      method("tension", "preload-from-torque", { torque: "500 N.m", nutFactor: "k", diameter: "24 mm" }),
      working("share", 'tension / "200 kN"'),
    );
    expect(lineAt(page, "share").guilty).toBe("tension");
    expect(rootAt(page, "share").code).toBe("implausible");
    expect(sentence(rootAt(page, "share"))).toContain("nut factor");
  });

  test("two guilty lines: one of them is named and both stay visible", async () => {
    const page = await settled(given("a", ""), given("b", ""), working("c", "a + b"));
    expect(["a", "b"]).toContain(lineAt(page, "c").guilty);
    expect(problemAt(page, "a").code).toBe("missing");
    expect(problemAt(page, "b").code).toBe("missing");
    await change(page, { a: "1 mm" });
    expect(lineAt(page, "c").guilty).toBe("b");
  });

  test("a picture keeps its other inputs when one has no answer", async () => {
    const page = await settled(
      given("a", "10 kNN"),
      given("b", "5 kN"),
      "  - picture: joint-diagram\n    of: { preload: a, externalLoad: b, boltStiffness: 500 kN/mm, clampedStiffness: 2000 kN/mm }",
    );
    const line = page.lines().at(-1);
    const value = line?.value;
    if (!value || isProblem(value) || value.type !== "picture") throw new Error("no picture");
    expect(isProblem(value.inputs["preload"])).toBe(true);
    expect(value.inputs["externalLoad"]).toMatchObject({ kind: "force", si: 5000 });
  });
});
