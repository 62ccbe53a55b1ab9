// Lays out a plan at true proportion: every position at its place, and a block of words beside those
// that have one. The plan is turned a quarter, x running up, where that leaves the words room.
import type { Place } from "../../pictures/place.ts";

type Side = "up" | "down" | "left" | "right";

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Box extends Size {
  readonly x: number;
  readonly y: number;
}

/** What must find room at one position, px. */
export interface Needs {
  /** Radius of the ring. */
  readonly ring: number;
  /** Words, as a standing and as a lying block. */
  readonly tall?: Size | undefined;
  readonly flat?: Size | undefined;
  /** What stands on the other side of the ring. */
  readonly badge?: Size | undefined;
}

export interface Spot {
  readonly place: Place;
  readonly x: number;
  readonly y: number;
  readonly side: Side;
  readonly tall: boolean;
  readonly label: Box | undefined;
  readonly badge: Box | undefined;
}

export interface Plan {
  readonly spots: readonly Spot[];
  /** Whether the words found room at the places. */
  readonly labelled: boolean;
  readonly turned: boolean;
  readonly yUp: boolean;
  /** px per m */
  readonly scale: number;
  readonly height: number;
}

export interface PlanRoom {
  readonly width: number;
  readonly tallest: number;
  readonly needs: (place: Place) => Needs;
  readonly words: "inward" | "outward";
  /** How far the flange is drawn beyond the middle of a position, px. */
  readonly edge: number;
  readonly yUp: boolean;
}

type Mode = "vertical" | "horizontal" | "radial";
interface Way {
  readonly turned: boolean;
  readonly mode: Mode;
  readonly inward: boolean;
}

const modes: readonly (readonly [boolean, Mode])[] = [
  [false, "vertical"],
  [false, "radial"],
  [true, "horizontal"],
  [true, "radial"],
  [false, "horizontal"],
  [true, "vertical"],
];

export function layPlan(places: readonly Place[], room: PlanRoom): Plan {
  const first = room.words === "inward";
  const ways = modes.flatMap(([turned, mode]) =>
    [first, !first].map((inward): Way => ({ turned, mode, inward })),
  );
  for (const way of ways) {
    const plan = laid(places, room, way);
    if (plan.labelled) return plan;
  }
  const bare: PlanRoom = {
    ...room,
    tallest: Math.min(room.tallest, room.width * 1.5), // without words it can be smaller
    needs: (place) => ({ ...room.needs(place), tall: undefined, flat: undefined }),
  };
  const both = [false, true].map((turned) =>
    laid(places, bare, { turned, mode: turned ? "horizontal" : "vertical", inward: first }),
  );
  const best = both.toSorted((a, b) => b.scale - a.scale)[0] ?? laid(places, bare, ways[0] ?? upright);
  return { ...best, labelled: false };
}

const upright: Way = { turned: false, mode: "vertical", inward: true };
const apart = 4; // px between ring and words

interface Seed {
  readonly place: Place;
  readonly x: number;
  readonly y: number;
  readonly side: Side;
  readonly tall: boolean;
  readonly ring: number;
  /** From the middle to the words, px. */
  readonly off: number;
  readonly label: Size | undefined;
  readonly badge: Size | undefined;
}

function laid(places: readonly Place[], room: PlanRoom, way: Way): Plan {
  const seeds = seedsOf(places, room, way);
  const extents = seeds.map((seed) => extentOf(seed, room.edge));
  const across = fitted(seeds.map((s, i) => [s.x, extents[i]?.left ?? 0, extents[i]?.right ?? 0]));
  const down = fitted(seeds.map((s, i) => [s.y, extents[i]?.up ?? 0, extents[i]?.down ?? 0]));
  const scale = Math.max(1, Math.min(across.scale(room.width), down.scale(room.tallest)));
  const [spanX, spanY] = [across.span(scale), down.span(scale)];
  const shift = (room.width - spanX.length) / 2 - spanX.low;
  const spots = seeds.map((seed) => spotOf(seed, seed.x * scale + shift, seed.y * scale - spanY.low));
  return {
    spots,
    labelled: spanX.length <= room.width + 1 && clear(spots, seeds),
    turned: way.turned,
    yUp: room.yUp,
    scale,
    height: spanY.length,
  };
}

