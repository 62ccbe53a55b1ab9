// To which oversize must a worn hole be opened?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { formatIn } from "../../units/format.ts";
import { atMost } from "../../verdict.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { columnNumbers, rowsOf } from "../inside.ts";
import { type Insides, method, type Steps } from "../method.ts";
import { usualUnit } from "../solution.ts";
import { oversizePractice } from "../sources.ts";

const cleanUp: Steps = { cleanUpSize: "largestReading + 2 * allowancePerSide" };

/** The smallest step that is not below the size. */
export const nextStep = (size: number, steps: readonly number[]): number | undefined =>
  steps.filter((step) => atMost(size, step)).toSorted((a, b) => a - b)[0];

function run(inputs: Insides): Insides | Problem {
  const found = evaluateSteps(cleanUp, inputs);
  if (isProblem(found)) return found;
  const size = found["cleanUpSize"] ?? Number.NaN;
  const steps = columnNumbers(rowsOf(inputs, "steps"), "size");
  const step = nextStep(size, steps);
  if (step !== undefined) return { step };
  const words = (si: number) => formatIn(si, usualUnit("length"), { decimals: 4 });
  return problem({
    code: "no-step",
    what: "oversize steps",
    got: `${words(Math.max(...steps))} at most`,
    must: `reach ${words(size)}`,
    why: "the largest step does not clean the hole up",
    hint: "add a larger step, or sleeve the hole",
  });
}

export const oversizeStep = method({
  id: "oversize-step",
  question: "To which oversize must a worn hole be opened?",
  inputs: {
    largestReading: {
      kind: "length",
      as: "fit diameter",
      symbol: "D_max",
      says: "largest reading of the hole",
    },
    allowancePerSide: { kind: "length", symbol: "a", says: "metal to take off each side beyond it" },
    steps: {
      kind: "list",
      says: "oversizes that are stocked",
      of: { size: { kind: "length", as: "fit diameter", symbol: "D_s", says: "finished size of the step" } },
    },
    edgeDistance: {
      kind: "length",
      symbol: "e",
      says: "distance from the middle of the hole to the edge",
      optional: true,
    },
  },
  procedure: {
    says: "the smallest step that is not below the clean-up size",
    source: oversizePractice,
    gives: { step: { kind: "length", symbol: "D_s", says: "step" } },
    run,
  },
  steps: {
    ...cleanUp,
    removedPerSide: "(step - largestReading) / 2",
    edgeLeft: "edgeDistance - step / 2",
    edgeRatio: "edgeDistance / step",
  },
  outputs: {
    cleanUpSize: { kind: "length", symbol: "D_c", says: "size at which the hole cleans up" },
    step: { kind: "length", symbol: "D_s", says: "next step" },
    removedPerSide: { kind: "length", symbol: "r", says: "metal taken off each side at the largest reading" },
    edgeLeft: { kind: "length", symbol: "e_r", says: "metal left to the edge", optional: true },
    edgeRatio: { kind: "ratio", symbol: "e/D", says: "edge distance over the new size", optional: true },
  },
  limits: [
    { that: 'allowancePerSide >= "0 um"', else: "an allowance takes metal off", hint: "give its size" },
    {
      that: 'edgeLeft > "0 mm"',
      else: "the hole would break out",
      hint: "a smaller step, or a sleeve",
    },
  ],
  sources: { "*": oversizePractice },
  notes: [
    "ream and hone in line, with both halves located and bolted",
    "ask before a critical hole is opened (FAA AC 43.13-1B), and mark the oversize on head and flange",
  ],
  cautions: ["C7", "C8"],
});
