// splitline evidence: every reference row run, the whole table, and the row of each method nearest its tolerance.
import { methods } from "../../methods/index.ts";
import { isProblem, problem } from "../../problem.ts";
import {
  countRows,
  disagrees,
  type EvidenceCounts,
  type EvidenceRow,
  hasPublishedCheck,
} from "../../report/evidence-rows.ts";
import { type RowOutcome, runRow, shareText, worstOf } from "../../report/evidence-run.ts";
import { readArguments } from "../arguments.ts";
import { columns, lines, padStart, widthOf } from "../columns.ts";
import { evidenceFolder, evidenceRowsAt } from "../evidence.ts";
import { asJson, exitFails, exitFine, type Outcome, refused, wantsJson } from "../outcome.ts";

interface Held {
  readonly id: string;
  readonly rows: readonly EvidenceRow[];
  readonly counts: EvidenceCounts;
  readonly worst: RowOutcome | undefined;
  readonly failures: readonly string[];
}

export function evidenceCommand(args: readonly string[], width: number): Outcome {
  const json = wantsJson(args);
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
    hint: "splitline methods <id> shows the evidence of one method",
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
  return {
    id,
    rows,
    counts: countRows(rows),
    worst: worstOf(outcomes),
    failures: outcomes.flatMap(({ failure }) => failure ?? []),
  };
}

/** An example that checks two methods is one example in the sum. */
const inAll = (held: readonly Held[]): EvidenceCounts => countRows(held.flatMap(({ rows }) => rows));

const figures: Readonly<Record<string, (counts: EvidenceCounts) => number>> = {
  outside: (counts) => counts.outsideRows,
  examples: (counts) => counts.examples,
  seen: (counts) => counts.seenInACopy,
  memory: (counts) => counts.fromMemory,
  practice: (counts) => counts.commonPractice,
  echo: (counts) => counts.echoes,
  fitted: (counts) => counts.fitted,
  recomputed: (counts) => counts.recomputed,
  disagree: (counts) => counts.disagreeing,
};

function table(held: readonly Held[]): string[] {
  const heads = Object.keys(figures);
  const counted = [
    ["method", ...heads, "worst", "row nearest its tolerance"],
    ...held.map((one) => [
      one.id,
      ...Object.values(figures).map((of) => `${of(one.counts)}`),
      one.worst ? shareText(one.worst.share) : "",
      one.worst?.row.id ?? "",
    ]),
    ["all", ...Object.values(figures).map((of) => `${of(inAll(held))}`)],
  ];
  const right = [...heads, "worst"].map((_, i) =>
    Math.max(...counted.map((row) => widthOf(row[i + 1] ?? ""))),
  );
  const rows = counted.map(([name = "", ...cells]) => [
    name,
    ...cells.map((cell, i) => padStart(cell, right[i] ?? 0)),
  ]);
  return [
    ...columns(rows, ""),
    "",
    ...words(held),
    ...section("rows kept although they disagree", disagreeing(held)),
    ...section(
      "rows that fail",
      held.flatMap(({ id, failures }) => failures.map((text) => `${id}: ${text}`)),
    ),
  ];
}

const section = (title: string, texts: readonly string[]): string[] =>
  texts.length === 0 ? [] : ["", title, ...texts.map((text) => `  ${text}`)];

const disagreeing = (held: readonly Held[]): string[] =>
  held.flatMap(({ id, rows }) =>
    rows
      .filter(disagrees)
      .map((row) => `${id} ${row.id}: printed ${[row.printed, row.unit].join(" ").trim()}; ${reasonOf(row)}`),
  );

const reasonOf = (row: EvidenceRow): string => row.note.replace(/^disagrees:\s*/, "");

const unchecked = (held: readonly Held[]): string[] =>
  held.flatMap(({ id, counts }) => (hasPublishedCheck(counts) ? [] : [id]));

function words(held: readonly Held[]): string[] {
  const all = inAll(held);
  const without = unchecked(held);
  return [
    "outside: figures of somebody else that agree: seen in a copy, recalled from memory or common practice; examples: the distinct published examples they belong to",
    "echo: an outside row whose figure was put in already; fitted: one with an input or a form chosen because it gives the print; a method with no other outside row has no published check",
    "recomputed: worked by hand here, no evidence from outside; disagree: kept as printed with its reason, no evidence either; worst: error of the row nearest its tolerance, as a share of it",
    `${all.rows} rows in ${held.length} methods: ${all.outsideRows} from outside, of ${all.examples} distinct examples; ${all.recomputed} recomputed; ${all.disagreeing} kept although they disagree`,
    `${without.length} methods have no published check: ${without.join(", ")}`,
  ];
}

function record(held: readonly Held[]) {
  return {
    methods: held.map(({ id, counts, worst, failures }) => ({
      id,
      ...counts,
      publishedCheck: hasPublishedCheck(counts),
      worst: worst ? { row: worst.row.id, shareOfTolerance: worst.share } : null,
      failures,
    })),
    totals: {
      methods: held.length,
      ...inAll(held),
      failures: held.reduce((sum, { failures }) => sum + failures.length, 0),
      noPublishedCheck: unchecked(held),
    },
    disagreeing: held.flatMap(({ id, rows }) =>
      rows.filter(disagrees).map((row) => ({ method: id, row: row.id, reason: reasonOf(row) })),
    ),
  };
}
