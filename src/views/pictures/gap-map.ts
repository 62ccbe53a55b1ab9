// The lid from above with a number at each station, its tilt from two sides, and how it went step by step.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { drawGapMap } from "./gap-map-drawing.ts";
import { type Gaps, lowest, overTilt, overTwist, readGaps, type Step } from "./gap-steps.ts";
import { gapLength, type Small, signed, slope } from "./lengths.ts";
import { yUpOf } from "./place.ts";
import { spaced } from "./words.ts";

export function gapMap(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const gaps = readGaps(inputs);
  if (isProblem(gaps)) return gaps;
  const yUp = yUpOf("gap-map", inputs);
  if (isProblem(yUp)) return yUp;
  const [gap, tilt] = [gapLength(unitOf), slope(unitOf)];
  const stations = [...new Set(gaps.steps.flatMap((step) => step.stations.map(({ station }) => station)))];
  return {
    draw: (width) => drawGapMap(gaps, width, { gap, tilt, yUp }),
    sentence: sentenceOf(gaps, gap, tilt),
    table: {
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
    },
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

function sentenceOf({ now, limited, twistLimit }: Gaps, gap: Small, tilt: Small): string {
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
