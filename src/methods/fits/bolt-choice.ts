// Every hole with every bolt: the state of the pair, and what choosing it would cost in the order of the wishes.
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { Costs } from "./assignment.ts";
import { type HoleSize, type PairLimits, type PairState, pairState, type ShankSize } from "./pair-fit.ts";
import { costsOf, type Wanted } from "./wishes.ts";

export interface Hole extends HoleSize {
  readonly tag: string;
  /** Tag of the bolt that is in it now. */
  readonly bolt: string;
}
export interface Bolt extends ShankSize {
  readonly tag: string;
}
/** Whether a pair fits, its distance from the target in m, and whether its bolt moves. */
export interface Pair extends PairState {
  readonly off: number;
  readonly moved: boolean;
}

export interface Job {
  readonly holes: readonly Hole[];
  readonly bolts: readonly Bolt[];
  readonly pairs: readonly (readonly Pair[])[];
  readonly wishes: string;
}

export function pairsOf(
  holes: readonly Hole[],
  bolts: readonly Bolt[],
  judgedBy: { readonly limits: PairLimits; readonly uncertainty: number; readonly target: number },
): readonly (readonly Pair[])[] | Problem {
  const lines: Pair[][] = [];
  for (const hole of holes) {
    const line: Pair[] = [];
    for (const bolt of bolts) {
      const state = pairState({ ...hole, ...bolt }, judgedBy.limits, judgedBy.uncertainty);
      if (isProblem(state)) return state;
      const off = (state.tightest + state.loosest) / 2 - judgedBy.target;
      line.push({ ...state, off, moved: bolt.tag !== hole.bolt });
    }
    lines.push(line);
  }
  return lines;
}

/** Not proven, left empty, then moved and squared distance from the target in the order wished. */
function wantedOf({ pairs, wishes }: Job, unit: number): readonly (readonly Wanted[])[] {
  const empty: Wanted = [1, 1, 0, 0];
  return pairs.map((line) => [
    ...line.map((pair): Wanted => {
      if (pair.state !== "proven" && pair.state !== "unproven") return undefined;
      const [moved, off] = [pair.moved ? 1 : 0, Math.round((pair.off / unit) ** 2)];
      return [
        pair.state === "proven" ? 0 : 1,
        0,
        ...(wishes.endsWith("moved") ? [off, moved] : [moved, off]),
      ];
    }),
    ...pairs.map(() => empty), // a place for each hole that stays empty
  ]);
}

const finestUnit = 1e-7; // m: clearances are compared to a tenth of a micrometre

const coarsestUnit = 1.5e-3; // m: a choice made in steps of several millimetres of clearance is none

/** Costs in the finest unit that keeps every sum exact. */
export function exactCosts(job: Job): { readonly costs: Costs; readonly unit: number } | Problem {
  for (let unit = finestUnit; unit <= coarsestUnit; unit *= 10) {
    const costs = costsOf(wantedOf(job, unit));
    if (costs) return { costs, unit };
  }
  return problem({
    code: "too-large",
    what: "holes and bolts",
    got: `${job.holes.length} holes, ${job.bolts.length} bolts and clearances far from the target`,
    must: "be few enough and near enough to be compared exactly",
    hint: "choose for one group of holes at a time",
  });
}
