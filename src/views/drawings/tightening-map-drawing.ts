// The tightening map drawn: the next position lit with its number, the plan, and the order as a strip.

import type { UnitChoice } from "../../methods/solution.ts";
import type { PassProgress, Progress } from "../../pictures/tightening-map.ts";
import { isProblem } from "../../problem.ts";
import { setText } from "../../report/figure-text.ts";
import { roundDecimal, withUnit } from "../../units/format.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unit } from "../../units/unit.ts";
import { svg } from "../dom.ts";
import { breadthOf, broken } from "./breadth.ts";
import { axes, flange, markAt, ring } from "./flange.ts";
import { line, picture, text } from "./marks.ts";
import { layPlan, type Needs, type Plan, type Spot } from "./plan.ts";

const usualRing = 14;
const litRing = 21;
const edge = litRing + 4;
const row = 15;

interface TorqueWords {
  readonly own: (si: number | undefined) => string;
  /** In the unit of the other scale of the wrench: lbf.ft beside N.m, N.m beside anything else. */
  readonly other: (si: number | undefined) => string;
}

export function drawTightening(progress: Progress, width: number, unitOf: UnitChoice): SVGSVGElement {
  const head = 66;
  const plan = layPlan(progress.places, {
    width: width - 4,
    tallest: width < 520 ? Math.min(560, width * 1.6) : 380,
    words: "inward",
    edge,
    yUp: progress.yUp,
    needs: (place) => needsOf(place.position, progress),
  });
  const foot = head + plan.height + 14;
  const strip = stripOf(progress, width);
  const notes = broken(notesOf(progress), width - 62);
  const noteRoom = Math.max(46, notes.length * row + 12);
  const root = picture(width, Math.ceil(foot + noteRoom + strip.height));
  root.classList.add("plan");
  const drawing = svg("g", { transform: `translate(2 ${head})` }, ...flange(plan, 2 * edge - 2));
  drawing.append(...wayOn(plan, progress));
  for (const spot of plan.spots) drawing.append(...bolt(spot, progress, plan.labelled));
  root.append(
    ...headline(progress, width, torqueWords(unitOf)),
    drawing,
    axes(plan, 6, foot + 40),
    ...notes.map((note, i) => text(note, 56, foot + 12 + i * row, "start", "quiet-text")),
    strip.at(foot + noteRoom),
  );
  return root;
}

function torqueWords(unitOf: UnitChoice): TorqueWords {
  const own = unitOf("torque");
  const other = unit(own.text === "N.m" ? "lbf.ft" : "N.m", "torque");
  if (isProblem(other)) throw new Error("the scales of a wrench are not in the unit list");
  return {
    own: (si) => (si === undefined ? "" : setText(si, "torque", own, 5)),
    other: (si) =>
      si === undefined ? "" : withUnit(roundDecimal(inUnit(si, other), { decimals: 0 }), other, true),
  };
}

const adapterRoom = { width: 58, height: 15 };
const missedRoom = { width: 58, height: 30 };

function needsOf(position: string, { next, now, settingAt }: Progress): Needs {
  const lit = position === next;
  const missed = now.passedOver.includes(position);
  const { adapter } = settingAt(position);
  const words = missed && adapter ? { width: 58, height: 46 } : missed ? missedRoom : adapterRoom;
  return {
    ring: lit ? litRing : usualRing,
    tall: missed || adapter ? words : undefined,
    flat: missed || adapter ? words : undefined,
  };
}

function bolt(spot: Spot, { next, now, settingAt }: Progress, labelled: boolean): readonly SVGElement[] {
  const { position } = spot.place;
  const done = now.done.has(position);
  const missed = now.passedOver.includes(position);
  const words = [...(missed ? ["passed", "over"] : []), ...(settingAt(position).adapter ? ["adapter"] : [])];
  const kind = position === next ? "ring lit" : done ? "ring done" : missed ? "ring missed" : "ring";
  const { label, side } = spot;
  const anchor = side === "left" ? "end" : side === "right" ? "start" : "middle";
  const at = label && (anchor === "end" ? label.x + label.width : anchor === "start" ? label.x : spot.x);
  return [
    ring(kind, spot, position === next ? litRing : usualRing),
    ...(position === next ? [ring("ring lit-inner", spot, litRing - 4)] : []),
    text(
      position,
      spot.x,
      spot.y + (position === next ? 6 : 4.5),
      "middle",
      position === next ? "lit-text" : done ? "done-text" : "strong-text",
    ),
    ...(label && labelled && at !== undefined
      ? words.map((word, i) =>
          text(
            word,
            at,
            label.y + 11 + i * row,
            anchor,
            missed && word !== "adapter" ? "limit-text" : "quiet-text",
          ),
        )
      : []),
  ];
}

