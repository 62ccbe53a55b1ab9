// splitline check on pages over tables: one check for each row, told as one with its rows below.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { checkCommand } from "../../src/cli/commands/check.ts";
import "../../src/methods/index.ts";

const folder = mkdtempSync(join(tmpdir(), "rows-"));
afterAll(() => rmSync(folder, { recursive: true }));

const page = (last: string): string => `splitline: 1
title: Nuts
page:
  - reading: runOn
    columns: { position: tag, torque: torque, friction: ratio }
    rows: |
      position,torque/N.m,friction
      1,22,0.12
      2,6,0.12
      3,14.8,${last}
  - check: grips
    each: runOn
    key: position
    that: runOn.torque
    atLeast: 10 N.m
    uncertainty: 1 N.m
  - check: band
    each: runOn
    key: position
    that: runOn.torque
    atMost: 15 N.m
    uncertainty: 1 N.m
    waived: { by: R. Vance, why: nuts are on order }
  - working: preload
    each: runOn
    key: position
    by: preload-from-torque
    of: { torque: runOn.torque, nutFactor: runOn.friction, diameter: 24 mm }
`;

async function checked(name: string, text: string, ...flags: readonly string[]) {
  const file = join(folder, name);
  writeFileSync(file, text);
  return checkCommand([file, ...flags], Number.POSITIVE_INFINITY);
}

describe("check on rows", () => {
  it("the worst row stands for all, and only rows that are not proven are told", async () => {
    const { exit, out } = await checked("rows.yaml", page("0.12"));
    expect(exit).toBe(1);
    expect(out).toMatch(/fails +grips: grips\n +2 of 3 proven; fails: 2\n +fails · position 2: 6\.000 N\.m/);
    expect(out).not.toContain("fails · position 1");
    expect(out).not.toContain("no answer");
  });

  it("a waived row names who and why, and what the numbers say", async () => {
    const { out } = await checked("rows.yaml", page("0.12"));
    expect(out).toMatch(/waived +band: band\n/);
    expect(out).toMatch(
      /position 1: .*\n +waived by R\. Vance: nuts are on order; without the waiver: fails/,
    );
  });

  it("a working that has no answer in one row says which, and leaves the page open", async () => {
    const { exit, out } = await checked(
      "silent.yaml",
      page("14").replace("atLeast: 10 N.m", "atLeast: 1 N.m"),
    );
    expect(exit).toBe(3);
    expect(out).toMatch(/no answer elsewhere\n +preload +.*got 14, must be below 1/);
  });

  it("--json gives each row its own state, value and reason", async () => {
    const { out = "" } = await checked("rows.yaml", page("14"), "--json");
    const data: unknown = JSON.parse(out);
    expect(data).toMatchObject({
      pages: [
        {
          checks: [
            {
              name: "grips",
              state: "fails",
              value: null,
              rows: [
                { position: "1", state: "proven", value: 22, unit: "N.m", limit: "at least 10 N.m" },
                { position: "2", state: "fails", value: 6 },
                { position: "3", state: "proven", value: expect.closeTo(14.8) },
              ],
            },
            { name: "band", state: "waived" },
          ],
          lines: expect.arrayContaining([
            expect.objectContaining({ name: "preload 1", unit: "kN", value: expect.closeTo(7.6389, 3) }),
            expect.objectContaining({ name: "preload 3", value: null, problem: expect.any(Object) }),
          ]),
        },
      ],
    });
  });
});
