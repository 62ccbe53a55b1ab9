// What do the shank, the wall of the hole, the edge and the net section carry of a side load?
import { isProblem, type Problem, problem } from "../../problem.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { cellNumber, numberOf, type Row, rowsOf, textOf } from "../inside.ts";
import { type Declaration, type Insides, method, type Steps } from "../method.ts";
import { edgePractice, shearAreas } from "../sources.ts";

const loads: Steps = {
  shearStress: "shear / (count * planes * planeArea)",
  bearingStress: "shear / (count * shankDiameter * plateThickness)",
  tearOutStress: "shear / (count * 2 * edgeDistance * plateThickness)",
  netStress: "shear / (netWidth * plateThickness)",
  shearFactor: "shearStrength / shearStress",
  bearingFactor: "bearingStrength / bearingStress",
  tearOutFactor: "tearOutStrength / tearOutStress",
  netFactor: "netStrength / netStress",
  shearCapacity: "shear * shearFactor / wantedFactor",
  bearingCapacity: "shear * bearingFactor / wantedFactor",
  tearOutCapacity: "shear * tearOutFactor / wantedFactor",
  netCapacity: "shear * netFactor / wantedFactor",
};
const planes: Readonly<Record<string, Steps>> = {
  shank: { planeArea: "pi / 4 * shankDiameter ^ 2", ...loads },
  threads: { planeArea: "threadArea", ...loads },
};

const modes = { shear: "shear", bearing: "bearing", tearOut: "tear-out", net: "net section" } as const;

/** Strengths come as fields of their own or as one row of the list; twice is refused. */
function strengthsOf(inputs: Insides): Readonly<Record<string, number>> | Problem {
  const row = rowsOf(inputs, "strengths")[0] ?? {};
  const found: Record<string, number> = {};
  for (const mode of Object.keys(modes)) {
    const [field, listed] = [numberOf(inputs, `${mode}Strength`), cellNumber(row, mode)];
    if (field !== undefined && listed !== undefined)
      return problem({
        code: "given-twice",
        what: `${mode}Strength`,
        got: "a field and a row of strengths",
        must: "be given once",
      });
    const strength = field ?? listed;
    if (strength !== undefined) found[`${mode}Strength`] = strength;
  }
  return found;
}

function run(inputs: Insides): Insides | Problem {
  const strengths = strengthsOf(inputs);
  if (isProblem(strengths)) return strengths;
  const plane = textOf(inputs, "shearPlane") ?? "shank";
  if (plane === "threads" && numberOf(inputs, "threadArea") === undefined)
    return problem({
      code: "missing-input",
      what: "area of the thread in shear",
      got: "nothing",
      must: "be given as threadArea",
      hint: "the area at the root of the thread; or move the thread out of the shear plane",
    });
  const found = evaluateSteps(planes[plane] ?? {}, { ...inputs, ...strengths });
  if (isProblem(found)) return found;
  const factors = Object.entries(modes).flatMap(([mode, words]): Row[] => {
    const factor = found[`${mode}Factor`];
    const stress = found[`${mode}Stress`];
    const strength = strengths[`${mode}Strength`];
    return factor === undefined || stress === undefined || strength === undefined
      ? []
      : [{ mode: words, stress, strength, factor }];
  });
  return { ...strengths, factors };
}

const strength = (says: string, symbol: string) =>
  ({ kind: "stress", symbol, says, optional: true }) as const;
const capacity = (says: string, symbol: string) => ({ kind: "force", symbol, says, optional: true }) as const;
const factor = (says: string, symbol: string) => ({ kind: "ratio", symbol, says, optional: true }) as const;

const fields = {
  shear: { kind: "force", symbol: "V", says: "side load on the joint" },
  shankDiameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "diameter of the shank" },
  plateThickness: { kind: "length", symbol: "t", says: "thickness that bears on the shank" },
  edgeDistance: {
    kind: "length",
    symbol: "a",
    says: "distance from the middle of the hole to the edge in the direction of the load",
    optional: true,
  },
  count: { kind: "count", symbol: "n", says: "bolts that share the load", default: "1" },
  planes: { kind: "count", symbol: "m", says: "shear planes through each bolt", default: "1" },
  shearPlane: {
    kind: "text",
    says: "what the shear plane cuts",
    choices: ["shank", "threads"],
    default: "shank",
    matters: "a thread in the shear plane leaves less area",
  },
  threadArea: { kind: "area", symbol: "A_r", says: "area of the thread in shear", optional: true },
  netWidth: {
    kind: "length",
    symbol: "w_n",
    says: "width of the part less its holes, across the load",
    optional: true,
  },
  strengths: {
    kind: "list",
    says: "strengths in one row",
    optional: true,
    one: true,
    of: {
      shear: strength("strength in shear", "S_s"),
      bearing: strength("strength in bearing", "S_p"),
      tearOut: strength("strength in shear of the part", "S_e"),
      net: strength("strength in tension of the part", "S_t"),
    },
  },
  shearStrength: strength("strength of the bolt in shear", "S_s"),
  bearingStrength: strength("strength in bearing, of the softer of bolt and part", "S_p"),
  tearOutStrength: strength("strength of the part in shear", "S_e"),
  netStrength: strength("strength of the part in tension", "S_t"),
  wantedFactor: {
    kind: "ratio",
    symbol: "n_d",
    says: "factor wanted on the strengths",
    default: "1",
    matters: "a factor of 1 leaves nothing in reserve",
  },
} as const satisfies Declaration["inputs"];

