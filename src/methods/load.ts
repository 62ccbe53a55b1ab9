// Loads only the methods that a page asks for, so that a browser fetches no more than it needs.
import { type AnyMethod, addMethods } from "./register.ts";

const loaders: Readonly<Record<string, () => Promise<AnyMethod>>> = {
  "metric-thread": async () => (await import("./threads/metric-thread.ts")).metricThread,
  "unified-thread": async () => (await import("./threads/unified-thread.ts")).unifiedThread,
  "thread-limits": async () => (await import("./threads/thread-limits.ts")).threadLimits,
  "bolt-strength": async () => (await import("./threads/bolt-strength.ts")).boltStrength,
  "nut-strength": async () => (await import("./threads/nut-strength.ts")).nutStrength,
  "thread-stripping": async () => (await import("./threads/thread-stripping.ts")).threadStripping,
  "preload-from-torque": async () => (await import("./torque/preload-from-torque.ts")).preloadFromTorque,
  "torque-from-preload": async () => (await import("./torque/torque-from-preload.ts")).torqueFromPreload,
  "nut-factor-trial": async () => (await import("./torque/nut-factor-trial.ts")).nutFactorTrial,
  "torque-from-friction": async () => (await import("./torque/torque-from-friction.ts")).torqueFromFriction,
  "preload-from-friction": async () =>
    (await import("./torque/preload-from-friction.ts")).preloadFromFriction,
  "assembly-stress": async () => (await import("./torque/assembly-stress.ts")).assemblyStress,
  "set-torque": async () => (await import("./torque/set-torque.ts")).setTorque,
  "recommended-torque": async () => (await import("./torque/recommended-torque.ts")).recommendedTorque,
  "wrench-setting": async () => (await import("./torque/wrench-setting.ts")).wrenchSetting,
  "assembly-preload-limit": async () =>
    (await import("./torque/assembly-preload-limit.ts")).assemblyPreloadLimit,
  "loosening-torque": async () => (await import("./torque/loosening-torque.ts")).looseningTorque,
  "multiplier-input": async () => (await import("./torque/multiplier-input.ts")).multiplierInput,
  "preload-from-stretch": async () => (await import("./torque/preload-from-stretch.ts")).preloadFromStretch,
  "stop-torque": async () => (await import("./torque/stop-torque.ts")).stopTorque,
  "stretch-from-preload": async () => (await import("./torque/stretch-from-preload.ts")).stretchFromPreload,
  "torque-at-nut": async () => (await import("./torque/torque-at-nut.ts")).torqueAtNut,
  "turn-for-preload": async () => (await import("./torque/turn-for-preload.ts")).turnForPreload,
  "bolt-stiffness": async () => (await import("./stiffness/bolt-stiffness.ts")).boltStiffness,
  "clamped-stiffness-cone": async () =>
    (await import("./stiffness/clamped-stiffness-cone.ts")).clampedStiffnessCone,
  "clamped-stiffness-fit": async () =>
    (await import("./stiffness/clamped-stiffness-fit.ts")).clampedStiffnessFit,
  "load-share": async () => (await import("./stiffness/load-share.ts")).loadShare,
  "preload-bounds": async () => (await import("./preload/preload-bounds.ts")).preloadBounds,
  "preload-window": async () => (await import("./preload/preload-window.ts")).preloadWindow,
  "embedding-loss": async () => (await import("./preload/embedding-loss.ts")).embeddingLoss,
  "thermal-preload-change": async () =>
    (await import("./preload/thermal-preload-change.ts")).thermalPreloadChange,
  "elastic-interaction": async () => (await import("./preload/elastic-interaction.ts")).elasticInteraction,
  "service-bolt-load": async () => (await import("./margins/service-bolt-load.ts")).serviceBoltLoad,
  "separation-margin": async () => (await import("./margins/separation-margin.ts")).separationMargin,
  "proof-factors": async () => (await import("./margins/proof-factors.ts")).proofFactors,
  "bearing-pressure": async () => (await import("./margins/bearing-pressure.ts")).bearingPressure,
  "bolt-fatigue": async () => (await import("./margins/bolt-fatigue.ts")).boltFatigue,
  "bolts-required": async () => (await import("./margins/bolts-required.ts")).boltsRequired,
  "edge-opening": async () => (await import("./margins/edge-opening.ts")).edgeOpening,
  "split-line-load": async () => (await import("./margins/split-line-load.ts")).splitLineLoad,
  "tension-shear-interaction": async () =>
    (await import("./margins/tension-shear-interaction.ts")).tensionShearInteraction,
  "bolt-group-shear": async () => (await import("./shear/bolt-group-shear.ts")).boltGroupShear,
  "bolt-circle-tension": async () => (await import("./shear/bolt-circle-tension.ts")).boltCircleTension,
  "shear-bearing-tear-out": async () =>
    (await import("./shear/shear-bearing-tear-out.ts")).shearBearingTearOut,
  "side-load-share": async () => (await import("./shear/side-load-share.ts")).sideLoadShare,
  "fit-limits-iso": async () => (await import("./fits/fit-limits-iso.ts")).fitLimitsIso,
  "fit-limits-inch": async () => (await import("./fits/fit-limits-inch.ts")).fitLimitsInch,
  "clearance-hole": async () => (await import("./fits/clearance-hole.ts")).clearanceHole,
  "size-at-reference": async () => (await import("./fits/size-at-reference.ts")).sizeAtReference,
  "press-fit": async () => (await import("./fits/press-fit.ts")).pressFit,
  "fit-temperature": async () => (await import("./fits/fit-temperature.ts")).fitTemperature,
  "shank-contraction": async () => (await import("./fits/shank-contraction.ts")).shankContraction,
  "fit-after-soak": async () => (await import("./fits/fit-after-soak.ts")).fitAfterSoak,
  "hole-form": async () => (await import("./fits/hole-form.ts")).holeForm,
  "fit-of-pair": async () => (await import("./fits/fit-of-pair.ts")).fitOfPair,
  "oversize-step": async () => (await import("./fits/oversize-step.ts")).oversizeStep,
  "select-bolts": async () => (await import("./fits/select-bolts.ts")).selectBolts,
  "dowel-jam": async () => (await import("./opening/dowel-jam.ts")).dowelJam,
  "jackscrew-force": async () => (await import("./opening/jackscrew-force.ts")).jackscrewForce,
  "sling-legs": async () => (await import("./opening/sling-legs.ts")).slingLegs,
  "stuck-force": async () => (await import("./opening/stuck-force.ts")).stuckForce,
  "gap-plane": async () => (await import("./opening/gap-plane.ts")).gapPlane,
  "hold-count": async () => (await import("./opening/hold-count.ts")).holdCount,
  "tightening-order": async () => (await import("./plan/tightening-order.ts")).tighteningOrder,
  "pass-torques": async () => (await import("./plan/pass-torques.ts")).passTorques,
  "record-findings": async () => (await import("./plan/record-findings.ts")).recordFindings,
  "change-since": async () => (await import("./plan/change-since.ts")).changeSince,
};

/** Ids that can be loaded; a test holds them against the catalogue. */
export const loadable: readonly string[] = Object.keys(loaders);

/** An id that is not known is passed over here: the page says so where it stands. */
export async function loadMethods(ids: Iterable<string>): Promise<void> {
  addMethods(
    await Promise.all(
      [...new Set(ids)]
        .flatMap((id) => (Object.hasOwn(loaders, id) ? [loaders[id]?.()] : []))
        .filter((found) => found !== undefined),
    ),
  );
}
