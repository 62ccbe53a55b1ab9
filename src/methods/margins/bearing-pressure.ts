// What pressure stands under the nut, the head or a washer?
import { method } from "../method.ts";
import { bearingAnnulus, spread45 } from "../sources.ts";

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
      default: "0 mm",
    },
    spreadAngle: {
      kind: "angle",
      symbol: "β",
      says: "angle at which a washer spreads the load",
      default: "45 deg",
    },
    limitPressure: {
      kind: "stress",
      symbol: "p_G",
      says: "limiting surface pressure of the softest face",
      optional: true,
    },
  },
  steps: {
    spreadDiameter: "outerDiameter + 2 * washerThickness * tan(spreadAngle)",
    area: "pi / 4 * (spreadDiameter^2 - innerDiameter^2)",
    pressure: "force / area",
    utilisation: "pressure / limitPressure",
  },
  between: { spreadDiameter: { kind: "length", symbol: "d_e", says: "outside diameter after the washer" } },
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
    { that: "utilisation <= 1", else: "the face is pressed in", warn: "advice" },
  ],
  sources: { "*": bearingAnnulus, spreadDiameter: spread45 },
  notes: ["the spread ends at the washer's own outside diameter; a thin or soft washer dishes"],
});
