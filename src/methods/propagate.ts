// Carries stated doubt through a method. Each cause is moved to both ends of its half-width while the
// others are held, and the method is solved again from its one text; the larger move counts.
import { isProblem, type Problem, problem, sentence } from "../problem.ts";
import { type Contribution, changeBy, followed, moved } from "../standing.ts";
import { type Quantity, quantity } from "../units/quantity.ts";
import type { InputField, InputValue, ListRow, OutputValue, ScalarOutput, SiValue } from "./field.ts";
import { isQuantityField, isSiValue } from "./field.ts";
import type { Declaration } from "./method.ts";
import type { Solution } from "./solution.ts";
import { statedDoubt } from "./stated-doubt.ts";

type Given = Readonly<Record<string, InputValue | undefined>>;
type Solve = (d: Declaration, given: Given) => Solution | Problem;

/** The same answer with the doubt of each number, and with what a move of one cause would overturn. */
export function propagated(d: Declaration, given: Given, solution: Solution, solve: Solve): Solution {
  const open = opened(d, given);
  const { roots, left } = followed(doubtsIn(open));
  if (roots.length === 0 && left.length === 0) return solution;
  const outputs = new Map(Object.entries(solution.outputs));
  const spoilt = new Map(Object.entries(solution.spoilt));
  const spoil = (name: string, why: Problem) => spoilt.set(name, [...(spoilt.get(name) ?? []), why]);
  for (const name of outputs.keys()) for (const why of left) spoil(name, why);
  for (const root of roots) {
    const applied = root.applies && d.outputs[root.applies.output] ? root.applies : undefined;
    if (applied) {
      const output = outputs.get(applied.output);
      if (output && "si" in output) {
        const change = applied.share * Math.abs(output.si);
        outputs.set(applied.output, withDoubt(output, moved(root, change, -change)));
      }
      continue;
    }
    const [up, down] = [solve(d, shifted(open, root.root, "up")), solve(d, shifted(open, root.root, "down"))];
    const failed = isProblem(up) ? up : isProblem(down) ? down : undefined;
    if (isProblem(up) || isProblem(down)) {
      const why = atItsEnd(root, failed ? sentence(failed) : "there is no answer");
      for (const name of outputs.keys()) spoil(name, why);
      continue;
    }
    for (const [name, output] of outputs) {
      if (d.countsDoubt === true && output.kind === "count") continue;
      const [high, low] = [up.outputs[name], down.outputs[name]];
      const newly = !solution.spoilt[name] && (up.spoilt[name] ?? down.spoilt[name])?.[0];
      if (newly) spoil(name, atItsEnd(root, sentence(newly)));
      const next = high && low ? movedOutput(output, high, low, root) : "other";
      if (next === "other") {
        if (d.countsDoubt !== true)
          spoil(name, atItsEnd(root, `${d.outputs[name]?.says ?? name} is another`));
      } else outputs.set(name, next);
    }
  }
  return { ...solution, outputs: Object.fromEntries(outputs), spoilt: Object.fromEntries(spoilt) };
}

const atItsEnd = (root: Contribution, why: string): Problem =>
  problem({ code: "within-doubt", what: `at an end of the stated ± of ${root.root}`, why });

type Moved = OutputValue | "other";

function movedOutput(base: OutputValue, up: OutputValue, down: OutputValue, root: Contribution): Moved {
  if (base.kind !== "list") return movedScalar(base, up, down, root);
  if (up.kind !== "list" || down.kind !== "list") return "other";
  if (up.rows.length !== base.rows.length || down.rows.length !== base.rows.length) return "other";
  const rows: Readonly<Record<string, ScalarOutput>>[] = [];
  for (const [i, row] of base.rows.entries()) {
    const entries = Object.entries(row).map(([column, cell]) => {
      const [high, low] = [up.rows[i]?.[column], down.rows[i]?.[column]];
      return [column, high && low ? movedScalar(cell, high, low, root) : "other"] as const;
    });
    if (entries.some(([, cell]) => cell === "other")) return "other";
    rows.push(
      Object.fromEntries(entries.flatMap(([column, cell]) => (cell === "other" ? [] : [[column, cell]]))),
    );
  }
  return { kind: "list", rows };
}

