// Deviations and tolerances of an ISO metric thread by tolerance class. Grade 6 and positions g, G, h, H
// come from the thread table. Other grades move along the series of preferred numbers that ISO 965-1
// uses, other positions by its formula: both from memory, and said to be worked.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { notInTable } from "../../tables/table.ts";
import { type MetricThread, metricThread } from "../../tables/threads-metric.ts";
import type { ThreadLimits } from "./thread-limit-parts.ts";

const micrometre = 1e-6;

/** R40 within one decade; ISO 965-1 rounds its tolerances to it. */
const r40 = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315,
  335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

/** Steps of R40 from grade 6: the factors 0.5, 0.63, 0.8, 1.25, 1.6 and 2 of ISO 965-1 are -12, -8, -4, 4, 8 and 12. */
const stepsFrom6: Readonly<Record<number, number>> = { 3: -12, 4: -8, 5: -4, 6: 0, 7: 4, 8: 8, 9: 12 };

/** A tolerance some steps further along R40; one that is not on the series starts from its nearest number. */
export function alongR40(tolerance: number, steps: number): number {
  const decade = 10 ** (Math.floor(Math.log10(tolerance)) - 2);
  const start = tolerance / decade;
  const nearest = r40.reduce(
    (best, n, i) => (Math.abs(n - start) < Math.abs((r40[best] ?? 0) - start) ? i : best),
    0,
  );
  const index = nearest + steps;
  const decades = Math.floor(index / r40.length);
  return (r40[index - decades * r40.length] ?? Number.NaN) * 10 ** decades * decade;
}

interface Zone {
  readonly grade: number;
  readonly position: string;
}

/** Grades that ISO 965-1 has, by part and diameter. */
const gradesOf = {
  external: { pitch: [3, 4, 5, 6, 7, 8, 9], crest: [4, 6, 8] },
  internal: { pitch: [4, 5, 6, 7, 8], crest: [4, 5, 6, 7, 8] },
} as const;

const written = /^(\d)([efghGH])(?:(\d)([efghGH]))?$/;

export function metricLimits(designation: string, toleranceClass: string): ThreadLimits | Problem {
  const thread = metricThread(designation);
  if (isProblem(thread)) return thread;
  const zones = readZones(toleranceClass);
  if (isProblem(zones)) return zones;
  const { part, pitch, crest } = zones;
  if (pitch.position === "e" && thread.pitch_mm < 0.5)
    return problem({
      code: "class-not-defined",
      what: "tolerance position",
      got: `e at a pitch of ${thread.pitch_mm} mm`,
      must: "be f, g or h",
      why: "position e begins at a pitch of 0.5 mm",
    });
  return part === "external" ? external(thread, pitch, crest) : internal(thread, pitch, crest);
}

function external(thread: MetricThread, pitch: Zone, crest: Zone): ThreadLimits {
  const es = deviation(thread, pitch.position);
  const pitchTolerance = alongR40OrTabulated(thread.pitchTolerance6_um, pitch.grade);
  const crestTolerance = alongR40OrTabulated(thread.crestTolerance6_um, crest.grade);
  return {
    basicMajor: thread.diameter_mm / 1000,
    basicPitch: thread.pitchDiameter_mm / 1000,
    deviation: es * micrometre,
    majorUpper: es * micrometre,
    majorLower: (es - crestTolerance) * micrometre,
    pitchUpper: es * micrometre,
    pitchLower: (es - pitchTolerance) * micrometre,
    ...worked(pitch, crest),
    remarks: remarksOf(thread, pitch, crest),
  };
}

function internal(thread: MetricThread, pitch: Zone, crest: Zone): ThreadLimits {
  const ei = deviation(thread, pitch.position);
  const pitchTolerance = alongR40OrTabulated(thread.internalPitchTolerance6_um, pitch.grade);
  const crestTolerance = alongR40OrTabulated(thread.internalMinorTolerance6_um, crest.grade);
  return {
    basicMajor: thread.diameter_mm / 1000,
    basicPitch: thread.pitchDiameter_mm / 1000,
    basicMinor: thread.minorDiameterInternal_mm / 1000,
    deviation: ei * micrometre,
    majorLower: ei * micrometre,
    pitchUpper: (ei + pitchTolerance) * micrometre,
    pitchLower: ei * micrometre,
    minorUpper: (ei + crestTolerance) * micrometre,
    minorLower: ei * micrometre,
    ...worked(pitch, crest),
    remarks: remarksOf(thread, pitch, crest),
  };
}

/** Fundamental deviation in micrometres: es (negative) or EI. */
function deviation(thread: MetricThread, position: string): number {
  if (position === "g") return thread.deviationG_um;
  if (position === "G") return -thread.deviationG_um;
  if (position === "e") return -Math.round(50 + 11 * thread.pitch_mm);
  if (position === "f") return -Math.round(30 + 11 * thread.pitch_mm);
  return 0;
}

const alongR40OrTabulated = (tolerance6: number, grade: number): number =>
  grade === 6 ? tolerance6 : alongR40(tolerance6, stepsFrom6[grade] ?? 0);

const worked = (pitch: Zone, crest: Zone) => ({
  pitchGradeWorked: pitch.grade === 6 ? 0 : 1,
  crestGradeWorked: crest.grade === 6 ? 0 : 1,
  positionWorked: pitch.position === "e" || pitch.position === "f" ? 1 : 0,
});

function remarksOf(thread: MetricThread, pitch: Zone, crest: Zone): readonly string[] {
  const grades = [pitch.grade, crest.grade].filter((grade) => grade !== 6);
  return [
    `thread row ${thread.designation}: limits for the normal length of engagement, before coating`,
    ...(grades.length > 0
      ? [
          `grade ${[...new Set(grades)].join(" and ")}: grade 6 of the table moved along the R40 series by the factors of ISO 965-1, from memory`,
        ]
      : []),
    ...(worked(pitch, crest).positionWorked
      ? [`position ${pitch.position}: formula of ISO 965-1 to whole micrometres, from memory`]
      : []),
  ];
}

interface Zones {
  readonly part: "external" | "internal";
  readonly pitch: Zone;
  readonly crest: Zone;
}

/** "6g", or "5g6g" with the pitch diameter first and the crest after it. */
function readZones(toleranceClass: string): Zones | Problem {
  const parts = written.exec(toleranceClass.replace(/\s+/g, ""));
  const [, first = "", position = "", second = first, crestPosition = position] = parts ?? [];
  if (!parts || position !== crestPosition)
    return notInTable({
      code: "unknown-tolerance-class",
      what: "tolerance class of a metric thread",
      got: toleranceClass.trim() || "nothing",
      choices: ["6g", "6h", "6H", "6G", "4h", "5g6g"],
      why: parts
        ? "pitch diameter and crest share one position letter"
        : "a class is a grade and a letter: e, f, g, h for bolts, G, H for nuts",
    });
  const part = position === "G" || position === "H" ? "internal" : "external";
  const grades = { pitch: Number(first), crest: Number(second) };
  for (const diameter of ["pitch", "crest"] as const) {
    const known: readonly number[] = gradesOf[part][diameter];
    if (!known.includes(grades[diameter]))
      return problem({
        code: "unknown-grade",
        what: `${diameter} grade of an ${part} thread`,
        got: `${grades[diameter]}`,
        must: `be one of ${known.join(", ")}`,
        hint: `write the pitch grade first, such as 7${position}6${position}`,
      });
  }
  return {
    part,
    pitch: { grade: grades.pitch, position },
    crest: { grade: grades.crest, position },
  };
}
