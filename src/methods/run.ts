// Runs a declared method: inputs, procedure, limits, steps, outputs.
// A limit that is broken gives no answer and names the input; a warning limit lets the answer stand.
import { plain, show, symbolOf } from "../formula/show.ts";
import { isProblem, type Problem, problem, sentence } from "../problem.ts";
import { cite, type Source } from "../source.ts";
import { formatIn } from "../units/format.ts";
import type { InputValue, OutputValue } from "./field.ts";
import type { Declaration, Inside } from "./method.ts";
import { type Plan, type PlannedLimit, type PlannedStep, plan } from "./plan.ts";
import { readInputs } from "./read-inputs.ts";
import { type Leaf, type Solution, usualUnit, type WorkedStep, workedStep } from "./solution.ts";

const plans = new WeakMap<Declaration, Plan>();

export function planOf(d: Declaration): Plan {
  const known = plans.get(d);
  if (known) return known;
  const made = plan(d);
  const first = made.problems[0];
  if (first) throw new Error(`method ${d.id} does not load: ${sentence(first)}`);
  plans.set(d, made);
  return made;
}

interface Workspace {
  readonly d: Declaration;
  readonly values: Map<string, Inside>;
  readonly leaves: Map<string, Leaf>;
  readonly working: WorkedStep[];
  readonly warnings: Problem[];
  readonly judged: Set<PlannedLimit>;
}

export function run(
  d: Declaration,
  given: Readonly<Record<string, InputValue | undefined>>,
): Solution | Problem {
  const ready = planOf(d);
  const inputs = readInputs(d, given);
  if (isProblem(inputs)) return inputs;
  const work: Workspace = {
    d,
    values: new Map<string, Inside>(inputs.values),
    leaves: inputs.leaves,
    working: [],
    warnings: [],
    judged: new Set(),
  };
  const stopped =
    judgeLimits(ready, work) ??
    runProcedure(work) ??
    judgeLimits(ready, work) ??
    runSteps(variantOf(d, ready, work), ready, work) ??
    runRows(ready, work) ??
    runSteps(ready.steps, ready, work);
  if (stopped) return stopped;
  const outputs = collect(work);
  if (isProblem(outputs)) return outputs;
  return {
    method: d.id,
    outputs,
    working: work.working,
    warnings: work.warnings,
    notes: notesOf(work, inputs.assumed),
    sources: sourcesOf(work),
  };
}

function variantOf(d: Declaration, ready: Plan, work: Workspace): readonly PlannedStep[] {
  if (!d.variants) return [];
  return ready.variants[String(work.values.get(d.variants.by))] ?? [];
}

function runProcedure(work: Workspace): Problem | undefined {
  const procedure = work.d.procedure;
  if (!procedure) return undefined;
  const found = procedure.run(Object.fromEntries(work.values));
  if (isProblem(found)) return found.at(work.d.id);
  for (const [name, value] of Object.entries(found)) {
    work.values.set(name, value);
    const label = procedure.gives[name];
    if (typeof value === "number" && label && label.kind !== "text" && label.kind !== "yes/no")
      work.leaves.set(name, { symbol: label.symbol ?? name, kind: label.kind, si: value });
    const columns = procedure.givesRows?.[name];
    if (columns && Array.isArray(value))
      for (const [column, part] of Object.entries(columns))
        work.leaves.set(`${name}.${column}`, {
          symbol: part.symbol ?? column,
          kind: part.kind,
          si: (value as readonly Record<string, number>[]).map((row) => row[column] ?? Number.NaN),
        });
  }
  return undefined;
}

/** Value of a name or of a column, for the evaluators. */
function lookIn(values: ReadonlyMap<string, Inside>) {
  return (name: string) => {
    const value = values.get(name);
    if (typeof value === "number" || typeof value === "boolean") return value;
    const dot = name.indexOf(".");
    const rows = dot < 0 ? undefined : values.get(name.slice(0, dot));
    if (Array.isArray(rows))
      return (rows as readonly Record<string, number>[]).map((row) => row[name.slice(dot + 1)] ?? Number.NaN);
    return problem({ code: "no-value", what: name, must: "have a value" });
  };
}

