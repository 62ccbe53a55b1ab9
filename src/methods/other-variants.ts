// Where published practice differs, what the other published forms would have given, as remarks.
import { isProblem, type Problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import type { InputValue, OutputValue } from "./field.ts";
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

/** Only what differs as shown: the last bits are rounding, not practice. */
function differences(d: Declaration, solution: Solution, other: Solution): string[] {
  const text = (value: OutputValue | undefined) =>
    value && "si" in value ? formatIn(value.si, usualUnit(value.kind)) : undefined;
  return Object.entries(other.outputs)
    .filter(([name, value]) => text(value) !== undefined && text(value) !== text(solution.outputs[name]))
    .map(([name, value]) => `${d.outputs[name]?.says ?? name} ${text(value)}`)
    .slice(0, 3);
}
