// A solution as lines of text: outputs, working in symbols and in numbers, notes, warnings, sources.
import { plain, symbolOf } from "../formula/show.ts";
import { isRecordOnly, type OutputValue } from "../methods/field.ts";
import type { AnyMethod } from "../methods/index.ts";
import type { Solution, WorkedStep } from "../methods/solution.ts";
import { cite } from "../source.ts";
import { alignFigures, columns, widthOf } from "./columns.ts";
import { evidenceFor, noPublishedCheck } from "./evidence.ts";
import { worded } from "./outcome.ts";
import type { OutputUnits } from "./output-units.ts";
import { valueRecord } from "./values.ts";

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
    ...section("working", workingLines(solution.working, units)),
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

const symbolText = (field: object | undefined): string =>
  field && "symbol" in field && typeof field.symbol === "string" ? plain(symbolOf(field.symbol)) : "";

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

/** Symbols, numbers, result on lines of their own; a step that only names a number needs one. */
function workingLines(working: readonly WorkedStep[], units: OutputUnits): string[] {
  return working.flatMap((step) => {
    const symbol = plain(symbolOf(step.symbol));
    const row = step.name.lastIndexOf(" · "); // "frusta 2 · stiffness": one row of a list
    const says =
      (row < 0 ? "" : step.name.slice(0, row + 3)) + (step.says ?? step.name.slice(row < 0 ? 0 : row + 3));
    const below = " ".repeat(widthOf(symbol));
    const symbols = plain(step.symbols());
    const numbers = plain(step.numbers(units.ofOutput(step.name)));
    const result = step.result(units.ofOutput(step.name));
    const steps = [
      symbols,
      ...(numbers === symbols ? [] : [numbers]),
      ...(result === numbers ? [] : [result]),
    ];
    return [`  ${says}`, ...steps.map((text, i) => `    ${i === 0 ? symbol : below} = ${text}`)];
  });
}
