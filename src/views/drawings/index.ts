// The drawings by the name of their picture. Each comes when a page first shows one.
import { held } from "../../document/held.ts";
import type { Told } from "../../engine/line.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import type { pictures } from "../../pictures/index.ts";

type Draw<M> = (model: M, width: number, unitOf: UnitChoice) => SVGSVGElement;
type AnyPicture = (typeof pictures)[number];
type Modelled<P extends AnyPicture> = Parameters<P["says"]>[0];
type Drawings = { readonly [P in AnyPicture as P["id"]]: () => Promise<Draw<Modelled<P>>> };

const drawings: Drawings = {
  "joint-diagram": async () => (await import("./joint-diagram-drawing.ts")).drawJoint,
  "preload-window": async () => (await import("./preload-window-drawing.ts")).drawWindow,
  wrench: async () => (await import("./wrench-drawing.ts")).drawWrench,
  "fit-bar": async () => (await import("./fit-bar-drawing.ts")).drawFit,
  "fit-map": async () => (await import("./fit-map-drawing.ts")).drawFitMap,
  "gap-map": async () => (await import("./gap-map-drawing.ts")).drawGapMap,
  "dowel-limit": async () => (await import("./dowel-limit-drawing.ts")).drawDowelLimit,
  "tightening-map": async () => (await import("./tightening-map-drawing.ts")).drawTightening,
  "angle-by-nut": async () => (await import("./angle-by-nut-drawing.ts")).drawAngles,
  "torque-against-angle": async () =>
    (await import("./torque-against-angle-drawing.ts")).drawTorqueAgainstAngle,
  "trial-spread": async () => (await import("./trial-spread-drawing.ts")).drawTrial,
  "fits-against-limits": async () => (await import("./fits-against-limits-drawing.ts")).drawFits,
  "hole-section": async () => (await import("./hole-section-drawing.ts")).drawBore,
  assignment: async () => (await import("./assignment-drawing.ts")).drawAssignment,
  "run-on-bars": async () => (await import("./run-on-bars-drawing.ts")).drawRunOn,
};

/** Draws for a width. The model is the one that this picture has told. */
export async function drawingOf(told: Told, unitOf: UnitChoice): Promise<(width: number) => SVGSVGElement> {
  const load = Object.entries<() => Promise<Draw<never>>>(drawings).find(([id]) => id === told.picture)?.[1];
  if (!load) throw new Error(`${told.picture}: told and not drawn`);
  const draw = await load();
  return (width) => draw(held<never>(told.model), width, unitOf);
}
