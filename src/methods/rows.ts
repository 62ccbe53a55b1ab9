// Formulas worked out for each row of a list: they see the row's own columns first, then the
// method's other names. A value given in the row wins over its formula.
import { isProblem, type Problem, problem } from "../problem.ts";
import { columnNumbers, type Inside, isKnown, isRows, lookIn, type Row, type RowCell } from "./inside.ts";
import type { Leaf } from "./leaf.ts";
import { judgeLimits } from "./limits.ts";
import type { PreparedStep } from "./prepared.ts";
import { workedStep } from "./solution.ts";
import type { Workspace } from "./workspace.ts";

export function runRows(work: Workspace): Problem | undefined {
  for (const { list, steps } of work.ready.each) {
    const rows = work.values.get(list);
    if (!isRows(rows)) continue;
    const done: Row[] = [];
    for (const [index, row] of rows.entries()) {
      const filled = fillRow({ list, index, row, steps }, work);
      if (isProblem(filled)) return filled;
      done.push(filled);
    }
    work.values.set(list, done);
    for (const step of steps)
      if (step.kind !== "yes/no")
        work.leaves.set(`${list}.${step.name}`, {
          symbol: step.symbol,
          kind: step.kind,
          si: columnNumbers(done, step.name),
        });
    const broken = judgeLimits(work);
    if (broken) return broken;
  }
  return undefined;
}

interface Place {
  readonly list: string;
  readonly index: number;
  readonly row: Row;
  readonly steps: readonly PreparedStep[];
}

function fillRow(at: Place, work: Workspace): Row | Problem {
  const label = `${at.list} ${at.index + 1}`;
  const filled: Record<string, RowCell> = { ...at.row };
  const leaves = rowLeaves(at, work);
  const seen = new Map<string, Inside>([...work.values, ...Object.entries(filled)]);
  for (const step of at.steps) {
    if (Object.hasOwn(filled, step.name)) continue; // given in the row
    if (!step.uses.every((name) => isKnown(seen, name))) continue;
    const value = step.value(lookIn(seen));
    if (isProblem(value))
      return value.with({
        where: work.d.id,
        what: `${label} · ${step.says ?? step.name} · ${value.what}`,
      });
    if (typeof value === "object") continue;
    filled[step.name] = value;
    seen.set(step.name, value);
    const si = Number(value);
    work.working.push(
      workedStep(
        { ...step, name: `${label} · ${step.name}`, si, ...(typeof value === "boolean" && { yes: value }) },
        (used) => leaves.get(used),
      ),
    );
    if (step.kind !== "yes/no") leaves.set(step.name, { symbol: step.symbol, kind: step.kind, si });
  }
  const missing = at.steps.find((step) => !Object.hasOwn(filled, step.name));
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

/** Leaves of the whole method, and those of this row under the row's own names. */
function rowLeaves(at: Place, work: Workspace): Map<string, Leaf> {
  const leaves = new Map(work.leaves);
  for (const [name, leaf] of work.leaves)
    if (name.startsWith(`${at.list}.`) && typeof leaf.si !== "number")
      leaves.set(name.slice(at.list.length + 1), { ...leaf, si: leaf.si[at.index] ?? Number.NaN });
  return leaves;
}
