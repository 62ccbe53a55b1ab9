// "Why this number?" The chain from a value back to givens and readings, followed through the one row asked about.
import type { Line, TableValue } from "../engine/line.ts";
import { namesRead } from "../engine/uses.ts";
import { names } from "../formula/tree.ts";
import type { Solution, UnitChoice, WorkedStep } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import { onScreen } from "../units/on-screen.ts";
import { counted } from "../words.ts";
import { figureText, outputText } from "./figure-text.ts";

type Tags = Readonly<Record<string, string>>;

export interface Link {
  /** As the row at hand alone has it. */
  readonly line: Line;
  /** "position 18" */
  readonly row: string | undefined;
  /** What the row says of itself: by it the rows of other lines and tables are found. */
  readonly tags: Tags | undefined;
  /** The output that is read. */
  readonly output: string | undefined;
  /** Met before: what stands behind it is told there. */
  readonly isAgain: boolean;
  readonly behind: readonly Link[];
}

export interface Asked {
  readonly name: string;
  readonly output: string | undefined;
  /** Key of one row, where a line has an answer for each. */
  readonly row: string | undefined;
}

/** `lines` are those behind the value, itself among them. */
export function chainOf(lines: readonly Line[], asked: Asked): Link | undefined {
  const byName = new Map(lines.map((line) => [line.name, line]));
  const met = new Set<string>();
  const link = (name: string, output: string | undefined, tags: Tags | undefined): Link | undefined => {
    const whole = byName.get(name);
    if (!whole) return undefined;
    const at = { ...ofRow(whole, tags, name === asked.name ? asked.row : undefined), output };
    if (met.has(name)) return { ...at, isAgain: true, behind: [] };
    met.add(name);
    const read = namesRead(at.line.item, (used) => at.line.uses.includes(used));
    const behind = read.flatMap((used) => link(used.name, used.output, at.tags) ?? []);
    return { ...at, isAgain: false, behind };
  };
  return link(asked.name, asked.output, undefined);
}

/** "Rests on 12 givens and readings." */
export function restsOn(lines: readonly Line[]): string {
  const givens = lines.filter(({ item }) => item.kind === "given" || item.kind === "reading").length;
  return `Rests on ${counted(givens, "given or reading", "givens and readings")}.`;
}

function ofRow(
  line: Line,
  tags: Tags | undefined,
  asked: string | undefined,
): Pick<Link, "line" | "row" | "tags"> {
  const { value } = line;
  const rows = !isProblem(value) && (value.type === "rows" || value.type === "checks") ? value : undefined;
  const key = rows && (asked ?? tags?.[rows.key]);
  const row = rows?.rows.find((one) => one.key === key);
  if (!rows || !row) return { line, row: undefined, tags };
  return {
    line: { ...line, value: row.value },
    row: `${rows.key} ${row.key}`,
    tags: { ...tags, ...row.tags },
  };
}

/** Rows of a table that belong to the row at hand; undefined where it has no such column. */
export function tableRowsOf(
  table: TableValue,
  tags: Tags | undefined,
): { readonly of: string; readonly rows: readonly number[] } | undefined {
  const [key] = table.key;
  const wanted = key === undefined ? undefined : tags?.[key];
  if (wanted === undefined) return undefined;
  const column = table.columns.find((one) => one.name === key);
  const rows = table.states.flatMap((_, row) => (column?.typed[row] === wanted ? [row] : []));
  return rows.length === 0 ? undefined : { of: wanted, rows };
}

/** What a line comes to, in few words. */
export function valueWords({ value }: Line, output: string | undefined, unitOf: UnitChoice): string {
  if (isProblem(value)) return "no answer";
  switch (value.type) {
    case "quantity":
      return figureText(
        value.si,
        value.kind,
        value.kind === undefined ? value.typed.unit : unitOf(value.kind),
      );
    case "formula":
      if (value.kind === "yes/no") return value.si === 1 ? "yes" : "no";
      return figureText(value.si, value.kind, value.unit ?? unitOf(value.kind ?? "ratio"));
    case "check":
    case "checks":
      return onScreen(value.why);
    case "text":
      return value.text;
    case "table":
      return counted(value.rows, "row");
    case "rows":
      return counted(value.rows.length, "answer");
    case "solution": {
      const all = Object.keys(value.solution.outputs);
      const name = output ?? (all.length === 1 ? all[0] : undefined);
      const found = name === undefined ? undefined : value.solution.outputs[name];
      return found ? outputText(found, unitOf) : `${all.length} outputs`;
    }
    default:
      return "";
  }
}

/** The steps of a method that lead to one output, in the order they ran. */
export function stepsTo(solved: Solution, output: string | undefined): readonly WorkedStep[] {
  if (output === undefined) return solved.working;
  const wanted = new Set([output]);
  for (const step of solved.working.toReversed())
    if (wanted.has(step.name)) for (const name of names(step.tree)) wanted.add(name);
  return solved.working.filter((step) => wanted.has(step.name));
}