const readWithoutThread = Object.keys(fields).filter((name) => name !== "threadArea");

export const shearBearingTearOut = method({
  id: "shear-bearing-tear-out",
  question: "What do shank, hole wall, edge and net section carry of a side load?",
  inputs: fields,
  procedure: {
    says: "strengths from the fields or the row; a factor for each strength that is given",
    source: shearAreas,
    reads: { shank: readWithoutThread },
    gives: {
      shearStrength: { kind: "stress", symbol: "S_s" },
      bearingStrength: { kind: "stress", symbol: "S_p" },
      tearOutStrength: { kind: "stress", symbol: "S_e" },
      netStrength: { kind: "stress", symbol: "S_t" },
    },
    run,
  },
  variants: { by: "shearPlane", sets: planes },
  between: { planeArea: { kind: "area", symbol: "A_s", says: "area in one shear plane" } },
  outputs: {
    shearStress: { kind: "stress", symbol: "τ", says: "shear stress in the bolt" },
    bearingStress: { kind: "stress", symbol: "σ_p", says: "pressure of the shank on the hole" },
    tearOutStress: { kind: "stress", symbol: "τ_e", says: "shear stress toward the edge", optional: true },
    netStress: { kind: "stress", symbol: "σ_n", says: "tension in the net section", optional: true },
    factors: {
      kind: "list",
      says: "strength over stress, for each strength given",
      of: {
        mode: { kind: "text", says: "way to fail" },
        stress: { kind: "stress", says: "stress" },
        strength: { kind: "stress", says: "strength" },
        factor: { kind: "ratio", says: "strength over stress" },
      },
    },
    shearFactor: factor("strength over stress in shear", "n_s"),
    bearingFactor: factor("strength over stress in bearing", "n_p"),
    tearOutFactor: factor("strength over stress toward the edge", "n_e"),
    netFactor: factor("strength over stress in the net section", "n_n"),
    shearCapacity: capacity("side load that shear allows", "V_s"),
    bearingCapacity: capacity("side load that bearing allows", "V_p"),
    tearOutCapacity: capacity("side load that the edge allows", "V_e"),
    netCapacity: capacity("side load that the net section allows", "V_n"),
  },
  limits: [
    { that: "shear > 0", else: "nothing is loaded" },
    { that: "plateThickness > 0", else: "no area is left to carry" },
    { that: "edgeDistance > 0", else: "no area is left to carry" },
    {
      that: "edgeDistance >= 1.5 * shankDiameter",
      else: "so near to the edge the part bulges and tears before it shears",
      source: edgePractice,
      warn: "spoils",
      spoils: ["tearOutStress", "tearOutFactor", "tearOutCapacity", "factors"],
    },
    { that: "threadArea > 0", else: "no area is left to carry" },
    {
      that: "netWidth > 0",
      else: "the holes take the whole width",
      hint: "net width is the width of the part less the holes in one row",
    },
    { that: "count >= 1", else: "at least one bolt carries" },
    { that: "planes >= 1", else: "a bolt is cut at least once" },
    { that: "shearStrength > 0", else: "no factor is defined" },
    { that: "bearingStrength > 0", else: "no factor is defined" },
    { that: "tearOutStrength > 0", else: "no factor is defined" },
    { that: "netStrength > 0", else: "no factor is defined" },
    { that: "wantedFactor > 0", else: "no allowed load is defined" },
  ],
  sources: { "*": shearAreas },
  notes: [
    "equal shares suppose that every bolt bears: see side-load-share where clearances differ",
    "shear strength is often taken as 0.577 of yield in tension (distortion energy); nothing is taken here, strengths are as typed",
    "count only shanks that are proven to fit",
  ],
});
