// Where nobody can be asked, a text that has to be confirmed is a question by name, and no ± is dropped.
import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import { check, given, lineAt, method, reading, rootAt, settled, working } from "./helpers.ts";

const asks = async (name: string, ...items: readonly string[]): Promise<string> =>
  sentence(rootAt(await settled(...items), name));

describe("a text that has to be confirmed", () => {
  test("stands in a given with its value and its question", async () => {
    const { value } = lineAt(await settled(given("a", "24,5 mm")), "a");
    expect(value).toMatchObject({ type: "quantity", si: 0.0245, confirm: { code: "confirm-reading" } });
  });
  test.each([
    ["atMost", { atMost: "24,5 mm" }, "24.5 mm"],
    ["atLeast", { atLeast: "5 tenths" }, "0.0005 in"],
    ["between", { between: ["1 mm", "24,5 mm"] }, "24.5 mm"],
    ["uncertainty", { atMost: "5 mm", uncertainty: "0,1 mm" }, "0.1 mm"],
  ])("is a question as %s of a check", async (_place, more, plain) =>
    expect(await asks("c", given("a", "2 mm"), check("c", "a", more))).toContain(`be written ${plain}`),
  );
  test("is a question as an input of a method", async () =>
    expect(
      await asks(
        "f",
        method("f", "preload-from-torque", { torque: "50 kg.m", nutFactor: "0.14", diameter: "24 mm" }),
      ),
    ).toContain("be written 50 kgf.m"));
  test("is a question inside a formula", async () =>
    expect(await asks("w", given("a", "2 mm"), working("w", 'a + "24,5 mm"'))).toContain(
      "be written 24.5 mm",
    ));
  test("is a question in a line of a table", async () =>
    expect(await asks("r", reading("r", { hole: "tag", d: "length" }, ["hole,d", "1,5 tenths"]))).toContain(
      "be written 0.0005 in",
    ));
});

test("a ± of a limit is carried into the check", async () => {
  const page = await settled(given("a", "23.5 mm"), check("c", "a", { atMost: "24 mm ± 1 mm" }));
  expect(lineAt(page, "c").value).toMatchObject({ type: "check", state: "unproven", uncertainty: 0.001 });
});

describe("a ± where nothing can carry it", () => {
  test.each([
    ["an uncertainty", "c", check("c", "a", { atMost: "5 mm", uncertainty: "1 mm ± 0.1 mm" })],
    ["a formula", "w", working("w", 'a + "24 mm ± 1 mm"')],
    ["a formula that is one value", "w", working("w", "24 mm ± 1 mm")],
    ["a line of a table", "r", reading("r", { hole: "tag", d: "length" }, ["hole,d", "1,5 mm ± 1 mm"])],
  ])("is refused in %s", async (_place, name, one) =>
    expect(await asks(name, given("a", "2 mm"), one)).toContain("one value"),
  );
});
