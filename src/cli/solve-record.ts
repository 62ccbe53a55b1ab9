// A solution as data for --json.
import { plain, symbolOf } from "../formula/show.ts";
import type { Solution } from "../methods/solution.ts";
import { valueRecord } from "../report/values.ts";
import { cite } from "../source.ts";
import { evidenceFor, noPublishedCheck } from "./evidence.ts";
import { problemRecord } from "./outcome.ts";
import type { OutputUnits } from "./output-units.ts";

export const solveRecord = (solution: Solution, units: OutputUnits) => ({
  method: solution.method,
  outputs: Object.fromEntries(
    Object.entries(solution.outputs).map(([name, value]) => [name, valueRecord(value, units.ofOutput(name))]),
  ),
  working: solution.working.map((step) => ({
    name: step.name,
    symbol: plain(symbolOf(step.symbol)),
    symbols: plain(step.symbols()),
    numbers: plain(step.numbers(units.ofOutput(step.name))),
    result: step.result(units.ofOutput(step.name)),
    source: step.source ? cite(step.source) : null,
  })),
  spoilt: Object.fromEntries(
    Object.entries(solution.spoilt).map(([name, why]) => [name, why.map((p) => problemRecord(p))]),
  ),
  warnings: solution.warnings.map((warning) => problemRecord(warning)),
  notes: solution.notes,
  sources: solution.sources.map(cite),
  noPublishedCheck: noPublishedCheck(evidenceFor(solution.method)) ?? null,
});
