// How many bolts does a load need?
import { method } from "../method.ts";
import { proofFactors as relations } from "../sources.ts";

export const boltsRequired = method({
  id: "bolts-required",
  question: "How many preloaded bolts does a total load need?",
  inputs: {
    totalLoad: { kind: "force", symbol: "P_tot", says: "total outside load" },
    loadFactor: { kind: "ratio", as: "share", symbol: "C", says: "load factor" },
    loadFactorOfSafety: { kind: "ratio", symbol: "n_L", says: "owner's factor on the outside load" },
    stressArea: { kind: "area", symbol: "A_s", says: "stress area" },
    proofStress: { kind: "stress", symbol: "S_p", says: "proof stress" },
    preload: { kind: "force", symbol: "F", says: "preload" },
  },
  steps: {
    needed: "loadFactor * loadFactorOfSafety * totalLoad / (proofStress * stressArea - preload)",
    count: "round(needed) >= needed - 1e-9 ? round(needed) : round(needed) + 1",
  },
  between: { needed: { kind: "count", symbol: "N_0", says: "bolts before rounding up" } },
  outputs: { count: { kind: "count", symbol: "N", says: "bolts needed, rounded up" } },
  limits: [
    { that: "totalLoad > 0", else: "without a load no bolt is needed" },
    { that: "loadFactor > 0", else: "the bolts would feel nothing" },
    { that: "loadFactorOfSafety > 0", else: "no number follows" },
    { that: "stressArea > 0", else: "no stress is defined" },
    { that: "preload >= 0", else: "a bolt is not pushed" },
    {
      that: 'proofStress * stressArea - preload > "0 N"',
      else: "the preload alone reaches proof, so no number of bolts is enough",
    },
  ],
  sources: { "*": relations },
  notes: ["counts strength only: pitch, sealing and separation may ask for more"],
});