function isKnown(values: ReadonlyMap<string, Inside>, name: string): boolean {
  if (values.has(name)) return true;
  const dot = name.indexOf(".");
  const rows = dot < 0 ? undefined : values.get(name.slice(0, dot));
  return (
    Array.isArray(rows) &&
    rows.every((row: Record<string, number>) => Object.hasOwn(row, name.slice(dot + 1)))
  );
}

function runSteps(steps: readonly PlannedStep[], ready: Plan, work: Workspace): Problem | undefined {
  for (const step of steps) {
    if (!step.uses.every((name) => isKnown(work.values, name))) continue; // an optional input was left out
    const value = step.value(lookIn(work.values));
    if (isProblem(value))
      return problem({ ...value, where: work.d.id, what: `${step.says ?? step.name} · ${value.what}` });
    if (typeof value === "object") continue;
    record(step, value, work, step.name);
    const broken = judgeLimits(ready, work);
    if (broken) return broken;
  }
  return undefined;
}

function record(step: PlannedStep, value: number | boolean, work: Workspace, name: string): void {
  const si = typeof value === "number" ? value : Number(value);
  const leaves = new Map(work.leaves);
  work.working.push(
    workedStep({ ...step, name, si, ...(typeof value === "boolean" && { yes: value }) }, (used) =>
      leaves.get(used),
    ),
  );
  work.values.set(name, value);
  if (step.kind !== "yes/no") work.leaves.set(name, { symbol: step.symbol, kind: step.kind, si });
}

/** Formulas of one row see the row's own columns first, then the method's other names. */
function runRows(ready: Plan, work: Workspace): Problem | undefined {
  for (const { list, steps } of ready.each) {
    const rows = work.values.get(list);
    if (!Array.isArray(rows)) continue;
    const done: Record<string, number>[] = [];
    for (const [index, row] of (rows as readonly Record<string, number>[]).entries()) {
      const filled = fillRow(`${list} ${index + 1}`, list, index, row, steps, work);
      if (isProblem(filled)) return filled;
      done.push(filled);
    }
    work.values.set(list, done);
    for (const step of steps)
      if (step.kind !== "yes/no")
        work.leaves.set(`${list}.${step.name}`, {
          symbol: step.symbol,
          kind: step.kind,
          si: done.map((row) => row[step.name] ?? Number.NaN),
        });
    const broken = judgeLimits(ready, work);
    if (broken) return broken;
  }
  return undefined;
}

function fillRow(
  label: string,
  list: string,
  index: number,
  row: Readonly<Record<string, number>>,
  steps: readonly PlannedStep[],
  work: Workspace,
): Record<string, number> | Problem {
  const filled: Record<string, number> = { ...row };
  const leaves = new Map(work.leaves);
  for (const [name, leaf] of work.leaves)
    if (name.startsWith(`${list}.`) && Array.isArray(leaf.si))
      leaves.set(name.slice(list.length + 1), { ...leaf, si: leaf.si[index] ?? Number.NaN });
  const seen = new Map<string, Inside>([...work.values, ...Object.entries(filled)]);
  for (const step of steps) {
    if (Object.hasOwn(filled, step.name)) continue; // given in the row
    if (!step.uses.every((name) => isKnown(seen, name))) continue;
    const value = step.value(lookIn(seen));
    if (isProblem(value))
      return problem({
        ...value,
        where: work.d.id,
        what: `${label} · ${step.says ?? step.name} · ${value.what}`,
      });
    if (typeof value !== "number" || step.kind === "yes/no") continue;
    filled[step.name] = value;
    seen.set(step.name, value);
    const here = new Map(leaves);
    work.working.push(
      workedStep({ ...step, name: `${label} · ${step.name}`, symbol: `${step.symbol}`, si: value }, (used) =>
        here.get(used),
      ),
    );
    leaves.set(step.name, { symbol: step.symbol, kind: step.kind, si: value });
  }
  const missing = steps.find((step) => !Object.hasOwn(filled, step.name));
  if (!missing) return filled;
  const lacking = missing.uses.filter((name) => !isKnown(seen, name));
  return problem({
    code: "missing-input",
    where: work.d.id,
    what: label,
    got: `no ${missing.name}`,
    must: `be given ${[missing.name, ...lacking].join(" or ")}`,
  });
}

