// What does each sling leg carry?
import { method } from "../method.ts";
import { slingGeometry } from "../sources.ts";

export const slingLegs = method({
  id: "sling-legs",
  question: "What does each leg of the sling carry?",
  inputs: {
    weight: { kind: "force", symbol: "W", says: "weight lifted" },
    legs: { kind: "count", symbol: "n", says: "legs counted as carrying" },
    angleFromHorizontal: { kind: "angle", symbol: "β", says: "angle of the legs from the horizontal" },
    centreOffset: {
      kind: "length",
      symbol: "e",
      says: "centre of gravity off the middle of the span",
      optional: true,
    },
    span: { kind: "length", symbol: "s", says: "distance between the lugs", optional: true },
  },
  steps: {
    legForce: "weight / (legs * sin(angleFromHorizontal))",
    nearLeg: "weight * (span / 2 + centreOffset) / span",
    farLeg: "weight * (span / 2 - centreOffset) / span",
  },
  outputs: {
    legForce: { kind: "force", symbol: "S", says: "force in each leg, evenly shared" },
    nearLeg: {
      kind: "force",
      symbol: "W_near",
      says: "vertical load on the lugs nearer the centre of gravity",
      optional: true,
    },
    farLeg: {
      kind: "force",
      symbol: "W_far",
      says: "vertical load on the lugs farther away",
      optional: true,
    },
  },
  limits: [
    { that: "weight > 0", else: "nothing is lifted" },
    { that: "legs >= 1", else: "at least one leg carries" },
    { that: 'angleFromHorizontal > "0 deg"', else: "a flat sling has no upward pull" },
    { that: 'angleFromHorizontal <= "90 deg"', else: "measure the angle from the horizontal" },
    {
      that: 'angleFromHorizontal >= "30 deg"',
      else: "below 30 degrees the legs carry more than the weight",
      warn: "advice",
    },
    { that: "span > 0", else: "no span is described" },
    { that: "centreOffset >= 0", else: "give the offset without direction" },
    {
      that: "centreOffset < span / 2",
      else: "the centre of gravity lies outside the lugs: the half would tip",
    },
    {
      that: "legs <= 2",
      else: "a stiff load hangs on two of its legs (common practice, no source)",
      hint: "count two of four legs as carrying",
      warn: "spoils",
      spoils: ["legForce"],
    },
  ],
  sources: { "*": slingGeometry },
  notes: [
    "legs and eyes within their marking at that angle; an eye made for a straight pull loses most of its rating at an angle",
  ],
  cautions: ["C2"],
});
