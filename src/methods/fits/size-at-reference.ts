// What size does a part have at 20 °C, when part and gauge were read at other temperatures?
import { nearNominal } from "../cross-limits.ts";
import { method } from "../method.ts";
import { reference20 } from "../sources.ts";

export const sizeAtReference = method({
  id: "size-at-reference",
  question: "What size does a part have at 20 °C when it was measured at another temperature?",
  inputs: {
    reading: { kind: "length", as: "fit diameter", symbol: "R", says: "size as read" },
    partTemperature: { kind: "temperature", symbol: "t_p", says: "temperature of the part" },
    gaugeTemperature: {
      kind: "temperature",
      symbol: "t_g",
      says: "temperature of the gauge or setting ring",
    },
    partExpansion: { kind: "expansion", symbol: "α_p", says: "expansion of the part" },
    gaugeExpansion: { kind: "expansion", symbol: "α_g", says: "expansion of the gauge or setting ring" },
    nominal: { kind: "length", as: "fit diameter", symbol: "D", says: "nominal size" },
  },
  steps: {
    gaugeRise: 'gaugeTemperature - "20 degC"',
    partRise: 'partTemperature - "20 degC"',
    correction: "nominal * (gaugeExpansion * gaugeRise - partExpansion * partRise)",
    size: "reading + correction",
  },
  between: {
    gaugeRise: { kind: "temperature difference", symbol: "Δt_g", says: "gauge above 20 °C" },
    partRise: { kind: "temperature difference", symbol: "Δt_p", says: "part above 20 °C" },
  },
  outputs: {
    size: { kind: "length", symbol: "D_20", says: "size at 20 °C" },
    correction: { kind: "length", symbol: "ΔD", says: "what is added to the reading" },
  },
  limits: [
    { that: 'gaugeTemperature >= "-100 degC"', else: "no gauge is read so cold" },
    {
      that: 'gaugeTemperature <= "200 degC"',
      else: "no gauge is read so hot",
      hint: "was the temperature meant in degF?",
    },
    { that: 'partTemperature >= "-100 degC"', else: "no reading is taken so cold" },
    {
      that: 'partTemperature <= "200 degC"',
      else: "no reading is taken so hot",
      hint: "was the temperature meant in degF?",
    },
    ...nearNominal("reading", "nominal"),
  ],
  sources: { "*": reference20 },
});
