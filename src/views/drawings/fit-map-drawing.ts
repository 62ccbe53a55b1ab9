// The fit map drawn: words at the holes where they find room, else in a strip below the plan.
import type { UnitChoice } from "../../methods/solution.ts";
import type { FitMap, HoleMark } from "../../pictures/fit-map.ts";
import { type Small, smallLength } from "../../pictures/lengths.ts";
import type { Place } from "../../pictures/place.ts";
import { svg } from "../dom.ts";
import { breadthOf, broken } from "./breadth.ts";
import { type Gauge, gaugeOf, lyingGauge, reachWords, standingGauge } from "./fit-gauge.ts";
import { axes, flange, kindOf, markAt, ring } from "./flange.ts";
import { bell, type Exaggerated, exaggerated } from "./hole-shape.ts";
import { type Anchor, picture, text } from "./marks.ts";
import { layPlan, type Needs, type Plan, type Spot } from "./plan.ts";

const judgedRing = 13;
const plainRing = 10;
const edge = judgedRing + 14;
const line = 15;
const stripWords = 94;
const standingWidth = 63;
const lying = { width: 94, gauge: 13 };

interface Figures {
  readonly gauge: Gauge;
  /** Height of a standing gauge, px. */
  readonly standing: number;
  readonly shapeOf: (hole: HoleMark) => Exaggerated;
  readonly holeAt: (place: Place) => HoleMark;
}

export function drawFitMap(map: FitMap, width: number, unitOf: UnitChoice): SVGSVGElement {
  const small = smallLength(unitOf);
  const gauge = gaugeOf(map, small);
  const byPosition = new Map(map.holes.map((hole) => [hole.place.position, hole]));
  const holeAt = (place: Place): HoleMark => {
    const hole = byPosition.get(place.position);
    if (!hole) throw new Error(`fit-map: no hole at ${place.position}`);
    return hole;
  };
  const figures: Figures = {
    standing: width < 700 ? 58 : 80,
    gauge,
    holeAt,
    shapeOf: (hole) => exaggerated(hole.form, map.exaggeration, judgedRing),
  };
  const top = 4;
  const plan = layPlan(
    map.holes.map(({ place }) => place),
    {
      width: width - 4,
      tallest: width < 520 ? Math.min(820, width * 2.6) : 640,
      words: "inward",
      edge,
      yUp: map.yUp,
      needs: (place) => needsOf(holeAt(place), figures),
    },
  );
  const notes = notesOf(map, plan, small).flatMap((note) => broken(note, width - 62));
  const strip = plan.labelled ? undefined : stripOf(map, gauge, width);
  const foot = top + plan.height + 14;
  const noteRoom = Math.max(48, notes.length * line + 8);
  const root = picture(width, Math.ceil(foot + noteRoom + (strip?.height ?? 0)));
  root.classList.add("plan");
  const drawing = svg("g", { transform: `translate(2 ${top})` }, ...flange(plan, 2 * edge - 2));
  for (const spot of plan.spots) drawing.append(...hole(spot, plan, figures));
  if (plan.labelled)
    for (const spot of plan.spots) drawing.append(...label(spot, holeAt(spot.place), figures));
  root.append(
    drawing,
    axes(plan, 6, foot + 40),
    ...notes.map((note, i) => text(note, 56, foot + 12 + i * line, "start", "quiet-text")),
    ...(strip?.at(foot + noteRoom) ?? []),
  );
  return root;
}

function needsOf(hole: HoleMark, { shapeOf, standing }: Figures): Needs {
  if (!hole.state) return { ring: plainRing };
  const shape = shapeOf(hole);
  const badge = shape.profile.length > 0 ? { width: 40, height: 26 } : { width: 15, height: 15 };
  const reach = Math.max(judgedRing, shape.rx, shape.ry);
  return {
    ring: Math.min(reach, judgedRing + 6),
    badge,
    tall: {
      width: standingWidth,
      height: wordLines(hole, standingWidth).length * line + standing,
    },
    flat: {
      width: lying.width,
      height: (wordLines(hole, lying.width).length + 1) * line + lying.gauge,
    },
  };
}

/** "fails: oval" on one line where it fits. */
function wordLines({ state, because }: HoleMark, breadth: number): readonly string[] {
  const shown = because.length > 2 ? [...because.slice(0, 2), `${because.length - 2} more`] : because;
  return broken(because.length > 0 ? `${state}, ${shown.join(", ")}` : (state ?? ""), breadth);
}

