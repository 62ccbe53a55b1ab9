// What load must a nut of this class bear in proof?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import { nutStrength as findGrade, type StrengthGrade } from "../../tables/strength-grades.ts";
import { metricThread } from "../../tables/threads-metric.ts";
import { unifiedThread } from "../../tables/threads-unified.ts";
import { textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { nutProof } from "../sources.ts";
import { threadOf } from "./thread-of.ts";

const pascal = { MPa: 1e6, ksi: (4.448_221_615_260_5 / 0.0254 ** 2) * 1000 } as const;

/** Standards whose rows hold for coarse threads only. */
const coarseOnly: readonly string[] = ["ISO 898-2", "SAE J995"];

interface Found {
  readonly stressArea: number;
  readonly row: StrengthGrade;
}

function find(inputs: Insides): Found | Problem {
  const designation = textOf(inputs, "designation") ?? "";
  const thread = threadOf(designation);
  if (isProblem(thread)) return thread;
  const row = findGrade(textOf(inputs, "standard") ?? "", textOf(inputs, "grade") ?? "", thread.size);
  if (isProblem(row)) return row;
  if (coarseOnly.includes(row.standard) && isFine(designation))
    return problem({
      code: "fine-thread",
      what: "thread designation",
      got: `${designation.trim()}, a fine thread`,
      must: "be a coarse thread",
      why: `the proof stresses of ${row.standard} carried here are those of coarse threads; fine ones have their own`,
    });
  return { stressArea: thread.stressArea, row };
}

function isFine(designation: string): boolean {
  const metric = metricThread(designation);
  if (!isProblem(metric)) return metric.series === "fine";
  const unified = unifiedThread(designation);
  return !isProblem(unified) && unified.series === "UNF";
}

function run(inputs: Insides): Insides | Problem {
  const found = find(inputs);
  if (isProblem(found)) return found;
  const { proof, stressUnit } = found.row;
  return proof === undefined
    ? { stressArea: found.stressArea }
    : { stressArea: found.stressArea, proofStress: proof * pascal[stressUnit] };
}

function remarks(inputs: Insides): readonly string[] {
  const found = find(inputs);
  if (isProblem(found)) return [];
  const { row } = found;
  return [`strength row: ${cite(row.source)}`, ...(row.note ? [`strength row: ${row.note}`] : [])];
}

export const nutStrength = method({
  id: "nut-strength",
  question: "What proof stress and proof load must a nut of this class bear on this thread?",
  inputs: {
    standard: { kind: "text", says: "nut standard", default: "ISO 898-2" },
    grade: { kind: "text", says: "property class or grade as marked on the nut" },
    designation: { kind: "text", says: "thread designation" },
  },
  procedure: {
    says: "the strength row for this class and size, and the thread's stress area",
    source: nutProof,
    gives: {
      stressArea: { kind: "area", symbol: "A_s", says: "stress area the load is built on" },
    },
    run,
    remarks,
  },
  steps: { proofLoad: "stressArea * proofStress" },
  outputs: {
    proofStress: { kind: "stress", symbol: "S_p", says: "proof stress of the nut", optional: true },
    proofLoad: { kind: "force", symbol: "F_p", says: "proof load of the nut", optional: true },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
  },
  limits: [],
  sources: { "*": nutProof },
  notes: [
    "pair a nut of the bolt's first number or higher: class 8 with 8.8, 10 with 10.9",
    "holds for full nuts; a thin nut strips below this load, and stripping gives no warning",
  ],
});
