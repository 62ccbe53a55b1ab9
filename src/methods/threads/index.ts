// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { boltStrength } from "./bolt-strength.ts";
import { hexagonHead } from "./hexagon-head.ts";
import { metricThread } from "./metric-thread.ts";
import { nutStrength } from "./nut-strength.ts";
import { plainWasher } from "./plain-washer.ts";
import { threadLimits } from "./thread-limits.ts";
import { threadStripping } from "./thread-stripping.ts";
import { unifiedThread } from "./unified-thread.ts";

export const threads: readonly AnyMethod[] = [
  metricThread,
  unifiedThread,
  threadLimits,
  boltStrength,
  nutStrength,
  threadStripping,
  plainWasher,
  hexagonHead,
];
