import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import { check, given, lineAt, method, problemAt, settled, siAt, stateAt, working } from "./helpers.ts";

describe("reading a method's outputs", () => {
  test("one output may be read as name or as name.output", async () => {
    const page = await settled(
      method("tension", "preload-from-torque", { torque: "480 N.m", nutFactor: "0.2", diameter: "24 mm" }),
      working("short", "2 * tension"),
      working("long", "2 * tension.preload"),
    );
    expect(siAt(page, "short")).toBe(siAt(page, "long"));
    expect(siAt(page, "short")).toBeCloseTo(200_000, 6);
  });

  test("several outputs must be read as name.output, and the sentence lists some", async () => {
    const page = await settled(
      method("bolt", "metric-thread", { designation: "M24" }),
      working("a", "2 * bolt"),
    );
    const said = problemAt(page, "a");
    expect(said.code).toBe("several-outputs");
    expect(said.must).toContain("bolt.majorDiameter");
  });

  test("a given or a formula has no parts: load.preload is refused", async () => {
    const page = await settled(given("load", "1 kN"), working("a", "load.preload * 2"));
    expect(problemAt(page, "a")).toMatchObject({ code: "no-such-output", must: "be read as load" });
  });

  test("a yes-or-no output is read as a truth", async () => {
    const page = await settled(
      method("joint", "service-bolt-load", { preload: "10 kN", externalLoad: "20 kN", loadFactor: "0.2" }),
      working("carried", 'joint.separated ? joint.boltLoad : "0 kN"'),
    );
    expect(siAt(page, "carried")).toBe(20_000);
  });

  test("a list output in a formula is refused as no number", async () => {
    const page = await settled(
      method("clamp", "clamped-stiffness-cone", {
        layers: [{ thickness: "50 mm", modulus: "170 GPa" }],
        faceDiameter: "36 mm",
        holeDiameter: "24 mm",
      }),
      working("a", "2 * clamp.frusta"),
    );
    expect(problemAt(page, "a").code).toBe("not-a-number");
  });

  test("a check or a text in a formula is refused as no number", async () => {
    const page = await settled(
      given("grade", "8.8", { as: "text" }),
      given("load", "1 kN"),
      check("small", "load", { atMost: "2 kN" }),
      working("a", "2 * grade"),
      working("b", "2 * small"),
    );
    expect(problemAt(page, "a").code).toBe("not-a-number");
    expect(problemAt(page, "b").code).toBe("not-a-number");
  });

  test("an optional output that was not worked out says which are there", async () => {
    const page = await settled(
      method("stress", "assembly-stress", {
        preload: "148 kN",
        threadTorque: "270 N.m",
        stressArea: "352.5 mm2",
        stressDiameter: "21.19 mm",
      }),
      check("below", "stress.utilisation", { atMost: "0.9" }),
    );
    expect(stateAt(page, "below")).toBe("no answer");
    expect(sentence(problemAt(page, "below"))).toContain("equivalentStress");
  });

  test("formulas, quantities and names may stand as inputs of a method", async () => {
    const page = await settled(
      given("half", "250 N.m"),
      method("set", "set-torque", { netTorque: "2 * half", runOnTorque: "26 N.m" }),
    );
    expect(siAt(page, "set.setTorque")).toBe(526);
    expect(lineAt(page, "set").uses).toEqual(["half"]);
  });

  test("rows of a list may name lines, and a change there reaches the method", async () => {
    const page = await settled(
      method("bolt", "metric-thread", { designation: "M24" }),
      given("long", "97 mm"),
      method("spring", "bolt-stiffness", {
        segments: [
          { length: "long", area: "bolt.shankArea" },
          { length: "11 mm", area: "bolt.stressArea" },
        ],
        modulus: "205 GPa",
      }),
    );
    const before = siAt(page, "spring.stiffness");
    page.change("long", "100 mm");
    const { ran } = await page.settle();
    expect(ran).toEqual(["long", "spring"]);
    expect(siAt(page, "spring.stiffness")).toBeLessThan(before);
  });

  test("a designation may come from a text given", async () => {
    const page = await settled(
      given("thread", "M24x3", { as: "text" }),
      method("bolt", "metric-thread", { designation: "thread" }),
    );
    expect(siAt(page, "bolt.majorDiameter")).toBe(0.024);
    page.change("thread", "M16");
    await page.settle();
    expect(siAt(page, "bolt.majorDiameter")).toBe(0.016);
  });
});
