import { describe, expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import { lineAt, problemAt, reading, settled, siAt, working } from "./helpers.ts";

const columns = { position: "tag", stretch: "length" };
const trial = (...rows: string[]) => reading("trial", columns, ["position,stretch/mm", ...rows]);

describe("a table of readings", () => {
  test("its columns are summed, counted and averaged in SI", async () => {
    const page = await settled(
      trial("5,0.230", "15,0.217", "8,0.210", "18,0.222", "2,0.205", "12,0.223"),
      working("n", "count(trial.stretch)"),
      working("middle", "mean(trial.stretch)"),
      working("s", "deviation(trial.stretch)"),
      working("least", "smallest(trial.stretch)"),
      working("most", "largest(trial.stretch)"),
      working("all", "sum(trial.stretch)"),
    );
    // Sum 1.307 mm, mean 0.217833 mm; squared differences sum to 0.000418833 mm², s = √(…/5).
    expect(siAt(page, "n")).toBe(6);
    expect(siAt(page, "all")).toBeCloseTo(1.307e-3, 15);
    expect(siAt(page, "middle")).toBeCloseTo(1.307e-3 / 6, 15);
    expect(siAt(page, "s")).toBeCloseTo(Math.sqrt(0.000418833333333 / 5) * 1e-3, 12);
    expect([siAt(page, "least"), siAt(page, "most")]).toEqual([0.000205, 0.00023]);
  });

  test("a blank is missing, never zero: the mean is over the readings that are there", async () => {
    const page = await settled(
      trial("1,0.2", "2,", "3,0.4"),
      working("n", "count(trial.stretch)"),
      working("middle", "mean(trial.stretch)"),
      working("least", "smallest(trial.stretch)"),
    );
    expect(siAt(page, "n")).toBe(2);
    expect(siAt(page, "middle")).toBeCloseTo(0.3e-3, 15);
    expect(siAt(page, "least")).toBeCloseTo(0.2e-3, 15);
    const { value } = lineAt(page, "trial");
    if (isProblem(value) || value.type !== "table") throw new Error("no table");
    expect(value.missing).toBe(1);
    expect(value.rows).toBe(3);
    expect(value.columns[1]?.values).toEqual([0.0002, undefined, 0.0004]);
  });

  test("what was typed is kept beside what it means", async () => {
    const page = await settled(trial("1,0.230", "2,"));
    const { value } = lineAt(page, "trial");
    if (isProblem(value) || value.type !== "table") throw new Error("no table");
    expect(value.columns[1]?.typed).toEqual(["0.230", ""]);
  });

  test("no reading at all: the mean has no answer, the count is 0", async () => {
    const page = await settled(
      trial("1,", "2,"),
      working("n", "count(trial.stretch)"),
      working("middle", "mean(trial.stretch)"),
    );
    expect(siAt(page, "n")).toBe(0);
    expect(problemAt(page, "middle").code).toBeTruthy();
    expect(lineAt(page, "middle").guilty).toBe("middle");
  });

  test("one reading has a mean and no deviation", async () => {
    const page = await settled(
      trial("1,0.2"),
      working("m", "mean(trial.stretch)"),
      working("s", "deviation(trial.stretch)"),
    );
    expect(siAt(page, "m")).toBe(0.0002);
    expect(problemAt(page, "s").code).toBeTruthy();
  });

  test("a column of tags is not a column of numbers", async () => {
    const page = await settled(trial("1,0.2"), working("m", "mean(trial.position)"));
    expect(problemAt(page, "m").code).toBe("not-a-number");
  });

  test("a column the table does not have names those it has", async () => {
    const page = await settled(trial("1,0.2"), working("m", "mean(trial.strech)"));
    expect(problemAt(page, "m")).toMatchObject({ code: "no-such-output" });
    expect(problemAt(page, "m").suggestions).toEqual(["trial.stretch"]);
  });

  test("a whole column where one number is meant has no answer", async () => {
    const page = await settled(trial("1,0.2", "2,0.3"), working("m", "2 * trial.stretch"));
    expect(problemAt(page, "m").code).toBeTruthy();
  });

  test("a reading that cannot be read has no answer and is the guilty line", async () => {
    const page = await settled(trial("1,abc"), working("m", "mean(trial.stretch)"));
    expect(lineAt(page, "m").guilty).toBe("trial");
    expect(problemAt(page, "trial").where).toMatch(/page\.yaml/);
  });
});
