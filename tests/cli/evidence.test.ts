// splitline evidence: the whole table, its totals, and what a method without a published check says.
import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { evidenceFor, evidenceIds, evidenceRowsAt, noPublishedCheck } from "../../src/cli/evidence.ts";
import { methods } from "../../src/methods/index.ts";
import {
  countRows,
  disagrees,
  evidenceRows,
  hasPublishedCheck,
  repeatedRows,
} from "../../src/report/evidence-rows.ts";
import { runRow, worstOf } from "../../src/report/evidence-run.ts";
import { goodFor } from "../methods/good-inputs.ts";
import { json, root, splitline } from "./built.ts";
import { solved } from "./in-process.ts";

const ids = [...methods.keys()];
const folder = join(root, "reference-checks");
const head = "id,inputs,output,printed,unit,tolerance,known,source,note\n";

describe("evidence", () => {
  it("prints a line for every method, the sums, and which methods have no published check", async () => {
    const { exit, out, err } = await splitline("evidence");
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    for (const id of ids) expect(out).toMatch(new RegExp(`^${id} +\\d+ +\\d+ `, "m"));
    const without = ids.filter((id) => noPublishedCheck(evidenceFor(id)) !== undefined);
    expect(out).toContain(`\n${without.length} methods have no published check: ${without.join(", ")}\n`);
    const all = countRows(ids.flatMap((id) => evidenceRowsAt(folder, id)));
    expect(out).toContain(
      `${all.rows} rows in ${ids.length} methods: ${all.outsideRows} from outside, of ${all.examples} distinct examples; ${all.recomputed} recomputed; ${all.disagreeing} kept although they disagree\n`,
    );
    const kept = ids.flatMap((id) => evidenceRowsAt(folder, id)).filter(disagrees);
    expect(kept).toHaveLength(all.disagreeing);
    for (const { id, note } of kept) {
      expect(out).toContain(` ${id}: printed `);
      expect(out).toContain(`; ${note.replace("disagrees: ", "")}\n`);
    }
    expect(out).not.toContain("rows that fail");
  });

  it("--json gives the same as data, and its totals are the sums of its methods", async () => {
    const { exit, data } = await json("evidence");
    expect(exit).toBe(0);
    const rows = evidenceIds(folder).flatMap((id) => evidenceRowsAt(folder, id));
    const counted = ids.map((id) => ({ id, counts: countRows(evidenceRowsAt(folder, id)) }));
    expect(data).toMatchObject({
      methods: counted.map(({ id, counts }) => ({
        id,
        ...counts,
        publishedCheck: hasPublishedCheck(counts),
        failures: [],
      })),
      totals: { methods: ids.length, ...countRows(rows), failures: 0 },
    });
    const sum = (of: "outsideRows" | "recomputed" | "disagreeing") =>
      counted.reduce((total, { counts }) => total + counts[of], 0);
    expect(sum("outsideRows") + sum("recomputed") + sum("disagreeing")).toBe(rows.length);
  });

  const body = (...lines: readonly string[]) => evidenceRows(`${head}${lines.join("\n")}\n`);

  it("reads rows past remarks and blank lines", () => {
    const rows = body("# a remark", "a,x=1,y,1,,1,memory,S,", "", 'b,x=1,y,1,,1,memory,S,"disagrees: a, b"');
    expect(rows.map(({ id, note }) => [id, note])).toEqual([
      ["a", ""],
      ["b", "disagrees: a, b"],
    ]);
    expect(evidenceRows("")).toEqual([]);
  });

  it("rows from outside are neither recomputed nor disagreeing, and are counted by how each is known", () => {
    expect(
      countRows(
        body(
          "a/x,x=1,y,1,,1,memory,S,",
          "a/z,x=2,z,1,,1,memory,S,",
          "b,x=1,y,1,,1,seen in a copy,S,disagrees: misprint",
          "c,x=1,y,1,,1,recomputed,S,",
          "d,x=1,y,1,,1,common practice,S,",
          "e/1,x=1,y,1,,1,seen in a copy,S,echo: y is x",
          "e/2,x=1,y,1,,1,seen in a copy,S,one of three; fitted input: x was tried",
        ),
      ),
    ).toEqual({
      rows: 7,
      outsideRows: 5,
      examples: 3,
      seenInACopy: 2,
      fromMemory: 2,
      commonPractice: 1,
      echoes: 1,
      fitted: 1,
      recomputed: 1,
      disagreeing: 1,
    });
  });

  it.each([
    ["recomputed,S,", false],
    ["seen in a copy,S,", true],
    ["memory,S,", true],
    ["seen in a copy,S,disagrees: misprint", false],
    ["seen in a copy,S,echo: the reading comes back", false],
    ["seen in a copy,S,fitted input: x was tried", false],
    ["seen in a copy,S,the form a; fitted input: x was tried", false],
    ["seen in a copy,S,nothing here is an echo: it is worked out", true],
  ])("a row that is %s: published check %s", (known, published) => {
    expect(hasPublishedCheck(countRows(body(`a,x=1,y,1,,1,${known}`)))).toBe(published);
  });

  it("a row that says the same again is found, another quantity, print or a recomputed row is none", () => {
    const first = "a/1,x=1,y,1,,1,memory,S,";
    for (const again of ["b/9,x=1,y,1,,1,seen in a copy,T,", "a/2,x=1,y,1,,0.5,memory,S,disagrees: so"])
      expect(repeatedRows(body(first, again))).toHaveLength(1);
    for (const other of [
      "a/2,x=1,z,1,,1,memory,S,",
      "a/2,x=1,y,1.0,,1,memory,S,",
      "a/2,x=1,y,1,,1,recomputed,S,",
    ])
      expect(repeatedRows(body(first, other))).toEqual([]);
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
  const without = ids.filter((id) => !hasPublishedCheck(countRows(evidenceRowsAt(folder, id))));

  it("says so with the README's reason, in methods and in solve", async () => {
    const { out } = await splitline("methods", "stop-torque");
    const line =
      "no published check: no published worked example with numbers was found for this method; 2 rows recomputed by hand";
    expect(out).toContain(`\nevidence\n  ${line}\n`);
    const asked = [
      "solve",
      "stop-torque",
      "preload=0 kN",
      "stressArea=353 mm2",
      "stressDiameter=21.2 mm",
      "yieldStress=640 MPa",
    ];
    expect((await splitline(...asked)).out).toMatch(new RegExp(`\n\n${line}\n$`));
    expect((await json(...asked)).data).toMatchObject({ noPublishedCheck: line });
  });

  it("an echo, a fitted input and a disagreeing row are no published check", () => {
    for (const id of ["pass-torques", "fit-temperature", "thread-stripping"]) {
      const rows = evidenceRowsAt(folder, id);
      expect(
        rows.some(({ known }) => known !== "recomputed"),
        id,
      ).toBe(true);
      expect(without, id).toContain(id);
    }
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
    const lonely = { counts: countRows([]), reason: undefined };
    expect(noPublishedCheck(lonely)).toBe("no published check: no rows at all");
    expect(noPublishedCheck(undefined)).toBeUndefined();
  });

  it("methods --json counts the rows of every method", async () => {
    const { data } = await json("methods");
    expect(data).toMatchObject({
      methods: ids.map((id) => ({ id, ...countRows(evidenceRowsAt(folder, id)) })),
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
