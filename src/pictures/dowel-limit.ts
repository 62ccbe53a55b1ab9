// How much tilt the dowels allow as the gap grows, with the tilt of each step on it.

import { dowelJam } from "../methods/opening/dowel-jam.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { setText } from "../report/figure-text.ts";
import { listed } from "../words.ts";
import { type Given, list, number } from "./fields.ts";
import { gapLength, slope, smallLength } from "./lengths.ts";
import { cannotDraw, picture, worked } from "./picture.ts";
import { numberIn, wordIn } from "./rows.ts";

const of = {
  clearance: number("length"),
  engagedLength: number("length"),
  planes: list({ step: "text" }, { mean: "length", tilt: "ratio" }),
};

export interface TiltAt {
  readonly step: string;
  readonly gap: number;
  readonly tilt: number;
  /** Undefined where the dowels are clear. */
  readonly allowed: number | undefined;
}

export interface DowelLimit {
  readonly clearance: number;
  readonly engagedLength: number;
  /** Gap and allowed tilt, until the dowels are clear. */
  readonly curve: readonly { readonly gap: number; readonly allowed: number }[];
  readonly steps: readonly TiltAt[];
}

export const dowelLimit = picture({
  id: "dowel-limit",
  question: "How far may the lid tilt before its dowels jam, and which step came near it?",
  of,
  by: [dowelJam],
  limited: true,
  model,
  says,
  table: ({ steps }, unitOf) => {
    const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
    return {
      title: "dowel limit as a table",
      head: ["step", `gap/${gap.label}`, `tilt/${tilt.label}`, `allowed/${tilt.label}`, "against it"],
      rows: steps.map((at) => [
        at.step,
        gap.number(at.gap),
        tilt.number(at.tilt),
        at.allowed === undefined ? "free" : tilt.number(at.allowed),
        against(at),
      ]),
    };
  },
});

const points = 120;

function model({ clearance, engagedLength, planes }: Given<typeof of>): DowelLimit | Problem {
  /** Undefined once the dowels are out of their holes. */
  const allowedAt = (gap: number): number | undefined | Problem => {
    const left = engagedLength - gap;
    if (left <= 0) return undefined;
    const found = worked(dowelJam, { clearance, engagedLength: left }, "tiltLimit");
    return isProblem(found) ? found : found.tiltLimit;
  };
  const first = allowedAt(0);
  if (isProblem(first)) return first;
  if (first === undefined) return cannotDraw("limit", "no engaged length", "be above 0");
  const curve = [{ gap: 0, allowed: first }];
  for (let i = 1; i < points; i += 1) {
    const gap = (engagedLength * i) / points;
    const allowed = allowedAt(gap);
    if (typeof allowed === "number") curve.push({ gap, allowed });
  }
  const steps: TiltAt[] = [];
  for (const row of planes) {
    const [gap, tilt] = [numberIn(row, "mean"), numberIn(row, "tilt")];
    if (gap === undefined || tilt === undefined) continue;
    const allowed = allowedAt(gap);
    if (isProblem(allowed)) return allowed;
    steps.push({ step: wordIn(row, "step") ?? "", gap, tilt, allowed });
  }
  return { clearance, engagedLength, curve, steps };
}

export const above = ({ tilt, allowed }: TiltAt): boolean => allowed !== undefined && tilt > allowed;

const against = (at: TiltAt): string => {
  if (at.allowed === undefined) return "dowels clear";
  return above(at) ? "above" : "below";
};

function says({ clearance, engagedLength, curve, steps }: DowelLimit, unitOf: UnitChoice): string {
  const [small, tilt] = [smallLength(unitOf), slope(unitOf)];
  const over = steps.filter(above);
  const start = `With ${small.set(clearance)} ${small.label} of clearance the dowels allow ${tilt.text(curve[0]?.allowed ?? 0)} at the start, more as the gap grows, and any tilt once they are clear at ${setText(engagedLength, "length", unitOf("length"))}.`;
  if (steps.length === 0) return start;
  if (over.length === 0) return `${start} Every step lies below its limit.`;
  return `${start} Above its limit: ${listed(over.map((at) => `step ${at.step} with ${tilt.number(at.tilt)} against ${tilt.text(at.allowed ?? 0)}`))}.`;
}
