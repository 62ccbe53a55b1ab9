// Which bolt of a group carries most of a load in the plane of the joint?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { cellNumber, type Row, rowsOf } from "../inside.ts";
import { type Insides, method, type Steps } from "../method.ts";
import { groupShear } from "../sources.ts";

const group: Steps = {
  totalArea: "sum(bolts.area)",
  centroidX: "sum(bolts.area * bolts.x) / totalArea",
  centroidY: "sum(bolts.area * bolts.y) / totalArea",
  forceX: "sum(force.x)",
  forceY: "sum(force.y)",
  groupMoment: "sum((at.x - centroidX) * force.y - (at.y - centroidY) * force.x)",
  polarSpread: "sum(bolts.area * ((bolts.x - centroidX) ^ 2 + (bolts.y - centroidY) ^ 2)) / totalArea", // second moment over area
};

const squareMicrometre = 1e-12; // m²: nearer together than this the bolts are one bolt

/** Areas are given for all bolts or for none; none given means equal ones, written as 1 mm² each. */
function withAreas(bolts: readonly Row[]): readonly Row[] | Problem {
  const lacking = bolts.findIndex((bolt) => cellNumber(bolt, "area") === undefined);
  if (lacking < 0) return bolts;
  if (bolts.some((bolt) => cellNumber(bolt, "area") !== undefined))
    return problem({
      code: "missing-input",
      what: `bolts ${lacking + 1}`,
      got: "no area",
      must: "be given area",
      hint: "give an area for every bolt, or for none when all are equal",
    });
  return bolts.map((bolt) => ({ ...bolt, area: 1e-6 }));
}

function run(inputs: Insides): Insides | Problem {
  const bolts = withAreas(rowsOf(inputs, "bolts"));
  if (isProblem(bolts)) return bolts;
  const found = evaluateSteps(group, { ...inputs, bolts });
  if (isProblem(found)) return found;
  const equalBolts = rowsOf(inputs, "bolts").some((bolt) => cellNumber(bolt, "area") === undefined)
    ? bolts.length
    : 0;
  if ((found["polarSpread"] ?? 0) > squareMicrometre) return { ...found, bolts, equalBolts, centroid: [{}] };
  return problem({
    code: "limit",
    what: "bolts",
    got: bolts.length === 1 ? "one bolt" : "all at one point",
    must: "lie apart",
    why: "bolts at one point have no arm against a moment",
    hint: "give each bolt its x and y",
  });
}

export const boltGroupShear = method({
  id: "bolt-group-shear",
  question: "Which bolt of a group carries most of a load in the plane of the joint?",
  inputs: {
    bolts: {
      kind: "list",
      says: "bolts of the group",
      of: {
        x: { kind: "length", symbol: "x", says: "place across" },
        y: { kind: "length", symbol: "y", says: "place along" },
        area: { kind: "area", symbol: "A", says: "area in shear, for all bolts or for none", optional: true },
      },
    },
    force: {
      kind: "list",
      says: "load in the plane, one row for each force",
      of: {
        x: { kind: "force", symbol: "P_x", says: "part along x" },
        y: { kind: "force", symbol: "P_y", says: "part along y" },
      },
    },
    at: {
      kind: "list",
      says: "point where the load acts, one row for each force",
      of: {
        x: { kind: "length", symbol: "x_P", says: "place across" },
        y: { kind: "length", symbol: "y_P", says: "place along" },
      },
    },
  },
  procedure: {
    says: "areas that are not given are taken as equal; the centroid is found first",
    source: groupShear,
    gives: {
      totalArea: { kind: "area", symbol: "A_g" },
      centroidX: { kind: "length", symbol: "x_c" },
      centroidY: { kind: "length", symbol: "y_c" },
      forceX: { kind: "force", symbol: "V_x" },
      forceY: { kind: "force", symbol: "V_y" },
      groupMoment: { kind: "torque", symbol: "M" },
      polarSpread: { kind: "area", symbol: "r_p²" },
      equalBolts: { kind: "count", says: "bolts without an area" },
    },
    givesRows: { bolts: { area: { kind: "area", symbol: "A" } }, centroid: {} },
    run,
  },
  each: {
    centroid: { x: "centroidX", y: "centroidY" },
    bolts: {
      share: "area / totalArea",
      momentX: "0 - groupMoment / polarSpread * share * (y - centroidY)",
      momentY: "groupMoment / polarSpread * share * (x - centroidX)",
      direct: "share * sqrt(forceX ^ 2 + forceY ^ 2)",
      moment: "sqrt(momentX ^ 2 + momentY ^ 2)",
      resultant: "sqrt((share * forceX + momentX) ^ 2 + (share * forceY + momentY) ^ 2)",
    },
  },
  steps: { ...group, largest: "largest(bolts.resultant)" },
  between: {
    totalArea: { kind: "area", symbol: "A_g", says: "area of all bolts" },
    centroidX: { kind: "length", symbol: "x_c", says: "centroid across" },
    centroidY: { kind: "length", symbol: "y_c", says: "centroid along" },
    forceX: { kind: "force", symbol: "V_x", says: "load along x" },
    forceY: { kind: "force", symbol: "V_y", says: "load along y" },
    polarSpread: { kind: "area", symbol: "r_p²", says: "mean square distance from the centroid" },
    "bolts.share": { kind: "ratio", symbol: "s", says: "share of the direct load" },
    "bolts.momentX": { kind: "force", symbol: "F″_x", says: "from the moment, along x" },
    "bolts.momentY": { kind: "force", symbol: "F″_y", says: "from the moment, along y" },
  },
  outputs: {
    centroid: {
      kind: "list",
      says: "centroid of the bolts",
      of: { x: { kind: "length", symbol: "x_c" }, y: { kind: "length", symbol: "y_c" } },
    },
    bolts: {
      kind: "list",
      says: "forces on the bolts, in the order given",
      of: {
        direct: { kind: "force", symbol: "F′", says: "direct part" },
        moment: { kind: "force", symbol: "F″", says: "part from the moment" },
        resultant: { kind: "force", symbol: "F", says: "both together" },
      },
    },
    largest: { kind: "force", symbol: "F_max", says: "largest force on a bolt" },
    groupMoment: { kind: "torque", symbol: "M", says: "moment about the centroid" },
  },
  limits: [
    {
      that: "smallest(bolts.area) > 0",
      else: "a bolt without area carries nothing",
      hint: "leave the bolt out",
    },
    {
      that: "equalBolts == 0",
      else: "no area is given, so all bolts are taken as equal and their areas say nothing",
      hint: "give each bolt its area in shear",
      warn: "advice",
    },
    { that: "count(force.x) == count(at.x)", else: "each force acts at one point" },
  ],
  sources: { "*": groupShear },
  notes: [
    "the parts are taken as rigid and the bolts as equal springs; friction between the parts is left out",
    "clearance holes share the load unevenly: see side-load-share",
  ],
});
