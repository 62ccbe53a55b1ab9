// The form of a bore beside its ring: as an oval, and as a barrel or bell down its depth.

import type { HoleForm } from "../../pictures/fit-map.ts";
import { svg } from "../dom.ts";
import type { Box } from "./plan.ts";

export interface Exaggerated {
  /** Half axes of the ring, px; rx lies in the direction of the oval. */
  readonly rx: number;
  readonly ry: number;
  /** Breadths from the top down as shares of the ring's; empty where no bell would show. */
  readonly profile: readonly number[];
}

const leastShown = 0.08; // of the ring: less is not seen
const most = 0.48;

/** Deviations are drawn larger by the factor than the ring is; a form off the scale is held at its end. */
export function exaggerated(form: HoleForm | undefined, factor: number, ring: number): Exaggerated {
  const size = form?.size;
  if (!form || !size) return { rx: ring, ry: ring, profile: [] };
  const half = Math.min(most, ((form.ovality ?? 0) / size / 2) * factor);
  const oval = form.angle !== undefined && half > leastShown ? half : 0;
  const middle = form.profile.reduce((sum, each) => sum + each, 0) / Math.max(1, form.profile.length);
  const shares = form.profile.map((each) => 1 + ((each - middle) / size) * factor);
  const spread = Math.max(...shares, 1) - Math.min(...shares, 1);
  return {
    rx: ring * (1 + oval),
    ry: ring * (1 - oval),
    profile:
      spread > 2 * leastShown ? shares.map((share) => Math.max(1 - most, Math.min(1 + most, share))) : [],
  };
}

/** A section down the bore: two walls, wider where it is wider. */
export function bell(profile: readonly number[], { x, y, width, height }: Box): SVGElement {
  const middle = x + width / 2;
  const half = width / 2 / (1 + most);
  const step = height / Math.max(1, profile.length - 1);
  const wall = (side: number) =>
    profile.map((share, i) => `${middle + side * half * share} ${y + i * step}`).join(" L");
  return svg("g", { class: "bell" }, svg("path", { d: `M${wall(-1)}` }), svg("path", { d: `M${wall(1)}` }));
}
