// Which names the answer rests on: back from the outputs, and from limits that weigh one thing against
// another, through the steps that ran to the inputs they read.
import { isPartlyKnown, isRows } from "./inside.ts";
import type { Procedure } from "./method.ts";
import type { PreparedStep } from "./prepared.ts";
import type { Workspace } from "./workspace.ts";

/** The chosen variant, where a method has any. */
export function chosenOf({ d, values }: Workspace): string | undefined {
  const chosen = d.variants && values.get(d.variants.by);
  return typeof chosen === "string" ? chosen : undefined;
}

/** Steps of the chosen variant and the common ones. */
export function stepsOf(work: Workspace): readonly PreparedStep[] {
  const chosen = chosenOf(work);
  return [...(chosen === undefined ? [] : (work.ready.variants[chosen] ?? [])), ...work.ready.steps];
}

const isOneList = (reads: NonNullable<Procedure["reads"]>): reads is readonly string[] =>
  Array.isArray(reads);

/** What a procedure reads: all inputs, unless it says which, for all variants or for the one chosen. */
function readByProcedure(work: Workspace): readonly string[] {
  const reads = work.d.procedure?.reads;
  const chosen = chosenOf(work);
  if (reads === undefined) return Object.keys(work.d.inputs);
  if (typeof reads === "function") return reads(Object.fromEntries(work.values));
  if (isOneList(reads)) return reads;
  return (chosen === undefined ? undefined : reads[chosen]) ?? Object.keys(work.d.inputs);
}

/** A limit on one name alone says what may be typed and uses nothing; one on two names weighs them. */
export const weighed = (work: Workspace): readonly string[] =>
  work.ready.limits
    .filter(({ uses }) => uses.length > 1 && uses.every((name) => isPartlyKnown(work.values, name)))
    .flatMap(({ uses }) => uses);

function edgesOf(work: Workspace): ReadonlyMap<string, readonly string[]> {
  const edges = new Map<string, readonly string[]>();
  const add = (name: string, uses: readonly string[]) =>
    edges.set(name, [...(edges.get(name) ?? []), ...uses]);
  for (const step of stepsOf(work)) if (work.values.has(step.name)) add(step.name, step.uses);
  for (const { list, steps } of work.ready.each)
    for (const step of steps.filter(({ uses }) => uses.every((used) => isInSomeRow(work, list, used))))
      add(
        `${list}.${step.name}`,
        step.uses.map((used) => (isColumn(work, list, used) ? `${list}.${used}` : used)),
      );
  const { inputs, outputs, procedure } = work.d;
  const read = procedure ? readByProcedure(work) : [];
  for (const name of Object.keys(procedure?.gives ?? {})) if (work.values.has(name)) add(name, read);
  for (const [list, columns] of Object.entries(procedure?.givesRows ?? {}))
    for (const column of ["", ...Object.keys(columns)]) add(column ? `${list}.${column}` : list, read);
  for (const [list, field] of [...Object.entries(inputs), ...Object.entries(outputs)])
    if (field.kind === "list")
      add(
        list,
        Object.keys(field.of).map((column) => `${list}.${column}`),
      );
  return edges;
}

/** A name outside the rows has a value or not; a column is looked for row by row. */
function isInSomeRow(work: Workspace, list: string, name: string): boolean {
  const rows = work.values.get(list);
  return (
    work.values.has(name) ||
    isPartlyKnown(work.values, name) ||
    (isRows(rows) && rows.some((row) => Object.hasOwn(row, name)))
  );
}

function isColumn({ d, ready }: Workspace, list: string, name: string): boolean {
  const input = d.inputs[list];
  return (
    (input?.kind === "list" && Object.hasOwn(input.of, name)) ||
    Object.hasOwn(d.procedure?.givesRows?.[list] ?? {}, name) ||
    ready.each.some((each) => each.list === list && each.steps.some((step) => step.name === name))
  );
}

export function liveNames(work: Workspace): ReadonlySet<string> {
  const edges = edgesOf(work);
  const names = new Set<string>();
  const visit = (name: string): void => {
    if (names.has(name)) return;
    names.add(name);
    for (const used of edges.get(name) ?? []) visit(used);
  };
  const by = work.d.variants?.by;
  const outputs = Object.keys(work.d.outputs).filter((name) => work.values.has(name));
  for (const root of [...outputs, ...weighed(work), ...(by === undefined ? [] : [by])]) visit(root);
  return names;
}
