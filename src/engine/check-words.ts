// The words of a check: what it asked, and value against limit in the unit of the page.
import { methods } from "../methods/register.ts";
import { formatShort, formatValue, type Solution, type UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import { differenceUnit } from "../units/in-unit.ts";
import { type Unit, unit } from "../units/unit.ts";
import type { State } from "../verdict.ts";
import type { CheckValue, FormulaValue, LineValue } from "./line.ts";
import type { Results } from "./scope.ts";

/** What a yes or no answers: the output's own words, else the formula as written. */
export function asked(that: string, results: Results): string {
  const [name = "", part = ""] = that.split(".");
  const solution = solutionAt(name, results);
  return (solution && methods.get(solution.method)?.outputs[part]?.says) ?? that;
}

/** The method's own words, where the check asks for an output of a method that warned. */
export const warningOf = (that: string, results: Results): Problem | undefined =>
  solutionAt(that.split(".")[0] ?? that, results)?.warnings[0];

export const warningWords = ({ why, what, got, must }: Problem): string =>
  `${why}: ${what} is ${got}, must ${must}`;

/** The answer of a working, or of its row where one is at hand. */
function solutionAt(name: string, results: Results): Solution | undefined {
  const line = results.get(name);
  if (!line || isProblem(line)) return undefined;
  if (line.type === "solution") return line.solution;
  if (line.type !== "rows") return undefined;
  const row = line.rows.find(({ key }) => key === results.row?.tags[line.key]);
  return row && !isProblem(row.value) && row.value.type === "solution" ? row.value.solution : undefined;
}

/** The unit asked for where the checked value stands, else that of its kind. */
export function shownUnit(
  that: FormulaValue,
  results: Results,
  unitOf: UnitChoice,
  limits: readonly string[],
): Unit {
  const { tree } = that.step;
  const line = tree.type === "name" ? results.get(tree.name) : undefined;
  const asked =
    line && !isProblem(line) ? askedUnit(line, tree.type === "name" ? tree.output : undefined) : undefined;
  const percent =
    that.kind === "ratio" && limits.some((text) => text.trimEnd().endsWith("%")) ? unit("%") : undefined;
  return (
    asked ??
    (percent && !isProblem(percent) ? percent : undefined) ??
    that.unit ??
    unitOf(that.kind === "yes/no" || that.kind === undefined ? "ratio" : that.kind)
  );
}

/** Units that a working or the head of a column asks for. */
export function askedUnit(line: LineValue, column: string | undefined): Unit | undefined {
  if (line.type === "formula") return line.unit;
  if (line.type === "rows") {
    const first = line.rows.find(({ value }) => !isProblem(value))?.value;
    return first && !isProblem(first) && first.type === "formula" ? first.unit : undefined;
  }
  const text = line.type === "table" ? line.columns.find((c) => c.name === column)?.unit : undefined;
  const found = text === undefined ? undefined : unit(text);
  return found && !isProblem(found) ? found : undefined;
}

/** "1.19 against at most 0.9": digits are added until value and limit differ as shown. */
export function reason(
  that: FormulaValue,
  limits: CheckValue["limits"],
  guard: number,
  judged: State,
  shown: Unit,
  from: readonly string[] = [],
): string {
  const text = (si: number, digits: number) =>
    digits === 4
      ? formatValue(si, that.kind === "yes/no" ? undefined : that.kind, shown)
      : formatIn(si, shown, { significant: digits });
  const nearby = [limits.atLeast, limits.atMost].filter((l): l is number => l !== undefined && l !== that.si);
  let digits = 4;
  while (digits < 12 && nearby.some((l) => text(l, digits) === text(that.si, digits))) digits += 1;
  const limitText = (si: number) => {
    const short = formatShort(si, shown);
    return short.length < text(si, digits).length ? short : text(si, digits);
  };
  const bounds = [
    limits.atLeast !== undefined && `at least ${limitText(limits.atLeast)}`,
    limits.atMost !== undefined && `at most ${limitText(limits.atMost)}`,
  ].filter(Boolean);
  const doubt = guard > 0 ? ` ± ${formatIn(guard, differenceUnit(shown), { significant: 2 })}` : "";
  const causes =
    from.length > 0
      ? `; its ± comes from ${from.slice(0, 3).join(", ")}${from.length > 3 ? " and others" : ""}`
      : "";
  const word = judged === "unproven" ? `, too close to the limit to call${causes}` : "";
  return `${text(that.si, digits)}${doubt} against ${bounds.join(" and ")}${word}`;
}
