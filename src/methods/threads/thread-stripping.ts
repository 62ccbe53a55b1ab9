// Does the bolt break before a thread strips, and how much engagement does that take?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cellNumber, rowsOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { engagementLength, strippingAreas } from "../sources.ts";
import { metricThread } from "./metric-thread.ts";
import { limitsOf } from "./thread-limits.ts";
import { unifiedThread } from "./unified-thread.ts";
import { weakestPart } from "./weakest-part.ts";

const isMetric = (designation: string): boolean => /^\s*M\s*\d/i.test(designation);

/** The four diameters that stripping is judged on, each at its unfavourable limit. */
const four = ["externalMajorMin", "externalPitchMin", "internalPitchMax", "internalMinorMax"] as const;

function classesOf(inputs: Insides, designation: string): { external: string; internal: string } {
  return {
    external: textOf(inputs, "externalClass") ?? (isMetric(designation) ? "6g" : "2A"),
    internal: textOf(inputs, "internalClass") ?? (isMetric(designation) ? "6H" : "2B"),
  };
}

function run(inputs: Insides): Insides | Problem {
  const designation = textOf(inputs, "externalDesignation") ?? "";
  const thread = (isMetric(designation) ? metricThread : unifiedThread).solve({ designation });
  if (isProblem(thread)) return thread.with({ where: undefined });
  const diameters = fourDiameters(inputs, designation);
  if (isProblem(diameters)) return diameters;
  const { stressArea, pitch } = thread.outputs;
  if (!stressArea || !("si" in stressArea) || !pitch || !("si" in pitch))
    throw new Error(`${designation}: a thread has a stress area and a pitch`);
  const given = { ...diameters, stressArea: stressArea.si, pitch: pitch.si };
  const weakest = weakestPart(steps, { ...inputs, ...given });
  return weakest === undefined ? given : { ...given, weakest };
}

/** Given diameters win; the rest are the limits of the classes. */
function fourDiameters(inputs: Insides, designation: string): Record<string, number> | Problem {
  const rows = rowsOf(inputs, "limits");
  const [row] = rows;
  const named = (["externalClass", "internalClass"] as const).find((name) => textOf(inputs, name));
  if (named !== undefined && row && four.every((name) => cellNumber(row, name) !== undefined))
    return problem({
      code: "not-used",
      what: "tolerance class",
      got: `${named}, beside all four limit diameters`,
      must: "be left out",
    });
  const classes = classesOf(inputs, designation);
  const external = limitsOf(designation, classes.external);
  if (isProblem(external)) return external;
  const internal = limitsOf(designation, classes.internal);
  if (isProblem(internal)) return internal;
  if (external.basicMinor !== undefined || internal.basicMinor === undefined)
    return problem({
      code: "wrong-part",
      what: "tolerance classes",
      got: `${classes.external} and ${classes.internal}`,
      must: "be an external class for the bolt and an internal one for the nut",
    });
  const tabulated = {
    externalMajorMin: external.basicMajor + external.majorLower,
    externalPitchMin: external.basicPitch + external.pitchLower,
    internalPitchMax: internal.basicPitch + internal.pitchUpper,
    internalMinorMax: internal.basicMinor + (internal.minorUpper ?? 0),
  };
  const chosen = four.map((name) => [name, (row && cellNumber(row, name)) ?? tabulated[name]] as const);
  return Object.fromEntries(chosen);
}

function remarks(inputs: Insides): readonly string[] {
  const classes = classesOf(inputs, textOf(inputs, "externalDesignation") ?? "");
  const [row] = rowsOf(inputs, "limits");
  const given = four.filter((name) => row && cellNumber(row, name) !== undefined);
  const rest = `limits of class ${classes.external} for the bolt and ${classes.internal} for the nut`;
  return given.length === four.length
    ? ["limit diameters as given"]
    : [given.length > 0 ? `given: ${given.join(", ")}; the others are the ${rest}` : rest];
}

const steps = {
  boltLoad: "boltTensile * stressArea",
  externalShearArea:
    "pi * engagedLength / pitch * internalMinorMax * (pitch / 2 + 0.57735 * (externalPitchMin - internalMinorMax))",
  internalShearArea:
    "pi * engagedLength / pitch * externalMajorMin * (pitch / 2 + 0.57735 * (externalMajorMin - internalPitchMax))",
  externalStripLoad: "externalShearArea * boltTensile / 2",
  internalStripLoad: "internalShearArea * nutTensile / 2",
  strengthRatio: "externalShearArea * boltTensile / (internalShearArea * nutTensile)",
  equalEngagement:
    "2 * stressArea / (pi * internalMinorMax * (1 / 2 + 0.57735 * (externalPitchMin - internalMinorMax) / pitch))",
  requiredEngagement: "equalEngagement * max(1, strengthRatio)",
} as const;

