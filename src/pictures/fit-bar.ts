// Tolerance bands of hole and shaft, with the real pair where it is known.

import type { UnitChoice } from "../methods/solution.ts";
import { setText } from "../report/figure-text.ts";
import { type Given, maybe, number } from "./fields.ts";
import { micrometre } from "./lengths.ts";
import { picture } from "./picture.ts";

const of = {
  size: number("length"),
  holeMax: number("length"),
  holeMin: number("length"),
  shaftMax: number("length"),
  shaftMin: number("length"),
  hole: maybe("length"),
  shaft: maybe("length"),
};

export type Fit = Given<typeof of>;

export const fitBar = picture({
  id: "fit-bar",
  question: "How much clearance or interference do the two tolerance classes allow, and what has this pair?",
  of,
  model: (fit: Fit) => fit,
  says: (fit, unitOf) => {
    const [least, most] = [fit.holeMin - fit.shaftMax, fit.holeMax - fit.shaftMin].map(clearanceWords);
    const own = pairOf(fit);
    return `The classes allow from ${least} to ${most} at ${setText(fit.size, "length", unitOf("length"))}.${own === undefined ? "" : ` This pair: ${own}.`}`;
  },
  table: (fit, unitOf) => ({ title: "fit as a table", head: ["what", "value"], rows: rowsOf(fit, unitOf) }),
});

function rowsOf(fit: Fit, unitOf: UnitChoice): readonly (readonly string[])[] {
  const length = (si: number) => setText(si, "length", unitOf("length"));
  const own = pairOf(fit);
  return [
    ["nominal size", length(fit.size)],
    ["largest hole", length(fit.holeMax)],
    ["smallest hole", length(fit.holeMin)],
    ["largest shaft", length(fit.shaftMax)],
    ["smallest shaft", length(fit.shaftMin)],
    ["largest clearance", small(fit.holeMax - fit.shaftMin)],
    ["least clearance", small(fit.holeMin - fit.shaftMax)],
    ...(fit.hole === undefined ? [] : [["this hole", length(fit.hole)]]),
    ...(fit.shaft === undefined ? [] : [["this shaft", length(fit.shaft)]]),
    ...(own === undefined ? [] : [["this pair", own]]),
  ];
}

const pairOf = ({ hole, shaft }: Fit): string | undefined =>
  hole === undefined || shaft === undefined ? undefined : clearanceWords(hole - shaft);

const small = (si: number): string => setText(si, undefined, micrometre, 4);

export const clearanceWords = (si: number): string =>
  si < 0 ? `${small(-si)} interference` : `${small(si)} clearance`;
