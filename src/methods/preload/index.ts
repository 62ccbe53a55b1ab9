// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { elasticInteraction } from "./elastic-interaction.ts";
import { embeddingLoss } from "./embedding-loss.ts";
import { preloadBounds } from "./preload-bounds.ts";
import { preloadWindow } from "./preload-window.ts";
import { thermalPreloadChange } from "./thermal-preload-change.ts";

export const preload: readonly AnyMethod[] = [
  preloadBounds,
  preloadWindow,
  embeddingLoss,
  thermalPreloadChange,
  elasticInteraction,
];
