// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { boltStiffness } from "./bolt-stiffness.ts";
import { clampedStiffnessCone } from "./clamped-stiffness-cone.ts";
import { clampedStiffnessFit } from "./clamped-stiffness-fit.ts";
import { loadShare } from "./load-share.ts";
import { materialConstants } from "./material-constants.ts";

export const stiffness: readonly AnyMethod[] = [
  boltStiffness,
  clampedStiffnessCone,
  clampedStiffnessFit,
  loadShare,
  materialConstants,
];