function hole(spot: Spot, plan: Plan, figures: Figures): readonly SVGElement[] {
  const found = figures.holeAt(spot.place);
  const { state, form } = found;
  const number = (kind: string) => text(spot.place.position, spot.x, spot.y + 4.5, "middle", kind);
  if (!state) return [ring("ring plain", spot, plainRing), number("quiet-text")];
  const shape = figures.shapeOf(found);
  const quarter = plan.turned ? -90 : 0;
  const turn = quarter + (plan.yUp ? -1 : 1) * (form?.angle ?? 0);
  const oval = shape.rx - shape.ry > 1;
  return [
    ring(oval ? "ring true-round" : "ring", spot, judgedRing),
    ...(oval ? [ring(`ring formed ${kindOf(state)}`, spot, shape.rx, shape.ry, turn)] : []),
    number("strong-text"),
    ...badge(spot, state, shape),
  ];
}

function badge(spot: Spot, state: NonNullable<HoleMark["state"]>, shape: Exaggerated): readonly SVGElement[] {
  if (!spot.badge) return [];
  const { x, y, width, height } = spot.badge;
  if (shape.profile.length === 0) return [markAt(state, x + width / 2, y + height / 2)];
  const mirrored = spot.side === "right"; // the mark stays next to the ring
  const markX = mirrored ? x + width - 7 : x + 7;
  return [
    markAt(state, markX, y + height / 2),
    bell(shape.profile, { x: mirrored ? x : x + width - 26, y, width: 24, height }),
  ];
}

function label(spot: Spot, found: HoleMark, { gauge, standing }: Figures): readonly SVGElement[] {
  const box = spot.label;
  const { state } = found;
  if (!box || !state) return [];
  const words = wordLines(found, box.width);
  const anchor: Anchor = spot.tall ? "middle" : spot.side === "left" ? "end" : "start";
  const at = spot.tall ? spot.x : spot.side === "left" ? box.x + box.width : box.x;
  const wordsUnder = spot.tall && spot.side === "up"; // words next to the ring, on either side of it
  const first = wordsUnder ? box.y + standing : box.y;
  const lines = words.map((each, i) =>
    text(each, at, first + 11 + i * line, anchor, `state-text ${kindOf(state)}`),
  );
  const under = box.y + words.length * line;
  if (spot.tall)
    return [
      ...lines,
      ...standingGauge(found, gauge, { ...box, y: wordsUnder ? box.y : under, height: standing }),
    ];
  return [
    ...lines,
    ...lyingGauge(found, gauge, { ...box, y: under + 3, height: lying.gauge }),
    text(reachWords(found, gauge), at, under + lying.gauge + 14, anchor),
  ];
}

interface Strip {
  readonly height: number;
  readonly at: (top: number) => readonly SVGElement[];
}

/** Where the plan is too close for words: the same, one row for each hole. */
function stripOf(map: FitMap, gauge: Gauge, width: number): Strip {
  const judged = map.holes.filter(({ state }) => state);
  const lines = judged.map((found) => wordLines(found, stripWords));
  const tops = [0];
  for (const each of lines) tops.push((tops.at(-1) ?? 0) + 5 + each.length * line);
  const left = 54 + Math.max(...lines.flat().map((words) => breadthOf(words)));
  const right = width - Math.max(...judged.map((each) => breadthOf(reachWords(each, gauge)))) - 6;
  const row = (found: HoleMark, words: readonly string[], y: number): readonly SVGElement[] => [
    text(found.place.position, 24, y + 14, "end", "strong-text"),
    markAt(found.state ?? "no answer", 36, y + 9.5),
    ...words.map((each, i) =>
      text(each, 48, y + 14 + i * line, "start", `state-text ${kindOf(found.state ?? "no answer")}`),
    ),
    ...(right - left < 30
      ? []
      : lyingGauge(found, gauge, { x: left, y: y + 4, width: right - left, height: lying.gauge })),
    text(reachWords(found, gauge), width - 2, y + 14, "end"),
  ];
  return {
    height: tops.at(-1) ?? 0,
    at: (top) => judged.flatMap((found, i) => row(found, lines[i] ?? [], top + (tops[i] ?? 0))),
  };
}

function notesOf(map: FitMap, { labelled }: Plan, small: Small): readonly string[] {
  const notes = [
    `Bars: clearance from tightest to loosest, ${small.label}; frame: allowed, ${small.set(map.tightestAllowed)} to ${small.set(map.loosestAllowed)}.`,
  ];
  const shapes = map.holes.map(({ form }) => exaggerated(form, map.exaggeration, judgedRing));
  const drawn = shapes.some((shape) => shape.rx - shape.ry > 1 || shape.profile.length > 0);
  notes.push(
    `Places to scale, holes enlarged${drawn ? `; ovals and bells drawn ×${map.exaggeration}` : ""}.`,
  );
  if (!labelled) notes.push("Words and bars stand below the plan.");
  return notes;
}
