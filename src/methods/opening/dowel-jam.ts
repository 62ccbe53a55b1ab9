// How far may the upper half tilt before its dowels jam?
import { method } from "../method.ts";
import { pegInHole, selfLocking } from "../sources.ts";

export const dowelJam = method({
  id: "dowel-jam",
  question: "How far may the upper half tilt before its dowels jam?",
  inputs: {
    clearance: { kind: "length", symbol: "c", says: "clearance of the dowel on the diameter" },
    engagedLength: { kind: "length", symbol: "L", says: "length of dowel still engaged" },
    friction: {
      kind: "ratio",
      as: "friction",
      symbol: "μ",
      says: "friction of the dowel in its hole",
      optional: true,
    },
  },
  steps: { tiltLimit: "clearance / engagedLength", selfLockingOffset: "engagedLength / (2 * friction)" },
  outputs: {
    tiltLimit: { kind: "ratio", symbol: "θ", says: "tilt at which both ends of the dowel touch" },
    selfLockingOffset: {
      kind: "length",
      symbol: "e",
      says: "pull this far off the dowel line jams for good",
      optional: true,
    },
  },
  limits: [
    { that: "clearance > 0", else: "a dowel without clearance allows no tilt" },
    { that: "engagedLength > 0", else: "the dowels are clear: no limit is left" },
    { that: "friction > 0", else: "without friction nothing jams" },
  ],
  sources: { tiltLimit: pegInHole, selfLockingOffset: selfLocking },
  notes: ["the limit opens as the gap grows: the first millimetres need the tightest control"],
  cautions: ["C2", "C3"],
});
