// A solution as lines of text: outputs, working in symbols and in numbers, notes, warnings, sources.
import { plain, symbolOf } from "../formula/show.ts";
import { isRecordOnly, type OutputValue, symbolIn } from "../methods/field.ts";
import type { AnyMethod } from "../methods/index.ts";
import type { Solution } from "../methods/solution.ts";
import { stepLines, stepName } from "../report/step-words.ts";
import { valueRecord } from "../report/values.ts";
import { cite } from "../source.ts";
import { alignFigures, columns, widthOf } from "./columns.ts";
import { evidenceFor, noPublishedCheck } from "./evidence.ts";
import { worded } from "./outcome.ts";
import type { OutputUnits } from "./output-units.ts";

export function solveText(m: AnyMethod, solution: Solution, units: OutputUnits): string[] {
  const section = (title: string, body: readonly string[]): string[] =>
    body.length > 0 ? ["", title, ...body] : [];
  const listed = (texts: readonly string[]): string[] => texts.map((text) => `  ${text}`);
  return [
    `${m.id}: ${m.question}`,
    "",
    ...outputLines(m, solution, units),
    ...section("does not hold", spoiltLines(solution)),
    ...section("warnings", listed(solution.warnings.map(worded))),
    ...section("working", workingLines(solution, units)),
    ...section("notes", listed(solution.notes)),
    ...section("sources", listed(solution.sources.map(cite))),
    ...uncheckedLine(m.id),
  ];
}

/** Outputs whose number proves nothing, each with the reasons. */
const spoiltLines = ({ spoilt }: Solution): string[] =>
  Object.entries(spoilt).flatMap(([name, reasons]) => reasons.map((why) => `  ${name}: ${worded(why)}`));

/** Said with every answer of a method that nothing published was held against. */
function uncheckedLine(id: string): string[] {
  const none = noPublishedCheck(evidenceFor(id));
  return none === undefined ? [] : ["", none];
}

function outputLines(m: AnyMethod, solution: Solution, units: OutputUnits): string[] {
  const entries = Object.entries(solution.outputs).filter(([name]) => !isRecordOnly(m.outputs[name]));
  const figures = alignFigures(entries.map(([name, value]) => valueRecord(value, units.ofOutput(name)).text));
  const rows = columns(
    entries.map(([name], i) => {
      const field = m.outputs[name];
      return [name, symbolText(field), figures[i] ?? "", field?.says ?? ""];
    }),
  );
  return entries.flatMap(([, value], i) => [rows[i] ?? "", ...listLines(value, units)]);
}

const symbolText = (field: object | undefined): string => plain(symbolOf(symbolIn(field) ?? ""));

/** Rows of a list under their own heads, figures aligned by column. */
function listLines(value: OutputValue, units: OutputUnits): string[] {
  if (value.kind !== "list" || value.rows.length === 0) return [];
  const names = [...new Set(value.rows.flatMap((row) => Object.keys(row)))];
  const body = names.map((name) =>
    alignFigures(
      value.rows.map((row) => {
        const part = row[name];
        return part ? valueRecord(part, units.ofKind).text : "";
      }),
    ),
  );
  const rows = value.rows.map((_, i) => [`${i + 1}`, ...body.map((column) => column[i] ?? "")]);
  return columns([["", ...names], ...rows], "    ");
}

/** Symbols, numbers, result on lines of their own. */
function workingLines(solution: Solution, units: OutputUnits): string[] {
  return solution.working.flatMap((step) => {
    const symbol = plain(symbolOf(step.symbol));
    const unitOf = units.ofOutput(step.name);
    const steps = stepLines(step, unitOf, { type: "symbol", text: step.result(unitOf) });
    const below = " ".repeat(widthOf(symbol));
    return [
      `  ${stepName(solution.method, step)}`,
      ...steps.map((shown, i) => `    ${i === 0 ? symbol : below} = ${plain(shown)}`),
    ];
  });
}
