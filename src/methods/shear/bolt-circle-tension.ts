// How much does the farthest bolt of a circle pull against a tilting moment?
import { method } from "../method.ts";
import { boltCircle, lineLoad } from "../sources.ts";

export const boltCircleTension = method({
  id: "bolt-circle-tension",
  question: "How much does the farthest bolt of a circle pull against a tilting moment?",
  inputs: {
    moment: { kind: "torque", symbol: "M", says: "moment that tilts the flange" },
    circleRadius: { kind: "length", symbol: "R", says: "radius of the bolt circle" },
    count: { kind: "count", symbol: "N", says: "number of bolts" },
    form: {
      kind: "text",
      says: "bolts one by one, or spread into a line load",
      choices: ["bolts", "line load"],
      default: "bolts",
    },
  },
  variants: {
    by: "form",
    sources: { bolts: boltCircle, "line load": lineLoad },
    sets: {
      bolts: { largest: "2 * moment / (circleRadius * count)" },
      "line load": { largest: "2 * moment / (pi * circleRadius) * sin(pi / count)" },
    },
  },
  outputs: { largest: { kind: "force", symbol: "F_max", says: "pull on the farthest bolt" } },
  limits: [
    { that: "circleRadius > 0", else: "bolts at one point have no arm" },
    {
      that: "count >= 3",
      else: "two bolts do not hold every axis",
      hint: "for two bolts divide the moment by their distance",
    },
  ],
  sources: { "*": boltCircle },
  notes: [
    "the flange is taken as stiff and as tilting about the middle of the circle; a flange that pivots on its edge loads the bolts otherwise",
    "the pull is that of the moment alone, before preload",
  ],
});
