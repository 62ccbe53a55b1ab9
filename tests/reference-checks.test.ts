// Runs every row of reference-checks/<method id>/cases.csv and compares in the printed unit.
// A row whose note begins "disagrees:" is kept as printed and has to miss: if it ever agrees, we want to know.

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { csvParse } from "d3";
import { afterAll, describe, expect, test } from "vitest";
import { evidenceIds, evidenceRowsAt } from "../src/cli/evidence.ts";
import { countRows, disagrees, evidenceColumns, repeatedRows } from "../src/report/evidence-rows.ts";
import { printedNumber, runRow, shareText, worstOf } from "../src/report/evidence-run.ts";

const folder = new URL("../reference-checks/", import.meta.url);
const ids = evidenceIds(fileURLToPath(folder));

const ways = ["seen in a copy", "memory", "recomputed", "common practice"];

/** The rows as the command line reads them; a CSV reader that is not ours has to find the same. */
function rowsOf(id: string): ReturnType<typeof evidenceRowsAt> {
  const table = csvParse(readFileSync(new URL(`${id}/cases.csv`, folder), "utf8"));
  expect(table.columns).toEqual([...evidenceColumns]);
  const rows = evidenceRowsAt(fileURLToPath(folder), id);
  expect(rows).toEqual([...table]);
  return rows;
}

/** What the bullets of a README say: "…: seen in a copy, 3 rows and 1 that disagrees", "…, 2 rows that disagree". */
function bulletsOf(readme: string): { readonly outsideRows: number; readonly disagreeing: number } {
  let [outsideRows, disagreeing] = [0, 0];
  for (const [, count, only, more] of readme.matchAll(
    /^- .*, (\d+) rows?(?:( that disagrees?)| and (\d+) that disagrees?)?$/gm,
  )) {
    if (only === undefined) outsideRows += Number(count);
    else disagreeing += Number(count);
    disagreeing += Number(more ?? 0);
  }
  return { outsideRows, disagreeing };
}

const summary: string[] = [];

afterAll(() => {
  const all = countRows(ids.flatMap((id) => evidenceRowsAt(fileURLToPath(folder), id)));
  const counts = `${all.outsideRows} from outside of ${all.examples} examples, ${all.recomputed} recomputed, ${all.disagreeing} disagreeing`;
  console.log([...summary, `${all.rows} rows in ${ids.length} methods: ${counts}`].join("\n"));
});

describe("reference-checks", () => {
  test.each(ids)("%s reproduces its rows, and its README counts them", (id) => {
    const rows = rowsOf(id);
    const readme = readFileSync(new URL(`${id}/README.md`, folder), "utf8");
    expect(Number(/^rows: (\d+)$/m.exec(readme)?.[1]), "row count in README.md").toBe(rows.length);
    expect(countRows(rows), "rows by source in README.md").toMatchObject(bulletsOf(readme));
    expect(new Set(rows.map((row) => row.id)).size, "row ids").toBe(rows.length);
    expect(
      repeatedRows(rows).map((row) => row.id),
      "rows that say the same again",
    ).toEqual([]);
    for (const row of rows) {
      expect(ways, row.id).toContain(row.known);
      expect(
        Number.isFinite(printedNumber(row.printed)) && Number(row.tolerance) >= 0 && row.source !== "",
        row.id,
      ).toBe(true);
    }
    const outcomes = rows.map((row) => runRow(id, row));
    const worst = worstOf(outcomes);
    const missing = rows.filter(disagrees).length;
    summary.push(
      `${id}: ${rows.length} rows, ${missing} kept as disagreeing; worst ${worst ? `${worst.row.id}, ${shareText(worst.share)} of tolerance` : "none"}`,
    );
    expect(outcomes.flatMap(({ failure }) => failure ?? [])).toEqual([]);
  });

  test("what no method covers yet is listed with a reason", () => {
    const left = csvParse(readFileSync(new URL("not-covered.csv", folder), "utf8"));
    const counted = /^not covered: (\d+)$/m.exec(readFileSync(new URL("README.md", folder), "utf8"))?.[1];
    expect(left.length).toBe(Number(counted));
    expect(new Set(left.map((line) => line["id"])).size, "ids").toBe(left.length);
    // One word names a subject, not why no method answers.
    for (const line of left) expect(line["reason"], line["id"]).toMatch(/\S+ \S+ \S+/);
  });
});
