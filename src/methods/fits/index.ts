// The methods of this family.

import type { AnyMethod } from "../register.ts";
import { clearanceHole } from "./clearance-hole.ts";
import { fitAfterSoak } from "./fit-after-soak.ts";
import { fitLimitsInch } from "./fit-limits-inch.ts";
import { fitLimitsIso } from "./fit-limits-iso.ts";
import { fitOfPair } from "./fit-of-pair.ts";
import { fitTemperature } from "./fit-temperature.ts";
import { holeForm } from "./hole-form.ts";
import { oversizeStep } from "./oversize-step.ts";
import { pressFit } from "./press-fit.ts";
import { selectBolts } from "./select-bolts.ts";
import { shankContraction } from "./shank-contraction.ts";
import { sizeAtReference } from "./size-at-reference.ts";

export const fits: readonly AnyMethod[] = [
  fitLimitsIso,
  fitLimitsInch,
  clearanceHole,
  sizeAtReference,
  pressFit,
  fitTemperature,
  shankContraction,
  fitAfterSoak,
  holeForm,
  fitOfPair,
  oversizeStep,
  selectBolts,
];
