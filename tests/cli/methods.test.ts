// splitline methods: the list by family, and one method laid open.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { countRows } from "../../src/cli/evidence.ts";
import { methodFamilies } from "../../src/cli/method-folders.ts";
import { methods } from "../../src/methods/index.ts";
import { json, root, splitline } from "./built.ts";

describe("methods", () => {
  it("lists every method with its question, by family", async () => {
    const { exit, out } = await splitline("methods");
    expect(exit).toBe(0);
    const families = methodFamilies();
    for (const [id, { question }] of methods) {
      expect(out).toMatch(new RegExp(`^${families[id]}$`, "m"));
      expect(out).toMatch(new RegExp(`^  ${id} +${question.replace(/[?()]/g, "\\$&")}$`, "m"));
    }
  });

  it("--json lists id, family and question", async () => {
    const families = methodFamilies();
    expect((await json("methods")).data).toEqual({
      methods: [...methods.values()].map(({ id, question }) => ({ id, family: families[id], question })),
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

  it("every method can be told, as text and as data", async () => {
    for (const id of methods.keys()) {
      const { exit, data } = await json("methods", id);
      expect([id, exit]).toEqual([id, 0]);
      expect(data).toMatchObject({ id, equations: expect.any(Array), sources: expect.any(Array) });
    }
  });

  it("an unknown id is refused with the nearest one, two ids too", async () => {
    const { exit, err } = await splitline("methods", "preload-from-torqe");
    expect(exit).toBe(2);
    expect(err).toContain("did you mean preload-from-torque");
    expect((await splitline("methods", "press-fit", "load-share")).exit).toBe(2);
  });

  it("evidence rows are counted by how each is known, notes between them are not", () => {
    const csv = readFileSync(join(root, "reference-checks/preload-from-torque/cases.csv"), "utf8");
    const { rows, known } = countRows(csv);
    expect(Object.values(known).reduce((sum, n) => sum + n, 0)).toBe(rows);
    expect(countRows('a,known\n# a remark\n1,memory\n"2,5",seen in a copy\n\n')).toEqual({
      rows: 2,
      known: { memory: 1, "seen in a copy": 1 },
    });
    expect(countRows("")).toEqual({ rows: 0, known: {} });
  });
});
