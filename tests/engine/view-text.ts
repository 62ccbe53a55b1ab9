// A page as plain lines: name, state, reason, and each result at the digits it is shown with.
import type { Line, LineValue, ProseValue } from "../../src/engine/line.ts";
import type { OpenPage } from "../../src/engine/opened.ts";
import { plainText } from "../../src/engine/prose.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";

export function viewText(page: OpenPage): string {
  return `${page
    .lines()
    .flatMap((line) => linesOf(line, page))
    .join("\n")}\n`;
}

function linesOf({ name, value, guilty, note }: Line, page: OpenPage): string[] {
  const beside = note ? boundLines(`  note of ${name}`, note) : [];
  if (isProblem(value)) return [`${name}: no answer (${guilty}) ${sentence(value)}`, ...beside];
  return [...valueLines(name, value, page), ...beside];
}

/** Notes without values of the page say the same always and are left out. */
const boundLines = (name: string, prose: ProseValue): string[] =>
  Object.keys(prose.bound).length === 0
    ? []
    : plainText(prose)
        .split("\n")
        .map((line) => `${name}: ${line}`);

function valueLines(name: string, value: LineValue | Problem, page: OpenPage): string[] {
  if (isProblem(value)) return [`${name}: no answer, ${sentence(value)}`];
  switch (value.type) {
    case "quantity":
      return [`${name}: ${value.typed.text}${value.readAs ? ` (read as ${value.readAs})` : ""}`];
    case "text":
      return [`${name}: ${value.text}`];
    case "formula":
      return [`${name}: ${value.step.result(page.unitOf)}`];
    case "check":
      return [`${name}: ${value.state}, ${value.why}`];
    case "solution": {
      const { working, warnings, notes } = value.solution;
      return [
        `${name}:`,
        ...working.map((step) => `  ${step.name}: ${step.result(page.unitOf)}`),
        ...warnings.map((warning) => `  warning: ${sentence(warning)}`),
        ...notes.map((note) => `  note: ${note}`),
      ];
    }
    case "table":
      return [`${name}: ${value.rows} rows, ${value.missing} missing`];
    case "picture":
      return [`${name}: picture ${value.picture} of ${Object.keys(value.inputs).join(", ")}`];
    case "prose":
      return boundLines(name, value);
    default:
      return forEachKey(name, value, page);
  }
}

/** One answer or check for each key of a table. */
function forEachKey(
  name: string,
  value: Extract<LineValue, { type: "rows" | "checks" }>,
  page: OpenPage,
): string[] {
  const head =
    value.type === "checks" ? `${name}: ${value.state}, ${value.why}` : `${name}: for each ${value.key}`;
  return [head, ...value.rows.flatMap((row) => valueLines(`  ${row.key}`, row.value, page))];
}
