// What friction does a printed class or condition stand for?
import { isProblem, type Problem } from "../../problem.ts";
import { type FrictionRow, friction, frictionTable } from "../../tables/friction.ts";
import { given } from "../../tables/table.ts";
import { textOf } from "../inside.ts";
import { lookUp } from "../look-up.ts";
import { type Insides, method } from "../method.ts";

function find(inputs: Insides): readonly FrictionRow[] | Problem {
  const row = friction(textOf(inputs, "class") ?? "");
  if (isProblem(row)) return row;
  return [{ ...row, note: [`for ${row.condition}`, row.note].filter(Boolean).join("; ") }];
}

const procedure = lookUp(frictionTable, "the row of this class", find, ([row]) =>
  given({ low: row?.low, typical: row?.typical, high: row?.high }),
);

export const frictionClass = method({
  id: "friction-class",
  question: "What friction does this class stand for, and for which surfaces?",
  inputs: {
    class: { kind: "text", says: "class A to E of threads and bearing faces; press fit or shrink fit" },
  },
  procedure,
  outputs: {
    low: { kind: "ratio", symbol: "μ_min", says: "low end of the printed range", optional: true },
    typical: { kind: "ratio", symbol: "μ", says: "guide value, where no range is printed", optional: true },
    high: { kind: "ratio", symbol: "μ_max", says: "high end of the printed range", optional: true },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: ["the middle of a range is not a value: use both ends, or measure"],
});
