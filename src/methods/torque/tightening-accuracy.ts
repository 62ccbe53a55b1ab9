// How closely does a way of tightening meet a wanted preload?

import { isProblem } from "../../problem.ts";
import {
  tighteningAccuracy as findAccuracy,
  tighteningAccuracySource,
  tighteningAccuracyTable,
} from "../../tables/tightening-accuracy.ts";
import { textOf } from "../inside.ts";
import { lookUp } from "../look-up.ts";
import { method } from "../method.ts";

const procedure = lookUp(
  tighteningAccuracyTable,
  "the row of this way of tightening",
  (inputs) => {
    const row = findAccuracy(textOf(inputs, "way") ?? "");
    return isProblem(row) ? row : [{ ...row, source: tighteningAccuracySource }];
  },
  ([row]) => ({ least: row?.least ?? Number.NaN, most: row?.most ?? Number.NaN }),
);

export const tighteningAccuracy = method({
  id: "tightening-accuracy",
  question: "How closely does this way of tightening meet a wanted preload?",
  inputs: { way: { kind: "text", says: "way of tightening, such as torque wrench" } },
  procedure,
  outputs: {
    least: { kind: "ratio", symbol: "s_min", says: "half width about the wanted preload, least printed" },
    most: { kind: "ratio", symbol: "s_max", says: "half width about the wanted preload, most printed" },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: ["an estimate to start from: a trial on the bolts of the job replaces it"],
});
