// From which load does the edge of the bore begin to open, although the gross clamp is still there?
// Strip of width w from the bore, bolt a from the bore edge, pressure line c inside it: the contact
// pressure at the bore edge reaches zero when F/P = (4 w + 6 c)/(4 w - 6 a).
import { method } from "../method.ts";
import { edgeStatics } from "../sources.ts";

export const edgeOpening = method({
  id: "edge-opening",
  question: "Does the edge of the bore stay shut?",
  inputs: {
    residualClamp: { kind: "force", symbol: "F_R", says: "least clamp force of one bolt before the load" },
    externalLoad: { kind: "force", symbol: "P", says: "outside load per bolt" },
    stripWidth: { kind: "length", symbol: "w", says: "width of the flange strip from the bore" },
    boltToEdge: { kind: "length", symbol: "a", says: "bolt from the bore edge" },
    pressureLine: {
      kind: "length",
      symbol: "c",
      says: "line of the pressure load inside the bore edge",
      default: "0 mm",
      matters: "pressure that reaches further inside asks for more clamp",
    },
  },
  steps: {
    ratio: "residualClamp / externalLoad",
    requiredRatio: "(4 * stripWidth + 6 * pressureLine) / (4 * stripWidth - 6 * boltToEdge)",
    shut: "ratio >= requiredRatio",
  },
  outputs: {
    ratio: { kind: "ratio", symbol: "q", says: "clamp over load" },
    requiredRatio: {
      kind: "ratio",
      symbol: "q_req",
      says: "clamp over load at which the edge begins to open",
    },
    shut: { kind: "yes/no", says: "does the bore edge stay shut" },
  },
  limits: [
    { that: "externalLoad > 0", else: "without a load nothing opens" },
    { that: "residualClamp >= 0", else: "a bolt is not pushed" },
    { that: "stripWidth > 0", else: "no strip is described" },
    { that: "boltToEdge > 0", else: "the bolt stands outside the bore" },
    { that: "boltToEdge < stripWidth", else: "the bolt stands inside the strip" },
    { that: "pressureLine >= 0", else: "the pressure acts inside the bore edge" },
    {
      that: '4 * stripWidth - 6 * boltToEdge > "0 mm"',
      else: "the bolt stands beyond two thirds of the strip: the edge opens under its own clamp",
      hint: "is the distance measured from the bore edge?",
    },
    {
      that: "ratio >= requiredRatio",
      else: "the gross clamp may be enough, yet the bore edge opens",
      warn: "advice",
    },
  ],
  sources: { "*": edgeStatics },
  notes: [
    "rigid strip, linear contact pressure; a bolt in the middle with the pressure at the edge needs 4",
    "whether an open edge leaks depends on where it seals: the engineer answers",
  ],
  cautions: ["C8"],
});
