// What do bolt and joint carry under an outside load?
import { method } from "../method.ts";
import { serviceLoad } from "../sources.ts";

export const serviceBoltLoad = method({
  id: "service-bolt-load",
  question: "What do bolt and clamped faces carry under an outside load?",
  inputs: {
    preload: { kind: "force", symbol: "F", says: "preload" },
    externalLoad: { kind: "force", symbol: "P", says: "outside load per bolt, as a pull" },
    loadFactor: { kind: "ratio", as: "share", symbol: "φ", says: "load factor" },
  },
  steps: {
    separated: "(1 - loadFactor) * externalLoad >= preload",
    boltLoad: "separated ? externalLoad : preload + loadFactor * externalLoad",
    clampLoad: "separated ? 0 * preload : preload - (1 - loadFactor) * externalLoad",
  },
  outputs: {
    boltLoad: { kind: "force", symbol: "F_b", says: "load in the bolt" },
    clampLoad: { kind: "force", symbol: "F_m", says: "clamp left between the faces" },
    separated: { kind: "yes/no", says: "has the joint opened" },
  },
  limits: [{ that: "preload >= 0", else: "a bolt is not pushed" }],
  sources: { "*": serviceLoad },
});
