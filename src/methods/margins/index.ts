// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { bearingPressure } from "./bearing-pressure.ts";
import { boltFatigue } from "./bolt-fatigue.ts";
import { boltsRequired } from "./bolts-required.ts";
import { edgeOpening } from "./edge-opening.ts";
import { limitingPressure } from "./limiting-pressure.ts";
import { proofFactors } from "./proof-factors.ts";
import { separationMargin } from "./separation-margin.ts";
import { serviceBoltLoad } from "./service-bolt-load.ts";
import { splitLineLoad } from "./split-line-load.ts";
import { tensionShearInteraction } from "./tension-shear-interaction.ts";

export const margins: readonly AnyMethod[] = [
  serviceBoltLoad,
  separationMargin,
  proofFactors,
  bearingPressure,
  boltFatigue,
  boltsRequired,
  edgeOpening,
  splitLineLoad,
  tensionShearInteraction,
  limitingPressure,
];
