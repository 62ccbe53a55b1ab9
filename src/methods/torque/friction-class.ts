// What friction does a printed class or condition stand for?
import { friction, frictionTable } from "../../tables/friction.ts";
import { given } from "../../tables/table.ts";
import { textOf } from "../inside.ts";
import { lookUp, one } from "../look-up.ts";
import { method } from "../method.ts";

const procedure = lookUp(
  frictionTable,
  "the row of this class",
  (inputs) => one(friction(textOf(inputs, "class") ?? "")),
  ([row]) => given({ low: row?.low, typical: row?.typical, high: row?.high, condition: row?.condition }),
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
    condition: { kind: "text", says: "surfaces and lubricants it is printed for" },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: ["the middle of a range is not a value: use both ends, or measure"],
});
