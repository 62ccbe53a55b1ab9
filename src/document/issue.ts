// The schema says what is wrong in codes and paths; here it becomes a Problem at file:line:column.
import type { Node } from "yaml";
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import { keyAt, nodeAt } from "./node-at.ts";
import type { Origin } from "./origin.ts";
import type { z } from "./schema.ts";

type Issue = z.core.$ZodIssue;

export interface IssueContext {
  readonly from: Origin;
  /** The item's mapping, or the whole page. */
  readonly node: Node;
  /** "given netTorque", "the page". */
  readonly label: string;
  /** Keys that would have been valid. */
  readonly keys: readonly string[];
}

const examples: Readonly<Record<string, string>> = {
  splitline: "splitline: 1",
  title: "title: Circulation pump 2, split line",
  page: "page: followed by a list of items, each with its own dash",
  show: "show: { torque: N.m, force: kN }",
  seed: "seed: 20261125",
  given: "given: netTorque",
  working: "working: tension",
  value: "value: 520 lbf.ft",
  says: "says: Net torque at the nut",
  source: "source: drawing 4711, revision B",
  note: "note: read twice, same value",
  as: "as: torque",
  choices: "choices: [6g, 6H]",
  spread: "spread: { plusMinus: 20 %, meaning: limits }",
  k: "k: 2",
  meaning: "meaning: limits",
  by: "by: preload-from-torque",
  of: "of: { torque: netTorque, nutFactor: nutFactor }",
  is: "is: preload / proofLoad",
  unit: "unit: kN",
  that: "that: shareOfProof",
  atMost: "atMost: 0.9",
  atLeast: "atLeast: 1.2",
  between: "between: [0.9, 1.1]",
  uncertainty: "uncertainty: { diameter: 3 um, k: 2 }",
  waived: "waived: { by: joint engineer, why: part is replaced at the next stop }",
  why: "why: part is replaced at the next stop",
  columns: "columns: { position: tag, diameter: length }",
  rows: "rows: | followed by the table, one row a line",
  picture: "picture: joint-diagram",
  caution: "caution: C2",
  "sign-off": "sign-off: { prepared: fitter A }",
};

export const exampleOf = (field: string): string | undefined => {
  const example = Object.hasOwn(examples, field) ? examples[field] : undefined;
  return example && `for example ${example}`;
};

/** Of a union the alternative with the fewest complaints is the one that was meant; the first wins a tie. */
function flat(issue: Issue): readonly Issue[] {
  if (issue.code !== "invalid_union") return [issue];
  const wrongType = (list: readonly Issue[]) =>
    list.some((i) => i.code === "invalid_type" && i.path.length === 0);
  const meant = issue.errors
    .filter((list) => !wrongType(list))
    .map((list) => list.flatMap((i) => flat(i)))
    .sort((a, b) => weight(a) - weight(b))[0];
  return meant ? meant.map((i) => ({ ...i, path: [...issue.path, ...i.path] })) : [issue];
}

const weight = (list: readonly Issue[]): number =>
  list.reduce((sum, i) => sum + (i.code === "unrecognized_keys" ? i.keys.length : 1), 0);

export function issueProblems(issue: Issue, context: IssueContext): readonly Problem[] {
  return flat(issue).flatMap((one) =>
    one.code === "unrecognized_keys" ? unknownKeys(one, context) : wrongValue(one, context),
  );
}

function unknownKeys(
  issue: z.core.$ZodIssueUnrecognizedKeys,
  { from, node, label, keys }: IssueContext,
): readonly Problem[] {
  return issue.keys.map((key) => {
    const near = issue.path.length === 0 ? nearest(key, keys, 1) : [];
    return problem({
      code: "unknown-key",
      where: from.where(keyAt(node, issue.path, key)),
      what: `${[...issue.path.map(String), "key"].join(" ")} of ${label}`,
      got: key,
      must: issue.path.length === 0 ? `be one of ${keys.join(", ")}` : undefined,
      hint: near[0] ? `did you mean ${near[0]}?` : exampleOf(String(issue.path.at(-1))),
      suggestions: near,
    });
  });
}

function wrongValue(issue: Issue, { from, node, label }: IssueContext): Problem {
  const found = nodeAt(node, issue.path);
  const field = issue.path.map((step) => (typeof step === "number" ? `${step + 1}` : String(step))).join(" ");
  const lastName = issue.path.findLast((step) => typeof step === "string");
  const range = found.node?.range;
  const source = range ? from.text.slice(range[0], range[1]).trim() : "";
  const missing = found.node === undefined || source === "";
  const got = source.length > 40 ? `${source.slice(0, 40)}…` : source || "nothing";
  const isNumber = /^[-+.0-9]/.test(source) && issue.code === "invalid_type" && issue.expected === "string";
  const hint = isNumber ? `put it in quotes: ${String(lastName)}: "${source}"` : exampleOf(String(lastName));
  return problem({
    code: missing ? "missing-key" : "wrong-value",
    where: from.where(found.offset),
    what: field === "" ? label : `${field} of ${label}`,
    got,
    must: missing ? "be given" : mustBe(issue),
    hint,
    suggestions: isNumber ? [`"${source}"`] : suggestionsFor(issue, source),
  });
}

const typeWords: Readonly<Record<string, string>> = {
  string: "be a text",
  number: "be a number",
  int: "be a whole number",
  object: "be a mapping of keys to values",
  array: "be a list",
  tuple: "be a list of two",
};

function mustBe(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return typeWords[issue.expected] ?? `be a ${issue.expected}`;
    case "invalid_union":
      return anyOf(issue);
    case "invalid_value":
      return issue.values.length === 1
        ? `be ${String(issue.values[0])}`
        : `be one of ${issue.values.map(String).join(", ")}`;
    case "too_big":
      return issue.origin === "string"
        ? `be at most ${issue.maximum} characters`
        : issue.origin === "array"
          ? `hold at most ${issue.maximum}`
          : `be at most ${issue.maximum}`;
    case "too_small":
      return issue.origin === "string"
        ? "not be empty"
        : issue.origin === "array"
          ? `hold at least ${issue.minimum}`
          : `be at least ${issue.minimum}`;
    default:
      return issue.message;
  }
}

function anyOf(issue: z.core.$ZodIssueInvalidUnion): string {
  const expected = issue.errors
    .flat()
    .map((one) => (one.code === "invalid_type" ? (typeWords[one.expected] ?? one.expected) : ""));
  return [...new Set(expected.filter((words) => words !== ""))].join(", or ");
}

const suggestionsFor = (issue: Issue, source: string): readonly string[] =>
  issue.code === "invalid_value" && issue.values.length > 1 ? nearest(source, issue.values.map(String)) : [];
