// From inside values to the outputs a method declares.
import { type Problem, problem } from "../problem.ts";
import type { OutputField, OutputValue, ScalarOutput } from "./field.ts";
import { type Inside, isRows, type Row } from "./inside.ts";
import type { Workspace } from "./workspace.ts";

export function collectOutputs(work: Workspace): Record<string, OutputValue> | Problem {
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

function outputOf(field: OutputField, value: Inside): OutputValue {
  if (field.kind !== "list") return scalar(field.kind, value);
  const rows = isRows(value) ? value : [];
  return { kind: "list", rows: rows.map((row) => rowOutput(field.of, row)) };
}

function rowOutput(of: Extract<OutputField, { kind: "list" }>["of"], row: Row): Record<string, ScalarOutput> {
  const entries = Object.entries(of).flatMap(([column, part]) => {
    const cell = row[column];
    return cell === undefined ? [] : [[column, scalar(part.kind, cell)] as const];
  });
  return Object.fromEntries(entries);
}

function scalar(kind: Exclude<OutputField["kind"], "list">, value: Inside): ScalarOutput {
  if (kind === "yes/no") return { kind, yes: value === true };
  if (kind === "text") return { kind, text: typeof value === "object" ? "" : String(value) };
  return { kind, si: typeof value === "number" ? value : Number.NaN };
}
