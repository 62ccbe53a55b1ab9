// Do two counts agree with the drawing, so that the hold point may open?
import { type Problem, problem } from "../../problem.ts";
import { cellText, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { twoCounts } from "../sources.ts";

/** Positions that are due and were not found, in the order of the drawing. */
export const notFound = (due: readonly string[], found: readonly string[]): readonly string[] => {
  const seen = new Set(found);
  return due.filter((position) => !seen.has(position));
};

const listed = (inputs: Insides, name: string): readonly string[] =>
  rowsOf(inputs, name).map((row) => cellText(row, "position") ?? "");

function run(inputs: Insides): Insides | Problem {
  const [due, found] = [listed(inputs, "positions"), listed(inputs, "found")];
  if (due.length === 0 && found.length === 0) return { unseen: 0 };
  const [strange] = notFound(found, due);
  if (due.length === 0 || strange !== undefined)
    return problem({
      code: "odd-position",
      what: "positions found",
      got: due.length === 0 ? "no positions of the drawing" : strange,
      must: "be positions of the drawing",
    });
  const lacking = notFound(due, found);
  return { unseen: lacking.length, missingPositions: lacking.length > 0 ? lacking.join(", ") : "none" };
}

const position = { position: { kind: "text", says: "position" } } as const;

export const holdCount = method({
  id: "hold-count",
  question: "Do two counts agree with the drawing, so that the hold point may open?",
  inputs: {
    expected: { kind: "count", symbol: "N", says: "number on the drawing" },
    countedOnce: { kind: "count", symbol: "n_1", says: "first count, by one person" },
    countedTwice: { kind: "count", symbol: "n_2", says: "second count, taken separately" },
    kept: { kind: "count", symbol: "n_k", says: "how many stay where they are", default: "0" },
    positions: {
      kind: "list",
      says: "positions on the drawing",
      optional: true,
      unique: ["position"],
      of: position,
    },
    found: { kind: "list", says: "positions counted", optional: true, unique: ["position"], of: position },
  },
  procedure: {
    says: "positions of the drawing that were not counted, where both lists are given",
    source: twoCounts,
    gives: { unseen: { kind: "count", symbol: "n_p" } },
    run,
  },
  steps: {
    due: "expected - kept",
    missing: "max(0, unseen, due - min(countedOnce, countedTwice))",
    open: "abs(countedOnce - due) + abs(countedTwice - due) + unseen == 0",
  },
  between: { due: { kind: "count", symbol: "N_d", says: "number that has to be counted" } },
  outputs: {
    open: { kind: "yes/no", says: "the hold point may open" },
    missing: { kind: "count", symbol: "n_m", says: "how many are missing" },
    missingPositions: { kind: "text", says: "positions not counted", optional: true },
  },
  limits: [
    { that: "expected >= 1", else: "nothing is to be counted" },
    { that: "kept <= expected", else: "no more can stay than there are" },
    {
      that: "countedOnce == countedTwice",
      else: "the two counts differ",
      hint: "count both again, separately",
      warn: "advice",
    },
    {
      that: "max(countedOnce, countedTwice) <= due",
      else: "more were counted than the drawing has",
      hint: "the drawing or the count is wrong",
      warn: "advice",
    },
  ],
  sources: { "*": twoCounts },
  notes: [
    "a hold point opens by counts; the list of other ties (covers, dowels, wells) is counted group by group",
  ],
  cautions: ["C2"],
});
