// What in a torque record does not add up, and which mistake would explain it?
import { isProblem, type Problem } from "../../problem.ts";
import { numberOf, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { recordRatios } from "../sources.ts";
import { countedRows, findingsOf } from "./findings.ts";
import { plannedRows, recordedRows } from "./record-rows.ts";

function run(inputs: Insides): Insides | Problem {
  const plan = plannedRows(inputs);
  const record = recordedRows(inputs, plan);
  if (isProblem(record)) return record;
  const findings = findingsOf(plan, record.rows, {
    torque: numberOf(inputs, "torqueTolerance") ?? Number.NaN,
    angle: numberOf(inputs, "angleTolerance") ?? Number.NaN,
    slip: numberOf(inputs, "slipTolerance") ?? Number.NaN,
  });
  const { replaced, otherPasses, blank } = record;
  const counted = countedRows(record.rows);
  return { findings, counted, found: findings.length, planned: plan.length, replaced, otherPasses, blank };
}

function remarks(inputs: Insides): readonly string[] {
  const say = (name: string, words: string): string[] => {
    const count = numberOf(inputs, name) ?? 0;
    return count > 0 ? [`${count} ${count === 1 ? "row" : "rows"} ${words}`] : [];
  };
  return [
    `${numberOf(inputs, "planned") ?? 0} rows planned, ${rowsOf(inputs, "rows").length} rows written`,
    ...say("replaced", "replaced by a later row of the same pass and position"),
    ...say("otherPasses", "of passes outside the plan, not judged"),
    ...say("blank", "blank"),
  ];
}

const text = (says: string, optional = false) => ({ kind: "text", says, optional }) as const;
const torque = (symbol: string, says: string) => ({ kind: "torque", symbol, says, optional: true }) as const;

export const recordFindings = method({
  id: "record-findings",
  countsMissing: true,
  question: "What in a torque record does not add up, and which mistake would explain it?",
  inputs: {
    plan: {
      kind: "list",
      says: "rows the record has to hold",
      unique: ["pass", "position"],
      of: {
        pass: text("pass"),
        position: text("position"),
        net: torque("T_n", "net torque"),
        set: torque("T_s", "setting, not used: worked out again from the row"),
      },
    },
    rows: {
      kind: "list",
      says: "rows as written",
      of: {
        pass: text("pass", true),
        position: text("position", true),
        net: torque("T_n", "net torque, where the plan gives none"),
        runOn: torque("T_r", "run-on torque of the nut"),
        adapter: text("adapter, such as 60 mm in line, or none", true),
        set: torque("T_s", "what the wrench was set to"),
        read: torque("T", "what was read, with the unit it was written in"),
        unit: text("unit it was written in", true),
        angle: { kind: "angle", symbol: "φ", says: "angle turned", optional: true },
      },
    },
    wrenchLength: {
      kind: "length",
      as: "wrench length",
      symbol: "L",
      says: "length of the wrench to the hand, for rows with an adapter",
      optional: true,
    },
    torqueTolerance: { kind: "ratio", says: "share of the net torque a row may miss it by", default: "5 %" },
    angleTolerance: {
      kind: "angle",
      says: "angle a row may miss the median of its pass by",
      default: "4 deg",
    },
    slipTolerance: { kind: "ratio", says: "share a ratio may miss a known slip by", default: "1 %" },
  },
  procedure: {
    says: "each row against plan, run-on and adapter; a ratio that is off is looked up among those that mistakes give",
    source: recordRatios,
    gives: {
      planned: { kind: "count" },
      replaced: { kind: "count" },
      otherPasses: { kind: "count" },
      blank: { kind: "count" },
    },
    run,
    remarks,
  },
  outputs: {
    findings: {
      kind: "list",
      says: "rows to ask about",
      of: {
        position: { kind: "text", says: "position" },
        pass: { kind: "text", says: "pass" },
        what: { kind: "text", says: "what is odd" },
        ratio: { kind: "ratio", says: "found over expected" },
        net: { kind: "torque", says: "net torque it stands for" },
        angle: { kind: "angle", says: "angle turned" },
        likelyCause: { kind: "text", says: "what would explain it" },
      },
    },
    found: { kind: "count", says: "number of findings" },
    counted: {
      kind: "list",
      says: "rows that count",
      of: {
        position: { kind: "text", says: "position" },
        pass: { kind: "text", says: "pass" },
        torque: { kind: "torque", says: "net torque at the nut, from the reading" },
        angle: { kind: "angle", says: "angle turned" },
      },
    },
  },
  limits: [
    { that: "torqueTolerance > 0", else: "no reading is exact" },
    { that: "torqueTolerance < 0.25", else: "the slips themselves would pass", hint: "5 % is usual" },
    { that: "angleTolerance > 0", else: "no angle is exact" },
    { that: "slipTolerance > 0", else: "no ratio is exact" },
    { that: "slipTolerance < 0.1", else: "every ratio would be called a known slip" },
    { that: 'smallest(rows.runOn) >= "0 N.m"', else: "a nut does not turn by itself" },
  ],
  sources: { "*": recordRatios },
  notes: [
    "a row is put right by a later row with a reason, never by overwriting: the later one counts",
    "a cause is a question to the person who held the wrench, not an answer",
    "tolerances of 5 % and 4 deg are common practice, no source",
  ],
});
