// What hole does a bolt of this size pass through?
import { isProblem, type Problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import {
  type ClearanceHole,
  clearanceHoleStandards,
  clearanceHole as findHole,
} from "../../tables/clearance-holes.ts";
import { notInTable } from "../../tables/table.ts";
import { metricThread } from "../../tables/threads-metric.ts";
import { textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { clearanceHoleRows, clearanceOverThread } from "../sources.ts";

function find(inputs: Insides): ClearanceHole | Problem {
  const designation = textOf(inputs, "designation") ?? "";
  const size = boltSize(designation);
  if (isProblem(size)) return size;
  return findHole(textOf(inputs, "standard") ?? "", size, textOf(inputs, "series") ?? "");
}

/** The hole goes by the nominal diameter alone, so a bare "M12" and any pitch of it will do. */
function boltSize(designation: string): number | Problem {
  const bare = /^\s*M\s*(\d+(?:\.\d+)?)\s*$/i.exec(designation);
  if (bare) return Number(bare[1]);
  const thread = metricThread(designation);
  if (!isProblem(thread)) return thread.diameter_mm;
  if (/^\s*M\s*\d/i.test(designation)) return thread;
  return notInTable({
    code: "unknown-designation",
    what: "bolt size",
    got: designation.trim() || "nothing",
    choices: ["M12", "M24"],
    why: "the clearance holes carried are those of metric bolts",
  });
}

function run(inputs: Insides): Insides | Problem {
  const row = find(inputs);
  return isProblem(row) ? row : { majorDiameter: row.diameter_mm / 1000, holeDiameter: row.hole_mm / 1000 };
}

function remarks(inputs: Insides): readonly string[] {
  const row = find(inputs);
  if (isProblem(row)) return [];
  return [
    `hole row: ${row.standard} ${row.series}, ${cite(row.source)}`,
    ...(row.toleranceClass ? [`hole tolerance of this series: ${row.toleranceClass}`] : []),
  ];
}

export const clearanceHole = method({
  id: "clearance-hole",
  question: "What clearance hole goes with a bolt of this size?",
  inputs: {
    designation: { kind: "text", says: "bolt size, such as M12" },
    series: {
      kind: "text",
      says: "series: fine, medium or coarse in ISO 273; close, medium or free in BS 4186",
      default: "medium",
      choices: ["fine", "medium", "coarse", "close", "free"],
    },
    standard: {
      kind: "text",
      says: "standard of the hole",
      default: "ISO 273",
      choices: clearanceHoleStandards,
    },
  },
  procedure: {
    says: "the row of the clearance hole table for this size and series",
    source: clearanceHoleRows,
    gives: {
      majorDiameter: { kind: "length", symbol: "d", says: "nominal diameter of the bolt" },
    },
    run,
    remarks,
  },
  steps: { clearance: "holeDiameter - majorDiameter" },
  outputs: {
    holeDiameter: { kind: "length", symbol: "d_h", says: "clearance hole" },
    clearance: { kind: "length", symbol: "c", says: "clearance on diameter over the nominal bolt" },
  },
  limits: [],
  sources: { clearance: clearanceHoleRows, clearanceOverThread },
  notes: [
    "ISO 273 and BS 4186 differ at M12, M14 and M16: a medium hole for M12 is 13.5 mm in one and 14 mm in the other",
    "a fitted bolt has no clearance hole; its hole is reamed",
    "a chamfer on the hole takes bearing face from the nut or head",
  ],
});
