// The lid from above with a number at each station, its tilt from two sides, and how it went step by step.
import type { UnitChoice } from "../methods/solution.ts";
import type { Problem } from "../problem.ts";
import { type Given, list, maybe, maybeList, word } from "./fields.ts";
import { gapLength, type Small, signed, slope } from "./lengths.ts";
import { cannotDraw, picture } from "./picture.ts";
import { plan } from "./place.ts";
import { numberIn, type Row, wordIn } from "./rows.ts";
import { spaced } from "./words.ts";

const of = {
  stations: list({ step: "text", x: "length", y: "length" }, { station: "text", gap: "length" }),
  planes: list(
    { step: "text" },
    { mean: "length", tiltX: "ratio", tiltY: "ratio", tilt: "ratio", twist: "length" },
  ),
  /** One limit for all steps, or a list with one for each. */
  tiltLimit: { ...maybeList({ step: "text" }, { tiltLimit: "ratio", value: "ratio" }), orNumber: "ratio" },
  twistLimit: maybe("length"),
  engagedLength: maybe("length"),
  step: word(),
  yRuns: plan.yRuns,
} as const;

export interface Station {
  readonly station: string;
  readonly x: number;
  readonly y: number;
  readonly gap: number | undefined;
}

export interface Step {
  readonly step: string;
  readonly stations: readonly Station[];
  readonly mean: number | undefined;
  readonly tiltX: number | undefined;
  readonly tiltY: number | undefined;
  readonly tilt: number | undefined;
  readonly twist: number | undefined;
  readonly tiltLimit: number | undefined;
  /** The dowels are out of their holes: no limit is left, which is not the same as no limit known. */
  readonly free: boolean;
}

export interface Gaps {
  readonly steps: readonly Step[];
  /** The step drawn. */
  readonly now: Step;
  /** Whether a limit of tilt is given for any step. */
  readonly limited: boolean;
  readonly twistLimit: number | undefined;
  readonly yUp: boolean;
}

export const gapMap = picture({
  id: "gap-map",
  question: "How does the lid hang at this step, where is it lowest, and is its tilt within the limit?",
  of,
  model,
  says,
  table,
});

type LimitOf = (step: string) => number | undefined;

function model(given: Given<typeof of>): Gaps | Problem {
  const { tiltLimit, twistLimit, step: asked } = given;
  const limitOf: LimitOf = (step) => {
    if (typeof tiltLimit === "number") return tiltLimit;
    const row = tiltLimit?.find((each) => wordIn(each, "step") === step);
    return row && (numberIn(row, "tiltLimit") ?? numberIn(row, "value"));
  };
  const steps = given.planes.map((plane) => stepOf(plane, given.stations, limitOf, given.engagedLength));
  const now = asked === undefined ? steps.at(-1) : steps.find(({ step }) => step === asked);
  if (!now)
    return asked === undefined
      ? cannotDraw("no-rows", "no steps", "have at least one")
      : cannotDraw("unknown-step", `step ${asked}`, `be one of ${steps.map(({ step }) => step).join(", ")}`);
  if (now.stations.length === 0)
    return cannotDraw("no-rows", `no stations at step ${now.step}`, "have at least one");
  return { steps, now, limited: given.tiltLimit !== undefined, twistLimit, yUp: given.yRuns === "up" };
}

function stepOf(
  plane: Row,
  stations: readonly Row[],
  limitOf: LimitOf,
  engagedLength: number | undefined,
): Step {
  const step = wordIn(plane, "step") ?? "";
  const here = stations.filter((row) => wordIn(row, "step") === step);
  return {
    step,
    stations: here.map((row, i) => ({
      station: wordIn(row, "station") ?? String(i + 1),
      x: numberIn(row, "x") ?? 0,
      y: numberIn(row, "y") ?? 0,
      gap: numberIn(row, "gap"),
    })),
    mean: numberIn(plane, "mean"),
    tiltX: numberIn(plane, "tiltX"),
    tiltY: numberIn(plane, "tiltY"),
    tilt: numberIn(plane, "tilt"),
    twist: numberIn(plane, "twist"),
    tiltLimit: limitOf(step),
    free: engagedLength !== undefined && (numberIn(plane, "mean") ?? 0) >= engagedLength,
  };
}

