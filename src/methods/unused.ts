// Nothing given is ignored: an input on which no answer rests is refused by name.
import { type Problem, problem } from "../problem.ts";
import type { InputField, InputValue } from "./field.ts";
import { isKnown, isRows, type Row } from "./inside.ts";
import { chosenOf, liveNames, stepsOf, weighed } from "./live.ts";
import type { ReadInputs } from "./read-inputs.ts";
import type { Workspace } from "./workspace.ts";

export type Given = Readonly<Record<string, InputValue | undefined>>;

const isGiven = (value: unknown): boolean => value !== undefined && value !== "";

export function unusedInput(work: Workspace, inputs: ReadInputs, given: Given): Problem | undefined {
  const live = liveNames(work);
  for (const [name, field] of Object.entries(work.d.inputs)) {
    if (!isGiven(given[name])) continue;
    const rows = inputs.values.get(name);
    const unused =
      field.kind === "list" && isRows(rows)
        ? unusedColumn(work, live, { name, field, rows })
        : live.has(name)
          ? undefined
          : notUsed(work, { name, says: field.says });
    if (unused) return unused;
  }
  return undefined;
}

interface ListGiven {
  readonly name: string;
  readonly field: Extract<InputField, { kind: "list" }>;
  readonly rows: readonly Row[];
}

function unusedColumn(
  work: Workspace,
  live: ReadonlySet<string>,
  { name, field, rows }: ListGiven,
): Problem | undefined {
  for (const [column, part] of Object.entries(field.of)) {
    const path = `${name}.${column}`;
    if (live.has(path) || !rows.some((row) => Object.hasOwn(row, column))) continue;
    const whole = Object.keys(field.of).some((other) => live.has(`${name}.${other}`));
    return notUsed(work, whole ? { name: path, says: part.says } : { name, says: field.says });
  }
  for (const [index, row] of rows.entries()) {
    const twice = givenTwice(work, name, row);
    if (twice)
      return problem({
        code: "given-twice",
        where: `${work.d.id} · ${name} ${index + 1}`,
        what: field.of[twice.column]?.says ?? twice.column,
        got: `${twice.column} beside ${twice.beside}`,
        must: "be left out, or stand alone",
        why: `${twice.beside} as given would win over it`,
      });
  }
  return undefined;
}

/** A column that only feeds another one, which this row gives itself. */
function givenTwice(
  work: Workspace,
  list: string,
  row: Row,
): { readonly column: string; readonly beside: string } | undefined {
  const steps = work.ready.each.find((each) => each.list === list)?.steps ?? [];
  const given = steps.filter((step) => Object.hasOwn(row, step.name));
  const read = new Set([
    ...steps.filter((step) => !given.includes(step)).flatMap(({ uses }) => uses),
    ...[...stepsOf(work).flatMap(({ uses }) => uses), ...weighed(work)].map((name) =>
      name.replace(`${list}.`, ""),
    ),
  ]);
  for (const step of given) {
    const column = step.uses.find((used) => Object.hasOwn(row, used) && !read.has(used));
    if (column !== undefined) return { column, beside: step.name };
  }
  return undefined;
}

/** Says what it would be used with, where a step that reads it lacks something; else which variant leaves it out. */
function notUsed(work: Workspace, { name, says }: { readonly name: string; readonly says: string }): Problem {
  const lacking = stepsOf(work)
    .filter((step) => step.uses.includes(name) && !work.values.has(step.name))
    .map((step) => step.uses.filter((used) => !isKnown(work.values, used)))
    .find((names) => names.length > 0);
  const chosen = chosenOf(work);
  const by = work.d.variants?.by;
  return problem({
    code: "not-used",
    where: work.d.id,
    what: says,
    got: `${name}, which nothing here reads`,
    must: lacking ? `be given with ${lacking.join(" and ")}` : "be left out",
    why: !lacking && chosen !== undefined ? `${by} ${chosen} does not use it` : undefined,
    hint: lacking ? "or leave it out" : undefined,
  });
}
