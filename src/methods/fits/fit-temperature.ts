// By how much must one part be warmer or colder than the other to slide?
import { interferenceOver } from "../cross-limits.ts";
import { method } from "../method.ts";
import { freeExpansion } from "../sources.ts";

export const fitTemperature = method({
  id: "fit-temperature",
  question: "By how much must one part be warmer or colder than the other to slide freely?",
  inputs: {
    interference: { kind: "length", symbol: "δ", says: "largest interference" },
    handling: { kind: "length", symbol: "s", says: "slip wanted for handling" },
    diameter: { kind: "length", as: "fit diameter", symbol: "d", says: "diameter of the fit" },
    expansion: { kind: "expansion", symbol: "α", says: "expansion of the part that is heated or cooled" },
  },
  steps: { temperatureDifference: "(interference + handling) / (diameter * expansion)" },
  outputs: {
    temperatureDifference: {
      kind: "temperature difference",
      symbol: "ΔT",
      says: "difference between the parts",
    },
  },
  limits: [
    { that: "handling >= 0", else: "slip is a clearance" },
    { that: "interference + handling >= 0", else: "the parts are free already" },
    {
      that: 'temperatureDifference <= "350 K"',
      else: "beyond what heating or liquid nitrogen can reach without harm",
      warn: "advice",
    },
    ...interferenceOver("interference", "diameter"),
  ],
  sources: { temperatureDifference: freeExpansion },
  notes: [
    "it is the difference that frees: soaking both parts together frees nothing",
    "expansion is lower in the cold: steel is near 8.5e-6 1/K down to liquid nitrogen (from memory)",
    "after a cold fit wait until the bolt is back at room temperature before tightening",
  ],
  cautions: ["C4", "C5"],
});
