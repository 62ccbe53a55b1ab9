// A thread by its designation, metric or unified: nominal size and the area that strength tables build on.
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { ThreadSize } from "../../tables/strength-grades.ts";
import { metricThread } from "../../tables/threads-metric.ts";
import { unifiedThread as unifiedRow } from "../../tables/threads-unified.ts";
import { unifiedThread } from "./unified-thread.ts";

export interface ThreadFound {
  /** Nominal size in the unit its standard is written in: strength tables range over that. */
  readonly size: ThreadSize;
  /** m². Metric: as ISO 898-1 prints it, to three figures, since its load tables are built on that. */
  readonly stressArea: number;
}

/** A text of neither form, such as a length, is asked for in both: the page may be metric. */
export const inEitherForm = (designation: string, refusal: Problem): Problem =>
  !["unknown-designation", "unknown-size"].includes(refusal.code) || /[#/-]|UN/i.test(designation)
    ? refusal
    : problem({
        code: "unknown-designation",
        what: "thread designation",
        got: designation.trim() || "nothing",
        must: "be a thread such as M24x3 or 3/8-24 UNF",
        why: "a metric thread is written M, size and x pitch; a unified one size, dash, threads per inch",
        suggestions: ["M24", "M24x3", "3/8-24 UNF", "1/2-13"],
      });

export function threadOf(designation: string): ThreadFound | Problem {
  if (/^\s*M\s*\d/i.test(designation)) {
    const row = metricThread(designation);
    if (isProblem(row)) return row;
    return { size: { value: row.diameter_mm, unit: "mm" }, stressArea: row.stressArea_mm2 * 1e-6 };
  }
  const row = unifiedRow(designation);
  if (isProblem(row)) return inEitherForm(designation, row);
  const solved = unifiedThread.solve({ designation });
  if (isProblem(solved)) return solved;
  const area = solved.outputs["stressArea"];
  return {
    size: { value: row.diameter_in, unit: "in" },
    stressArea: area && "si" in area ? area.si : Number.NaN,
  };
}