/** A thread from the next position to the one after it. */
function wayOn({ spots }: Plan, { next, after }: Progress): readonly SVGElement[] {
  const at = (position: string | undefined) => spots.find(({ place }) => place.position === position);
  const [from, to] = [at(next), at(after)];
  if (!from || !to) return [];
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const end = { x: to.x - dx * (usualRing + 3), y: to.y - dy * (usualRing + 3) };
  return [
    line("way-on", from.x + dx * litRing, from.y + dy * litRing, end.x, end.y),
    svg("path", {
      class: "way-head",
      d: `M${end.x} ${end.y} L${end.x - 9 * dx + 4 * dy} ${end.y - 9 * dy - 4 * dx} L${end.x - 9 * dx - 4 * dy} ${end.y - 9 * dy + 4 * dx}z`,
    }),
  ];
}

function headline(
  { now, next, order, settingAt }: Progress,
  width: number,
  torque: TorqueWords,
): readonly SVGElement[] {
  const count = `pass ${now.pass}: ${now.done.size} of ${order.length}`;
  if (next === undefined)
    return [
      text(now.done.size >= order.length ? "all done" : "nothing next", 2, 32, "start", "big-text"),
      text(count, 2, 54, "start", "quiet-text"),
    ];
  const { net, set, adapter } = settingAt(next);
  const narrow = width < 1.8 * breadthOf(`position ${next}`, 26);
  return [
    text(narrow ? next : `position ${next}`, 2, 32, "start", "big-text"),
    text(count, 2, 54, "start", "quiet-text"),
    text(set === undefined ? "no set torque" : torque.own(set), width - 2, 32, "end", "big-text"),
    text(
      [torque.other(set), adapter ? "with adapter" : net === undefined ? "" : `for ${torque.own(net)} net`]
        .filter(Boolean)
        .join(", "),
      width - 2,
      54,
      "end",
      "quiet-text",
    ),
  ];
}

function notesOf({ next, after, settingAt, order }: Progress): string {
  const parts = ["Filled: done."];
  if (next !== undefined) parts.push("Double ring: next.");
  if (after !== undefined) parts.push(`Then ${after}.`);
  if (order.some((position) => settingAt(position).adapter))
    parts.push("Adapter: the set torque allows for it.");
  return parts.join(" ");
}

/** One cell for each turn in the order, a line for each pass. */
function stripOf(progress: Progress, width: number) {
  const { order, passes } = progress;
  const left = Math.max(...passes.map(({ pass }) => breadthOf(`pass ${pass}`))) + 10;
  const cell = Math.min(30, (width - left - 4) / order.length);
  const numbered = cell >= 19;
  const each = 24;
  const height = passes.length * each + 20;
  const at = (y: number): SVGElement =>
    svg(
      "g",
      { class: "order-strip" },
      ...passes.flatMap((pass, i) => stripLine(progress, pass, { y: y + i * each, left, cell })),
      ...order.flatMap((position, i) =>
        numbered || position === progress.next
          ? [text(position, left + (i + 0.5) * cell, y + passes.length * each + 10, "middle", "quiet-text")]
          : [],
      ),
    );
  return { height, at };
}

function stripLine(
  { order, now, next }: Progress,
  pass: PassProgress,
  { y, left, cell }: { readonly y: number; readonly left: number; readonly cell: number },
): readonly SVGElement[] {
  return [
    text(`pass ${pass.pass}`, 2, y + 13, "start", pass === now ? "strong-text" : "quiet-text"),
    ...order.flatMap((position, i) => {
      const x = left + i * cell;
      const done = pass.done.has(position);
      const lit = pass === now && position === next;
      const box = svg("rect", {
        class: lit ? "turn lit" : done ? "turn done" : "turn",
        x: x + 1,
        y: y + 2,
        width: cell - 2,
        height: 14,
      });
      return pass.passedOver.includes(position) ? [box, markAt("fails", x + cell / 2, y + 9, 10)] : [box];
    }),
  ];
}
