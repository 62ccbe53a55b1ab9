// What pressure stands under the nut, the head or a washer?
import { type Problem, problem } from "../../problem.ts";
import { numberOf } from "../inside.ts";
import { type Insides, method, type Steps } from "../method.ts";
import { bearingAnnulus, spread45 } from "../sources.ts";

const widened: Steps = { spreadDiameter: "outerDiameter + 2 * washerThickness * tan(spreadAngle)" };

/** Where the washer stops the spread of the load, so that the widest ring is never taken for granted. */
const ends: Readonly<Record<string, Steps>> = {
  "no washer": { loadedDiameter: "outerDiameter" },
  "ends at the washer's outside diameter": {
    ...widened,
    loadedDiameter: "min(spreadDiameter, washerOutsideDiameter)",
  },
  "end not given": {
    ...widened,
    loadedDiameter: "spreadDiameter",
    unendedSpread: "spreadDiameter - outerDiameter",
  },
};

function run(inputs: Insides): Insides | Problem {
  const thickness = numberOf(inputs, "washerThickness") ?? 0;
  const outside = numberOf(inputs, "washerOutsideDiameter");
  if (outside === undefined) return { spread: thickness === 0 ? "no washer" : "end not given" };
  if (thickness > 0) return { spread: "ends at the washer's outside diameter" };
  return problem({
    code: "missing-input",
    what: "thickness of the washer between",
    got: "none beside its outside diameter",
    must: "be given as washerThickness",
    hint: "leave both out where nothing lies between",
  });
}

export const bearingPressure = method({
  id: "bearing-pressure",
  question: "What pressure stands on the softest face under nut, head or washer?",
  inputs: {
    force: { kind: "force", symbol: "F", says: "largest bolt force" },
    outerDiameter: { kind: "length", symbol: "d_w", says: "outside diameter of the bearing face" },
    innerDiameter: { kind: "length", symbol: "d_h", says: "hole or chamfer diameter in that face" },
    washerThickness: {
      kind: "length",
      symbol: "h",
      says: "thickness of the washer between",
      optional: true,
    },
    washerOutsideDiameter: {
      kind: "length",
      symbol: "d_a",
      says: "outside diameter of the washer",
      optional: true,
    },
    spreadAngle: {
      kind: "angle",
      symbol: "β",
      says: "angle at which a washer spreads the load",
      default: "45 deg",
      matters: "a wider spread lowers the pressure, and 45 deg is common practice only",
    },
    limitPressure: {
      kind: "stress",
      symbol: "p_G",
      says: "limiting surface pressure of the softest face",
      optional: true,
    },
  },
  procedure: {
    says: "the spread of the load ends where the washer ends",
    source: spread45,
    reads: ["washerThickness", "washerOutsideDiameter"],
    gives: { spread: { kind: "text", says: "spread of the load through the washer" } },
    run,
  },
  variants: { by: "spread", sets: ends },
  steps: {
    area: "pi / 4 * (loadedDiameter^2 - innerDiameter^2)",
    pressure: "force / area",
    utilisation: "pressure / limitPressure",
  },
  between: {
    spreadDiameter: { kind: "length", symbol: "d_e", says: "outside diameter after the washer" },
    loadedDiameter: { kind: "length", symbol: "d_l", says: "outside diameter of the ring that carries" },
    unendedSpread: { kind: "length", symbol: "Δd_e", says: "spread beyond the face" },
  },
  outputs: {
    area: { kind: "area", symbol: "A", says: "bearing area" },
    pressure: { kind: "stress", symbol: "p", says: "bearing pressure" },
    utilisation: { kind: "ratio", symbol: "ν", says: "share of the limit", optional: true },
  },
  limits: [
    { that: "force >= 0", else: "give the force as a push on the face" },
    { that: "innerDiameter >= 0", else: "no face is described" },
    {
      that: "outerDiameter > innerDiameter",
      else: "nothing is left to press on",
      hint: "the hole is larger than the washer or nut face",
    },
    { that: "washerThickness >= 0", else: "a washer has thickness" },
    { that: 'spreadAngle >= "0 deg"', else: "a washer does not gather the load" },
    { that: 'spreadAngle < "80 deg"', else: "no washer spreads so far" },
    { that: "limitPressure > 0", else: "no share of the limit is defined" },
    { that: "washerOutsideDiameter > 0", else: "a washer has an outside diameter" },
    {
      that: "loadedDiameter > innerDiameter",
      else: "the washer ends inside the hole",
      hint: "was the bore of the washer given?",
    },
    {
      that: "spreadDiameter <= washerOutsideDiameter",
      else: "the washer ends before the spread does, so its outside diameter counts",
      warn: "advice",
    },
    {
      that: 'unendedSpread <= "0 mm"',
      else: "where the washer ends is not given, so a ring may have been counted that is not there",
      hint: "give washerOutsideDiameter",
      warn: "spoils",
      spoils: ["area", "pressure", "utilisation"],
    },
    { that: "pressure <= limitPressure", else: "the face is pressed in", warn: "advice" },
  ],
  sources: {
    "*": bearingAnnulus,
    spreadDiameter: spread45,
    loadedDiameter: spread45,
    unendedSpread: spread45,
  },
  notes: ["a thin or soft washer dishes, and spreads less"],
});
