// Has a size really changed since last time?
import { method } from "../method.ts";
import { realChange } from "../sources.ts";

export const changeSince = method({
  id: "change-since",
  countsDoubt: true,
  question: "Has a size really changed since last time?",
  inputs: {
    before: { kind: "length", symbol: "x_1", says: "size last time" },
    after: { kind: "length", symbol: "x_2", says: "size now" },
    uncertaintyBefore: { kind: "length", symbol: "U_1", says: "expanded uncertainty last time" },
    uncertaintyAfter: { kind: "length", symbol: "U_2", says: "expanded uncertainty now" },
  },
  steps: {
    difference: "after - before",
    threshold: "sqrt(uncertaintyBefore ^ 2 + uncertaintyAfter ^ 2)",
    real: "abs(difference) > threshold",
  },
  outputs: {
    difference: { kind: "length", symbol: "Δ", says: "change, positive where it has grown" },
    threshold: { kind: "length", symbol: "U_Δ", says: "least change that can be seen" },
    real: { kind: "yes/no", says: "the change is real" },
  },
  limits: [
    { that: 'uncertaintyBefore >= "0 um"', else: "an uncertainty is a width" },
    { that: 'uncertaintyAfter >= "0 um"', else: "an uncertainty is a width" },
  ],
  sources: { "*": realChange },
  notes: [
    "both sizes at 20 degC, and neither across a change of oversize",
    "a trend from two points is a hint: watch it, do not extend it",
  ],
});
