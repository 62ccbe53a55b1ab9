// What nut factors do printed tables give for this condition?
import { cite } from "../../source.ts";
import { type NutFactorRow, nutFactorsOf, nutFactorTable } from "../../tables/nut-factors.ts";
import { given } from "../../tables/table.ts";
import { textOf } from "../inside.ts";
import { lookUp } from "../look-up.ts";
import { type Insides, method } from "../method.ts";

/** Every printed row, and their ends: published values for one condition differ too much for one number. */
function give(rows: readonly NutFactorRow[]): Insides {
  const figures = rows.flatMap(({ low, typical, high }) =>
    [low, typical, high].filter((k) => k !== undefined),
  );
  return {
    lowest: Math.min(...figures),
    highest: Math.max(...figures),
    printed: rows.map(({ low, typical, high, source }) => ({
      ...given({ low, typical, high }),
      source: cite(source),
    })),
  };
}

const procedure = lookUp(
  nutFactorTable,
  "every printed row of this condition",
  (inputs) => nutFactorsOf(textOf(inputs, "condition") ?? ""),
  give,
);

export const nutFactor = method({
  id: "nut-factor",
  question: "What nut factors are printed for this condition?",
  inputs: { condition: { kind: "text", says: "condition of thread and face, such as zinc plated" } },
  procedure,
  outputs: {
    lowest: { kind: "ratio", symbol: "K_min", says: "lowest printed nut factor" },
    highest: { kind: "ratio", symbol: "K_max", says: "highest printed nut factor" },
    printed: {
      kind: "list",
      says: "what each source prints",
      of: {
        low: { kind: "ratio", symbol: "K_l", says: "low" },
        typical: { kind: "ratio", symbol: "K_t", says: "typical" },
        high: { kind: "ratio", symbol: "K_h", says: "high" },
        source: { kind: "text", says: "source" },
      },
    },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: ["a trial on the bolts, paste and washers of the job beats a table"],
});
