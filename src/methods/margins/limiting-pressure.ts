// What surface pressure may this material bear under a head, nut or washer?
import { limitingPressure as findPressure, limitingPressureTable } from "../../tables/limiting-pressures.ts";
import { textOf } from "../inside.ts";
import { lookUp, one } from "../look-up.ts";
import { method } from "../method.ts";

const procedure = lookUp(
  limitingPressureTable,
  "the row of this material",
  (inputs) => one(findPressure(textOf(inputs, "material") ?? "")),
  ([row]) => ({ limitPressure: (row?.pressure_MPa ?? Number.NaN) * 1e6 }),
);

export const limitingPressure = method({
  id: "limiting-pressure",
  question: "What surface pressure is printed as the limit of this material?",
  inputs: { material: { kind: "text", says: "material, such as GJS-400-15" } },
  procedure,
  outputs: {
    limitPressure: { kind: "stress", symbol: "p_G", says: "limiting surface pressure" },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: [
    "for holes without a chamfer: a chamfer takes bearing face",
    "the owner or design engineer may set a limit of their own",
  ],
});
