// What are the diameters and the stress area of a unified inch thread?
import { isProblem } from "../../problem.ts";
import { unifiedThread as findThread, unifiedThreadTable } from "../../tables/threads-unified.ts";
import { textOf } from "../inside.ts";
import { method } from "../method.ts";
import { circle, unifiedStressArea } from "../sources.ts";

const inch = 0.0254; // m, exact
const [basicSizes = unifiedStressArea] = unifiedThreadTable.sources;

export const unifiedThread = method({
  id: "unified-thread",
  question: "What are the diameters and the stress area of a unified inch thread?",
  inputs: { designation: { kind: "text", says: "thread designation, such as 3/8-24 UNF or 1/2-13" } },
  procedure: {
    says: "the row of the thread table that the designation names; its diameters are printed to four places",
    source: basicSizes,
    run: (inputs) => {
      const row = findThread(textOf(inputs, "designation") ?? "");
      if (isProblem(row)) return row;
      return {
        majorDiameter: row.diameter_in * inch,
        pitch: inch / row.threadsPerInch,
        pitchDiameter: row.pitchDiameter_in * inch,
        minorDiameterInternal: row.minorDiameterInternal_in * inch,
        minorDiameterExternal: row.minorDiameterUnr_in * inch,
      };
    },
  },
  steps: {
    stressDiameter: "pitchDiameter - 2 * 0.162380 * pitch",
    stressArea: "pi / 4 * stressDiameter^2",
    shankArea: "pi / 4 * majorDiameter^2",
  },
  outputs: {
    majorDiameter: { kind: "length", symbol: "d", says: "major diameter" },
    pitch: { kind: "length", symbol: "p", says: "pitch" },
    pitchDiameter: { kind: "length", symbol: "d_2", says: "pitch diameter" },
    minorDiameterInternal: { kind: "length", symbol: "D_1", says: "minor diameter of the internal thread" },
    minorDiameterExternal: {
      kind: "length",
      symbol: "d_3",
      says: "minor diameter of the external thread, UNR reference",
    },
    stressDiameter: { kind: "length", symbol: "d_s", says: "diameter of the stress area" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    shankArea: { kind: "area", symbol: "A_d", says: "area of a shank of the major diameter" },
  },
  limits: [],
  sources: { "*": unifiedStressArea, shankArea: circle },
  notes: ["the older UN root is smaller than the UNR reference minor diameter shown here"],
});