function movedScalar(
  base: ScalarOutput,
  up: OutputValue,
  down: OutputValue,
  root: Contribution,
): ScalarOutput | "other" {
  if ("si" in base) {
    if (!("si" in up) || !("si" in down)) return "other";
    const move = moved(root, up.si - base.si, down.si - base.si);
    return move.up === 0 && move.down === 0 ? base : withDoubt(base, move);
  }
  return JSON.stringify(base) === JSON.stringify(up) && JSON.stringify(base) === JSON.stringify(down)
    ? base
    : "other";
}

const withDoubt = (base: Extract<ScalarOutput, { si: number }>, move: Contribution) => ({
  ...base,
  doubt: [...(base.doubt ?? []), move],
});

/** Inputs with every typed ± read, each under its own name. */
function opened(d: Declaration, given: Given): Given {
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, openedInput(name, d.inputs[name], value)]),
  );
}

function openedInput(
  name: string,
  field: InputField | undefined,
  value: InputValue | undefined,
): InputValue | undefined {
  if (field === undefined || value === undefined || field.kind === "text") return value;
  if (isQuantityField(field)) return typeof value === "string" ? openedText(name, field.kind, value) : value;
  const rows = typeof value === "string" ? jsonRows(value) : value;
  if (!Array.isArray(rows)) return value;
  const columns = Object.entries(field.of);
  return (rows as readonly ListRow[]).map((row, i): ListRow => {
    const [only] = columns;
    if (typeof row === "string" && only && isQuantityField(only[1]))
      return openedText(`${name} ${i + 1}`, only[1].kind, row);
    if (typeof row !== "object" || isSiValue(row)) return row;
    return Object.fromEntries(
      Object.entries(row).map(([column, cell]) => {
        const part = field.of[column];
        const read =
          typeof cell === "string" && part && isQuantityField(part)
            ? openedText(`${name} ${i + 1} ${column}`, part.kind, cell)
            : cell;
        return [column, read];
      }),
    );
  });
}

function jsonRows(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function openedText(root: string, kind: Quantity["kind"], text: string): string | SiValue {
  const read = quantity(text, kind);
  if (isProblem(read)) return text;
  const doubt = statedDoubt(root, read);
  return doubt.length === 0
    ? text
    : { si: read.si, dimension: read.unit.dimension, kind: read.kind, unit: read.unit, doubt };
}

function* siValuesOf(given: Given): Generator<SiValue> {
  for (const value of Object.values(given)) {
    if (isSiValue(value)) yield value;
    else if (Array.isArray(value))
      for (const row of value as readonly ListRow[]) {
        if (isSiValue(row)) yield row;
        else if (typeof row === "object")
          for (const cell of Object.values(row)) if (isSiValue(cell)) yield cell;
      }
  }
}

function* doubtsIn(given: Given): Generator<readonly Contribution[]> {
  for (const { doubt } of siValuesOf(given)) if (doubt) yield doubt;
}

/** The inputs with one cause at an end of its half-width. */
function shifted(given: Given, root: string, end: "up" | "down"): Given {
  const move = <T>(value: T): T | SiValue => {
    if (!isSiValue(value) || !value.doubt) return value;
    const change = changeBy(value.doubt, root, end);
    return change === 0 ? value : { ...value, si: value.si + change };
  };
  const row = (r: ListRow): ListRow =>
    typeof r !== "object" || isSiValue(r)
      ? move(r)
      : Object.fromEntries(Object.entries(r).map(([column, cell]) => [column, move(cell)]));
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => [
      name,
      Array.isArray(value) ? (value as readonly ListRow[]).map(row) : move(value),
    ]),
  );
}
