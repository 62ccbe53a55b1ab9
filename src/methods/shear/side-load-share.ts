// Do friction or shanks hold a side load, and which shank takes how much of it?
import { isProblem, type Problem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { type Row, rowsOf } from "../inside.ts";
import { type Insides, method, type Steps } from "../method.ts";
import { shankSprings } from "../sources.ts";

export interface Shank {
  /** Slip of one part over the other until the shank bears, m. */
  readonly play: number;
  /** N/m. */
  readonly stiffness: number;
}

/**
 * Slip at which the shanks together carry the load. Their force is piecewise linear in the slip,
 * with a corner where each shank comes to bear, so the right piece is looked for and solved.
 */
export function slipUnder(load: number, shanks: readonly Shank[]): number {
  if (load <= 0) return 0;
  let [stiffness, lag] = [0, 0]; // of the shanks that bear: sums of k and of k times play
  const order = shanks.toSorted((a, b) => a.play - b.play);
  for (const [index, shank] of order.entries()) {
    stiffness += shank.stiffness;
    lag += shank.stiffness * shank.play;
    const slip = (load + lag) / stiffness;
    const next = order[index + 1];
    if (!next || slip <= next.play) return slip;
  }
  return 0;
}

const held: Steps = {
  slipCapacity: "friction * clamp",
  shanksCarry: "max(0, sideLoad - slipCapacity)",
};
const toBear: Steps = { play: "max(0, travelShare * clearance)" };

function run(inputs: Insides): Insides | Problem {
  const found = evaluateSteps(held, inputs);
  if (isProblem(found)) return found;
  const shanks: Shank[] = [];
  for (const row of rowsOf(inputs, "bolts")) {
    const travel = evaluateSteps(toBear, { ...inputs, ...row });
    if (isProblem(travel)) return travel;
    shanks.push({ play: travel["play"] ?? Number.NaN, stiffness: Number(row["stiffness"]) });
  }
  return { slip: slipUnder(found["shanksCarry"] ?? Number.NaN, shanks) };
}

const bearing = (rows: readonly Row[]): number => rows.filter((row) => Number(row["force"]) > 0).length;

export const sideLoadShare = method({
  id: "side-load-share",
  question: "Do friction or shanks hold a side load, and which shank takes how much of it?",
  inputs: {
    sideLoad: { kind: "force", symbol: "Q", says: "side load on the joint" },
    clamp: { kind: "force", symbol: "F_K", says: "clamp left in service, all bolts together" },
    friction: { kind: "ratio", as: "friction", symbol: "μ", says: "friction between the faces" },
    bolts: {
      kind: "list",
      says: "bolts whose shanks may bear",
      of: {
        clearance: { kind: "length", symbol: "c", says: "clearance in diameter, negative for interference" },
        shankDiameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "diameter of the shank" },
        stiffness: { kind: "stiffness", symbol: "k", says: "side stiffness of the shank in its holes" },
      },
    },
    travelShare: {
      kind: "ratio",
      as: "share",
      symbol: "s",
      says: "share of the clearance run through before a shank bears",
      default: "1",
    },
  },
  procedure: {
    says: "friction holds first; beyond it the slip is found at which the shanks carry the rest, the tightest first",
    source: shankSprings,
    run,
    remarks: (inputs) => {
      const rows = rowsOf(inputs, "bolts");
      return [`${bearing(rows)} of ${rows.length} shanks bear`];
    },
  },
  each: {
    bolts: {
      ...toBear,
      force: "stiffness * max(0, slip - play)",
      shearStress: "force / (pi / 4 * shankDiameter ^ 2)",
    },
  },
  steps: { ...held, held: "sideLoad <= slipCapacity", largest: "largest(bolts.force)" },
  between: {
    shanksCarry: { kind: "force", symbol: "Q_s", says: "load left to the shanks" },
    "bolts.play": { kind: "length", symbol: "c_0", says: "slip until the shank bears" },
  },
  outputs: {
    slipCapacity: { kind: "force", symbol: "Q_R", says: "side load that friction holds" },
    held: { kind: "yes/no", says: "friction alone holds" },
    slip: { kind: "length", symbol: "s_Q", says: "slip of one part over the other" },
    bolts: {
      kind: "list",
      says: "shanks in the order given",
      of: {
        force: { kind: "force", symbol: "Q_i", says: "side force on the shank" },
        shearStress: { kind: "stress", symbol: "τ_i", says: "shear stress in the shank, one shear plane" },
      },
    },
    largest: { kind: "force", symbol: "Q_max", says: "largest side force on a shank" },
  },
  limits: [
    { that: 'sideLoad >= "0 kN"', else: "a side load has no sign here", hint: "give its size" },
    { that: 'clamp >= "0 kN"', else: "faces that are apart do not rub" },
    {
      that: "smallest(bolts.stiffness) > 0",
      else: "a shank without stiffness carries nothing",
      hint: "leave the bolt out",
    },
    { that: "travelShare > 0", else: "a shank with clearance does not bear at once" },
  ],
  sources: { "*": shankSprings },
  notes: [
    "holes in line at the start: the parts slip by the whole clearance before a shank bears on both; 50 % where it is tight in one part and in the middle of the other",
    "friction keeps its share after slip; NASA-STD-5020 does not count friction for strength (from memory): put friction at 0 to leave it out",
    "shanks that are not proven to fit are not counted on: give the loosest clearance",
  ],
});
