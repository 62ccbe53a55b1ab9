import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import {
  change,
  check,
  checkAt,
  given,
  lineAt,
  method,
  problemAt,
  settled,
  stateAt,
  working,
} from "./helpers.ts";

const below = (value: string, limit: string, more: Record<string, unknown> = {}) =>
  settled(given("a", value), check("c", "a", { atMost: limit, ...more }));

describe("the five states", () => {
  test("proven: inside the limit, and on it", async () => {
    expect(stateAt(await below("14 kN", "15 kN"), "c")).toBe("proven");
    expect(stateAt(await below("15 kN", "15 kN"), "c")).toBe("proven");
  });

  test("fails: outside the limit, by however little", async () => {
    expect(stateAt(await below("15.0000001 kN", "15 kN"), "c")).toBe("fails");
  });

  test("unproven: too close to the limit to call", async () => {
    expect(stateAt(await below("14 kN", "15 kN", { uncertainty: "2 kN" }), "c")).toBe("unproven");
  });

  test("no answer: a share given as half-width, which may mean points or a part of the value", async () => {
    const page = await settled(given("a", "5"), check("c", "a", { atLeast: "4.5", uncertainty: "20 %" }));
    expect(stateAt(page, "c")).toBe("no answer");
    expect(sentence(problemAt(page, "c"))).toContain("write it out, as uncertainty: 0.2 * name");
    const points = await settled(given("a", "19 %"), check("c", "a", { atMost: "20 %", uncertainty: "2 %" }));
    expect(stateAt(points, "c")).toBe("unproven");
  });

  test("no answer: the value is not there", async () => {
    expect(stateAt(await below("", "15 kN"), "c")).toBe("no answer");
    expect(stateAt(await below("14 kN", "limit"), "c")).toBe("no answer");
  });

  test("waived: says who and why, keeps what the numbers say, and is never proven", async () => {
    const waived = { by: "owner", why: "test stand only" };
    for (const value of ["14 kN", "16 kN"]) {
      const page = await below(value, "15 kN", { waived });
      expect(checkAt(page, "c")).toMatchObject({ state: "waived", waived });
      expect(checkAt(page, "c").judged).toBe(value === "14 kN" ? "proven" : "fails");
    }
  });

  test("a waiver does not turn a missing value into an answer", async () => {
    expect(stateAt(await below("", "15 kN", { waived: { by: "owner", why: "later" } }), "c")).toBe(
      "no answer",
    );
  });
});

describe("guarded uncertainty, limit 15 µm and doubt √(3² + 2²) = 3.61 µm", () => {
  const at = (clearance: string) =>
    settled(
      given("clearance", clearance),
      given("hole", "3 um"),
      given("shank", "2 um"),
      working("doubt", "sqrt(hole^2 + shank^2)"),
      check("fit", "clearance", { atMost: "15 um", uncertainty: "doubt" }),
    );

  test.each([
    ["11.7 um", "unproven"], // 11.7 + 3.61 = 15.31 > 15
    ["20.4 um", "fails"], // 20.4 − 3.61 = 16.79 > 15
    ["10.9 um", "proven"], // 10.9 + 3.61 = 14.51 < 15
    ["18.6 um", "unproven"], // 18.6 − 3.61 = 14.99
    ["18.61 um", "fails"], // 18.61 − 3.6056 = 15.0044
    ["11.39 um", "proven"],
    ["11.4 um", "unproven"], // 11.4 + 3.6056 = 15.0056
  ])("%s is %s", async (clearance, state) => {
    expect(stateAt(await at(clearance), "fit")).toBe(state);
  });

  test("the reason shows value, doubt and limit", async () => {
    const { why, uncertainty } = checkAt(await at("11.7 um"), "fit");
    expect(why).toMatch(/±/);
    expect(why).toContain("too close to the limit to call");
    expect(uncertainty).toBeCloseTo(3.605551275e-6, 14);
  });

  test("a doubt of 0 gives proven or fails and nothing between", async () => {
    const page = await settled(
      given("a", "15 um"),
      check("c", "a", { atMost: "15 um", uncertainty: "0 um" }),
    );
    expect(stateAt(page, "c")).toBe("proven");
  });

  test("a negative doubt has no answer and the sentence names the uncertainty", async () => {
    const page = await settled(
      given("a", "14 um"),
      check("c", "a", { atMost: "15 um", uncertainty: "-1 um" }),
    );
    expect(stateAt(page, "c")).toBe("no answer");
    expect(sentence(problemAt(page, "c"))).toMatch(/uncertainty.*(got -1 um|at least 0)/);
  });

  test("a doubt of another dimension has no answer", async () => {
    const page = await settled(
      given("a", "14 um"),
      check("c", "a", { atMost: "15 um", uncertainty: "3 kN" }),
    );
    expect(problemAt(page, "c").what).toBe("uncertainty");
  });
});