export const overTilt = ({ tilt, tiltLimit }: Step): boolean =>
  tilt !== undefined && tiltLimit !== undefined && tilt > tiltLimit;

export const overTwist = ({ twist }: Step, limit: number | undefined): boolean =>
  twist !== undefined && limit !== undefined && twist > limit;

/** The station with the smallest gap, where it stands out from the largest. */
export function lowest(stations: readonly Station[]): Station | undefined {
  const read = stations.filter(({ gap }) => gap !== undefined);
  const sorted = read.toSorted((a, b) => (a.gap ?? 0) - (b.gap ?? 0));
  const [low, high] = [sorted[0], sorted.at(-1)];
  return low && high && (high.gap ?? 0) > (low.gap ?? 0) ? low : undefined;
}

function table(gaps: Gaps, unitOf: UnitChoice) {
  const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
  const stations = [...new Set(gaps.steps.flatMap((step) => step.stations.map(({ station }) => station)))];
  return {
    title: "gaps as a table",
    head: [
      "step",
      ...stations.map((station) => `${spaced(station)}/${gap.label}`),
      `mean/${gap.label}`,
      `tilt x/${tilt.label}`,
      `tilt y/${tilt.label}`,
      `tilt/${tilt.label}`,
      ...(gaps.limited ? [`allowed/${tilt.label}`] : []),
      `twist/${gap.label}`,
    ],
    rows: gaps.steps.map((step) => tableRow(step, stations, gaps, gap, tilt)),
  };
}

function tableRow(
  step: Step,
  stations: readonly string[],
  { limited, now }: Gaps,
  gap: Small,
  tilt: Small,
): readonly string[] {
  const at = (station: string) => step.stations.find((each) => each.station === station)?.gap;
  const number = (si: number | undefined, small: Small) => (si === undefined ? "missing" : small.number(si));
  const way = (si: number | undefined) => (si === undefined ? "missing" : signed(tilt.number(si)));
  return [
    step === now ? `${step.step}, drawn` : step.step,
    ...stations.map((station) => number(at(station), gap)),
    number(step.mean, gap),
    way(step.tiltX),
    way(step.tiltY),
    number(step.tilt, tilt),
    ...(limited ? [step.tiltLimit === undefined ? withoutLimit(step) : tilt.number(step.tiltLimit)] : []),
    number(step.twist, gap),
  ];
}

function says({ now, limited, twistLimit }: Gaps, unitOf: UnitChoice): string {
  const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
  const low = lowest(now.stations);
  const parts = [
    now.mean === undefined
      ? `Step ${now.step}: no plane.`
      : `Step ${now.step}: mean gap ${gap.text(now.mean)}`,
  ];
  if (now.tilt !== undefined) {
    const against = limited ? limitWords(now, tilt) : "";
    parts.push(`, tilt ${tilt.text(now.tilt)}${against}`);
  }
  if (now.twist !== undefined)
    parts.push(
      `; twist ${gap.text(now.twist)}${overTwist(now, twistLimit) ? `, above the ${gap.number(twistLimit ?? 0)} allowed` : ""}`,
    );
  if (now.mean !== undefined) parts.push(".");
  if (low?.gap !== undefined) parts.push(` Lowest at ${spaced(low.station)}, ${gap.text(low.gap)}.`);
  const missing = now.stations.filter((each) => each.gap === undefined).map(({ station }) => spaced(station));
  if (missing.length > 0) parts.push(` Not read: ${missing.join(", ")}.`);
  return parts.join("");
}

const withoutLimit = ({ free }: Step): string => (free ? "free" : "none");

function limitWords(step: Step, tilt: Small): string {
  if (step.tiltLimit === undefined) return step.free ? ", the dowels are clear" : ", no limit given";
  if (overTilt(step)) return `, above the ${tilt.number(step.tiltLimit)} allowed`;
  return `, ${tilt.number(step.tiltLimit)} allowed`;
}