/** Rotated as a sheet is rotated, so that the plan is never a mirror image. */
function seedsOf(places: readonly Place[], room: PlanRoom, way: Way): readonly Seed[] {
  const flip = room.yUp ? -1 : 1;
  const turnedAt = places.map(({ x, y }): readonly [number, number] =>
    way.turned ? [y * flip, -x] : [x, y * flip],
  );
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  const [cx, cy] = [middle(turnedAt.map(([x]) => x)), middle(turnedAt.map(([, y]) => y))];
  return places.map((place, i) => {
    const [x = 0, y = 0] = turnedAt[i] ?? [];
    const side = sideOf(x - cx, y - cy, way);
    const tall = way.mode === "vertical";
    const { ring, tall: standing, flat, badge } = room.needs(place);
    const off = (way.inward ? ring : Math.max(ring, room.edge)) + apart;
    return { place, x, y, side, tall, ring, off, label: tall ? standing : flat, badge };
  });
}

function sideOf(dx: number, dy: number, { mode, inward }: Way): Side {
  const lying = mode === "horizontal" || (mode === "radial" && Math.abs(dx) > Math.abs(dy));
  const outward: Side = lying ? (dx < 0 ? "left" : "right") : dy < 0 ? "up" : "down";
  return inward ? opposite[outward] : outward;
}

const opposite: Readonly<Record<Side, Side>> = { up: "down", down: "up", left: "right", right: "left" };

/** The block on one side of (0, 0). */
function boxAt(side: Side, off: number, { width, height }: Size): Box {
  if (side === "up") return { x: -width / 2, y: -off - height, width, height };
  if (side === "down") return { x: -width / 2, y: off, width, height };
  if (side === "left") return { x: -off - width, y: -height / 2, width, height };
  return { x: off, y: -height / 2, width, height };
}

const moved = (box: Box, x: number, y: number): Box => ({ ...box, x: box.x + x, y: box.y + y });

function boxesOf(seed: Seed): readonly Box[] {
  const { ring, off, side, label, badge } = seed;
  return [
    { x: -ring, y: -ring, width: 2 * ring, height: 2 * ring },
    ...(label ? [boxAt(side, off, label)] : []),
    ...(badge ? [boxAt(opposite[side], ring + apart, badge)] : []),
  ];
}

const extentOf = (seed: Seed, edge: number) => {
  const boxes = boxesOf(seed);
  return {
    left: Math.max(edge, ...boxes.map((b) => -b.x)),
    right: Math.max(edge, ...boxes.map((b) => b.x + b.width)),
    up: Math.max(edge, ...boxes.map((b) => -b.y)),
    down: Math.max(edge, ...boxes.map((b) => b.y + b.height)),
  };
};

/** The largest scale at which all places with what stands about them fit into a length. */
function fitted(all: readonly (readonly [at: number, before: number, after: number])[]) {
  const span = (scale: number) => {
    const low = Math.min(...all.map(([at, before]) => at * scale - before));
    const high = Math.max(...all.map(([at, , after]) => at * scale + after));
    return { low, length: high - low };
  };
  const scale = (length: number) => {
    let least = 1e6;
    for (const [a, before] of all)
      for (const [b, , after] of all)
        if (b - a > 1e-9) least = Math.min(least, (length - before - after) / (b - a));
    return least;
  };
  return { span, scale };
}

function spotOf(seed: Seed, x: number, y: number): Spot {
  const { place, side, tall, ring, off, label, badge } = seed;
  return {
    place,
    x,
    y,
    side,
    tall,
    label: label && moved(boxAt(side, off, label), x, y),
    badge: badge && moved(boxAt(opposite[side], ring + apart, badge), x, y),
  };
}

function clear(spots: readonly Spot[], seeds: readonly Seed[]): boolean {
  const groups = spots.map((spot, i) => {
    const ring = seeds[i]?.ring ?? 0;
    const round = { x: spot.x - ring, y: spot.y - ring, width: 2 * ring, height: 2 * ring };
    return [round, ...(spot.label ? [spot.label] : []), ...(spot.badge ? [spot.badge] : [])];
  });
  return groups.every((group, i) =>
    groups.slice(i + 1).every((other) => group.every((a) => other.every((b) => !overlap(a, b)))),
  );
}

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
