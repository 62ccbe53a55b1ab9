// The gap map drawn: plan, two side views, history.
import type { UnitChoice } from "../../methods/solution.ts";
import { type Gaps, lowest, type Station } from "../../pictures/gap-map.ts";
import { gapLength, type Small, slope } from "../../pictures/lengths.ts";
import { spaced } from "../../pictures/words.ts";
import { svg } from "../dom.ts";
import { breadthOf } from "./breadth.ts";
import { axes, markAt, outline } from "./flange.ts";
import { lidViews } from "./lid-views.ts";
import { type Anchor, picture, text } from "./marks.ts";
import { layPlan, type Spot } from "./plan.ts";
import { historyHeight, stepHistory } from "./step-history.ts";

export interface Shown {
  readonly gap: Small;
  readonly tilt: Small;
}

const row = 17;

export function drawGapMap(gaps: Gaps, width: number, unitOf: UnitChoice): SVGSVGElement {
  const shown = { gap: gapLength(unitOf), tilt: slope(unitOf) };
  const { now } = gaps;
  const low = lowest(now.stations);
  const byName = new Map(now.stations.map((station) => [station.station, station]));
  const beside = width >= 600;
  const planWidth = beside ? Math.round(width * 0.56) : width;
  const nameOf = (station: string) =>
    station === low?.station ? `${spaced(station)}, lowest` : spaced(station);
  const plan = layPlan(
    now.stations.map(({ station, x, y }) => ({ position: station, x, y, kind: undefined })),
    {
      width: planWidth - 4,
      tallest: beside ? 300 : 420,
      words: "outward",
      edge: 9,
      yUp: gaps.yUp,
      needs: ({ position }) => {
        const room = { width: breadthOf(nameOf(position)), height: 2 * row };
        return { ring: 7, tall: room, flat: { ...room, width: Math.max(74, room.width) } };
      },
    },
  );
  const top = 26;
  const foot = top + plan.height + 8;
  const stationAt = (spot: Spot) => byName.get(spot.place.position);
  const views = lidViews(gaps, shown, beside ? width - planWidth - 24 : width);
  const viewsAt = beside ? { x: planWidth + 24, y: 0 } : { x: 0, y: foot + 46 };
  const historyTop = Math.max(foot + 46, viewsAt.y + views.height) + 14;
  const root = picture(width, historyTop + historyHeight(gaps));
  root.classList.add("plan");
  const drawing = svg("g", { transform: `translate(2 ${top})` }, outline(plan));
  for (const spot of plan.spots) {
    const station = stationAt(spot);
    if (station)
      drawing.append(
        ...stationMarks(
          spot,
          station,
          station === low,
          shown,
          plan.labelled ? nameOf(station.station) : undefined,
        ),
      );
  }
  root.append(
    text(`step ${now.step}: gaps from above, ${shown.gap.label}`, 2, 13, "start", "strong-text"),
    drawing,
    axes(plan, 6, foot + 40),
    text("places to scale", 56, foot + 20, "start", "quiet-text"),
    svg("g", { transform: `translate(${viewsAt.x} ${viewsAt.y})` }, ...views.marks),
    svg("g", { transform: `translate(0 ${historyTop})` }, ...stepHistory(gaps, shown, width)),
  );
  return root;
}

function stationMarks(
  spot: Spot,
  { gap }: Station,
  isLow: boolean,
  shown: Shown,
  name: string | undefined,
): readonly SVGElement[] {
  const { side, label, x, y } = spot;
  const anchor: Anchor = side === "left" ? "end" : side === "right" ? "start" : "middle";
  const at = !label || anchor === "middle" ? x : anchor === "end" ? label.x + label.width : label.x;
  const words = gap === undefined ? "not read" : shown.gap.number(gap);
  const mark =
    gap === undefined
      ? markAt("no answer", x, y)
      : isLow
        ? svg("path", { class: "low-mark", d: `M${x - 8} ${y - 6} h16 l-8 13z` })
        : svg("circle", { class: "point", cx: x, cy: y, r: 5 });
  if (!label || name === undefined) return [mark, text(words, x, y - 10, "middle", "gap-text")];
  return [
    mark,
    text(words, at, label.y + 14, anchor, gap === undefined ? "limit-text" : "gap-text"),
    text(name, at, label.y + 30, anchor, "quiet-text"),
  ];
}
