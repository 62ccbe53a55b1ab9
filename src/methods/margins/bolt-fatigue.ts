// Does a preloaded bolt bear a pulsating load? Stress at constant preload, then the named criterion.
//
// As the outside load grows, both ends of it together, the point (mean, alternating) runs from the preload
// along S_m = σ_i + k S_a with k = (P_max + P_min)/(P_max − P_min); the factor is S_a over σ_a where that load
// line meets the criterion. Put into S_a/S_e + (S_m/S_ut)² = 1 (Gerber) and (S_a/S_e)² + (S_m/S_p)² = 1
// (ASME-elliptic) it gives a square equation for S_a each:
//   k² S_a² + (2 k σ_i + S_ut²/S_e) S_a + σ_i² − S_ut² = 0,
//   (S_p² + k² S_e²) S_a² + 2 k σ_i S_e² S_a + S_e² (σ_i² − S_p²) = 0,
// whose positive roots are the steps below. A load repeated from zero has k = 1: the printed forms.
import { method } from "../method.ts";
import { fatigueCriteria, fatigueLoadLine, fatigueStress, rolledThread } from "../sources.ts";

export const boltFatigue = method({
  id: "bolt-fatigue",
  question: "Does a preloaded bolt bear a pulsating load?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    loadMin: { kind: "force", symbol: "P_min", says: "least outside load", default: "0 kN" },
    loadMax: { kind: "force", symbol: "P_max", says: "largest outside load" },
    loadFactor: { kind: "ratio", as: "share", symbol: "C", says: "load factor" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    tensileStress: { kind: "stress", symbol: "S_ut", says: "tensile stress", optional: true },
    enduranceStress: {
      kind: "stress",
      symbol: "S_e",
      says: "endurance stress of the threaded bolt",
      optional: true,
    },
    proofStress: { kind: "stress", symbol: "S_p", says: "proof stress, for asme-elliptic", optional: true },
    diameter: {
      kind: "length",
      as: "bolt diameter",
      symbol: "d",
      says: "nominal diameter, for rolled-thread",
      optional: true,
    },
    criterion: {
      kind: "text",
      says: "criterion",
      choices: ["goodman", "gerber", "asme-elliptic", "rolled-thread"],
      default: "goodman",
    },
  },
  variants: {
    by: "criterion",
    sources: {
      goodman: fatigueCriteria,
      gerber: fatigueLoadLine,
      "asme-elliptic": fatigueLoadLine,
      "rolled-thread": rolledThread,
    },
    sets: {
      goodman: {
        preloadStress: "preload / stressArea",
        alternatingStress: "loadFactor * (loadMax - loadMin) / (2 * stressArea)",
        meanStress: "loadFactor * (loadMax + loadMin) / (2 * stressArea) + preloadStress",
        factor:
          "enduranceStress * (tensileStress - preloadStress) / (tensileStress * alternatingStress + enduranceStress * (meanStress - preloadStress))",
      },
      gerber: {
        loadLine: "(loadMax + loadMin) / (loadMax - loadMin)",
        preloadStress: "preload / stressArea",
        alternatingStress: "loadFactor * (loadMax - loadMin) / (2 * stressArea)",
        meanStress: "loadFactor * (loadMax + loadMin) / (2 * stressArea) + preloadStress",
        factor:
          "(tensileStress * sqrt(tensileStress^2 + 4 * loadLine * enduranceStress * (loadLine * enduranceStress + preloadStress)) - tensileStress^2 - 2 * loadLine * preloadStress * enduranceStress) / (2 * loadLine^2 * alternatingStress * enduranceStress)",
      },
      "asme-elliptic": {
        loadLine: "(loadMax + loadMin) / (loadMax - loadMin)",
        preloadStress: "preload / stressArea",
        alternatingStress: "loadFactor * (loadMax - loadMin) / (2 * stressArea)",
        meanStress: "loadFactor * (loadMax + loadMin) / (2 * stressArea) + preloadStress",
        factor:
          "enduranceStress * (proofStress * sqrt(proofStress^2 + loadLine^2 * enduranceStress^2 - preloadStress^2) - loadLine * preloadStress * enduranceStress) / (alternatingStress * (proofStress^2 + loadLine^2 * enduranceStress^2))",
      },
      "rolled-thread": {
        preloadStress: "preload / stressArea",
        alternatingStress: "loadFactor * (loadMax - loadMin) / (2 * stressArea)",
        meanStress: "loadFactor * (loadMax + loadMin) / (2 * stressArea) + preloadStress",
        threadLimit: '0.85 * ("150 mm" / diameter + 45) * "1 MPa"',
        factor: "threadLimit / alternatingStress",
      },
    },
  },
  steps: { amplitudeAllowed: "factor * alternatingStress" },
  between: {
    preloadStress: { kind: "stress", symbol: "σ_i", says: "stress from preload" },
    loadLine: { kind: "ratio", symbol: "k", says: "mean over amplitude of the outside load" },
    threadLimit: { kind: "stress", symbol: "σ_A", says: "limit of a thread rolled before heat treatment" },
  },
  outputs: {
    alternatingStress: { kind: "stress", symbol: "σ_a", says: "alternating stress" },
    meanStress: { kind: "stress", symbol: "σ_m", says: "mean stress" },
    factor: { kind: "ratio", symbol: "n_f", says: "factor against fatigue" },
    amplitudeAllowed: {
      kind: "stress",
      symbol: "S_a",
      says: "alternating stress the criterion allows at this preload",
    },
  },
  limits: [
    { that: "stressArea > 0", else: "no stress is defined" },
    { that: "preload > 0", else: "a bolt without preload feels the whole load: this relation does not hold" },
    { that: "loadMax > loadMin", else: "the load does not swing" },
    { that: "loadMin >= 0", else: "give the load as a pull" },
    { that: "loadFactor > 0", else: "the bolt would feel nothing" },
    { that: "enduranceStress > 0", else: "no factor is defined" },
    { that: "tensileStress > 0", else: "no factor is defined" },
    { that: "proofStress > 0", else: "no factor is defined" },
    { that: "preloadStress < proofStress", else: "the preload alone is at proof" },
    { that: "preloadStress < tensileStress", else: "the preload alone breaks the bolt" },
    {
      that: "(1 - loadFactor) * loadMax < preload",
      else: "the joint opens under the largest load, so the bolt feels the whole swing",
      warn: "spoils",
    },
  ],
  sources: { "*": fatigueStress },
  notes: [
    "endurance values of the tables hold the stress concentration of the thread already",
    "a bolt that has once lost its preload has seen the whole swing: replace it",
  ],
  cautions: ["C8"],
});
