// Runs every row of reference-checks/<method id>/cases.csv and compares in the printed unit.
// A row whose note begins "disagrees:" is kept as printed and has to miss: if it ever agrees, we want to know.

import { readdirSync, readFileSync } from "node:fs";
import { csvParse } from "d3";
import { afterAll, describe, expect, test } from "vitest";
import { solve } from "../src/methods/index.ts";
import { isProblem, type Problem, problem, sentence } from "../src/problem.ts";
import { inUnit } from "../src/units/convert.ts";
import { unit } from "../src/units/unit.ts";

const folder = new URL("../reference-checks/", import.meta.url);
const ids = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort();

const columns = [
  "id",
  "inputs",
  "output",
  "printed",
  "unit",
  "tolerance",
  "known",
  "source",
  "note",
] as const;
type Row = Readonly<Record<(typeof columns)[number], string>>;

const ways = ["seen in a copy", "memory", "recomputed", "common practice"];

function rowsOf(id: string): readonly Row[] {
  const table = csvParse<(typeof columns)[number]>(readFileSync(new URL(`${id}/cases.csv`, folder), "utf8"));
  expect(table.columns).toEqual([...columns]);
  return table;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;

type ListText = readonly Record<string, string>[];
const isListText = (value: unknown): value is ListText => Array.isArray(value) && value.every(isRecord);

/** A list is JSON text; anything else is the text of a quantity or a designation. */
function valueOfInput(id: string, text: string): string | ListText {
  if (!text.startsWith("[")) return text;
  const list: unknown = JSON.parse(text);
  if (!isListText(list)) throw new Error(`${id}: not a list: ${text}`);
  return list;
}

/** "torque=480 N.m; layers=[{…}]", as on the command line. */
function inputsOf(row: Row): Record<string, string | ListText> {
  const pairs = row.inputs.split("; ").map((part) => {
    const at = part.indexOf("=");
    return [part.slice(0, at), valueOfInput(row.id, part.slice(at + 1))] as const;
  });
  return Object.fromEntries(pairs);
}

/** Follows "frusta.0.stiffness" into the outputs. */
function outputAt(outputs: unknown, path: string): unknown {
  return path.split(".").reduce((value, step) => {
    if (!isRecord(value)) return undefined;
    const inside = isRecord(value["rows"]) ? value["rows"] : value;
    return inside[step];
  }, outputs);
}

/** What the method gives for the row, in the printed unit; yes and no are 1 and 0. */
function answerOf(id: string, row: Row): number | Problem {
  const solution = solve(id, inputsOf(row));
  if (isProblem(solution)) return solution;
  const output = outputAt(solution.outputs, row.output);
  if (isRecord(output) && typeof output["yes"] === "boolean") return Number(output["yes"]);
  if (!isRecord(output) || typeof output["si"] !== "number")
    return problem({ code: "no-output", where: id, what: row.output, got: "no such output" });
  if (row.unit === "") return output["si"];
  const printedUnit = unit(row.unit);
  return isProblem(printedUnit) ? printedUnit : inUnit(output["si"], printedUnit);
}

const printedNumber = (text: string): number => (text === "yes" ? 1 : text === "no" ? 0 : Number(text));

interface Outcome {
  readonly row: Row;
  /** Error as a share of the tolerance. */
  readonly share: number;
  readonly failure?: string;
}

// A tie on the half digit (48.45 printed as 48.5) agrees: the slack covers the last bits of the doubles.
const tie = 1 + 1e-9;

function run(id: string, row: Row): Outcome {
  const answer = answerOf(id, row);
  if (isProblem(answer)) return { row, share: Number.NaN, failure: `${row.id}: ${sentence(answer)}` };
  const [printed, tolerance] = [printedNumber(row.printed), Number(row.tolerance)];
  const error = Math.abs(answer - printed);
  const share = tolerance === 0 ? (error === 0 ? 0 : Number.POSITIVE_INFINITY) : error / tolerance;
  const agrees = share <= tie;
  if (agrees === !row.note.startsWith("disagrees:")) return { row, share };
  const found = `printed ${row.printed} ${row.unit}, got ${answer.toPrecision(8)}, tolerance ${row.tolerance}`;
  return {
    row,
    share,
    failure: agrees ? `${row.id} is marked as disagreeing but agrees: ${found}` : `${row.id}: ${found}`,
  };
}

const summary: string[] = [];
let total = 0;

afterAll(() => {
  console.log([...summary, `${total} rows in ${ids.length} methods`].join("\n"));
});

describe("reference-checks", () => {
  test.each(ids)("%s reproduces its rows, and its README counts them", (id) => {
    const rows = rowsOf(id);
    const readme = readFileSync(new URL(`${id}/README.md`, folder), "utf8");
    expect(Number(/^rows: (\d+)$/m.exec(readme)?.[1]), "row count in README.md").toBe(rows.length);
    expect(new Set(rows.map((row) => row.id)).size, "row ids").toBe(rows.length);
    for (const row of rows) {
      expect(ways, row.id).toContain(row.known);
      expect(
        Number.isFinite(printedNumber(row.printed)) && Number(row.tolerance) >= 0 && row.source !== "",
        row.id,
      ).toBe(true);
    }
    const outcomes = rows.map((row) => run(id, row));
    const agreeing = outcomes.filter(
      ({ row, failure }) => failure === undefined && !row.note.startsWith("disagrees:"),
    );
    const worst = agreeing.toSorted((a, b) => b.share - a.share)[0];
    const missing = rows.filter((row) => row.note.startsWith("disagrees:")).length;
    total += rows.length;
    summary.push(
      `${id}: ${rows.length} rows, ${missing} kept as disagreeing; worst ${worst ? `${worst.row.id}, ${(worst.share * 100).toFixed(1)} % of tolerance` : "none"}`,
    );
    expect(outcomes.flatMap(({ failure }) => failure ?? [])).toEqual([]);
  });

  test("what no method covers yet is listed with a reason", () => {
    const left = csvParse(readFileSync(new URL("not-covered.csv", folder), "utf8"));
    const counted = /^not covered: (\d+)$/m.exec(readFileSync(new URL("README.md", folder), "utf8"))?.[1];
    expect(left.length).toBe(Number(counted));
    for (const line of left) expect(line["reason"], line["id"]).not.toBe("");
  });
});
