// Gaps by step and station, and the plane through each step, as the lists give them.
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { PictureInputs } from "./drawing.ts";
import { numbersOf } from "./inputs.ts";
import { maybeWord, numberIn, type Row, rowsOf, wordIn } from "./lists.ts";

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
}

const name = "gap-map";

export function readGaps(inputs: PictureInputs): Gaps | Problem {
  const stations = rowsOf(name, inputs, "stations");
  if (isProblem(stations)) return stations;
  const planes = rowsOf(name, inputs, "planes");
  if (isProblem(planes)) return planes;
  const limitOf = tiltLimits(inputs);
  if (isProblem(limitOf)) return limitOf;
  const numbers = numbersOf(name, inputs);
  if (isProblem(numbers)) return numbers;
  const asked = maybeWord(name, inputs, "step");
  if (isProblem(asked)) return asked;
  const steps = planes.map((plane) => stepOf(plane, stations, limitOf, numbers.engagedLength));
  const now = asked === undefined ? steps.at(-1) : steps.find(({ step }) => step === asked);
  if (!now)
    return problem({
      code: "unknown-step",
      what: `picture ${name}`,
      got: asked === undefined ? "no steps" : `step ${asked}`,
      must:
        asked === undefined ? "have at least one" : `be one of ${steps.map(({ step }) => step).join(", ")}`,
    });
  if (now.stations.length === 0)
    return problem({
      code: "no-rows",
      what: `picture ${name}`,
      got: `no stations at step ${now.step}`,
      must: "have at least one",
    });
  return { steps, now, limited: inputs["tiltLimit"] !== undefined, twistLimit: numbers.twistLimit };
}

type LimitOf = (step: string) => number | undefined;

/** One limit for all steps, or a list with one for each. */
function tiltLimits(inputs: PictureInputs): LimitOf | Problem {
  const given = inputs["tiltLimit"];
  if (given !== undefined && !isProblem(given) && "si" in given) return () => given.si;
  const rows = rowsOf(name, inputs, "tiltLimit");
  if (isProblem(rows)) return rows;
  return (step) => {
    const row = rows.find((each) => wordIn(each, "step") === step);
    return row && (numberIn(row, "tiltLimit") ?? numberIn(row, "value"));
  };
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
