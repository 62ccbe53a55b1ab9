import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import { change, check, given, method, problemAt, settled, siAt, stateAt, working } from "./helpers.ts";

const setTorque = (input: string) => method("set", "set-torque", { netTorque: input, runOnTorque: "0 N.m" });

describe("kinds on a page", () => {
  test("an energy where a torque is asked for is refused, and the other way round", async () => {
    const page = await settled(given("work", "500 J"), setTorque("work"));
    expect(problemAt(page, "set").code).toBe("wrong-kind");
    expect(sentence(problemAt(page, "set"))).toMatch(/energy.*must be a torque/);
  });

  test("the same number written directly in the input is refused too, with or without quotes", async () => {
    for (const written of ["500 J", '"500 J"']) {
      const page = await settled(setTorque(written));
      expect(sentence(problemAt(page, "set"))).toMatch(/energy.*must be a torque/);
    }
  });

  test.each([
    ["5 mm", /length/],
    ["500 N", /force/],
    ["5 %", /ratio/],
  ])("%s written directly as a torque is refused and both kinds are named", async (written, found) => {
    const page = await settled(setTorque(written));
    const words = sentence(problemAt(page, "set"));
    expect(words).toMatch(found);
    expect(words).toContain("torque");
  });

  test("a bare number written directly is refused for want of a unit, with what it would mean", async () => {
    const page = await settled(setTorque("500"));
    expect(problemAt(page, "set").code).toBe("no-unit");
    expect(problemAt(page, "set").suggestions).toContain("500 N.m");
  });

  test("a formula of another dimension is refused and the found dimension is named, not the wanted one", async () => {
    const page = await settled(given("force", "2 kN"), given("arm", "250 mm"), setTorque("force / arm"));
    expect(problemAt(page, "set").got).not.toContain("torque");
    expect(problemAt(page, "set").must).toContain("torque");
  });

  test("a product of force and length may stand for a torque: a formula only has a dimension", async () => {
    const page = await settled(given("force", "2 kN"), given("arm", "250 mm"), setTorque("force * arm"));
    expect(siAt(page, "set.setTorque")).toBe(500);
  });

  test("a sum of unlike dimensions has no answer and no number", async () => {
    const page = await settled(given("force", "2 kN"), given("arm", "250 mm"), working("bad", "force + arm"));
    expect(sentence(problemAt(page, "bad"))).toMatch(/force.*length|length.*force/);
  });

  test("a torque plus an energy is refused: the dimension alone does not make them one", async () => {
    const page = await settled(given("turn", "2 N.m"), given("work", "3 J"), working("bad", "turn + work"));
    expect(problemAt(page, "bad").code).toBeTruthy();
  });

  test("a reading minus a reading is a temperature difference", async () => {
    const page = await settled(
      given("room", "68 degF"),
      given("store", "41 degF"),
      working("step", "room - store"),
    );
    expect(siAt(page, "step")).toBeCloseTo(15, 10);
    expect(page.line("step")?.value).toMatchObject({ kind: "temperature difference" });
  });

  test("a difference may stand where one is asked for, a reading may not", async () => {
    const expansion = (rise: string) =>
      method("change", "thermal-preload-change", {
        boltExpansion: "11.5e-6 1/K",
        clampedExpansion: "11e-6 1/K",
        boltTemperatureRise: rise,
        clampedTemperatureRise: "50 K",
        grip: "100 mm",
        boltStiffness: "1000 kN/mm",
        clampedStiffness: "4000 kN/mm",
      });
    const temperatures = [given("hot", "40 degC"), given("cold", "20 degC")];
    const good = await settled(...temperatures, expansion("hot - cold"));
    expect(siAt(good, "change")).toBeCloseTo(25_600, 6);
    const bad = await settled(...temperatures, expansion("hot"));
    expect(problemAt(bad, "change").code).toBe("wrong-kind");
  });

  test("a sum of two readings is refused: 20 °C and 20 °C are not 40 °C", async () => {
    const page = await settled(given("a", "20 degC"), given("b", "20 degC"), working("both", "a + b"));
    expect(problemAt(page, "both").code).toBeTruthy();
  });

  test("a difference checked against a reading is refused, not compared as kelvin", async () => {
    const page = await settled(
      given("room", "68 degF"),
      given("store", "41 degF"),
      given("most", "50 degF"),
      working("step", "room - store"),
      check("small", "step", { atMost: "most" }),
    );
    expect(stateAt(page, "small")).toBe("no answer");
  });

  test("a torque checked against an energy is refused", async () => {
    const page = await settled(given("turn", "2 N.m"), check("small", "turn", { atMost: "5 J" }));
    expect(stateAt(page, "small")).toBe("no answer");
  });

  test("a torque checked against a length is refused and says what the limit must be", async () => {
    const page = await settled(given("turn", "2 N.m"), check("small", "turn", { atMost: "5 mm" }));
    expect(problemAt(page, "small")).toMatchObject({ code: "dimension", what: "upper limit", got: "length" });
  });

  test("a bare number typed over a torque is asked about, over a ratio it is a ratio", async () => {
    const page = await settled(given("torque", "500 N.m"), given("nutFactor", "0.2"));
    await change(page, { torque: "600", nutFactor: "0.15" });
    expect(problemAt(page, "torque").code).toBe("no-unit");
    expect(siAt(page, "nutFactor")).toBe(0.15);
  });

  test("kilograms typed over a force are kept as a force to confirm or refused, never mass", async () => {
    const page = await settled(given("load", "5 kN"), working("twice", "2 * load"));
    await change(page, { load: "500 kg" });
    const value = page.line("load")?.value;
    if (value && "type" in value && value.type === "quantity") expect(value.kind).toBe("force");
    else expect(sentence(problemAt(page, "load"))).toMatch(/kgf|force/);
  });

  test("a unit of a working that is not of its dimension has no answer", async () => {
    const page = await settled(given("a", "5 kN"), working("b", "2 * a", { unit: "mm" }));
    expect(sentence(problemAt(page, "b"))).toMatch(/length|mm/);
  });
});
