// Where published practice differs, what the other published forms would have given, as remarks.
import { isProblem, type Problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import type { InputValue } from "./field.ts";
import type { Declaration } from "./method.ts";
import { type Solution, usualUnit } from "./solution.ts";

type Given = Readonly<Record<string, InputValue | undefined>>;

/** One remark for each other form that can be worked out from the same inputs and gives something else. */
export function otherVariants(
  d: Declaration,
  given: Given,
  solution: Solution,
  solve: (d: Declaration, given: Given) => Solution | Problem,
): string[] {
  const by = d.variants?.by;
  const input = by === undefined ? undefined : d.inputs[by];
  if (by === undefined || input?.kind !== "text") return [];
  const chosen = given[by] ?? input.default;
  const used = typeof chosen === "string" ? chosen.toLowerCase() : "";
  return (input.choices ?? [])
    .filter((choice) => choice.toLowerCase() !== used)
    .flatMap((choice) => {
      const other = solve(d, { ...given, [by]: choice });
      if (isProblem(other)) return [];
      const differing = differences(d, solution, other);
      return differing.length === 0 ? [] : [`${by} ${choice} would give ${differing.join(", ")}`];
    });
}

/** Differences below a millionth are rounding, not practice. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(Math.abs(a), Math.abs(b));

function differences(d: Declaration, solution: Solution, other: Solution): string[] {
  return Object.entries(other.outputs)
    .flatMap(([name, value]) => {
      const before = solution.outputs[name];
      if (!("si" in value) || !before || !("si" in before) || same(value.si, before.si)) return [];
      return [`${d.outputs[name]?.says ?? name} ${formatIn(value.si, usualUnit(value.kind))}`];
    })
    .slice(0, 3);
}
