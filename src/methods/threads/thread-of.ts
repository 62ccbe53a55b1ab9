// A thread by its designation, metric or unified, in SI.
import { isProblem, type Problem } from "../../problem.ts";
import type { ThreadSize } from "../../tables/strength-grades.ts";
import { metricThread } from "./metric-thread.ts";
import { unifiedThread } from "./unified-thread.ts";

export interface ThreadFound {
  /** Nominal size in the unit its standard is written in: strength tables range over that. */
  readonly size: ThreadSize;
  readonly stressArea: number; // m²
}

export function threadOf(designation: string): ThreadFound | Problem {
  const metric = /^\s*M\s*\d/i.test(designation);
  const found = metric ? metricThread.solve({ designation }) : unifiedThread.solve({ designation });
  if (isProblem(found)) return found;
  const si = (name: string): number => {
    const output = found.outputs[name];
    return output && "si" in output ? output.si : Number.NaN;
  };
  const perMetre = metric ? 1000 : 1 / 0.0254;
  const value = Math.round(si("majorDiameter") * perMetre * 1e6) / 1e6; // nominal sizes have few decimals
  return { size: { value, unit: metric ? "mm" : "in" }, stressArea: si("stressArea") };
}
