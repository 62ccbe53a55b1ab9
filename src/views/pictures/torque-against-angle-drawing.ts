// Torque against the angle each nut turned, a dot for each, the odd ones named.
import { axisX, axisY, dot, frame, rect, ruleX, ruleY, text as words } from "@observablehq/plot";
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

const [top, height, foot] = [48, 300, 44];

export function drawTorqueAgainstAngle(story: Story, width: number, unitOf: UnitChoice): SVGSVGElement {
  const [degrees, newtons] = [rounded(1), rounded(0)];
  const angleIn = (si: number) => inUnit(si, unitOf("angle"));
  const torqueIn = (si: number) => inUnit(si, unitOf("torque"));
  const nuts = nutsOf(story, angleIn, torqueIn);
  const odd = nuts.filter((nut) => nut.odd !== undefined);
  const { middle, band, target, torqueBand } = story;
  const angles = [middle - band, middle + band].map(angleIn);
  const torques =
    target === undefined || torqueBand === undefined
      ? []
      : [target * (1 - torqueBand), target * (1 + torqueBand)].map(torqueIn);
  const [left, right] = [48, Math.min(width, 720) - 46];
  const x = airy([...nuts.map(({ angle }) => angle), ...angles]);
  const y = airy([...nuts.map(({ torque }) => torque), ...torques]);
  const perUnit = [(right - left) / (x[1] - x[0]), height / (y[1] - y[0])] as const;
  const several = heaps(
    nuts.filter((nut) => nut.odd === undefined),
    perUnit,
  );
  const apart = Math.min(
    ...pairs(
      several.toSorted((a, b) => a.angle - b.angle),
      (a, b) => (b.angle - a.angle) * perUnit[0],
    ),
  );
  // All counts or none: a dot without one is a single nut.
  const counts =
    apart < 26
      ? []
      : [
          words(
            several.filter(({ count }) => count > 1),
            { x: "angle", y: "torque", dy: -14, text: ({ count }: { count: number }) => `×${count}` },
          ),
        ];
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
      x: { domain: x },
      y: { domain: y },
      marks: [
        rect([angles], {
          x1: "0",
          x2: "1",
          y1: torques[0] ?? y[0],
          y2: torques[1] ?? y[1],
          className: "allowed",
        }),
        ruleX(angles, { className: "limit" }),
        ruleY(torques, { className: "limit" }),
        frame({ anchor: "left", className: "axis" }),
        frame({ anchor: "bottom", className: "axis" }),
        axisX({
          anchor: "bottom",
          tickSize: 4,
          ticks: width < 500 ? 4 : 8,
          tickFormat: degrees,
          label: null,
          className: "quiet-text",
        }),
        axisY({
          anchor: "left",
          tickSize: 4,
          ticks: 5,
          tickFormat: newtons,
          label: null,
          className: "quiet-text",
        }),
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
        dot(nuts, { x: "angle", y: "torque", r: 4.5, className: "point" }),
        dot(odd, { x: "angle", y: "torque", r: 8.5, className: "outlier" }),
        ...counts,
        placed((px, py) =>
          odd.map(({ position, angle, torque, odd: word }) => {
            const start = px(angle) < (left + right) / 2;
            const at = px(angle) + (start ? -8 : 8);
            return text(`${position}: ${word}`, at, py(torque) - 13, start ? "start" : "end", "limit-text");
          }),
        ),
      ],
    }),
  );
  return root;
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

/** Dots that cover each other are one heap, told by its number. */
function heaps(
  nuts: readonly Placed[],
  [across, up]: readonly [number, number],
): readonly { readonly angle: number; readonly torque: number; readonly count: number }[] {
  const found: { angle: number; torque: number; count: number }[] = [];
  for (const { angle, torque } of nuts) {
    const heap = found.find(
      (other) => Math.abs(other.angle - angle) * across < 5 && Math.abs(other.torque - torque) * up < 5,
    );
    if (heap) heap.count += 1;
    else found.push({ angle, torque, count: 1 });
  }
  return found;
}
