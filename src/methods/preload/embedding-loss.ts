// How much preload is lost when the surfaces bed in?
import { method } from "../method.ts";
import { embedment } from "../sources.ts";

export const embeddingLoss = method({
  id: "embedding-loss",
  question: "How much preload is lost when the surfaces bed in?",
  inputs: {
    embedding: { kind: "length", symbol: "f_Z", says: "sum of the embedding of all surfaces in the grip" },
    boltStiffness: { kind: "stiffness", symbol: "k_b", says: "bolt stiffness" },
    clampedStiffness: { kind: "stiffness", symbol: "k_m", says: "stiffness of the clamped parts" },
  },
  steps: { loss: "embedding * boltStiffness * clampedStiffness / (boltStiffness + clampedStiffness)" },
  outputs: { loss: { kind: "force", symbol: "F_Z", says: "loss of preload" } },
  limits: [
    { that: "embedding >= 0", else: "surfaces bed in, they do not grow" },
    { that: "boltStiffness > 0", else: "a joint needs a bolt" },
    { that: "clampedStiffness > 0", else: "the clamped parts cannot be without stiffness" },
  ],
  sources: { loss: embedment },
});