describe("limits", () => {
  test("between holds inside and at both ends", async () => {
    const at = async (value: string) =>
      stateAt(await settled(given("a", value), check("c", "a", { between: ["-10 um", "15 um"] })), "c");
    expect([await at("-10 um"), await at("0 um"), await at("15 um")]).toEqual(["proven", "proven", "proven"]);
    expect([await at("-11 um"), await at("16 um")]).toEqual(["fails", "fails"]);
  });

  test("a range narrower than the doubt can never be proven", async () => {
    const page = await settled(
      given("a", "5 um"),
      check("c", "a", { between: ["4 um", "6 um"], uncertainty: "3 um" }),
    );
    expect(stateAt(page, "c")).toBe("unproven");
  });

  test("a lower limit above the upper one is no range: it has no answer", async () => {
    const page = await settled(given("a", "5 um"), check("c", "a", { between: ["6 um", "4 um"] }));
    expect(stateAt(page, "c")).toBe("no answer");
  });

  test("a number without a limit has no answer and the sentence tells what to write", async () => {
    const page = await settled(given("a", "5 um"), check("c", "a"));
    const said = problemAt(page, "c");
    expect(said.code).toBe("no-limit");
    expect(said.must).toContain("atLeast, atMost or between");
    expect(said.hint).toMatch(/that: /);
  });

  test("limits may be names and formulas, and a change of a limit judges again", async () => {
    const page = await settled(
      given("a", "5 kN"),
      given("most", "8 kN"),
      check("c", "a", { atMost: "most / 2" }),
    );
    expect(stateAt(page, "c")).toBe("fails");
    const { ran } = await change(page, { most: "12 kN" });
    expect(ran).toEqual(["most", "c"]);
    expect(stateAt(page, "c")).toBe("proven");
  });

  test("a limit of 0 fits any dimension", async () => {
    const page = await settled(given("a", "5 kN"), check("c", "a", { atLeast: "0" }));
    expect(stateAt(page, "c")).toBe("proven");
  });

  test("the reason adds digits until value and limit differ as shown", async () => {
    expect(checkAt(await below("15.00001 kN", "15 kN"), "c").why).toContain("15.00001");
  });

  test("value, limit and doubt are shown in the unit of the page", async () => {
    const page = await settled(given("a", "100 lbf.ft"), check("c", "a", { atMost: "200 N.m" }));
    expect(checkAt(page, "c").why).toMatch(/135\.6 N\.m against at most 200 N\.m/);
  });
});

describe("a yes or no", () => {
  test("is proven when yes and fails when no, without limits", async () => {
    const at = (load: string) =>
      settled(
        method("joint", "service-bolt-load", { preload: "100 kN", externalLoad: load, loadFactor: "0.2" }),
        check("open", "joint.separated"),
        check("compared", 'joint.boltLoad < "110 kN"'),
      );
    const shut = await at("10 kN");
    expect([stateAt(shut, "open"), stateAt(shut, "compared")]).toEqual(["fails", "proven"]);
    const open = await at("200 kN");
    expect([stateAt(open, "open"), stateAt(open, "compared")]).toEqual(["proven", "fails"]);
  });

  test("has no number to show", async () => {
    const page = await settled(given("a", "5 kN"), check("c", 'a < "6 kN"'));
    expect(checkAt(page, "c").si).toBeNaN();
    expect(checkAt(page, "c").yes).toBe(true);
  });

  test("with a limit beside it has no answer: a yes has no size", async () => {
    const page = await settled(given("a", "5 kN"), check("c", 'a < "6 kN"', { atMost: "3 kN" }));
    expect(stateAt(page, "c")).toBe("no answer");
  });

  test("waived keeps what it judged", async () => {
    const page = await settled(
      given("a", "7 kN"),
      check("c", 'a < "6 kN"', { waived: { by: "owner", why: "known" } }),
    );
    expect(checkAt(page, "c")).toMatchObject({ state: "waived", judged: "fails" });
  });

  test("takes the method's own words where the output warned", async () => {
    const page = await settled(
      method("window", "preload-window", {
        separationLoad: "84.5 kN",
        scatter: "50 %",
        proofLoad: "100 kN",
        nutFactor: "0.2",
        diameter: "20 mm",
      }),
      check("open", "window.open"),
    );
    expect(checkAt(page, "open").why).toContain("no torque passes");
  });

  test("a check is proven in the version its value last changed in", async () => {
    const page = await settled(given("a", "5 kN"), check("c", 'a < "6 kN"'));
    await change(page, { a: "5.5 kN" });
    expect(stateAt(page, "c")).toBe("proven");
    expect(lineAt(page, "c").version).toBeLessThanOrEqual(2);
  });
});
