// splitline methods: every method by family, or one method's inputs, equations, limits, sources and evidence.
import { equationsOf, limitsOf, sourcesOf } from "../../methods/equations.ts";
import { familyOf } from "../../methods/families.ts";
import { type InputField, type OutputField, symbolIn } from "../../methods/field.ts";
import { type AnyMethod, methodNamed, methods } from "../../methods/index.ts";
import { isProblem, problem } from "../../problem.ts";
import { kinds } from "../../units/kind.ts";
import { readArguments } from "../arguments.ts";
import { columns, lines } from "../columns.ts";
import { type Evidence, evidenceFor, noPublishedCheck } from "../evidence.ts";
import { asJson, exitFine, type Outcome, refused, wantsJson } from "../outcome.ts";

export function methodsCommand(args: readonly string[], width: number): Outcome {
  const json = wantsJson(args);
  const read = readArguments("methods", args, {});
  if (isProblem(read)) return refused(read, json);
  const [id, extra] = read.words;
  if (extra !== undefined) return refused(oneOnly(read.words), json);
  if (id === undefined) return { exit: exitFine, out: json ? asJson(listRecord()) : lines(list(), width) };
  const found = methodNamed(id);
  if (isProblem(found)) return refused(found, json);
  return { exit: exitFine, out: json ? asJson(methodRecord(found)) : lines(describe(found), width) };
}

const oneOnly = (words: readonly string[]) =>
  problem({
    code: "too-many-words",
    where: "methods",
    what: "method",
    got: words.join(" "),
    must: "be one id, or none for the list",
  });

function list(): string[] {
  const all = [...methods.values()];
  const rows = columns(all.map((m) => [m.id, m.question]));
  const families = [...new Set(all.map((m) => familyOf(m.id)))];
  const blocks = families.flatMap((family) => [
    family,
    ...all.flatMap((m, i) => (familyOf(m.id) === family ? [rows[i] ?? m.id] : [])),
    "",
  ]);
  return [...blocks, `${all.length} methods; splitline methods <id> shows one`];
}

const listRecord = () => ({
  methods: [...methods.values()].map((m) => ({
    id: m.id,
    family: familyOf(m.id),
    question: m.question,
    ...evidenceRecord(evidenceFor(m.id)),
  })),
});

/** "N.m" for a torque, the choices of a text, what a list holds. */
function wants(field: InputField): string {
  if (field.kind === "text") return field.choices?.join(" | ") ?? "text";
  if (field.kind === "list") return "list, as JSON text";
  const [usual] = kinds[field.kind].usual;
  return usual === undefined || usual === "1" ? field.kind : `${field.kind}, such as ${usual}`;
}

function need(field: InputField): string {
  if (field.kind !== "list" && field.default !== undefined) return `default ${field.default}`;
  return field.optional ? "optional" : "";
}

function inputRows(inputs: AnyMethod["inputs"], prefix = ""): string[][] {
  return Object.entries(inputs).flatMap(([name, field]) => [
    [prefix + name, symbolIn(field) ?? "", wants(field), need(field), field.says],
    ...(field.kind === "list" ? inputRows(field.of, "  ") : []),
  ]);
}

type PartField = Extract<OutputField, { kind: "list" }>["of"][string] & { readonly optional?: boolean };

function outputRows(outputs: Readonly<Record<string, OutputField | PartField>>, prefix = ""): string[][] {
  return Object.entries(outputs).flatMap(([name, field]) => [
    [prefix + name, symbolIn(field) ?? "", field.kind, field.optional ? "optional" : "", field.says ?? ""],
    ...(field.kind === "list" ? outputRows(field.of, "  ") : []),
  ]);
}

const section = (title: string, body: readonly string[]): string[] =>
  body.length === 0 ? [] : ["", title, ...body];
const listed = (texts: readonly string[]): string[] => texts.map((text) => `  ${text}`);

function evidenceLines(evidence: Evidence | undefined): string[] {
  if (!evidence) return ["no reference rows beside this copy"];
  const none = noPublishedCheck(evidence);
  if (none !== undefined) return [none];
  const { rows, examples, disagreeing, ...counts } = evidence.counts;
  const parts = [
    [counts.seenInACopy, "seen in a copy"],
    [counts.fromMemory, "from memory"],
    [counts.commonPractice, "common practice"],
    [counts.recomputed, "recomputed"],
    [disagreeing, "kept although they disagree"],
  ].flatMap(([count, says]) => (count === 0 ? [] : [`${count} ${says}`]));
  return [
    `${rows} reference rows: ${parts.join(", ")}`,
    `${counts.outsideRows} of them from outside, of ${examples} published ${examples === 1 ? "example" : "examples"}`,
    ...(counts.echoes > 0 ? [`echoes of an input among them: ${counts.echoes}`] : []),
    ...(counts.fitted > 0 ? [`with an input fitted to the printed answer: ${counts.fitted}`] : []),
  ];
}

function evidenceRecord(evidence: Evidence | undefined) {
  if (!evidence) return null;
  return { ...evidence.counts, noPublishedCheck: noPublishedCheck(evidence) ?? null };
}

function equationLines(m: AnyMethod): string[] {
  let group = "";
  return equationsOf(m).flatMap((equation) => {
    const head = equation.group === group || equation.group === "" ? [] : [`  ${equation.group}`];
    group = equation.group;
    return [...head, `  ${group === "" ? "" : "  "}${equation.text}`];
  });
}

function describe(m: AnyMethod): string[] {
  return [
    `${m.id} (${familyOf(m.id)})`,
    m.question,
    ...section("inputs", columns(inputRows(m.inputs))),
    ...section("outputs", columns(outputRows(m.outputs))),
    ...section("procedure", m.procedure ? [`  ${m.procedure.says}`] : []),
    ...section("equations", equationLines(m)),
    ...section(
      "limits",
      columns(limitsOf(m).map((l) => [l.that, `else ${l.otherwise}${l.warning ? " (a warning)" : ""}`])),
    ),
    ...section("notes", listed(m.notes ?? [])),
    ...section("sources", listed(sourcesOf(m))),
    ...section("evidence", listed(evidenceLines(evidenceFor(m.id)))),
  ];
}

const methodRecord = (m: AnyMethod) => ({
  id: m.id,
  family: familyOf(m.id),
  question: m.question,
  inputs: m.inputs,
  outputs: m.outputs,
  procedure: m.procedure?.says ?? null,
  equations: equationsOf(m),
  limits: limitsOf(m),
  notes: m.notes ?? [],
  sources: sourcesOf(m),
  evidence: evidenceRecord(evidenceFor(m.id)),
});
