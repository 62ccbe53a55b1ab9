// How far is the joint from opening?
import { method } from "../method.ts";
import { separationNasa } from "../sources.ts";

export const separationMargin = method({
  id: "separation-margin",
  question: "How far is the joint from opening under its outside load?",
  inputs: {
    minimumPreload: { kind: "force", symbol: "F_min", says: "least preload left in service" },
    externalLoad: { kind: "force", symbol: "P", says: "outside load per bolt, as a pull" },
    factorOfSafety: {
      kind: "ratio",
      symbol: "n",
      says: "owner's factor on the load",
      default: "1",
      matters: "a factor of 1 leaves nothing in reserve",
    },
    loadFactor: {
      kind: "ratio",
      as: "share",
      symbol: "φ",
      says: "load factor, when credit is taken for the load share",
      default: "0",
    },
  },
  steps: {
    residualClamp: "minimumPreload - (1 - loadFactor) * externalLoad",
    separationLoad: "minimumPreload / (1 - loadFactor)",
    ratio: "separationLoad / externalLoad",
    margin: "ratio / factorOfSafety - 1",
  },
  outputs: {
    residualClamp: { kind: "force", symbol: "F_R", says: "clamp left between the faces" },
    separationLoad: { kind: "force", symbol: "P_sep", says: "outside load that opens the joint" },
    ratio: { kind: "ratio", symbol: "q", says: "separation load over outside load" },
    margin: { kind: "ratio", symbol: "MS", says: "margin after the owner's factor" },
  },
  limits: [
    { that: "externalLoad > 0", else: "without a load nothing separates" },
    { that: "minimumPreload >= 0", else: "a bolt is not pushed" },
    { that: "factorOfSafety > 0", else: "no margin is defined" },
    { that: "loadFactor < 1", else: "the clamped parts would carry nothing" },
    {
      that: 'residualClamp >= "0 N"',
      else: "the joint is open: no clamp is left, and the figure is what lacks",
      warn: "spoils",
      spoils: ["residualClamp"],
    },
    { that: "margin >= 0", else: "the joint opens before the factored load", warn: "advice" },
  ],
  sources: { "*": separationNasa },
  notes: [
    "without load factor: no credit for the load share, as NASA-STD-5020; with it, credit as NASA TM-106943",
    "gross separation says nothing about the edge of the bore or about leakage",
  ],
});
