// How much tilt the dowels allow as the gap grows, with the tilt of each step on it.
import { dowelJam } from "../../methods/opening/dowel-jam.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import { setText } from "../figure.ts";
import { drawDowelLimit } from "./dowel-limit-drawing.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { numbersOf, siValue } from "./inputs.ts";
import { gapLength, type Small, slope, smallLength } from "./lengths.ts";
import { numberIn, rowsOf, wordIn } from "./lists.ts";
import { listed } from "./words.ts";

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

const name = "dowel-limit";

export function dowelLimit(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const limit = read(inputs);
  if (isProblem(limit)) return limit;
  const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
  return {
    draw: (width) => drawDowelLimit(limit, width, gap, tilt),
    sentence: sentenceOf(limit, unitOf, tilt),
    source: Object.values(dowelJam.sources).slice(0, 1).map(cite).join(""),
    table: {
      title: "dowel limit as a table",
      head: ["step", `gap/${gap.label}`, `tilt/${tilt.label}`, `allowed/${tilt.label}`, "against it"],
      rows: limit.steps.map((at) => [
        at.step,
        gap.number(at.gap),
        tilt.number(at.tilt),
        at.allowed === undefined ? "free" : tilt.number(at.allowed),
        against(at),
      ]),
    },
  };
}

export const above = ({ tilt, allowed }: TiltAt): boolean => allowed !== undefined && tilt > allowed;

const against = (at: TiltAt): string => {
  if (at.allowed === undefined) return "dowels clear";
  return above(at) ? "above" : "below";
};

function sentenceOf(limit: DowelLimit, unitOf: UnitChoice, tilt: Small): string {
  const { clearance, engagedLength, curve, steps } = limit;
  const first = curve[0]?.allowed;
  const over = steps.filter(above);
  const start = `With ${smallLength(unitOf).set(clearance)} ${smallLength(unitOf).label} of clearance the dowels allow ${tilt.text(first ?? 0)} at the start, more as the gap grows, and any tilt once they are clear at ${setText(engagedLength, "length", unitOf("length"))}.`;
  if (steps.length === 0) return start;
  if (over.length === 0) return `${start} Every step lies below its limit.`;
  return `${start} Above its limit: ${listed(over.map((at) => `step ${at.step} with ${tilt.number(at.tilt)} against ${tilt.text(at.allowed ?? 0)}`))}.`;
}

function read(inputs: PictureInputs): DowelLimit | Problem {
  const numbers = numbersOf(name, inputs);
  if (isProblem(numbers)) return numbers;
  const rows = rowsOf(name, inputs, "planes");
  if (isProblem(rows)) return rows;
  const { clearance, engagedLength } = numbers;
  const first = allowedAt(clearance, engagedLength, 0);
  if (isProblem(first)) return first;
  if (first === undefined)
    return problem({
      code: "limit",
      what: `picture ${name}`,
      got: "no engaged length",
      must: "be above 0",
    });
  const curve: { gap: number; allowed: number }[] = [{ gap: 0, allowed: first }];
  for (let i = 1; i < 120; i += 1) {
    const gap = (engagedLength * i) / 120;
    const allowed = allowedAt(clearance, engagedLength, gap);
    if (typeof allowed === "number") curve.push({ gap, allowed });
  }
  const steps: TiltAt[] = [];
  for (const row of rows) {
    const [gap, tilt] = [numberIn(row, "mean"), numberIn(row, "tilt")];
    if (gap === undefined || tilt === undefined) continue;
    const allowed = allowedAt(clearance, engagedLength, gap);
    if (isProblem(allowed)) return allowed;
    steps.push({ step: wordIn(row, "step") ?? "", gap, tilt, allowed });
  }
  return { clearance, engagedLength, curve, steps };
}

/** Undefined once the dowels are out of their holes. */
function allowedAt(clearance: number, engagedLength: number, gap: number): number | undefined | Problem {
  const left = engagedLength - gap;
  if (left <= 0) return undefined;
  const solved = dowelJam.solveNamed({
    clearance: siValue("length", clearance),
    engagedLength: siValue("length", left),
  });
  if (isProblem(solved)) return solved;
  const output = solved.outputs["tiltLimit"];
  return output && "si" in output ? output.si : undefined;
}
