// The pictures by name. Each comes with its drawing code when a page first uses it.
import { nearest } from "../../nearest.ts";
import { type Problem, problem } from "../../problem.ts";
import type { Picture } from "./drawing.ts";

const pictures: Readonly<Record<string, () => Promise<Picture>>> = {
  "joint-diagram": async () => (await import("./joint-diagram.ts")).jointDiagram,
  "preload-window": async () => (await import("./preload-window.ts")).preloadWindowPicture,
  wrench: async () => (await import("./wrench.ts")).wrenchPicture,
  "fit-bar": async () => (await import("./fit-bar.ts")).fitBar,
  "fit-map": async () => (await import("./fit-map.ts")).fitMap,
  "gap-map": async () => (await import("./gap-map.ts")).gapMap,
  "dowel-limit": async () => (await import("./dowel-limit.ts")).dowelLimit,
  "tightening-map": async () => (await import("./tightening-map.ts")).tighteningMap,
  "torque-angle": async () => (await import("./torque-angle.ts")).torqueAngle,
  "hole-section": async () => (await import("./hole-section.ts")).holeSection,
  assignment: async () => (await import("./assignment.ts")).assignmentPicture,
  "run-on-bars": async () => (await import("./run-on-bars.ts")).runOnBars,
};

const pictureNames: readonly string[] = Object.keys(pictures);

export function pictureNamed(name: string): Promise<Picture> | Problem {
  const load = Object.hasOwn(pictures, name) ? pictures[name] : undefined;
  if (load) return load();
  const near = nearest(name, pictureNames);
  return problem({
    code: "unknown-picture",
    what: "picture",
    got: name,
    must: `be one of ${pictureNames.join(", ")}`,
    hint: near.length > 0 ? `did you mean ${near.join(" or ")}?` : undefined,
  });
}
