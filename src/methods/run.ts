// Runs a declared method: inputs, procedure, limits, steps, outputs.
import { isProblem, type Problem, sentence } from "../problem.ts";
import { cite, type Source } from "../source.ts";
import { sayAssumed } from "./assumed.ts";
import type { InputValue } from "./field.ts";
import { columnNumbers, isKnown, isRows, lookIn } from "./inside.ts";
import { judgeLimits } from "./limits.ts";
import type { Declaration } from "./method.ts";
import { otherVariants } from "./other-variants.ts";
import { collectOutputs } from "./outputs.ts";
import { type Prepared, type PreparedStep, prepared } from "./prepared.ts";
import { propagated } from "./propagate.ts";
import { readInputs } from "./read-inputs.ts";
import { runRows } from "./rows.ts";
import { type Solution, workedStep } from "./solution.ts";
import { unusedInput } from "./unused.ts";
import type { Workspace } from "./workspace.ts";

const all = new WeakMap<Declaration, Prepared>();

/** The compiled method, made at first use. A method that does not load is a fault of ours, so it throws. */
export function preparedOf(d: Declaration): Prepared {
  const known = all.get(d);
  if (known) return known;
  const made = prepared(d);
  const first = made.problems[0];
  if (first) throw new Error(`method ${d.id} does not load: ${sentence(first)}`);
  all.set(d, made);
  return made;
}

export function run(
  d: Declaration,
  given: Readonly<Record<string, InputValue | undefined>>,
): Solution | Problem {
  const base = runOnce(d, given);
  if (isProblem(base)) return base;
  const solution = propagated(d, given, base, runOnce);
  if (!d.variants) return solution;
  const others = otherVariants(d, given, solution, runOnce);
  return others.length === 0 ? solution : { ...solution, notes: [...others, ...solution.notes] };
}

function runOnce(
  d: Declaration,
  given: Readonly<Record<string, InputValue | undefined>>,
): Solution | Problem {
  const inputs = readInputs(d, given);
  if (isProblem(inputs)) return inputs;
  const work: Workspace = {
    d,
    ready: preparedOf(d),
    values: new Map(inputs.values),
    leaves: inputs.leaves,
    working: [],
    warnings: [...inputs.warnings],
    spoilt: new Map(),
    judged: new Set(),
  };
  const stopped =
    judgeLimits(work) ??
    runProcedure(work) ??
    judgeLimits(work) ??
    runSteps(variantOf(work), work) ??
    runRows(work) ??
    runSteps(work.ready.steps, work);
  if (stopped) return stopped;
  const outputs = collectOutputs(work);
  if (isProblem(outputs)) return outputs;
  const unused = unusedInput(work, inputs, given);
  if (unused) return unused;
  const assumed = sayAssumed(work, inputs.assumed);
  return {
    method: d.id,
    outputs,
    working: work.working,
    warnings: [...work.warnings, ...assumed.warnings],
    spoilt: Object.fromEntries(work.spoilt),
    notes: notesOf(work, assumed.notes),
    sources: sourcesOf(work),
  };
}

function variantOf({ d, ready, values }: Workspace): readonly PreparedStep[] {
  const chosen = d.variants && values.get(d.variants.by);
  return typeof chosen === "string" ? (ready.variants[chosen] ?? []) : [];
}

function runProcedure(work: Workspace): Problem | undefined {
  const procedure = work.d.procedure;
  if (!procedure) return undefined;
  const found = procedure.run(Object.fromEntries(work.values));
  if (isProblem(found)) return found.at(work.d.id);
  for (const [name, value] of Object.entries(found)) {
    work.values.set(name, value);
    const label = procedure.gives?.[name];
    if (typeof value === "number" && label && label.kind !== "text" && label.kind !== "yes/no")
      work.leaves.set(name, { symbol: label.symbol ?? name, kind: label.kind, si: value });
    for (const [column, part] of Object.entries(procedure.givesRows?.[name] ?? {}))
      if (isRows(value) && part.kind !== "text" && part.kind !== "yes/no")
        work.leaves.set(`${name}.${column}`, {
          symbol: part.symbol ?? column,
          kind: part.kind,
          si: columnNumbers(value, column),
        });
  }
  return undefined;
}

function runSteps(steps: readonly PreparedStep[], work: Workspace): Problem | undefined {
  for (const step of steps) {
    if (!step.uses.every((name) => isKnown(work.values, name))) continue; // an optional input was left out
    const value = step.value(lookIn(work.values));
    if (isProblem(value))
      return value.with({ where: work.d.id, what: `${step.says ?? step.name} · ${value.what}` });
    if (typeof value === "object") continue;
    const si = Number(value);
    const worked = workedStep({ ...step, si, ...(typeof value === "boolean" && { yes: value }) }, (used) =>
      work.leaves.get(used),
    );
    work.working.push(worked);
    work.values.set(step.name, value);
    if (step.kind !== "yes/no")
      work.leaves.set(step.name, { symbol: step.symbol, kind: step.kind, si, scale: worked.scale });
    const broken = judgeLimits(work);
    if (broken) return broken;
  }
  return undefined;
}

function notesOf({ d, values }: Workspace, assumed: readonly string[]): string[] {
  const chosen = d.variants && values.get(d.variants.by);
  const variant = d.variants && typeof chosen === "string" ? [`${d.variants.by}: ${chosen}`] : [];
  const remarks = d.procedure?.remarks?.(Object.fromEntries(values)) ?? [];
  return [...variant, ...remarks, ...assumed, ...(d.notes ?? [])];
}

function sourcesOf(work: Workspace): Source[] {
  const found = new Map<string, Source>();
  const { procedure } = work.d;
  const read = procedure?.sourcesOf?.(Object.fromEntries(work.values)) ?? [procedure?.source];
  for (const source of read) if (source) found.set(cite(source), source);
  for (const step of work.working) if (step.source) found.set(cite(step.source), step.source);
  return [...found.values()];
}
