// What limits do the letters of an ISO fit give?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { iso286Sources, toleranceLimits } from "../../tables/iso-286.ts";
import { numberOf, textOf } from "../inside.ts";
import { type Inside, type Insides, method } from "../method.ts";
import { fitExtremes } from "../sources.ts";

const micrometre = 1e-6;

function run(inputs: Insides): Insides | Problem {
  const size = (numberOf(inputs, "size") ?? Number.NaN) * 1000; // mm
  const classes = { hole: textOf(inputs, "hole"), shaft: textOf(inputs, "shaft") };
  if (!classes.hole && !classes.shaft)
    return problem({
      code: "missing-input",
      what: "tolerance class",
      got: "nothing",
      must: "be given as hole or shaft",
      hint: "for example hole=H7 shaft=k6",
    });
  const found: Record<string, Inside> = {};
  for (const part of ["hole", "shaft"] as const) {
    const letters = classes[part];
    if (!letters) continue;
    const limits = toleranceLimits(size, letters);
    if (isProblem(limits)) return limits;
    if (limits.part !== part)
      return problem({
        code: "wrong-part",
        what: `${part} tolerance class`,
        got: limits.designation,
        must: part === "hole" ? "be in capitals, such as H7" : "be in small letters, such as k6",
      });
    found[`${part}Upper`] = limits.upper_um * micrometre;
    found[`${part}Lower`] = limits.lower_um * micrometre;
  }
  return found;
}

export const fitLimitsIso = method({
  id: "fit-limits-iso",
  question: "What limits of size and extreme clearances do the letters of an ISO fit give?",
  inputs: {
    size: { kind: "length", symbol: "D", says: "nominal size" },
    hole: { kind: "text", says: "hole tolerance class, such as H7", optional: true },
    shaft: { kind: "text", says: "shaft tolerance class, such as k6", optional: true },
  },
  procedure: {
    says: "limit deviations of the tolerance classes at this size, with the delta rule for holes K to ZC",
    source: iso286Sources.rules,
    run,
  },
  steps: {
    holeMax: "size + holeUpper",
    holeMin: "size + holeLower",
    shaftMax: "size + shaftUpper",
    shaftMin: "size + shaftLower",
    clearanceMax: "holeUpper - shaftLower",
    clearanceMin: "holeLower - shaftUpper",
  },
  outputs: {
    holeMax: { kind: "length", symbol: "D_max", says: "largest hole", optional: true },
    holeMin: { kind: "length", symbol: "D_min", says: "smallest hole", optional: true },
    shaftMax: { kind: "length", symbol: "d_max", says: "largest shaft", optional: true },
    shaftMin: { kind: "length", symbol: "d_min", says: "smallest shaft", optional: true },
    clearanceMax: { kind: "length", symbol: "c_max", says: "largest clearance", optional: true },
    clearanceMin: {
      kind: "length",
      symbol: "c_min",
      says: "least clearance, negative for interference",
      optional: true,
    },
    holeUpper: { kind: "length", symbol: "ES", says: "upper deviation of the hole", optional: true },
    holeLower: { kind: "length", symbol: "EI", says: "lower deviation of the hole", optional: true },
    shaftUpper: { kind: "length", symbol: "es", says: "upper deviation of the shaft", optional: true },
    shaftLower: { kind: "length", symbol: "ei", says: "lower deviation of the shaft", optional: true },
  },
  limits: [{ that: "size > 0", else: "no size is described" }],
  sources: { "*": fitExtremes },
  notes: ["a class tells what a new part may be; a fit is proven by measuring the pair"],
});
