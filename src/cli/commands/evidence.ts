// splitline evidence: every reference row run, the whole table, and the row of each method nearest its tolerance.
import { methods } from "../../methods/index.ts";
import { isProblem, problem } from "../../problem.ts";
import { readArguments } from "../arguments.ts";
import { columns, lines, padStart, widthOf } from "../columns.ts";
import { evidenceFolder, evidenceRowsAt } from "../evidence.ts";
import { countRows, countsOf, type EvidenceCounts } from "../evidence-rows.ts";
import { type RowOutcome, runRow, shareText, worstOf } from "../evidence-run.ts";
import { asJson, exitFails, exitFine, type Outcome, refused } from "../outcome.ts";

interface Held extends EvidenceCounts {
  readonly id: string;
  readonly rows: number;
  readonly disagreeing: number;
  readonly worst: RowOutcome | undefined;
  readonly failures: readonly string[];
}

export function evidenceCommand(args: readonly string[], width: number): Outcome {
  const json = args.includes("--json");
  const read = readArguments("evidence", args, {});
  if (isProblem(read)) return refused(read, json);
  if (read.words.length > 0) return refused(noWords(read.words), json);
  const folder = evidenceFolder();
  if (folder === undefined) return refused(nothingBeside, json);
  const held = [...methods.keys()].map((id) => heldAgainst(folder, id));
  const failed = held.some(({ failures }) => failures.length > 0);
  const out = json ? asJson(record(held)) : lines(table(held), width);
  return { exit: failed ? exitFails : exitFine, out };
}

const noWords = (words: readonly string[]) =>
  problem({
    code: "too-many-words",
    where: "evidence",
    what: words.join(" "),
    got: "a word",
    must: "stand alone",
    hint: "splitline methods <id> tells the evidence of one method",
  });

const nothingBeside = problem({
  code: "no-evidence",
  where: "evidence",
  what: "reference-checks",
  got: "no such folder beside this copy",
  must: "lie beside the package",
});

function heldAgainst(folder: string, id: string): Held {
  const rows = evidenceRowsAt(folder, id);
  const outcomes = rows.map((row) => runRow(id, row));
  const counted = countRows(rows);
  return {
    id,
    rows: counted.rows,
    ...countsOf(counted),
    disagreeing: counted.disagreeing,
    worst: worstOf(outcomes),
    failures: outcomes.flatMap(({ failure }) => failure ?? []),
  };
}

const total = (held: readonly Held[], of: (one: Held) => number): number =>
  held.reduce((sum, one) => sum + of(one), 0);

const figures: Readonly<Record<string, (one: Held) => number>> = {
  outside: (one) => one.outsideRows,
  seen: (one) => one.seenInACopy,
  memory: (one) => one.fromMemory,
  practice: (one) => one.commonPractice,
  recomputed: (one) => one.recomputed,
  disagree: (one) => one.disagreeing,
};

function table(held: readonly Held[]): string[] {
  const heads = Object.keys(figures);
  const counted = [
    ["method", ...heads, "worst", "row nearest its tolerance"],
    ...held.map((one) => [
      one.id,
      ...Object.values(figures).map((of) => `${of(one)}`),
      one.worst ? shareText(one.worst.share) : "",
      one.worst?.row.id ?? "",
    ]),
    ["all", ...Object.values(figures).map((of) => `${total(held, of)}`)],
  ];
  const right = [...heads, "worst"].map((_, i) =>
    Math.max(...counted.map((row) => widthOf(row[i + 1] ?? ""))),
  );
  const rows = counted.map(([name = "", ...cells]) => [
    name,
    ...cells.map((cell, i) => padStart(cell, right[i] ?? 0)),
  ]);
  const failures = held.flatMap(({ id, failures: all }) => all.map((text) => `  ${id}: ${text}`));
  return [
    ...columns(rows, ""),
    "",
    ...words(held),
    ...(failures.length > 0 ? ["", "rows that fail", ...failures] : []),
  ];
}

function words(held: readonly Held[]): string[] {
  const without = held.filter(({ outsideRows }) => outsideRows === 0).map(({ id }) => id);
  return [
    "outside: figures of somebody else, seen in a copy, recalled from memory or common practice; recomputed: worked by hand here, no evidence from outside",
    "disagree: kept as printed although they disagree, each with its reason; worst: error of the row nearest its tolerance, as a share of it",
    `${total(held, (one) => one.rows)} rows in ${held.length} methods, ${total(held, (one) => one.outsideRows)} from outside; ${without.length} methods have no published check: ${without.join(", ")}`,
  ];
}

function record(held: readonly Held[]) {
  return {
    methods: held.map(({ worst, failures, ...counted }) => ({
      ...counted,
      worst: worst ? { row: worst.row.id, shareOfTolerance: worst.share } : null,
      failures,
    })),
    totals: {
      methods: held.length,
      rows: total(held, (one) => one.rows),
      outsideRows: total(held, (one) => one.outsideRows),
      seenInACopy: total(held, (one) => one.seenInACopy),
      fromMemory: total(held, (one) => one.fromMemory),
      commonPractice: total(held, (one) => one.commonPractice),
      recomputed: total(held, (one) => one.recomputed),
      disagreeing: total(held, (one) => one.disagreeing),
      failures: total(held, (one) => one.failures.length),
      noPublishedCheck: held.flatMap(({ id, outsideRows }) => (outsideRows === 0 ? [id] : [])),
    },
  };
}
