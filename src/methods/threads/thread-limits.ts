// Between which diameters must a thread of this class lie?
import { isProblem, type Problem } from "../../problem.ts";
import { given } from "../../tables/table.ts";
import { textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { threadTolerances } from "../sources.ts";
import { metricLimits } from "./metric-limits.ts";
import type { ThreadLimits } from "./thread-limit-parts.ts";
import { inEitherForm } from "./thread-of.ts";
import { unifiedLimits } from "./unified-limits.ts";

/** Limits by designation and class, metric or unified. */
export function limitsOf(designation: string, toleranceClass: string): ThreadLimits | Problem {
  if (/^\s*M\s*\d/i.test(designation)) return metricLimits(designation, toleranceClass);
  const found = unifiedLimits(designation, toleranceClass);
  return isProblem(found) ? inEitherForm(designation, found) : found;
}

function run(inputs: Insides): Insides | Problem {
  const found = limitsOf(textOf(inputs, "designation") ?? "", textOf(inputs, "toleranceClass") ?? "");
  if (isProblem(found)) return found;
  const { remarks: _, ...numbers } = found;
  return { ...given(numbers), allowance: Math.abs(found.deviation) };
}

function remarks(inputs: Insides): readonly string[] {
  const designation = textOf(inputs, "designation") ?? "";
  const found = limitsOf(designation, textOf(inputs, "toleranceClass") ?? "");
  return isProblem(found) ? [] : found.remarks;
}

const length = (symbol: string, says: string) => ({ kind: "length", symbol, says }) as const;
const limit = (symbol: string, says: string) => ({ ...length(symbol, says), optional: true }) as const;

export const threadLimits = method({
  id: "thread-limits",
  question: "Between which diameters must a thread of this tolerance class lie?",
  inputs: {
    designation: { kind: "text", says: "thread designation, such as M24x3, 1/2-13 or 2-1/2-8 UN" },
    toleranceClass: { kind: "text", says: "tolerance class, such as 6g, 6H, 2A or 3B" },
  },
  procedure: {
    says: "basic diameters, deviation and tolerances of the class: tabulated for 6g and 6H, by formula for unified threads",
    source: threadTolerances,
    gives: {
      basicMajor: length("d", "basic major diameter"),
      basicPitch: length("d_2", "basic pitch diameter"),
      basicMinor: length("D_1", "basic minor diameter"),
      deviation: length("Δ", "fundamental deviation, es or EI"),
      allowance: length("a", "allowance: size of the fundamental deviation"),
      majorUpper: length("Δ_du", "upper deviation of the major diameter"),
      majorLower: length("Δ_dl", "lower deviation of the major diameter"),
      pitchUpper: length("Δ_2u", "upper deviation of the pitch diameter"),
      pitchLower: length("Δ_2l", "lower deviation of the pitch diameter"),
      minorUpper: length("Δ_1u", "upper deviation of the minor diameter"),
      minorLower: length("Δ_1l", "lower deviation of the minor diameter"),
      pitchGradeWorked: { kind: "count", symbol: "w_2", says: "pitch grade is worked, not tabulated" },
      crestGradeWorked: { kind: "count", symbol: "w_1", says: "crest grade is worked, not tabulated" },
      positionWorked: { kind: "count", symbol: "w_p", says: "position is worked, not tabulated" },
    },
    run,
    remarks,
  },
  steps: {
    majorMax: "basicMajor + majorUpper",
    majorMin: "basicMajor + majorLower",
    pitchMax: "basicPitch + pitchUpper",
    pitchMin: "basicPitch + pitchLower",
    minorMax: "basicMinor + minorUpper",
    minorMin: "basicMinor + minorLower",
    majorTolerance: "majorUpper - majorLower",
    pitchTolerance: "pitchUpper - pitchLower",
    minorTolerance: "minorUpper - minorLower",
    workedFigures: "pitchGradeWorked + crestGradeWorked + positionWorked",
  },
  between: {
    workedFigures: { kind: "count", symbol: "w", says: "figures that are worked and not tabulated" },
  },
  outputs: {
    majorMax: limit("d_max", "largest major diameter"),
    majorMin: limit("d_min", "least major diameter"),
    pitchMax: limit("d_2max", "largest pitch diameter"),
    pitchMin: limit("d_2min", "least pitch diameter"),
    minorMax: limit("D_1max", "largest minor diameter"),
    minorMin: limit("D_1min", "least minor diameter"),
    deviation: limit("Δ", "fundamental deviation, es or EI"),
    allowance: limit("a", "allowance: size of the fundamental deviation"),
    majorTolerance: limit("T_d", "tolerance on the major diameter"),
    pitchTolerance: limit("T_d2", "tolerance on the pitch diameter"),
    minorTolerance: limit("T_D1", "tolerance on the minor diameter"),
  },
  limits: [
    {
      that: "workedFigures <= 0",
      else: "from memory, formula before hand-smoothing: the printed limit may lie one step away",
      hint: "compare with ISO 965-1 before a part is rejected on it",
      warn: "spoils",
    },
  ],
  sources: { "*": threadTolerances },
  notes: [
    "no limit is carried for the root of an external thread, nor an upper one for the major diameter of an internal thread",
    "limits tell what a gauge would pass; wear, dirt and coating change what a nut feels",
  ],
});
