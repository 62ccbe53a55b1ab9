// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { boltCircleTension } from "./bolt-circle-tension.ts";
import { boltGroupShear } from "./bolt-group-shear.ts";
import { shearBearingTearOut } from "./shear-bearing-tear-out.ts";
import { sideLoadShare } from "./side-load-share.ts";

export const shear: readonly AnyMethod[] = [
  boltGroupShear,
  boltCircleTension,
  shearBearingTearOut,
  sideLoadShare,
];
