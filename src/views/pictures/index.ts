// The pictures by name. Each comes with its drawing code when a page first uses it.
import { unknownPicture } from "../../engine/picture-faults.ts";
import type { PictureName } from "../../engine/picture-inputs.ts";
import type { Problem } from "../../problem.ts";
import type { Picture } from "./drawing.ts";

const pictures: Readonly<Record<PictureName, () => Promise<Picture>>> = {
  "joint-diagram": async () => (await import("./joint-diagram.ts")).jointDiagram,
  "preload-window": async () => (await import("./preload-window.ts")).preloadWindowPicture,
  wrench: async () => (await import("./wrench.ts")).wrenchPicture,
  "fit-bar": async () => (await import("./fit-bar.ts")).fitBar,
  "fit-map": async () => (await import("./fit-map.ts")).fitMap,
  "gap-map": async () => (await import("./gap-map.ts")).gapMap,
  "dowel-limit": async () => (await import("./dowel-limit.ts")).dowelLimit,
  "tightening-map": async () => (await import("./tightening-map.ts")).tighteningMap,
  "angle-by-nut": async () => (await import("./angle-by-nut.ts")).angleByNut,
  "torque-against-angle": async () => (await import("./torque-against-angle.ts")).torqueAgainstAngle,
  "trial-spread": async () => (await import("./trial-spread.ts")).trialSpread,
  "fits-against-limits": async () => (await import("./fits-against-limits.ts")).fitsAgainstLimits,
  "hole-section": async () => (await import("./hole-section.ts")).holeSection,
  assignment: async () => (await import("./assignment.ts")).assignmentPicture,
  "run-on-bars": async () => (await import("./run-on-bars.ts")).runOnBars,
};

export function pictureNamed(name: string): Promise<Picture> | Problem {
  const load = Object.entries(pictures).find(([known]) => known === name)?.[1];
  return load ? load() : unknownPicture(name);
}
