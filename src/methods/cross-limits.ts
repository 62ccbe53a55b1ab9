// What two or three inputs must be to each other, whichever method takes them in.
import { type Source, source } from "../source.ts";
import type { Limit } from "./method.ts";

const forceFits: Source = source({
  body: "ANSI",
  title: "ANSI B4.1, force fits: 0.05 to 0.4 % of the diameter, 3 % at the smallest sizes",
  known: "memory",
});

/** An interference against its diameter; a clearance is a negative one. */
export const interferenceOver = (interference: string, diameter: string): readonly Limit[] => [
  {
    that: `abs(${interference}) <= 0.03 * ${diameter}`,
    else: "no fit is so far from its diameter",
    hint: "was mm entered for um?",
    source: forceFits,
  },
  {
    that: `abs(${interference}) <= 0.004 * ${diameter}`,
    else: "more than the heaviest force fits of this diameter",
    hint: "was mm entered for um?",
    source: forceFits,
    warn: "advice",
  },
];

/** A size as read against the size that was meant. */
export const nearNominal = (reading: string, nominal: string): readonly Limit[] => [
  {
    that: `abs(${reading} - ${nominal}) <= 0.05 * ${nominal}`,
    else: "the reading is not one of this nominal size",
    hint: "is one of the two in another unit?",
    source: source({ title: "oversize steps stay within a few percent of nominal", known: "practice" }),
  },
];
