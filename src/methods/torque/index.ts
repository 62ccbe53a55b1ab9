// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { assemblyPreloadLimit } from "./assembly-preload-limit.ts";
import { assemblyStress } from "./assembly-stress.ts";
import { frictionClass } from "./friction-class.ts";
import { looseningTorque } from "./loosening-torque.ts";
import { multiplierInput } from "./multiplier-input.ts";
import { nutFactor } from "./nut-factor.ts";
import { nutFactorTrial } from "./nut-factor-trial.ts";
import { preloadFromFriction } from "./preload-from-friction.ts";
import { preloadFromStretch } from "./preload-from-stretch.ts";
import { preloadFromTorque } from "./preload-from-torque.ts";
import { recommendedTorque } from "./recommended-torque.ts";
import { setTorque } from "./set-torque.ts";
import { stopTorque } from "./stop-torque.ts";
import { stretchFromPreload } from "./stretch-from-preload.ts";
import { tighteningAccuracy } from "./tightening-accuracy.ts";
import { torqueAtNut } from "./torque-at-nut.ts";
import { torqueFromFriction } from "./torque-from-friction.ts";
import { torqueFromPreload } from "./torque-from-preload.ts";
import { turnForPreload } from "./turn-for-preload.ts";
import { wrenchSetting } from "./wrench-setting.ts";

export const torque: readonly AnyMethod[] = [
  preloadFromTorque,
  torqueFromPreload,
  nutFactorTrial,
  torqueFromFriction,
  preloadFromFriction,
  assemblyStress,
  setTorque,
  recommendedTorque,
  wrenchSetting,
  assemblyPreloadLimit,
  looseningTorque,
  multiplierInput,
  preloadFromStretch,
  stopTorque,
  stretchFromPreload,
  torqueAtNut,
  turnForPreload,
  nutFactor,
  frictionClass,
  tighteningAccuracy,
];
