// Torque against the angle each nut turned, a dot for each, the odd ones named.
import {
  axisX,
  axisY,
  dot,
  frame,
  type Markish,
  rect,
  ruleX,
  ruleY,
  text as words,
} from "@observablehq/plot";
import { pairs } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import { angleWord, type Story, torqueOff } from "../../pictures/tightened.ts";
import { rounded } from "../../pictures/words.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { airy, chart, placed } from "./chart.ts";
import { picture, text } from "./marks.ts";

interface Placed {
  readonly position: string;
  readonly angle: number;
  readonly torque: number;
  readonly odd: string | undefined;
}

/** All numbers in the units shown. */
interface Shown {
  readonly nuts: readonly Placed[];
  /** The bands, from and to; none where the torque has none. */
  readonly angles: readonly number[];
  readonly torques: readonly number[];
  readonly x: [from: number, to: number];
  readonly y: [from: number, to: number];
}

const [top, height, foot] = [48, 300, 44];
const left = 48;
const [degrees, newtons] = [rounded(1), rounded(0)];

export function drawTorqueAgainstAngle(story: Story, width: number, unitOf: UnitChoice): SVGSVGElement {
  const right = Math.min(width, 720) - 46;
  const shown = shownIn(story, unitOf);
  const root = picture(width, top + height + foot);
  root.append(
    text(`torque, ${unitLabel(unitOf("torque"))}`, 0, 12, "start", "strong-text"),
    text(`angle, ${unitLabel(unitOf("angle"))}`, right, top + height + foot - 4, "end", "strong-text"),
    chart({
      width: right,
      height: top + height + foot,
      marginTop: top,
      marginBottom: foot,
      marginLeft: left,
      marginRight: 0,
      x: { domain: shown.x },
      y: { domain: shown.y },
      marks: [...bands(shown), ...axes(width), ...limits(shown), ...dots(shown, right)],
    }),
  );
  return root;
}

function shownIn(story: Story, unitOf: UnitChoice): Shown {
  const angleIn = (si: number) => inUnit(si, unitOf("angle"));
  const torqueIn = (si: number) => inUnit(si, unitOf("torque"));
  const { middle, band, target, torqueBand } = story;
  const nuts = nutsOf(story, angleIn, torqueIn);
  const angles = [middle - band, middle + band].map(angleIn);
  const torques =
    target === undefined || torqueBand === undefined
      ? []
      : [target * (1 - torqueBand), target * (1 + torqueBand)].map(torqueIn);
  const x = airy([...nuts.map(({ angle }) => angle), ...angles]);
  const y = airy([...nuts.map(({ torque }) => torque), ...torques]);
  return { nuts, angles, torques, x, y };
}

const bands = ({ angles, torques, y }: Shown): readonly Markish[] => [
  rect([angles], { x1: "0", x2: "1", y1: torques[0] ?? y[0], y2: torques[1] ?? y[1], className: "allowed" }),
  ruleX(angles, { className: "limit" }),
  ruleY(torques, { className: "limit" }),
  frame({ anchor: "left", className: "axis" }),
  frame({ anchor: "bottom", className: "axis" }),
];

function axes(width: number): readonly Markish[] {
  const common = { tickSize: 4, label: null, className: "quiet-text" };
  return [
    axisX({ ...common, anchor: "bottom", ticks: width < 500 ? 4 : 8, tickFormat: degrees }),
    axisY({ ...common, anchor: "left", ticks: 5, tickFormat: newtons }),
  ];
}

const limits = ({ angles, torques }: Shown): readonly Markish[] => [
  words(angles, {
    x: (at: number) => at,
    frameAnchor: "top",
    lineAnchor: "bottom",
    dy: -8,
    text: degrees,
    className: "limit-text",
  }),
  words(torques, {
    y: (at: number) => at,
    frameAnchor: "right",
    dx: 6,
    textAnchor: "start",
    text: newtons,
    className: "limit-text",
  }),
];

function dots({ nuts, x, y }: Shown, right: number): readonly Markish[] {
  const odd = nuts.filter((nut) => nut.odd !== undefined);
  const several = heaps(
    nuts.filter((nut) => nut.odd === undefined),
    [(right - left) / (x[1] - x[0]), height / (y[1] - y[0])],
  );
  return [
    dot(nuts, { x: "angle", y: "torque", r: 4.5, className: "point" }),
    dot(odd, { x: "angle", y: "torque", r: 8.5, className: "outlier" }),
    ...(several.length === 0
      ? []
      : [
          words(several, {
            x: "angle",
            y: "torque",
            dy: -14,
            text: ({ count }: { count: number }) => `×${count}`,
          }),
        ]),
    placed((px, py) =>
      odd.map(({ position, angle, torque, odd: word }) => {
        const start = px(angle) < (left + right) / 2;
        const at = px(angle) + (start ? -8 : 8);
        return text(`${position}: ${word}`, at, py(torque) - 13, start ? "start" : "end", "limit-text");
      }),
    ),
  ];
}

function nutsOf(
  story: Story,
  angleIn: (si: number) => number,
  torqueIn: (si: number) => number,
): readonly Placed[] {
  return story.nuts.flatMap((nut) => {
    if (nut.angle === undefined || nut.torque === undefined) return [];
    const turned = angleWord(nut, story);
    const torque = torqueOff(nut, story);
    const off = [
      ...(turned === "inside" ? [] : [`angle ${turned}`]),
      ...(torque === undefined ? [] : [`torque ${torque}`]),
    ];
    return [
      {
        position: nut.position,
        angle: angleIn(nut.angle),
        torque: torqueIn(nut.torque),
        odd: off.length > 0 ? off.join(", ") : undefined,
      },
    ];
  });
}

const leastApart = 26; // px between two counts

/**
 * Dots that cover each other are one heap, told by its number. All counts or none: a dot without one is a single nut,
 * so where the heaps stand too close for their numbers there are none.
 */
function heaps(nuts: readonly Placed[], [across, up]: readonly [number, number]): readonly Heap[] {
  const found: Heap[] = [];
  for (const { angle, torque } of nuts) {
    const heap = found.find(
      (other) => Math.abs(other.angle - angle) * across < 5 && Math.abs(other.torque - torque) * up < 5,
    );
    if (heap) heap.count += 1;
    else found.push({ angle, torque, count: 1 });
  }
  const inOrder = found.toSorted((a, b) => a.angle - b.angle);
  return pairs(inOrder, (a, b) => (b.angle - a.angle) * across).some((apart) => apart < leastApart)
    ? []
    : found.filter(({ count }) => count > 1);
}

interface Heap {
  readonly angle: number;
  readonly torque: number;
  count: number;
}
