// What are the diameters and the stress area of an ISO metric thread?
import { isProblem } from "../../problem.ts";
import { metricThread as findThread, metricThreadSources } from "../../tables/threads-metric.ts";
import { textOf } from "../inside.ts";
import { method } from "../method.ts";
import { circle, isoProfile, isoStressArea } from "../sources.ts";

export const metricThread = method({
  id: "metric-thread",
  question: "What are the diameters and the stress area of an ISO metric thread?",
  inputs: { designation: { kind: "text", says: "thread designation, such as M24 or M24x2" } },
  procedure: {
    says: "the row of the thread table that the designation names",
    source: metricThreadSources.sizes,
    run: (inputs) => {
      const row = findThread(textOf(inputs, "designation") ?? "");
      return isProblem(row) ? row : { majorDiameter: row.diameter_mm / 1000, pitch: row.pitch_mm / 1000 };
    },
  },
  steps: {
    triangleHeight: "sqrt(3) / 2 * pitch",
    pitchDiameter: "majorDiameter - 3 / 4 * triangleHeight",
    minorDiameterInternal: "majorDiameter - 5 / 4 * triangleHeight",
    minorDiameterExternal: "majorDiameter - 17 / 12 * triangleHeight",
    stressDiameter: "(pitchDiameter + minorDiameterExternal) / 2",
    stressArea: "pi / 4 * stressDiameter^2",
    shankArea: "pi / 4 * majorDiameter^2",
  },
  between: { triangleHeight: { kind: "length", symbol: "H", says: "height of the thread triangle" } },
  outputs: {
    majorDiameter: { kind: "length", symbol: "d", says: "major diameter" },
    pitch: { kind: "length", symbol: "p", says: "pitch" },
    pitchDiameter: { kind: "length", symbol: "d_2", says: "pitch diameter" },
    minorDiameterInternal: { kind: "length", symbol: "D_1", says: "minor diameter of the internal thread" },
    minorDiameterExternal: { kind: "length", symbol: "d_3", says: "minor diameter of the external thread" },
    stressDiameter: { kind: "length", symbol: "d_s", says: "diameter of the stress area" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    shankArea: { kind: "area", symbol: "A_d", says: "area of a shank of the major diameter" },
  },
  limits: [],
  sources: { "*": isoProfile, stressDiameter: isoStressArea, stressArea: isoStressArea, shankArea: circle },
  notes: ["the shank area is that of a shank of the thread's major diameter; a fitted shank is larger"],
});
