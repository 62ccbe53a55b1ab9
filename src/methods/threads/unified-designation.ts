// A unified thread whose limits are asked for: any row of the thread table, and sizes beyond it when the
// series is named, since the limits follow from diameter, pitch and series alone.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { notInTable } from "../../tables/table.ts";
import { unifiedThread } from "../../tables/threads-unified.ts";

export interface UnifiedSize {
  readonly designation: string;
  readonly diameter_in: number;
  readonly threadsPerInch: number;
  readonly series: string;
  /** Length of engagement the tolerances are built on, ASME B1.1. */
  readonly engagement: "diameter" | "nine pitches";
}

const constantPitch = [4, 6, 8, 12, 16, 20, 28, 32];
/** UNC beyond the table, threads per inch by size; from memory. */
const coarseAbove: Readonly<Record<string, number>> = {
  "1-3/4": 5,
  "2": 4.5,
  "2-1/4": 4.5,
  "2-1/2": 4,
  "2-3/4": 4,
  "3": 4,
  "3-1/4": 4,
  "3-1/2": 4,
  "3-3/4": 4,
  "4": 4,
};

const written = /^(\d+(?:-\d+\/\d+)?|\d+\/\d+|\d*\.\d+)-(\d+(?:\.\d+)?|\d+-1\/2)-?(UNC|UNF|UNEF|UNS|UN)$/;

export function unifiedSize(designation: string): UnifiedSize | Problem {
  const row = unifiedThread(designation);
  if (!isProblem(row))
    return {
      designation: row.designation,
      diameter_in: row.diameter_in,
      threadsPerInch: row.threadsPerInch,
      series: row.series,
      engagement: "diameter",
    };
  const parts = written.exec(normal(designation));
  if (!parts) return row.with({ hint: "sizes beyond the table need their series, such as 2-1/2-8 UN" });
  const [, size = "", pitch = "", series = ""] = parts;
  const threadsPerInch = pitch.endsWith("-1/2") ? Number(pitch.slice(0, -4)) + 0.5 : Number(pitch);
  const diameter_in = Math.round(inches(size) * 1e4) / 1e4;
  if (!(diameter_in >= 0.06 && diameter_in <= 6))
    return problem({
      code: "size-outside-table",
      what: "thread size",
      got: `${size} in`,
      must: "be from 0.06 to 6 in",
      why: "the series of ASME B1.1 end there",
    });
  const wrong = notOfSeries(series, size, threadsPerInch, row);
  if (wrong) return wrong;
  const byDiameter = series === "UNC" || (series === "UN" && threadsPerInch <= 8);
  return {
    designation: `${size}-${threadsPerInch} ${series}`,
    diameter_in,
    threadsPerInch,
    series,
    engagement: byDiameter ? "diameter" : "nine pitches",
  };
}

/** What is wrong with this pitch in this series, if anything. */
function notOfSeries(series: string, size: string, pitch: number, fromTable: Problem): Problem | undefined {
  if (series === "UNF") return fromTable; // the fine series ends where the table ends
  if (series === "UNC" && coarseAbove[size] !== pitch) {
    const coarse = coarseAbove[size];
    return coarse === undefined
      ? fromTable
      : notInTable({
          code: "unknown-pitch",
          what: `coarse thread of size ${size}`,
          got: `${pitch} threads per inch`,
          choices: [`${size}-${coarse} UNC`],
        });
  }
  if (series === "UN" && !constantPitch.includes(pitch))
    return notInTable({
      code: "unknown-pitch",
      what: "constant-pitch thread",
      got: `${pitch} threads per inch`,
      choices: constantPitch.map((n) => `${size}-${n} UN`),
      why: "the constant-pitch series have 4, 6, 8, 12, 16, 20, 28 and 32 threads per inch; a special one is UNS",
    });
  return undefined;
}

const normal = (designation: string): string =>
  designation
    .trim()
    .toUpperCase()
    .replace(/^(\d+)\s+(\d+\/\d+)/, "$1-$2")
    .replace(/\s+/g, "");

function inches(size: string): number {
  const [, whole = "0", top = "0", bottom = "1"] = /^(?:(\d+)(?:-|$))?(?:(\d+)\/(\d+))?$/.exec(size) ?? [];
  return size.includes(".") ? Number(size) : Number(whole) + Number(top) / Number(bottom);
}
