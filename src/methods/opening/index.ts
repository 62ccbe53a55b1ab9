// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { dowelJam } from "./dowel-jam.ts";
import { gapPlane } from "./gap-plane.ts";
import { holdCount } from "./hold-count.ts";
import { jackscrewForce } from "./jackscrew-force.ts";
import { slingLegs } from "./sling-legs.ts";
import { stuckForce } from "./stuck-force.ts";

export const opening: readonly AnyMethod[] = [
  dowelJam,
  jackscrewForce,
  slingLegs,
  stuckForce,
  gapPlane,
  holdCount,
];
