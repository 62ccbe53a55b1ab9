// Two columns and a line for each pair. A bolt stands beside the hole it belongs to by number, or the one
// it stays in, so that a level line is a bolt left where it was.
import type { UnitChoice } from "../../methods/solution.ts";
import type { Assigned, Pair } from "../../pictures/assignment.ts";
import { type Small, smallLength } from "../../pictures/lengths.ts";
import { svg } from "../dom.ts";
import { kindOf, markAt } from "./flange.ts";
import { line, picture, text } from "./marks.ts";

const row = 30;
const top = 34;
const box = { width: 46, height: 22 };

export function drawAssignment(
  { pairs, leftOver }: Assigned,
  width: number,
  unitOf: UnitChoice,
): SVGSVGElement {
  const small = smallLength(unitOf);
  const places = boltPlaces(pairs, leftOver);
  const rows = Math.max(pairs.length, ...[...places.values()].map((place) => place + 1));
  const narrow = width < 520;
  const told = narrow ? 92 : 230;
  const used = Math.min(width, 760);
  const [holeX, boltX] = [told, used - box.width - (narrow ? 38 : 80)];
  const yAt = (i: number) => top + (i + 0.5) * row;
  const boltY = (tag: string | undefined) => yAt(places.get(tag ?? "") ?? 0);
  const root = picture(width, top + rows * row + 10);
  const threads = (moved: boolean) =>
    pairs.flatMap((pair, i) =>
      pair.moved === moved && pair.bolt !== undefined
        ? [line(moved ? "moves" : "stays", holeX + box.width, yAt(i), boltX, boltY(pair.bolt))]
        : [],
    );
  root.append(
    text("hole", holeX + box.width / 2, 18, "middle", "strong-text"),
    text("bolt", boltX + box.width / 2, 18, "middle", "strong-text"),
    ...(narrow ? [] : [text(`tightest to loosest, ${small.label}`, 2, 18, "start", "quiet-text")]),
    ...threads(false),
    ...threads(true),
    ...pairs.flatMap((pair, i) => holeRow(pair, yAt(i), holeX, narrow ? undefined : small)),
    ...pairs.flatMap((pair) =>
      pair.bolt === undefined ? [] : tag(pair.bolt, boltX, boltY(pair.bolt), pair.moved),
    ),
    ...leftOver.flatMap((bolt) => [
      ...tag(bolt, boltX, boltY(bolt), false, "tag left"),
      text(narrow ? "left" : "left over", boltX + box.width + 5, boltY(bolt) + 4.5, "start", "quiet-text"),
    ]),
  );
  return root;
}

/** Row of each bolt: beside its own hole by number or where it stays, else the first free row. */
function boltPlaces(pairs: readonly Pair[], leftOver: readonly string[]): ReadonlyMap<string, number> {
  const places = new Map<string, number>();
  const taken = new Set<number>();
  const put = (bolt: string, at: number) => {
    places.set(bolt, at);
    taken.add(at);
  };
  for (const [i, { bolt, moved }] of pairs.entries()) if (bolt !== undefined && !moved) put(bolt, i);
  const others = [...pairs.filter(({ moved }) => moved).flatMap(({ bolt }) => bolt ?? []), ...leftOver];
  const homeless = others.filter((bolt) => {
    const home = pairs.findIndex(({ hole }) => hole === bolt);
    if (home < 0 || taken.has(home)) return true;
    put(bolt, home);
    return false;
  });
  let free = 0;
  for (const bolt of homeless) {
    while (taken.has(free)) free += 1;
    put(bolt, free);
  }
  return places;
}

function holeRow(pair: Pair, y: number, x: number, small: Small | undefined): readonly SVGElement[] {
  const { state, tightest, loosest } = pair;
  const words = state === undefined ? [] : stateMarks(state, x, y);
  const fit =
    small === undefined || tightest === undefined || loosest === undefined
      ? []
      : [
          text(
            `${small.number(tightest)} to ${small.number(loosest)}`,
            x - 112,
            y + 4.5,
            "end",
            "quiet-text",
          ),
        ];
  return [...fit, ...words, ...tag(pair.hole, x, y, pair.moved)];
}

const stateMarks = (state: NonNullable<Pair["state"]>, x: number, y: number): readonly SVGElement[] => [
  text(state, x - 26, y + 4.5, "end", `state-text ${kindOf(state)}`),
  markAt(state, x - 13, y),
];

function tag(
  words: string,
  x: number,
  y: number,
  moved: boolean,
  kind = moved ? "tag moved" : "tag",
): readonly SVGElement[] {
  return [
    svg("rect", { class: kind, x, y: y - box.height / 2, width: box.width, height: box.height, rx: 3 }),
    text(words, x + box.width / 2, y + 4.5, "middle", moved ? "strong-text" : ""),
  ];
}
