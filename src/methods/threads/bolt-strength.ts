// How strong is a bolt of this class at least, and what loads follow on this thread?
import { isProblem, type Problem } from "../../problem.ts";
import { cite, source } from "../../source.ts";
import {
  boltStrength as findGrade,
  type StrengthGrade,
  strengthGradeTable,
} from "../../tables/strength-grades.ts";
import { textOf } from "../inside.ts";
import { type Inside, type Insides, method } from "../method.ts";
import { threadOf } from "./thread-of.ts";

const pascal = { MPa: 1e6, ksi: (4.448_221_615_260_5 / 0.0254 ** 2) * 1000 } as const;
const loadTables = source({
  body: "ISO",
  title: "ISO 898-1, load tables",
  at: "stress area times stress; the printed loads use the area to three figures",
  known: "second-hand",
});
const [strengthRows = loadTables] = strengthGradeTable.sources;

interface Found {
  readonly stressArea: number;
  readonly row: StrengthGrade;
}

function find(inputs: Insides): Found | Problem {
  const thread = threadOf(textOf(inputs, "designation") ?? "");
  if (isProblem(thread)) return thread;
  const row = findGrade(textOf(inputs, "standard") ?? "", textOf(inputs, "grade") ?? "", thread.size);
  return isProblem(row) ? row : { stressArea: thread.stressArea, row };
}

function run(inputs: Insides): Insides | Problem {
  const found = find(inputs);
  if (isProblem(found)) return found;
  const { row } = found;
  const inPascal = (stress: number | undefined, name: string): Record<string, Inside> =>
    stress === undefined ? {} : { [name]: stress * pascal[row.stressUnit] };
  return {
    stressArea: found.stressArea,
    ...inPascal(row.proof, "proofStress"),
    ...inPascal(row.yield, "yieldStress"),
    ...inPascal(row.tensile, "tensileStress"),
  };
}

function remarks(inputs: Insides): readonly string[] {
  const found = find(inputs);
  if (isProblem(found)) return [];
  const { row } = found;
  return [`strength row: ${cite(row.source)}`, ...(row.note ? [`strength row: ${row.note}`] : [])];
}

export const boltStrength = method({
  id: "bolt-strength",
  question: "How strong is a bolt of this class at least, and what loads follow on this thread?",
  inputs: {
    standard: { kind: "text", says: "strength standard", default: "ISO 898-1" },
    grade: { kind: "text", says: "property class or grade as marked on the head" },
    designation: { kind: "text", says: "thread designation" },
  },
  procedure: {
    says: "the strength row for this grade and size, and the thread's stress area",
    source: strengthRows,
    gives: {
      stressArea: { kind: "area", symbol: "A_s", says: "stress area the loads are built on" },
    },
    run,
    remarks,
  },
  steps: { proofLoad: "stressArea * proofStress", breakingLoad: "stressArea * tensileStress" },
  outputs: {
    proofStress: { kind: "stress", symbol: "S_p", says: "proof stress", optional: true },
    yieldStress: { kind: "stress", symbol: "R_p", says: "least yield stress", optional: true },
    tensileStress: { kind: "stress", symbol: "R_m", says: "least tensile stress", optional: true },
    proofLoad: { kind: "force", symbol: "F_p", says: "proof load", optional: true },
    breakingLoad: { kind: "force", symbol: "F_m", says: "least breaking load", optional: true },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
  },
  limits: [],
  sources: { "*": loadTables },
  notes: [
    "these are minima of the class for a sound bolt; a bolt of unknown history or mark has no such minimum",
  ],
});