const length = (symbol: string, says: string) => ({ kind: "length", symbol, says }) as const;

export const threadStripping = method({
  id: "thread-stripping",
  question: "Does the bolt break before a thread strips, and how much engagement does that take?",
  inputs: {
    externalDesignation: { kind: "text", says: "thread designation of the bolt, such as M24x3" },
    engagedLength: length("L_e", "length of full threads engaged"),
    boltTensile: { kind: "stress", symbol: "R_b", says: "tensile strength of the bolt" },
    nutTensile: { kind: "stress", symbol: "R_n", says: "tensile strength of the nut or tapped part" },
    limits: {
      kind: "list",
      says: "limit diameters, one row",
      optional: true,
      one: true,
      of: {
        externalMajorMin: { ...length("D_s", "least major diameter of the bolt"), optional: true },
        externalPitchMin: { ...length("E_s", "least pitch diameter of the bolt"), optional: true },
        internalPitchMax: { ...length("E_n", "largest pitch diameter of the nut"), optional: true },
        internalMinorMax: { ...length("K_n", "largest minor diameter of the nut"), optional: true },
      },
    },
    externalClass: { kind: "text", says: "tolerance class of the bolt thread", optional: true },
    internalClass: { kind: "text", says: "tolerance class of the nut thread", optional: true },
  },
  procedure: {
    says: "pitch and stress area of the thread, limit diameters of the classes, and the part that gives way first",
    source: strippingAreas,
    gives: {
      stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
      pitch: length("p", "pitch"),
      externalMajorMin: length("D_s", "least major diameter of the bolt"),
      externalPitchMin: length("E_s", "least pitch diameter of the bolt"),
      internalPitchMax: length("E_n", "largest pitch diameter of the nut"),
      internalMinorMax: length("K_n", "largest minor diameter of the nut"),
    },
    run,
    remarks,
  },
  steps,
  between: {
    equalEngagement: { kind: "length", symbol: "L_0", says: "engagement for a nut as strong as the bolt" },
  },
  outputs: {
    externalShearArea: { kind: "area", symbol: "A_ss", says: "shear area of the bolt thread" },
    internalShearArea: { kind: "area", symbol: "A_sn", says: "shear area of the nut thread" },
    strengthRatio: { kind: "ratio", symbol: "J", says: "strength of bolt thread over nut thread" },
    requiredEngagement: length("L_req", "engagement at which the bolt breaks first"),
    weakest: { kind: "text", says: "part that gives way first", optional: true },
    boltLoad: { kind: "force", symbol: "F_b", says: "load that breaks the bolt" },
    externalStripLoad: { kind: "force", symbol: "F_s", says: "load that strips the bolt thread" },
    internalStripLoad: { kind: "force", symbol: "F_n", says: "load that strips the nut thread" },
  },
  limits: [
    { that: "engagedLength > 0", else: "no thread is engaged" },
    { that: "boltTensile > 0", else: "no strength is described" },
    { that: "nutTensile > 0", else: "no strength is described" },
    {
      that: "externalMajorMin > internalPitchMax",
      else: "the threads do not overlap",
      hint: "each diameter at its own limit: least for the bolt, largest for the nut",
    },
    {
      that: "externalPitchMin > internalMinorMax",
      else: "the threads do not overlap",
      hint: "each diameter at its own limit: least for the bolt, largest for the nut",
    },
    {
      that: "requiredEngagement <= engagedLength",
      else: "a thread strips before the bolt breaks, and stripping gives no warning",
      hint: "a full nut, a longer tapped hole or an insert",
      warn: "advice",
    },
  ],
  sources: {
    "*": strippingAreas,
    equalEngagement: engagementLength,
    requiredEngagement: engagementLength,
  },
  notes: [
    "count full turns only: chamfers, the bolt's point and the first turn carry little",
    "thread shear strength is taken as half the tensile strength; a nut that widens under load has less, which is not counted here",
    "use the largest strength the bolt may have, not its minimum, where the bolt must break first",
    "at least one pitch of the bolt shows beyond the nut",
  ],
  cautions: ["C8"],
});
