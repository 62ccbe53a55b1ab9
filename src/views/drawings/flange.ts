// What every plan shows: the flange behind the positions, which way x and y run, rings, state marks.
import { polygonHull } from "d3";
import type { Mark } from "../../report/states.ts";
import type { State } from "../../verdict.ts";
import { svg } from "../dom.ts";
import { stateMark } from "../sheet/state-mark.ts";
import { text } from "./marks.ts";
import type { Plan, Spot } from "./plan.ts";

/** An outline a little outside the outermost positions: it shows how they hang together and claims no width. */
export function flange({ spots }: Plan, breadth: number): readonly SVGElement[] {
  const d = outlineOf(spots);
  const band = (kind: string, width: number) => svg("path", { class: kind, d, "stroke-width": width });
  return [
    band("flange-edge", breadth + 2),
    band("flange-face", breadth),
    svg("path", { class: "flange-line", d }),
  ];
}

function outlineOf(spots: readonly Spot[]): string {
  const points = spots.map(({ x, y }): [number, number] => [x, y]);
  const hull = points.length > 2 ? polygonHull(points) : null;
  return roundAbout(points) ?? `M${(hull ?? points).map(([x, y]) => `${x} ${y}`).join(" L")}z`;
}

/** The casing through its stations. */
export const outline = ({ spots }: Plan): SVGElement => svg("path", { class: "casing", d: outlineOf(spots) });

/** A bolt circle is drawn as a circle. */
function roundAbout(points: readonly (readonly [number, number])[]): string | undefined {
  if (points.length < 5) return undefined;
  const cx = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const cy = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const radii = points.map(([x, y]) => Math.hypot(x - cx, y - cy));
  const r = Math.max(...radii);
  if (r - Math.min(...radii) > 0.02 * r) return undefined;
  return `M${cx - r} ${cy} a${r} ${r} 0 1 0 ${2 * r} 0 a${r} ${r} 0 1 0 ${-2 * r} 0z`;
}

const arm = 20;

/** Which way x and y run, in the corner below the plan. */
export function axes({ turned, yUp }: Plan, left: number, foot: number): SVGGElement {
  const yWay = yUp ? -1 : 1;
  const along = turned ? [0, -1] : [1, 0];
  const across = turned ? [yWay, 0] : [0, yWay];
  const x0 = left + (across[0] === -1 ? arm + 12 : 4);
  const y0 = foot - (along[1] === -1 || across[1] === -1 ? 4 : arm + 14);
  return svg(
    "g",
    { class: "axes" },
    ...arrow(x0, y0, along, "x"),
    ...arrow(x0, y0, across, "y"),
    svg("circle", { cx: x0, cy: y0, r: 1.8 }),
  );
}

function arrow(x: number, y: number, [dx = 0, dy = 0]: readonly number[], name: string): SVGElement[] {
  const [tx, ty] = [x + dx * arm, y + dy * arm];
  const head = `M${tx - 5 * dx + 3 * dy} ${ty - 5 * dy - 3 * dx} L${tx} ${ty} L${tx - 5 * dx - 3 * dy} ${ty - 5 * dy + 3 * dx}`;
  return [
    svg("path", { d: `M${x} ${y} L${tx} ${ty} ${head}` }),
    text(name, tx + dx * 8, ty + dy * 9 + 4, "middle", "quiet-text"),
  ];
}

export const ring = (kind: string, { x, y }: Spot, rx: number, ry = rx, turn = 0): SVGElement =>
  svg("ellipse", {
    class: kind,
    cx: x,
    cy: y,
    rx,
    ry,
    transform: turn === 0 ? undefined : `rotate(${turn} ${x} ${y})`,
  });

const markSize = 13;

/** The mark of a state, its middle at (x, y). */
export function markAt(mark: Mark, x: number, y: number, size = markSize): SVGElement {
  const drawn = stateMark(mark);
  for (const [name, value] of Object.entries({
    x: x - size / 2,
    y: y - size / 2,
    width: size,
    height: size,
    class: `state-mark ${kindOf(mark)}`,
  }))
    drawn.setAttribute(name, String(value));
  return drawn;
}

export const kindOf = (mark: Mark | State): string => mark.replace(" ", "-");
