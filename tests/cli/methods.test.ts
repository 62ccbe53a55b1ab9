// splitline methods: the list by family, and one method laid open.
import { describe, expect, it } from "vitest";
import { methodsCommand } from "../../src/cli/commands/methods.ts";
import { familyOf } from "../../src/methods/families.ts";
import { methods } from "../../src/methods/index.ts";
import { json, splitline } from "./built.ts";

describe("methods", () => {
  it("lists every method with its question, by family", async () => {
    const { exit, out } = await splitline("methods");
    expect(exit).toBe(0);
    for (const [id, { question }] of methods) {
      expect(out).toMatch(new RegExp(`^${familyOf(id)}$`, "m"));
      expect(out).toMatch(new RegExp(`^  ${id} +${question.replace(/[?()]/g, "\\$&")}$`, "m"));
    }
  });

  it("--json lists id, family and question", async () => {
    expect((await json("methods")).data).toMatchObject({
      methods: [...methods.values()].map(({ id, question }) => ({ id, family: familyOf(id), question })),
    });
  });

  it("press-fit tells inputs, equations, limits, sources and evidence", async () => {
    const { exit, out } = await splitline("methods", "press-fit");
    expect(exit).toBe(0);
    for (const part of ["inputs", "outputs", "equations", "limits", "sources", "evidence"])
      expect(out).toMatch(new RegExp(`^${part}$`, "m"));
  });

  it("preload-from-torque shows its equation in symbols and how its source is known", async () => {
    const { out } = await splitline("methods", "preload-from-torque");
    expect(out).toContain("F = T / (K · d)");
    expect(out).toMatch(/nutFactor +K +ratio +nut factor/);
    expect(out).toMatch(/\d+ reference rows: /);
  });

  it("rows of a list use the symbols of their own columns", async () => {
    const { out } = await splitline("methods", "clamped-stiffness-cone");
    expect(out).toContain("D_2 = D + c · t");
    expect(out).toContain("default 30 deg");
    expect(out).toContain("printed | exact");
  });

  it("a column of a list does not take the symbol of an input or an output of the same name", async () => {
    const { out } = await splitline("methods", "shear-bearing-tear-out");
    expect(out).toContain("τ = V / (n · m · A_s)");
    expect((await splitline("methods", "clamped-stiffness-cone")).out).toContain("k_m = 1 / δ_m");
  });

  it("every method can be told, as text and as data", () => {
    for (const id of methods.keys()) {
      const { exit, out = "" } = methodsCommand([id, "--json"], Number.POSITIVE_INFINITY);
      expect([id, exit]).toEqual([id, 0]);
      const data: unknown = JSON.parse(out);
      expect(data).toMatchObject({ id, equations: expect.any(Array), sources: expect.any(Array) });
      expect(methodsCommand([id], 80).out).not.toMatch(/undefined|\[object/);
    }
  });

  it("an unknown id is refused with the nearest one, two ids too", async () => {
    const { exit, err } = await splitline("methods", "preload-from-torqe");
    expect(exit).toBe(2);
    expect(err).toContain("did you mean preload-from-torque");
    expect((await splitline("methods", "press-fit", "load-share")).exit).toBe(2);
  });
});
