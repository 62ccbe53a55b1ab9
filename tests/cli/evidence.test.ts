// splitline evidence: the whole table, its totals, and what a method without a published check says.
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { evidenceFor, evidenceIds, evidenceRowsAt, noPublishedCheck } from "../../src/cli/evidence.ts";
import { countRows, countsOf, evidenceRows } from "../../src/cli/evidence-rows.ts";
import { runRow, worstOf } from "../../src/cli/evidence-run.ts";
import { catalogue } from "../../src/methods/catalogue.ts";
import { goodFor } from "../methods/good-inputs.ts";
import { json, root, splitline } from "./built.ts";
import { solved } from "./in-process.ts";

const ids: readonly string[] = Object.values(catalogue).flat();
const folder = join(root, "reference-checks");
const head = "id,inputs,output,printed,unit,tolerance,known,source,note\n";

describe("evidence", () => {
  it("prints a line for every method, the sums, and which methods have no published check", async () => {
    const { exit, out, err } = await splitline("evidence");
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    for (const id of ids) expect(out).toMatch(new RegExp(`^${id} +\\d+ +\\d+ `, "m"));
    const without = ids.filter((id) => noPublishedCheck(evidenceFor(id)) !== undefined);
    expect(out).toContain(`${without.length} methods have no published check: `);
    for (const id of without) expect(out).toContain(id);
    expect(out).not.toContain("rows that fail");
  });

  it("--json gives the same as data, and its totals are the sums of its methods", async () => {
    const { exit, data } = await json("evidence");
    expect(exit).toBe(0);
    const rows = evidenceIds(folder).flatMap((id) => evidenceRowsAt(folder, id));
    const all = countRows(rows);
    expect(data).toMatchObject({
      methods: ids.map((id) => ({ id, ...countsOf(countRows(evidenceRowsAt(folder, id))), failures: [] })),
      totals: {
        methods: ids.length,
        rows: rows.length,
        ...countsOf(all),
        disagreeing: all.disagreeing,
        failures: 0,
      },
    });
  });

  it("outside rows are those not recomputed here, by how each is known", () => {
    const rows = evidenceRows(
      `${head}# a remark\na,x=1,y,1,,1,memory,S,\nb,x=1,y,1,,1,seen in a copy,S,"disagrees: a, b"\n\nc,x=1,y,1,,1,recomputed,S,\nd,x=1,y,1,,1,common practice,S,\n`,
    );
    expect(rows.map(({ id, note }) => [id, note])).toEqual([
      ["a", ""],
      ["b", "disagrees: a, b"],
      ["c", ""],
      ["d", ""],
    ]);
    expect(countsOf(countRows(rows))).toEqual({
      outsideRows: 3,
      seenInACopy: 1,
      fromMemory: 1,
      commonPractice: 1,
      recomputed: 1,
    });
    expect(countRows(rows).disagreeing).toBe(1);
    expect(countRows(evidenceRows(""))).toEqual({ rows: 0, known: {}, disagreeing: 0 });
  });

  const row = (printed: string, note = "") =>
    evidenceRows(
      `${head}r,torque=480 N.m; nutFactor=0.2; diameter=24 mm,preload,${printed},kN,0.05,memory,S,${note}\n`,
    )[0] ?? expect.fail("no row");

  it("a row that misses fails and says both numbers; one marked as disagreeing has to miss", () => {
    expect(runRow("preload-from-torque", row("100.0"))).toMatchObject({ share: expect.closeTo(0, 9) });
    expect(runRow("preload-from-torque", row("100.1")).failure).toMatch(/printed 100\.1 kN, got 100\.00000/);
    expect(runRow("preload-from-torque", row("100.1", "disagrees: misprint")).failure).toBeUndefined();
    expect(runRow("preload-from-torque", row("100.0", "disagrees: misprint")).failure).toContain(
      "but agrees",
    );
    expect(runRow("preload-from-stretch", row("100.0")).failure).toContain("preload-from-stretch");
  });

  it("the worst row is the one nearest its tolerance among those that agree", () => {
    const outcomes = ["100.00", "100.04", "100.03", "101"].map((printed) =>
      runRow("preload-from-torque", row(printed, printed === "101" ? "disagrees: misprint" : "")),
    );
    expect(worstOf(outcomes)?.row.printed).toBe("100.04");
    expect(worstOf([])).toBeUndefined();
  });

  it("takes no words, and a bundle without its evidence says so", async () => {
    const { exit, err } = await splitline("evidence", "press-fit");
    expect({ exit, says: err.includes("splitline methods") }).toEqual({ exit: 2, says: true });
  });
});

describe("a method without a published check", () => {
  const without = ids.filter((id) => countsOf(evidenceFor(id) ?? { rows: 1, known: {} }).outsideRows === 0);

  it("says so with the README's reason, in methods and in solve", async () => {
    const { out } = await splitline("methods", "set-torque");
    const line = "no published check: no published example with numbers was found; 4 rows recomputed by hand";
    expect(out).toContain(`\nevidence\n  ${line}\n`);
    expect((await splitline("solve", "set-torque", "netTorque=500 N.m", "runOnTorque=26 N.m")).out).toMatch(
      new RegExp(`\n\n${line}\n$`),
    );
    const asked = ["solve", "set-torque", "netTorque=500 N.m", "runOnTorque=26 N.m"];
    expect((await json(...asked)).data).toMatchObject({ noPublishedCheck: line });
  });

  it("each of them has a reason in its README, and each other method says nothing of it", () => {
    for (const id of ids) {
      const evidence = evidenceFor(id);
      const said = (solved(id, goodFor(id)).out ?? "").match(/^no published check: .*$/gm) ?? [];
      if (without.includes(id)) {
        expect(evidence?.reason, id).toMatch(/^\S.*[^.]$/);
        expect(said, id).toEqual([noPublishedCheck(evidence)]);
      } else expect([id, said, noPublishedCheck(evidence)]).toEqual([id, [], undefined]);
    }
  });

  it("a README without a reason leaves the counts", () => {
    const lonely = { rows: 0, known: {}, disagreeing: 0, reason: undefined };
    expect(noPublishedCheck(lonely)).toBe("no published check: no rows at all");
    expect(noPublishedCheck(undefined)).toBeUndefined();
  });

  it("methods --json counts the rows of every method", async () => {
    const { data } = await json("methods");
    expect(data).toMatchObject({
      methods: ids.map((id) => ({ id, ...countsOf(evidenceFor(id) ?? { rows: 0, known: {} }) })),
    });
  });
});

it("folders only are ids of methods", () => {
  const home = mkdtempSync(join(tmpdir(), "evidence-"));
  mkdirSync(join(home, "b"));
  mkdirSync(join(home, "a"));
  writeFileSync(join(home, "README.md"), "");
  expect(evidenceIds(home)).toEqual(["a", "b"]);
  expect(evidenceRowsAt(home, "a")).toEqual([]);
});