/** Judges every limit whose names all have values by now, once. */
function judgeLimits(ready: Plan, work: Workspace): Problem | undefined {
  for (const limit of ready.limits) {
    if (work.judged.has(limit) || !limit.uses.every((name) => isKnown(work.values, name))) continue;
    work.judged.add(limit);
    const holds = limit.value(lookIn(work.values));
    if (holds === true) continue;
    const broken = isProblem(holds) ? problem({ ...holds, where: work.d.id }) : brokenLimit(limit, work);
    if (!limit.warn) return broken;
    work.warnings.push(broken);
  }
  return undefined;
}

function brokenLimit(limit: PlannedLimit, work: Workspace): Problem {
  const { tree } = limit;
  const first = limit.uses[0];
  const leaf = first === undefined ? undefined : work.leaves.get(first);
  const field = first === undefined ? undefined : work.d.inputs[first];
  const got =
    leaf && typeof leaf.si === "number" ? formatIn(leaf.si, leaf.unit ?? usualUnit(leaf.kind)) : undefined;
  const words = {
    "<": "be below",
    "<=": "be at most",
    ">": "be above",
    ">=": "be at least",
    "==": "be",
    "!=": "differ from",
  };
  const named = tree.type === "compare" && tree.left.type === "name";
  const limitText =
    tree.type === "compare" ? plain(show(tree.right, (name) => symbolOf(labelOf(work, name)))) : "";
  const must =
    named && tree.type === "compare"
      ? `${words[tree.op]} ${limitText}`
      : `keep to ${plain(show(tree, (name) => symbolOf(labelOf(work, name))))}`;
  return problem({
    code: limit.warn ? "limit-warning" : "limit",
    where: work.d.id,
    what: field?.says ?? work.working.find((step) => step.name === first)?.says ?? first ?? limit.that,
    got,
    must,
    why: limit.source ? `${limit.else} (${cite(limit.source)})` : limit.else,
    hint: limit.hint,
  });
}

function labelOf(work: Workspace, name: string): string {
  const leaf = work.leaves.get(name);
  if (!leaf || typeof leaf.si !== "number") return name;
  return `${name} (${formatIn(leaf.si, leaf.unit ?? usualUnit(leaf.kind))})`;
}

function collect(work: Workspace): Record<string, OutputValue> | Problem {
  const outputs: Record<string, OutputValue> = {};
  for (const [name, field] of Object.entries(work.d.outputs)) {
    const value = work.values.get(name);
    if (value === undefined) {
      if (field.optional) continue;
      return problem({
        code: "no-output",
        where: work.d.id,
        what: name,
        must: "follow from the inputs given",
        hint: "an optional input it needs was left out",
      });
    }
    outputs[name] = outputOf(field, value);
  }
  return outputs;
}

function outputOf(field: Declaration["outputs"][string], value: Inside): OutputValue {
  if (field.kind === "yes/no") return { kind: "yes/no", yes: value === true };
  if (field.kind === "text") return { kind: "text", text: String(value) };
  if (field.kind === "list") {
    const rows = (value as readonly Record<string, number>[]).map((row) =>
      Object.fromEntries(
        Object.entries(field.of).flatMap(([column, part]) =>
          row[column] === undefined ? [] : [[column, { kind: part.kind, si: row[column] }]],
        ),
      ),
    );
    return { kind: "list", rows };
  }
  return { kind: field.kind, si: value as number };
}

function notesOf(work: Workspace, assumed: readonly string[]): string[] {
  const { d } = work;
  const variant = d.variants ? [`${d.variants.by}: ${String(work.values.get(d.variants.by))}`] : [];
  const remarks = d.procedure?.remarks?.(Object.fromEntries(work.values)) ?? [];
  return [...variant, ...remarks, ...assumed, ...(d.notes ?? [])];
}

function sourcesOf(work: Workspace): Source[] {
  const found = new Map<string, Source>();
  if (work.d.procedure) found.set(cite(work.d.procedure.source), work.d.procedure.source);
  for (const step of work.working) if (step.source) found.set(cite(step.source), step.source);
  return [...found.values()];
}
