// The register of methods, in the order a job needs them, and one way to solve by id.
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import type { InputValue } from "./field.ts";
import { clearanceHole } from "./fits/clearance-hole.ts";
import { fitAfterSoak } from "./fits/fit-after-soak.ts";
import { fitLimitsInch } from "./fits/fit-limits-inch.ts";
import { fitLimitsIso } from "./fits/fit-limits-iso.ts";
import { fitOfPair } from "./fits/fit-of-pair.ts";
import { fitTemperature } from "./fits/fit-temperature.ts";
import { holeForm } from "./fits/hole-form.ts";
import { oversizeStep } from "./fits/oversize-step.ts";
import { pressFit } from "./fits/press-fit.ts";
import { selectBolts } from "./fits/select-bolts.ts";
import { shankContraction } from "./fits/shank-contraction.ts";
import { sizeAtReference } from "./fits/size-at-reference.ts";
import { bearingPressure } from "./margins/bearing-pressure.ts";
import { boltFatigue } from "./margins/bolt-fatigue.ts";
import { boltsRequired } from "./margins/bolts-required.ts";
import { edgeOpening } from "./margins/edge-opening.ts";
import { proofFactors } from "./margins/proof-factors.ts";
import { separationMargin } from "./margins/separation-margin.ts";
import { serviceBoltLoad } from "./margins/service-bolt-load.ts";
import { splitLineLoad } from "./margins/split-line-load.ts";
import { tensionShearInteraction } from "./margins/tension-shear-interaction.ts";
import type { Declaration, Method } from "./method.ts";
import { dowelJam } from "./opening/dowel-jam.ts";
import { gapPlane } from "./opening/gap-plane.ts";
import { holdCount } from "./opening/hold-count.ts";
import { jackscrewForce } from "./opening/jackscrew-force.ts";
import { slingLegs } from "./opening/sling-legs.ts";
import { stuckForce } from "./opening/stuck-force.ts";
import { changeSince } from "./plan/change-since.ts";
import { passTorques } from "./plan/pass-torques.ts";
import { recordFindings } from "./plan/record-findings.ts";
import { tighteningOrder } from "./plan/tightening-order.ts";
import { elasticInteraction } from "./preload/elastic-interaction.ts";
import { embeddingLoss } from "./preload/embedding-loss.ts";
import { preloadBounds } from "./preload/preload-bounds.ts";
import { preloadWindow } from "./preload/preload-window.ts";
import { thermalPreloadChange } from "./preload/thermal-preload-change.ts";
import { boltCircleTension } from "./shear/bolt-circle-tension.ts";
import { boltGroupShear } from "./shear/bolt-group-shear.ts";
import { shearBearingTearOut } from "./shear/shear-bearing-tear-out.ts";
import { sideLoadShare } from "./shear/side-load-share.ts";
import type { Solution } from "./solution.ts";
import { boltStiffness } from "./stiffness/bolt-stiffness.ts";
import { clampedStiffnessCone } from "./stiffness/clamped-stiffness-cone.ts";
import { clampedStiffnessFit } from "./stiffness/clamped-stiffness-fit.ts";
import { loadShare } from "./stiffness/load-share.ts";
import { boltStrength } from "./threads/bolt-strength.ts";
import { metricThread } from "./threads/metric-thread.ts";
import { nutStrength } from "./threads/nut-strength.ts";
import { threadLimits } from "./threads/thread-limits.ts";
import { threadStripping } from "./threads/thread-stripping.ts";
import { unifiedThread } from "./threads/unified-thread.ts";
import { assemblyPreloadLimit } from "./torque/assembly-preload-limit.ts";
import { assemblyStress } from "./torque/assembly-stress.ts";
import { looseningTorque } from "./torque/loosening-torque.ts";
import { multiplierInput } from "./torque/multiplier-input.ts";
import { nutFactorTrial } from "./torque/nut-factor-trial.ts";
import { preloadFromFriction } from "./torque/preload-from-friction.ts";
import { preloadFromStretch } from "./torque/preload-from-stretch.ts";
import { preloadFromTorque } from "./torque/preload-from-torque.ts";
import { recommendedTorque } from "./torque/recommended-torque.ts";
import { setTorque } from "./torque/set-torque.ts";
import { stopTorque } from "./torque/stop-torque.ts";
import { stretchFromPreload } from "./torque/stretch-from-preload.ts";
import { torqueAtNut } from "./torque/torque-at-nut.ts";
import { torqueFromFriction } from "./torque/torque-from-friction.ts";
import { torqueFromPreload } from "./torque/torque-from-preload.ts";
import { turnForPreload } from "./torque/turn-for-preload.ts";
import { wrenchSetting } from "./torque/wrench-setting.ts";

/** A method whose names are known only at run time. */
export type AnyMethod = Declaration & Pick<Method, "solveNamed">;

const listed: readonly AnyMethod[] = [
  metricThread,
  unifiedThread,
  threadLimits,
  boltStrength,
  nutStrength,
  threadStripping,
  preloadFromTorque,
  torqueFromPreload,
  nutFactorTrial,
  torqueFromFriction,
  preloadFromFriction,
  assemblyStress,
  setTorque,
  recommendedTorque,
  wrenchSetting,
  boltStiffness,
  clampedStiffnessCone,
  clampedStiffnessFit,
  loadShare,
  preloadBounds,
  preloadWindow,
  embeddingLoss,
  thermalPreloadChange,
  serviceBoltLoad,
  separationMargin,
  proofFactors,
  bearingPressure,
  fitLimitsIso,
  fitLimitsInch,
  clearanceHole,
  sizeAtReference,
  pressFit,
  fitTemperature,
  shankContraction,
  fitAfterSoak,
  boltFatigue,
  boltsRequired,
  edgeOpening,
  splitLineLoad,
  tensionShearInteraction,
  dowelJam,
  jackscrewForce,
  slingLegs,
  stuckForce,
  assemblyPreloadLimit,
  looseningTorque,
  multiplierInput,
  preloadFromStretch,
  stopTorque,
  stretchFromPreload,
  torqueAtNut,
  turnForPreload,
  boltGroupShear,
  boltCircleTension,
  shearBearingTearOut,
  sideLoadShare,
  holeForm,
  fitOfPair,
  oversizeStep,
  selectBolts,
  gapPlane,
  holdCount,
  tighteningOrder,
  passTorques,
  recordFindings,
  changeSince,
  elasticInteraction,
];

export const methods: ReadonlyMap<string, AnyMethod> = new Map(listed.map((m) => [m.id, m]));

export function methodNamed(id: string): AnyMethod | Problem {
  const found = methods.get(id);
  if (found) return found;
  const near = nearest(id, [...methods.keys()]);
  return problem({
    code: "unknown-method",
    what: "method",
    got: id,
    must: "be one of the methods",
    hint: near.length > 0 ? `did you mean ${near.join(" or ")}?` : "splitline methods lists them",
    suggestions: near,
  });
}

export function solve(
  id: string,
  inputs: Readonly<Record<string, InputValue | undefined>>,
): Solution | Problem {
  const found = methodNamed(id);
  return "solveNamed" in found ? found.solveNamed(inputs) : found;
}
